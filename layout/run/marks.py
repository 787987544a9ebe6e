"""Crop marks at both ends of every cut, and the numbers that say in which order the cuts are made."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Text, line
from layout.drawing.typeset import SMALL
from layout.paper.area import SIDE, TOP
from layout.run.bed import RunBed
from layout.run.cuts import Cut

_LONG, _OFF, _CLEAR = 3.0, 0.5, 0.2
_APART = 1.5  # mm between two numbers
_STEP, _BESIDE, _WHITE, _FURTHEST, _NEAR = 0.5, 0.5, 0.14, 12.0, 1e-6


def crop_marks(cuts: Sequence[Cut], pieces: Sequence[Box], bed: RunBed, taken: Sequence[Box]) -> list[Curve]:
    """A short line at each end of each line of a cut, off the parts: in the margin, or across the gap that it ends at.

    A mark that would meet a box of `taken` is left out; the one at the other end stands.
    """
    found = []
    for cut in cuts:
        for at in cut.lines:
            for end, way in ((cut.begin, -1), (cut.end, 1)):
                low, high = sorted(_reach(cut, at, end, way, pieces, bed))
                ends = _at(cut, at, low), _at(cut, at, high)
                if high > low and not any(_meet(_with_white(_around(ends)), box) for box in taken):
                    found.append(line(*ends, Pen.HELP))
    return found


def _reach(cut: Cut, at: float, end: float, way: int, pieces: Sequence[Box], bed: RunBed) -> tuple[float, float]:
    """From where to where a mark reaches that begins at one end of a cut and goes outward."""
    along, across = (1, 0) if cut.axis == "x" else (0, 1)
    edges = (bed.left, bed.bottom, bed.right, bed.top)
    if end in (bed.sheet[along], bed.sheet[along + 2]):
        begin = edges[along] if way < 0 else edges[along + 2]
        return begin + way * _OFF, begin + way * (_OFF + _LONG)
    here = [box for box in pieces if box[across] - _OFF < at < box[across + 2] + _OFF]
    for box in sorted(here, key=lambda box: way * box[along]):  # words beside a part are kept clear of, too
        if box[along] < end < box[along + 2] and way * (edge := box[along + 1 + way]) > way * end:
            end = edge
    near = along if way > 0 else along + 2
    beyond = [way * (box[near] - end) for box in here if way * (box[near] - end) > -_NEAR]
    room = max(2 * _CLEAR, min(beyond, default=_LONG + 2 * _OFF))
    if room >= _LONG + 2 * _OFF:
        return end + way * _OFF, end + way * (_OFF + _LONG)
    return end + way * _CLEAR, end + way * (room - _CLEAR)


def _at(cut: Cut, across: float, along: float) -> Point:
    return Point(across, along) if cut.axis == "x" else Point(along, across)


def cut_numbers(
    cuts: Sequence[Cut], pieces: Sequence[Box], bed: RunBed, taken: Sequence[Box], metrics: FontMetrics
) -> list[Text]:
    """The number of each cut, along it: in its gap, or beside its line where the paper is waste; near its first end.

    Two numbers stand apart, so that 3 beside 5 does not read as 35; side by side only where there is no other room.
    """
    met = [*map(_with_white, pieces), *taken]
    numbers: list[Box] = []
    found = []
    for cut in cuts:
        first: tuple[Text, Box] | None = None
        for each in _places(cut, pieces, bed, metrics):
            if not any(_meet(each[1], box) for box in met):
                first = first or each
                if not any(_meet(_grown(each[1], _APART), box) for box in numbers):
                    first = each
                    break
        if first:
            found.append(first[0])
            met.append(first[1])
            numbers.append(first[1])
    return found


def _places(cut: Cut, pieces: Sequence[Box], bed: RunBed, metrics: FontMetrics) -> Iterator[tuple[Text, Box]]:
    """Where its number may stand, the best place first, and what it takes there."""
    said, high = str(cut.number), metrics.cap * SMALL
    wide = metrics.width(said, SMALL)
    low, top = (bed.bottom, bed.top) if cut.axis == "x" else (bed.left, bed.right)
    begin, end = max(cut.begin, low), min(cut.end, top)
    bases = _across(cut, high, pieces)
    steps = max(0, int((end - begin - wide) / _STEP))
    for base, k in product(bases, range(steps + 1)):
        along = end - wide - k * _STEP if cut.axis == "x" else begin + k * _STEP  # the first end is the upper one
        if cut.axis == "y":
            yield Text(Point(along, base), SMALL, said), (along, base, along + wide, base + high)
        else:
            at = Point(base + high, along)
            yield Text(at, SMALL, said, angle=90.0), (base, along, base + high, along + wide)


def _across(cut: Cut, high: float, pieces: Sequence[Box]) -> list[float]:
    """How far across a number `high` mm high may stand: in the middle of the gap first, then close beside the line.

    Where parts or the words beside them are in the way, just beyond these; beside a gap that has no room for it.
    """
    low, side = (0, 2) if cut.axis == "x" else (1, 3)
    begin, end = cut.at, cut.at + cut.gap
    middle = (begin + end - high) / 2
    edges = [*(box[side] + _WHITE + _NEAR for box in pieces), *(box[low] - high - _WHITE - _NEAR for box in pieces)]
    offs = [_BESIDE + _STEP * k for k in range(int((_FURTHEST - high) / _STEP))]
    beside = [at for off in offs for at in (end + off, begin - off - high)]
    beyond = [at for at in edges if begin - _FURTHEST < at < end + _FURTHEST - high]
    beyond.sort(key=lambda at: abs(at - middle))
    inside = [at for at in beyond if begin <= at <= end - high]
    return [middle, *inside, *beside, *beyond] if cut.gap else [*beside, *beyond]


def _around(ends: tuple[Point, Point]) -> Box:
    (x0, y0), (x1, y1) = ends
    return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)


def box_around(shape: Curve) -> Box:
    """The box of a mark with white round it."""
    return _with_white(_around((shape.start, shape.steps[-1].end)))


def _with_white(box: Box) -> Box:
    return _grown(box, _WHITE)


def _grown(box: Box, by: float) -> Box:
    left, low, right, high = box
    return left - by, low - by, right + by, high + by


def margins_of(bed: RunBed) -> list[Box]:
    """What many printers cannot reach: four boxes along the edges of a sheet."""
    left, low, right, high = bed.sheet
    return [
        (left, low, SIDE, high),
        (right - SIDE, low, right, high),
        (left, low, right, TOP),
        (left, high - TOP, right, high),
    ]


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
