"""A warp between pegs that stand on the face: every peg turns two ends.

The near pegs stand at -W/2 + j P and the far pegs at -W/2 + (j + 1/2) P, with P twice the pitch, so that between them
the ends are wanted where they lie; the first peg, and the last, hold one end. Every second peg stands in the outer row
of its frame end. A pass touches its pegs on the sides that face each other: with D the thickness of peg and thread
together it lies D / 2 inside their centres, so that an end is (p - D) / 2 off its place at the pegs.
"""

from __future__ import annotations

from fractions import Fraction

from layout.frames.frame import PeggedEnd
from layout.values.errors import FieldError
from layout.values.units import Length, exact_length, say_length
from layout.warps.layout_result import LEAST_WOOD, LayoutResult, looser
from layout.warps.warp import Pass
from layout.yardage.thread import peg_warnings

_THINNEST = Fraction(1)  # mm: thinner pegs are refused


def pegged(ends: int, pitch: Fraction, frame_end: PeggedEnd, thread: Fraction = Fraction(0)) -> LayoutResult:
    """Pegs and passes of `ends` ends at `pitch` mm, as wound from left to right; `thread` mm thick.

    Raises FieldError where the pegs of a row would touch.
    """
    _check(pitch, frame_end)
    half = (frame_end.peg_diameter.mm + thread) / 2
    near = tuple(2 * j * pitch - ends * pitch / 2 for j in range(ends // 2 + 1))
    far = tuple((2 * j + 1) * pitch - ends * pitch / 2 for j in range((ends + 1) // 2))
    passes = tuple(
        Pass(near[(k + 1) // 2] - half, far[k // 2] + half, "face", "down")
        if k % 2
        else Pass(near[k // 2] + half, far[k // 2] - half, "face", "up")
        for k in range(ends)
    )
    return LayoutResult(near, far, passes, 2 * pitch, (), peg_warnings(frame_end.peg_diameter.mm, thread, pitch))


def peg_depth(frame_end: PeggedEnd, number: int) -> Fraction:
    """How far in mm within the outer edge the centre of the peg with this number stands."""
    return frame_end.edge_distance.mm + (0 if in_outer_row(number) else frame_end.row_distance.mm)


def in_outer_row(number: int) -> bool:
    """Whether the peg with this number (0 the first in the order of winding) stands in the outer row."""
    return number % 2 == 1


def _check(pitch: Fraction, frame_end: PeggedEnd) -> None:
    """FieldError where pegs are too thick to stand beside each other with some wood between their holes."""
    most = 2 * pitch - LEAST_WOOD
    if frame_end.peg_diameter.mm > most:
        needed = f"pegs at most {say_length(Length(most))} thick, for a peg every {say_length(Length(2 * pitch))}"
        thinner = f'peg_diameter = "{exact_length(Length(max(pitch / 2, _THINNEST)))}"'
        if most < _THINNEST:
            needed = f"pegs farther apart than {say_length(Length(2 * pitch))}, to leave wood between their holes"
            thinner = looser((frame_end.peg_diameter.mm + LEAST_WOOD) / 2)
        raise FieldError("frame.peg_diameter", needed, say_length(frame_end.peg_diameter), thinner)
