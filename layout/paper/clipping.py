"""What is left of a path between two uprights; arcs stay arcs."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import pairwise

from layout.drawing.shapes import Curve, Point, Step

_NOTHING = 1e-9  # mm: no step is so short
_FLAT = 2e-4  # radians: an arc that turns by less is as good as straight, and no file holds it


def clipped(path: Curve, begin: float, stop: float) -> list[Curve]:
    """The path itself where it lies wholly from x = `begin` to `stop`, else the open runs of it that do."""
    points = path.points()
    first, last = points[0].x, points[-1].x
    if len(points) == 2 and (max(first, last) < begin or min(first, last) > stop):
        return []  # most of a long strip, for most of its pieces
    if all(begin <= x <= stop for x, _ in points) and all(step.through is None for step in path.steps):
        return [path]
    runs: list[tuple[Point, list[Step]]] = []
    whole = True
    for start, step in _pieces(path, begin, stop):
        if not begin <= _middle(start, step).x <= stop:
            whole = False
        elif runs and _end(runs[-1]) == start:
            runs[-1][1].append(step)
        else:
            runs.append((start, [step]))
    return [path] if whole else [Curve(start, tuple(steps), path.pen) for start, steps in runs]


def _end(run: tuple[Point, list[Step]]) -> Point:
    return run[1][-1].end


def _middle(start: Point, step: Step) -> Point:
    return step.through or Point((start.x + step.end.x) / 2, (start.y + step.end.y) / 2)


def _pieces(path: Curve, begin: float, stop: float) -> Iterator[tuple[Point, Step]]:
    """Every step, the closing one too, broken where it crosses the uprights, with where it starts."""
    at = path.start
    closing = [Step(path.start)] if path.closed and math.dist(path.points()[-1], path.start) > _NOTHING else []
    for end, through in (*path.steps, *closing):
        yield from _line(at, end, (begin, stop)) if through is None else _arc(at, through, end, (begin, stop))
        at = end


def _line(start: Point, end: Point, edges: tuple[float, float]) -> Iterator[tuple[Point, Step]]:
    run, rise = end.x - start.x, end.y - start.y
    shares = sorted((edge - start.x) / run for edge in edges) if run else []
    least = _NOTHING / (abs(run) or 1.0)
    places = [Point(start.x + run * share, start.y + rise * share) for share in shares if least < share < 1 - least]
    for one, other in pairwise([start, *places, end]):
        yield one, Step(other)


def _arc(start: Point, through: Point, end: Point, edges: tuple[float, float]) -> Iterator[tuple[Point, Step]]:
    """The arc in pieces; the circle crosses an upright at the angles whose cosine is its distance over the radius."""
    centre = _centre(start, through, end)
    radius = math.dist(centre, start)
    first = math.atan2(start.y - centre.y, start.x - centre.x)
    sweep = _wrapped(math.atan2(end.y - centre.y, end.x - centre.x) - first)
    shares: list[float] = []
    for across in (edge - centre.x for edge in edges):
        if abs(across) < radius:
            angle = math.acos(across / radius)
            shares += [_wrapped(each - first) / sweep for each in (angle, -angle)]
    least = _FLAT / abs(sweep)
    shares = sorted(share for share in shares if least < share < 1 - least)
    if not shares:
        yield start, Step(end, through)
        return

    def at(share: float) -> Point:
        angle = first + sweep * share
        return Point(centre.x + radius * math.cos(angle), centre.y + radius * math.sin(angle))

    ends = [start, *map(at, shares), end]
    for (one, other), (low, high) in zip(pairwise(ends), pairwise([0.0, *shares, 1.0]), strict=True):
        yield one, Step(other, at((low + high) / 2))


def _wrapped(angle: float) -> float:
    """From half a turn below nothing to half a turn above: no step turns further."""
    return (angle + math.pi) % math.tau - math.pi


def _centre(start: Point, through: Point, end: Point) -> Point:
    """Of the circle through three points: where the perpendicular bisectors of two chords meet."""
    ax, ay, bx, by = through.x - start.x, through.y - start.y, end.x - start.x, end.y - start.y
    cross = 2 * (ax * by - ay * bx)
    a, b = ax * ax + ay * ay, bx * bx + by * by
    return Point(start.x + (by * a - ay * b) / cross, start.y + (ax * b - bx * a) / cross)
