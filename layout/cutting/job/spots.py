"""Where words or a ring find room inside a part on the picture of a board, clear of its outline."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from itertools import pairwise, product
from operator import itemgetter
from typing import NamedTuple

from layout.drawing.shapes import Box, Curve, Point

_CLEAR, _STEP, _SPOTS = 0.5, 0.4, 24


class Outline(NamedTuple):
    """Closed lines as corners, points close together along all that words keep clear of, and the box of the part.

    The points are in order `along` the longer side of the box: 0 for x, 1 for y.
    """

    corners: tuple[tuple[Point, ...], ...]
    near: tuple[Point, ...]
    box: Box
    along: int = 0

    @classmethod
    def of(cls, paths: Sequence[Curve], lines: Sequence[Curve], box: Box) -> Outline:
        """That of a part that is cut along `paths`, where `lines` are drawn."""
        drawn = (tuple(_corners(path)) for path in lines)
        near = (at for each in drawn for one, other in pairwise((*each, each[0])) for at in _along(one, other))
        along = int(box[3] - box[1] > box[2] - box[0])
        in_order = tuple(sorted(near, key=itemgetter(along)))
        return cls(tuple(tuple(_corners(path)) for path in paths), in_order, box, along)

    def meets(self, place: Point, wide: float, high: float) -> bool:
        """Whether a line passes closer to a place than that, across and up."""
        reach = (wide, high)[self.along]
        first = bisect_left(self.near, place[self.along] - reach, key=itemgetter(self.along))
        last = bisect_right(self.near, place[self.along] + reach, lo=first, key=itemgetter(self.along))
        return any(abs(x - place.x) < wide and abs(y - place.y) < high for x, y in self.near[first:last])


def spot_in(outline: Outline, width: float, height: float) -> Point | None:
    """The lower left corner of the middle-most place, of a grid of them, that holds a box of that size."""
    low_x, low_y, high_x, high_y = outline.box
    wide, high = width / 2 + _CLEAR, height / 2 + _CLEAR
    if high_x - low_x < 2 * wide or high_y - low_y < 2 * high:
        return None
    middle = Point((low_x + high_x) / 2, (low_y + high_y) / 2)
    grid = product(range(1, _SPOTS), repeat=2)
    places = [Point(low_x + (high_x - low_x) * a / _SPOTS, low_y + (high_y - low_y) * b / _SPOTS) for a, b in grid]
    for place in sorted(places, key=lambda p: (p.x - middle.x) ** 2 + (p.y - middle.y) ** 2):
        if outline.meets(place, wide, high):
            continue
        if sum(_crossings(corners, place) for corners in outline.corners) % 2:
            return Point(place.x - width / 2, place.y - height / 2)
    return None


def _corners(path: Curve) -> Iterator[Point]:
    yield path.start
    for end, through in path.steps:
        yield from [end] if through is None else [through, end]


def _along(one: Point, other: Point) -> Iterator[Point]:
    """Points from one to the other, close enough to each other that no word slips between them."""
    count = max(1, int(max(abs(other.x - one.x), abs(other.y - one.y)) / _STEP) + 1)
    for k in range(count):
        yield Point(one.x + (other.x - one.x) * k / count, one.y + (other.y - one.y) * k / count)


def _crossings(corners: Sequence[Point], place: Point) -> int:
    """How often a ray from `place` to the right crosses a closed line."""
    return sum(
        (one.y > place.y) != (other.y > place.y)
        and place.x < one.x + (place.y - one.y) / (other.y - one.y) * (other.x - one.x)
        for one, other in pairwise([*corners, corners[0]])
    )
