"""In which order straight cuts from edge to edge part everything that lies on a sheet."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Literal, NamedTuple

from layout.drawing.shapes import Box
from layout.messages.roles.run import RunSheet
from layout.values.errors import LayoutError

Axis = Literal["x", "y"]

_AXES: tuple[Axis, ...] = ("y", "x")
_SIDES: Mapping[Axis, tuple[int, int]] = {"x": (0, 2), "y": (1, 3)}
_NEAR = 1e-6  # mm: what sums of floats may leave between two edges that are one
THIN = 0.5
"""Less than this, in mm, is not cut off: parts that are all but alike stand in one row, such a gap is one cut."""


class Cut(NamedTuple):
    """The `number`th cut. It takes away what lies from `at` to `at + gap` on its `axis`; without a gap it is one line.

    A cut on the axis x runs upward, one on y across; it goes from `begin` to `end` on the other axis. mm on the sheet.
    """

    number: int
    axis: Axis
    at: float
    gap: float
    begin: float
    end: float

    @property
    def lines(self) -> tuple[float, ...]:
        """Where the knife goes: along both sides of a gap."""
        return (self.at, self.at + self.gap) if self.gap else (self.at,)


class _Piece(NamedTuple):
    """What is cut out, and all that it takes: words may stand beside it."""

    trim: Box
    room: Box


def cuts_of(pieces: Sequence[Box], sheet: Box, rooms: Sequence[Box] = ()) -> tuple[Cut, ...]:
    """The cuts that leave every one of `pieces` alone and trimmed (but for `THIN` strips); each goes right through
    what is left then.

    Of a panel the margins come off first, above and below, left and right. Then it is parted on the axis that leaves
    more panels (across where both leave as many), from the top or from the left, and each of these is cut so.
    `rooms` are what the pieces take with the words beside them, where there are any: no cut parts these.
    LayoutError where no straight cut goes between two pieces.
    """
    both = [_Piece(trim, room) for trim, room in zip(pieces, rooms or pieces, strict=True)]
    return tuple(cut._replace(number=number) for number, cut in enumerate(_cut(sheet, both), 1))


def _cut(panel: Box, pieces: Sequence[_Piece]) -> Iterator[Cut]:
    if not pieces:
        return
    for axis in _AXES:
        low, high = _SIDES[axis]
        span = min(piece.trim[low] for piece in pieces), max(piece.trim[high] for piece in pieces)
        kept = tuple(
            end if abs(end - panel[side]) > THIN else panel[side] for side, end in zip((low, high), span, strict=True)
        )
        ends = panel[1 - low], panel[3 - low]
        off = [Cut(0, axis, at, 0.0, *ends) for at, side in zip(kept, (low, high), strict=True) if at != panel[side]]
        yield from off if axis == "x" else reversed(off)
        panel = _within(panel, axis, *kept)
    if len(pieces) == 1:
        return
    bands = {axis: _bands(pieces, axis) for axis in _AXES}
    axis = max(_AXES, key=lambda each: len(bands[each]))
    if len(bands[axis]) == 1:
        raise LayoutError(RunSheet.NO_CUT)
    yield from _parted(panel, bands[axis], axis)


def _parted(panel: Box, bands: Sequence[Sequence[_Piece]], axis: Axis) -> Iterator[Cut]:
    """The cuts between the bands of a panel, and then those of each band."""
    low, high = _SIDES[axis]
    spans = [(min(piece.trim[low] for piece in band), max(piece.trim[high] for piece in band)) for band in bands]
    ends = panel[1 - low], panel[3 - low]
    gaps = [_gap(begin, end) for (_, begin), (end, _) in pairwise(spans)]
    cuts = [Cut(0, axis, begin, end - begin, *ends) for begin, end in gaps]
    begins, stops = [panel[low], *(end for _, end in gaps)], [*(begin for begin, _ in gaps), panel[high]]
    parts = list(zip(bands, begins, stops, strict=True))
    if axis == "y":
        cuts.reverse()
        parts.reverse()
    yield from cuts
    for band, begin, stop in parts:
        yield from _cut(_within(panel, axis, begin, stop), band)


def _gap(begin: float, end: float) -> tuple[float, float]:
    """What a cut between two bands takes away."""
    middle = (begin + end) / 2
    return (begin, end) if end - begin > THIN else (middle, middle)


def _within(panel: Box, axis: Axis, begin: float, stop: float) -> Box:
    left, bottom, right, top = panel
    return (begin, bottom, stop, top) if axis == "x" else (left, begin, right, stop)


def _bands(pieces: Sequence[_Piece], axis: Axis) -> list[list[_Piece]]:
    """The pieces in groups that a straight cut can part, from the lower side on."""
    low, high = _SIDES[axis]
    bands: list[list[_Piece]] = []
    reach = 0.0
    for piece in sorted(pieces, key=lambda each: each.room[low]):
        if bands and piece.room[low] < reach + _NEAR:
            bands[-1].append(piece)
        else:
            bands.append([piece])
        reach = max(reach, piece.room[high]) if len(bands[-1]) > 1 else piece.room[high]
    return bands
