"""The largest rectangle of a sheet that nothing lies on: what is left over in one piece."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from layout.drawing.shapes import Box


def largest_free(taken: Sequence[Box], width: float, height: float) -> Box:
    """The largest by area on a sheet of `width` x `height` mm; of equal ones the lowest, then the leftmost.

    Its sides lie on edges of boxes or of the sheet, so every pair of left and right edges is tried, and between them
    every gap from one box up to the next.
    """
    lefts = sorted({0.0, *(box[2] for box in taken if 0 < box[2] < width)})
    rights = sorted({width, *(box[0] for box in taken if 0 < box[0] < width)})
    best, largest = (0.0, 0.0, 0.0, 0.0), (0.0, 0.0, 0.0)
    for left in lefts:
        for right in (right for right in rights if (right - left) * height > largest[0]):
            for low, high in _gaps([box for box in taken if box[0] < right and left < box[2]], height):
                found = ((right - left) * (high - low), -low, -left)
                if found > largest:
                    best, largest = (left, low, right, high), found
    return best


def _gaps(boxes: Sequence[Box], height: float) -> list[tuple[float, float]]:
    """From where to where nothing lies between the lower and the upper edge of a column."""
    edges, reach = [(0.0, 0.0)], 0.0
    for _, low, _, high in sorted(boxes, key=lambda box: box[1]):
        edges.append((low, max(reach, high)))
        reach = max(reach, high)
    return [(one[1], other[0]) for one, other in pairwise([*edges, (height, height)]) if other[0] > one[1]]
