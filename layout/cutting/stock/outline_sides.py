"""The sides of a closed outline, each with the directions that point away from what is kept."""

from __future__ import annotations

import math
from dataclasses import dataclass

from layout.drawing.arcs import halved, turn
from layout.drawing.shapes import Curve, Point, Step

_SAME = 1e-9  # mm


@dataclass(frozen=True, slots=True)
class Side:
    """One step of an outline with the directions that point away from what is kept, at both its ends."""

    start: Point
    through: Point | None
    end: Point
    first: Point
    last: Point
    middle: Point


def sides_of(path: Curve, *, halves: bool) -> list[Side]:
    """Every side of a closed path, the one that its closing draws too; each arc in two where `halves` are wanted."""
    steps = _halved(path) if halves else list(path.steps)
    if math.dist(path.start, steps[-1].end) > _SAME:
        steps.append(Step(path.start))
    sides, start = list[Side](), path.start
    for end, through in steps:
        sides.append(_straight(start, end) if through is None else _bent(start, through, end))
        start = end
    return sides


def _halved(path: Curve) -> list[Step]:
    steps: list[Step] = []
    for start, step in zip(path.points(), path.steps, strict=False):
        steps += [step] if step.through is None else halved(start, step.through, step.end)
    return steps


def _straight(start: Point, end: Point) -> Side:
    length = math.dist(start, end)
    away = Point((end.y - start.y) / length, (start.x - end.x) / length)
    return Side(start, None, end, away, away, away)


def _bent(start: Point, through: Point, end: Point) -> Side:
    """An arc: its directions at start and end lie half its angle before and behind that of its chord."""
    half = turn(start, through, end) / 2
    chord = _straight(start, end).first
    return Side(start, through, end, _rotated(chord, -half), _rotated(chord, half), chord)


def _rotated(direction: Point, angle: float) -> Point:
    cos, sin = math.cos(angle), math.sin(angle)
    return Point(cos * direction.x - sin * direction.y, sin * direction.x + cos * direction.y)
