"""The printable area of a sheet, the places on it that are taken, and rectangles that must not meet."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.shapes import Box, Placing, Point
from layout.kit.kit import Paper

SIDE, TOP = 8.0, 13.0
"""Kept free at both sides, and at top and bottom: many printers cannot reach further out."""


@dataclass(frozen=True, slots=True)
class Area:
    """The printable part of a sheet, in sheet coordinates, less the boxes that the head and the foot take."""

    left: float
    bottom: float
    right: float
    top: float
    taken: tuple[Box, ...] = ()

    @property
    def width(self) -> float:
        """Across, in mm."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Up, in mm."""
        return self.top - self.bottom

    def holds(self, box: Box, placing: Placing) -> bool:
        """Whether `box`, laid by `placing`, is inside the area and off everything taken."""
        corners = placing.points(_corners(box))
        inside = all(
            self.left - 1e-9 <= x <= self.right + 1e-9 and self.bottom - 1e-9 <= y <= self.top + 1e-9
            for x, y in corners
        )
        return inside and not any(_meet(corners, _corners(other)) for other in self.taken)


def printable(paper: Paper) -> Area:
    """The area inside the margins of `paper`."""
    return Area(SIDE, TOP, paper.width - SIDE, paper.height - TOP)


def _corners(box: Box) -> list[Point]:
    left, bottom, right, top = box
    return [Point(left, bottom), Point(right, bottom), Point(right, top), Point(left, top)]


def _meet(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """Whether two convex polygons share more than an edge: no side of either separates them."""
    return not (_separated(one, other) or _separated(other, one))


def _separated(one: Sequence[Point], other: Sequence[Point]) -> bool:
    for (x0, y0), (x1, y1) in zip(one, (*one[1:], one[0]), strict=True):
        normal_x, normal_y = y1 - y0, x0 - x1
        mine = [normal_x * x + normal_y * y for x, y in one]
        theirs = [normal_x * x + normal_y * y for x, y in other]
        if max(mine) <= min(theirs) + 1e-9 or max(theirs) <= min(mine) + 1e-9:
            return True
    return False
