"""What a cut part shows on its sheet, in the coordinates it was thought in: x along the weaving, whatever the grain."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Step, Text
from templates_gen.lettering.outlines import contours_of
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.found_parts import FoundPart

_UPRIGHT = 1e-4  # mm that both ends of an upright line may differ in x


@dataclass(frozen=True)
class FoundCut:
    """One part of a file for a cutter. `grain` is the axis of the part that has to lie along the stock's grain."""

    seen: FoundPart
    stock: Stock
    grain: str

    @property
    def turned(self) -> bool:
        """Whether the part lies a quarter turn round, so that its grain runs as the stock's."""
        return self.stock.grain not in ("none", self.grain)

    def beside(self, axis: str) -> float:
        """How far beside an edge its line is drawn along the part's own axis: half of that way's kerf, or nothing."""
        across = (axis == "x") != self.turned
        kerf = self.stock.kerf_x if across else self.stock.kerf_y
        return kerf / 2 if self.stock.kerf_drawn else 0.0

    def paths(self, pen: Pen) -> list[Curve]:
        """Every path of a pen, in the part's own coordinates."""
        return [self._own(path) for path in self.seen.paths(pen)]

    @cached_property
    def outline(self) -> Curve:
        """The widest part that is cut through."""
        return max(self.paths(Pen.THROUGH), key=lambda path: max(xs(path)) - min(xs(path)))

    def inside(self, engraved: Region | Text) -> list[list[Point]]:
        """The points of every contour on the sheet, in the part's own coordinates; none of one outside.

        Words are turned back before they become outlines: so their corners are rounded as in a part that lies straight.
        """
        contours = []
        for contour in self._contours(engraved):
            if not self.seen.holds_all(contour):
                return []
            contours.append(list(map(_turned, contour)) if self.turned else contour)
        return contours

    def _contours(self, engraved: Region | Text) -> Iterator[list[Point]]:
        lie = self.seen.lie
        if isinstance(engraved, Text):
            turned = engraved.angle - math.degrees(math.atan2(lie.sin, lie.cos))
            return contours_of(engraved._replace(at=lie.back(engraved.at), angle=turned))
        return (lie.all_back(path.points()) for path in engraved.contours)

    def _own(self, path: Curve) -> Curve:
        """The same path as it is when its part lies straight."""
        if not self.turned:
            return path
        steps = tuple(Step(_turned(end), through and _turned(through)) for end, through in path.steps)
        return path._replace(start=_turned(path.start), steps=steps)


def _turned(point: Point) -> Point:
    """A quarter turn clockwise."""
    return Point(point.y, -point.x)


def xs(path: Curve) -> list[float]:
    """The x of every point of a path."""
    return [point.x for point in path.points()]


def ys(path: Curve) -> list[float]:
    """The y of every point of a path."""
    return [point.y for point in path.points()]


class UprightSide(NamedTuple):
    """A straight side that stands upright: its x, and from where to where it reaches up."""

    x: float
    low: float
    high: float


def upright_sides(paths: Sequence[Curve]) -> list[UprightSide]:
    """Every straight side that stands upright, from left to right."""
    return sorted(
        UprightSide(one.x, min(one.y, other.y), max(one.y, other.y))
        for one, other in straight_sides(paths)
        if abs(one.x - other.x) < _UPRIGHT
    )


def straight_sides(paths: Sequence[Curve]) -> list[tuple[Point, Point]]:
    """Where every straight side begins and ends, that which closes a path too."""
    return [pair for path in paths for pair in _straight(path)]


def every_point(path: Curve) -> list[Point]:
    """The points of a path, and those that its arcs pass through."""
    return [*path.points(), *(through for _, through in path.steps if through)]


def uprights(paths: Sequence[Curve]) -> list[float]:
    """The x of every such side."""
    return [side.x for side in upright_sides(paths)]


class Round(NamedTuple):
    """A closed curve: its middle, and what it measures across and up."""

    x: float
    y: float
    across: float
    up: float


def rounds(paths: Sequence[Curve]) -> list[Round]:
    """Every closed path of nothing but arcs, from left to right."""
    found = []
    for path in paths:
        if path.closed and all(through for _, through in path.steps):
            (left, *_, right), (low, *_, high) = sorted(xs(path)), sorted(ys(path))
            found.append(Round((left + right) / 2, (low + high) / 2, right - left, high - low))
    return sorted(found)


def _straight(path: Curve) -> Iterator[tuple[Point, Point]]:
    start = path.start
    for end, through in path.steps:
        if through is None:
            yield start, end
        start = end
    if path.closed and abs(start.x - path.start.x) + abs(start.y - path.start.y) > LIMIT:
        yield start, path.start


def matched(what: CutMark, wanted: Sequence[float], found: Sequence[float]) -> Findings:
    """Whether as many were found as wanted, and none further off than the limit."""
    if len(wanted) != len(found):
        return Findings(0.0, (finding(Cut.COUNT, found=len(found), what=what, wanted=len(wanted)),))
    off = max((abs(one - other) for one, other in zip(sorted(wanted), sorted(found), strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (finding(Cut.OFF, what=what, micrometres=off * 1000),))
