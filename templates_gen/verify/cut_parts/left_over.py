"""What is left over of a board in one piece: the largest rectangles between the parts that a picture shows.

Found over a grid of all edges, row by row: how far up each column is free, and between which columns that holds.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator, Sequence
from itertools import product
from math import floor

from layout.drawing.shapes import Box

_ALIKE = 2e-3  # two rectangles whose areas differ by less may change places where sizes were rounded
_CLOSE = 0.12  # mm that a part may be larger than its outline in the picture


def sizes_left(taken: Sequence[Box], width: float, height: float) -> list[tuple[int, int]]:
    """Width and height, in whole mm, of every rectangle that may be called the largest; rounding allows several."""
    found = list(_free(taken, width, height))
    most = max((wide * high for wide, high in found), default=0.0)
    largest = [size for size in found if size[0] * size[1] >= most * (1 - _ALIKE)]
    steps = (0.0, -_CLOSE, _CLOSE)
    sizes = ((floor(wide + a), floor(high + b)) for wide, high in largest for a, b in product(steps, repeat=2))
    return list(dict.fromkeys(sizes))


def _free(taken: Sequence[Box], width: float, height: float) -> Iterator[tuple[float, float]]:
    """Width and height of every free rectangle that cannot be wider, for each height above each row of the grid."""
    xs = sorted({0.0, width, *(x for box in taken for x in (box[0], box[2]) if 0 < x < width)})
    ys = sorted({0.0, height, *(y for box in taken for y in (box[1], box[3]) if 0 < y < height)})
    covered = [[False] * (len(xs) - 1) for _ in ys[1:]]
    for left, low, right, high in taken:
        columns = range(bisect_left(xs, max(left, 0.0)), bisect_left(xs, min(right, width)))
        for row, column in product(range(bisect_left(ys, max(low, 0.0)), bisect_left(ys, min(high, height))), columns):
            covered[row][column] = True
    since = [0.0] * (len(xs) - 1)  # from which height on each column is free
    for row, there in enumerate(covered):
        since = [ys[row + 1] if cover else begin for cover, begin in zip(there, since, strict=True)]
        yield from _under(since, xs, ys[row + 1])


def _under(since: Sequence[float], xs: Sequence[float], top: float) -> Iterator[tuple[float, float]]:
    """The rectangles under a line at `top`: a stack of columns that reach further and further down."""
    open_ones: list[tuple[int, float]] = []
    for column, begin in enumerate((*since, top)):
        first = column
        while open_ones and open_ones[-1][1] < begin:
            first, reach = open_ones.pop()
            yield xs[column] - xs[first], top - reach
        if begin < top and (not open_ones or open_ones[-1][1] > begin):
            open_ones.append((first, begin))
