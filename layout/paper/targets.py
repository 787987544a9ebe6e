"""The eight targets by which a scan of a sheet is laid true: rings with a dot, far apart, on no line of their own."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import chain, islice

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point, Region, Shape, circle
from layout.kit.kit import Paper

RING_R, RING_PEN, DOT_R, WHITE = 1.2, Pen.TARGET, 0.405, 0.5
"""Radius of the ring's middle line and its pen, radius of the dot, and the white around it, in mm."""

HALF = 2.0
"""From the centre of a target to the edge of its white."""

_SIDE, _TOP, _BOTTOM = 9.7, 14.7, 15.0  # the lower ones keep clear of the strip that many printers leave white
_BOTTOM_X, _NARROW, _BOTTOM_SHARE = 75.0, 160.0, 0.36
_SMALL = 110.0
_NUMBERS = 111.0, 124.0  # the last numbers of the upright scale stand between these heights
_UNLIKE = 10.0  # turned or mirrored, the set must lie so far from itself
_CLEAR = 20.0  # from a corner, for one that has moved


def centres(paper: Paper, taken: Sequence[Box] = ()) -> tuple[Point, ...]:
    """The centres of the targets: four corners, left and right side, top and bottom, in this order.

    One at a side, at the top or at the bottom moves along its edge, as little as it can, to where its white meets no
    box in `taken`; where it finds no such place it is left out. A sheet less than 110 mm wide has none at the top, and
    one less than 110 mm high none at its sides, so that there are five at least. The one at the bottom stands clearly
    off the middle, and never opposite the one at the top: a sheet that is turned or mirrored is seen.
    """
    width, height = paper.width, paper.height
    left, right, low, high = _SIDE, width - _SIDE, _BOTTOM, height - _TOP
    found = [Point(left, high), Point(right, high), Point(left, low), Point(right, low)]
    if height >= _SMALL:
        middle = height / 2 + 0.35
        if _NUMBERS[0] < middle < _NUMBERS[1]:
            middle = _NUMBERS[1]
        span = low + _CLEAR, high - _CLEAR
        for x in (left, right):
            found += _moved([Point(x, y) for y in _choices(middle, span, taken, 1)], taken)
    bottom = _BOTTOM_X if width >= _NARROW else _BOTTOM_SHARE * width
    span = left + min(_CLEAR, bottom - left), width / 2 - _UNLIKE
    below = _moved([Point(x, low) for x in _choices(bottom, span, taken, 0)], taken)
    if width >= _SMALL:
        span = width / 2, right - _CLEAR
        above = [Point(x, high) for x in _choices(width / 2, span, taken, 0)]
        found += _moved([at for at in above if _unlike(at, below, width)], taken)
    return (*found, *below)


def _choices(nominal: float, span: tuple[float, float], taken: Sequence[Box], axis: int) -> list[float]:
    """Places along an edge, the nearest to the nominal one first: there, or just beside something that is taken."""
    beside = chain.from_iterable((box[axis] - HALF, box[axis + 2] + HALF) for box in taken)
    moved = [place for place in beside if span[0] <= place <= span[1]]
    return sorted([nominal, *moved], key=lambda place: (abs(place - nominal), place))


def _moved(places: Iterable[Point], taken: Sequence[Box]) -> list[Point]:
    free = (at for at in places if not any(_meets(box_of(at), box) for box in taken))
    return list(islice(free, 1))


def _unlike(above: Point, below: Sequence[Point], width: float) -> bool:
    """Whether a half turn or a mirror leaves the two of top and bottom on other places than it found them."""
    return all(min(abs(above.x + at.x - width), abs(above.x - at.x)) >= _UNLIKE for at in below)


def _meets(one: Box, other: Box) -> bool:
    near = 1e-9
    across = one[0] < other[2] - near and other[0] < one[2] - near
    return across and one[1] < other[3] - near and other[1] < one[3] - near


def box_of(centre: Point) -> Box:
    """A target and its white."""
    return centre.x - HALF, centre.y - HALF, centre.x + HALF, centre.y + HALF


def target_boxes(paper: Paper, taken: Sequence[Box] = ()) -> tuple[Box, ...]:
    """Each target and its white, in the order of `centres`."""
    return tuple(map(box_of, centres(paper, taken)))


def targets(paper: Paper, taken: Sequence[Box] = ()) -> list[Shape]:
    """The rings and dots of a sheet."""
    shapes: list[Shape] = []
    for centre in centres(paper, taken):
        shapes += [circle(centre, RING_R, RING_PEN), Region((circle(centre, DOT_R, Pen.SOLID),), Pen.SOLID)]
    return shapes


def rectangle(paper: Paper) -> tuple[float, float]:
    """How far apart the corner targets are, across the sheet and up it, in mm."""
    return paper.width - 2 * _SIDE, paper.height - _TOP - _BOTTOM
