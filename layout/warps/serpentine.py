"""There and back on the face, round one peg or nail after the other: each turns two ends.

The near ones stand at -W/2 + j P and the far ones at -W/2 + (j + 1/2) P, with P twice the pitch. A pass touches two of
them on the sides that face each other, its middle line half the thickness of peg and thread together off both centres.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from layout.frames.frame import Frame
from layout.values.quantity import Quantity, combine
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Pass, Warp
from layout.warps.way import Course
from layout.yardage.thread import pegged_path


def laid_between(ends: int, pitch: Fraction, half: Fraction) -> LayoutResult:
    """Centres and passes of `ends` ends at `pitch` mm, each pass `half` mm inside its centres."""
    near = tuple(2 * j * pitch - ends * pitch / 2 for j in range(ends // 2 + 1))
    far = tuple((2 * j + 1) * pitch - ends * pitch / 2 for j in range((ends + 1) // 2))
    passes = tuple(
        Pass(near[(k + 1) // 2] - half, far[k // 2] + half, "face", "down")
        if k % 2
        else Pass(near[k // 2] + half, far[k // 2] - half, "face", "up")
        for k in range(ends)
    )
    return LayoutResult(near, far, passes, 2 * pitch)


def courses_between(
    frame: Frame, warp: Warp, across: float, depth: Callable[[int], Fraction], period: int
) -> Iterator[Course]:
    """The courses of the first `period` passes, as wound from left to right: all later ones repeat them.

    Peg or nail and thread are `across` mm thick together; `depth` says how far within the outer edge each centre lies.
    The tangent from the right side of one to the left side of another that stands dx further on and dy higher leans by
    atan2(dx, dy) - asin(D / c) from upright, with c from centre to centre, and leaves the first D / (2 cos lean) beside
    its centre. On the way back all is mirrored.
    """
    high = frame.outer_height.mm
    for k in range(min(warp.ends, period)):
        low, up, side = (k + 1) // 2, k // 2, -1 if k % 2 else 1
        bottom = float(depth(low))
        rise = float(high - depth(up)) - bottom
        from_centre, to_centre = (warp.toward * float(x) for x in (warp.near[low], warp.far[up]))
        along = side * (to_centre - from_centre)
        lean = math.atan2(along, rise) - math.asin(across / math.hypot(along, rise))
        at_half = from_centre + side * (across / 2 / math.cos(lean) + (float(high) / 2 - bottom) * math.tan(lean))
        wanted = float((k + Fraction(1, 2)) * warp.pitch - warp.width / 2)
        yield at_half - wanted, side * math.tan(lean)


@dataclass(frozen=True, slots=True)
class BetweenPegs:
    """The way of a thread between two rows of pegs `peg` thick, `rows` from centre to centre, every second one `apart`
    further out; all in mm.
    """

    warp: Warp
    rows: Fraction
    peg: Fraction
    apart: Fraction = Fraction(0)

    @property
    def widest(self) -> float:
        """The most that peg and thread may be together."""
        return min(float(2 * self.warp.pitch), float(self.rows))

    def two_ends(self, period: int, said: str, thread: Quantity) -> Quantity:
        """There and back with both turns, as an average of `period` passes, after which pegs stand as before."""
        return combine(
            lambda thick: (self._way(2 * period, thick) - self._way(period, thick)) * 2 / period, said, thread
        )

    def whole(self, thread: Quantity) -> Quantity:
        """All ends. A thread that may be too thick for its pegs is taken as thick as they allow."""
        reason = self._path(self.warp.ends, thread.value).reason
        return combine(lambda thick: self._way(self.warp.ends, thick), reason, thread)

    def _way(self, count: int, thick: float) -> float:
        return self._path(count, thick).value

    def _path(self, count: int, thick: float) -> Quantity:
        across = min(float(self.peg) + thick, self.widest)
        return pegged_path(count, self.rows, self.warp.pitch, across, self.apart)
