"""In which order straight cuts from edge to edge part everything that lies on a sheet."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Literal, NamedTuple

from layout.drawing.shapes import Box
from layout.values.errors import LayoutError

Axis = Literal["x", "y"]

_NEAR = 1e-6  # mm: what sums of floats may leave between two edges that are one


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


def cuts_of(pieces: Sequence[Box], sheet: Box) -> tuple[Cut, ...]:
    """The cuts that leave every one of `pieces` alone and trimmed; each goes right through what is left then.

    All cuts of a panel on one axis follow each other, on the axis that leaves more panels (across where both leave as
    many), from the top and from the left; then each panel is cut so. LayoutError where no straight cut goes between
    two pieces.
    """
    found = enumerate(_cut(sheet, pieces), 1)
    return tuple(cut._replace(number=number) for number, cut in found)


def _cut(panel: Box, pieces: Sequence[Box]) -> Iterator[Cut]:
    if not pieces:
        return
    bands: dict[Axis, list[list[Box]]] = {axis: _bands(pieces, axis) for axis in ("y", "x")}
    open_ones = [axis for axis in bands if len(bands[axis]) > 1 or _loose(panel, pieces, axis)]
    if not open_ones and len(pieces) == 1:
        return
    axis = max(open_ones, key=lambda each: len(bands[each]), default=None)
    if axis is None or max(map(len, bands.values())) == 1 < len(pieces):
        raise LayoutError(f"no straight cut goes between {len(pieces)} pieces")
    low, high = (0, 2) if axis == "x" else (1, 3)
    spans = [(min(piece[low] for piece in band), max(piece[high] for piece in band)) for band in bands[axis]]
    cuts = list(_between(panel, spans, axis))
    yield from cuts if axis == "x" else reversed(cuts)
    parted = list(zip(bands[axis], spans, strict=True))
    for band, (begin, end) in parted if axis == "x" else reversed(parted):
        left, bottom, right, top = panel
        yield from _cut((begin, bottom, end, top) if axis == "x" else (left, begin, right, end), band)


def _between(panel: Box, spans: Sequence[tuple[float, float]], axis: Axis) -> Iterator[Cut]:
    """The cuts of a panel on one axis, from its lower side on: what lies beside the bands is cut off."""
    low, high, *ends = (panel[0], panel[2], panel[1], panel[3]) if axis == "x" else (*panel[1::2], *panel[::2])
    if spans[0][0] - low > _NEAR:
        yield Cut(0, axis, spans[0][0], 0.0, ends[0], ends[1])
    for (_, begin), (end, _) in pairwise(spans):
        yield Cut(0, axis, begin, end - begin, ends[0], ends[1])
    if high - spans[-1][1] > _NEAR:
        yield Cut(0, axis, spans[-1][1], 0.0, ends[0], ends[1])


def _loose(panel: Box, pieces: Sequence[Box], axis: Axis) -> bool:
    """Whether the pieces leave something of the panel at either side."""
    low, high = (0, 2) if axis == "x" else (1, 3)
    least, most = min(piece[low] for piece in pieces), max(piece[high] for piece in pieces)
    return least - panel[low] > _NEAR or panel[high] - most > _NEAR


def _bands(pieces: Sequence[Box], axis: Axis) -> list[list[Box]]:
    """The pieces in groups that a straight cut can part, from the lower side on."""
    low, high = (0, 2) if axis == "x" else (1, 3)
    bands: list[list[Box]] = []
    reach = 0.0
    for piece in sorted(pieces, key=lambda each: each[low]):
        if bands and piece[low] < reach + _NEAR:
            bands[-1].append(piece)
        else:
            bands.append([piece])
        reach = max(reach, piece[high]) if len(bands[-1]) > 1 else piece[high]
    return bands
