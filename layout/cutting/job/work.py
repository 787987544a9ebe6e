"""How much a cutter has to do: the length of every line, arcs included, and the areas it engraves."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from layout.drawing.arcs import arc_length, turn
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step

SCAN = 0.1
"""The distance in mm of the lines by which an area is engraved: about 254 to the inch. Assumed; machines differ."""


@dataclass(frozen=True, slots=True)
class Work:
    """Lengths in mm of cuts and scores, and the area in mm2 that is engraved."""

    cut: float = 0.0
    score: float = 0.0
    engrave: float = 0.0

    def __add__(self, other: Work) -> Work:
        return Work(self.cut + other.cut, self.score + other.score, self.engrave + other.engrave)

    def times(self, number: int) -> Work:
        """So often."""
        return Work(self.cut * number, self.score * number, self.engrave * number)

    @property
    def travels(self) -> Mapping[str, float]:
        """How far in mm the head moves for each operation that there is; over an area in lines `SCAN` apart."""
        each = {"engrave": self.engrave / SCAN, "score": self.score, "cut": self.cut}
        return {operation: travel for operation, travel in each.items() if travel}


def work_of(shapes: Iterable[Shape]) -> Work:
    """What the shapes of cut parts ask of a cutter; nothing runs what is there for reference."""
    cut, score, engraved = [], [], []
    for shape in shapes:
        if isinstance(shape, Curve) and shape.pen is Pen.THROUGH:
            cut.append(length(shape))
        elif isinstance(shape, Curve) and shape.pen is Pen.SCORE:
            score.append(length(shape))
        elif isinstance(shape, Region):
            engraved.append(area(shape))
    return Work(math.fsum(cut), math.fsum(score), math.fsum(engraved))


def seconds(work: Work, speeds: Mapping[str, float]) -> float | None:
    """The time at `speeds` (mm/s by operation), moves between lines left out; None where a speed is not known.

    An estimate, and at its low end: a head slows down at corners, and travels between the lines.
    """
    if any(operation not in speeds for operation in work.travels):
        return None
    return math.fsum(travel / speeds[operation] for operation, travel in work.travels.items())


def length(path: Curve) -> float:
    """The length of a line in mm, with the side that closes it."""
    return math.fsum(
        math.dist(start, end) if through is None else arc_length(start, through, end)
        for start, (end, through) in _sides(path)
    )


def area(region: Region) -> float:
    """The area of a region in mm2; contours that turn back, such as the holes of letters, are taken off."""
    return abs(math.fsum(map(_turning_area, region.contours)))


def _turning_area(path: Curve) -> float:
    """The area inside a closed line, counter-clockwise positive: its polygon and a segment of circle on each arc."""
    return math.fsum(
        (start.x * end.y - end.x * start.y) / 2 + (0.0 if through is None else _segment(start, through, end))
        for start, (end, through) in _sides(path)
    )


def _segment(start: Point, through: Point, end: Point) -> float:
    """What lies between an arc and its chord: r^2 (turn - sin turn) / 2, r being chord / (2 sin(turn / 2))."""
    angle = turn(start, through, end)
    if abs(angle) < 1e-7:
        return 0.0
    return (math.dist(start, end) / (2 * math.sin(angle / 2))) ** 2 * (angle - math.sin(angle)) / 2


def _sides(path: Curve) -> Iterable[tuple[Point, Step]]:
    steps = [*path.steps, Step(path.start)] if path.closed else list(path.steps)
    starts = [path.start, *(step.end for step in steps)]
    return zip(starts, steps, strict=False)
