"""Lines that run over each other: straight pieces on one line, arcs on one circle, that share more than an end.

Pieces are sorted into boxes by the line or circle that they lie on, each into every box where a near neighbour may be.
Within a box, two pieces overlap if one begins before another has ended.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable, Iterator
from itertools import product
from typing import NamedTuple

from layout.drawing.shapes import Curve, Point, Step

_SHARED = 0.004  # mm that two pieces may share: seen from middles nearly _APART both ways, a common end is two
_APART = 0.002  # mm by which two lines or circles must differ to count as two
_TURN = 1e-5  # radians, likewise for the directions of lines
_FLAT = 1e5  # mm; an arc of a larger radius counts as straight, since its centre cannot be computed well


class _Piece(NamedTuple):
    """`where` are the measures of the line or circle in steps of their tolerances; `first` to `last` lie along it.

    These are in units of `size` mm: in mm on a line, in radians on a circle, whose radius may be a little another's.
    """

    where: tuple[float, ...]
    first: float
    last: float
    size: float
    at: Point


def overlap(paths: Iterable[Curve]) -> Point | None:
    """Where one piece of these paths runs over another; None if none does."""
    boxes: dict[tuple[int, ...], list[_Piece]] = defaultdict(list)
    for path in paths:
        for piece in _pieces(path):
            for box in product(*({math.floor(value), math.floor(value + 0.5)} for value in piece.where)):
                boxes[(len(piece.where), *box)].append(piece)
    shared = (_shared(pieces) for pieces in boxes.values() if len(pieces) > 1)
    return next(filter(None, shared), None)


def _shared(pieces: list[_Piece]) -> Point | None:
    reached = -math.inf
    for piece in sorted(pieces, key=lambda each: each.first):
        if (reached - piece.first) * piece.size > _SHARED:
            return piece.at
        reached = max(reached, piece.last)
    return None


def _pieces(path: Curve) -> Iterator[_Piece]:
    steps = [*path.steps, Step(path.start)] if path.closed else path.steps
    start = path.start
    for end, through in steps:
        if math.dist(start, end) > _SHARED:
            yield from _straight(start, end) if through is None else _round(start, through, end)
        start = end


def _straight(start: Point, end: Point) -> Iterator[_Piece]:
    """A piece of a line, found by its direction (from 0 to half a turn) and its distance from the origin."""
    turn = math.atan2(end.y - start.y, end.x - start.x) % math.pi
    if turn > math.pi - _TURN:
        turn -= math.pi
    ux, uy = math.cos(turn), math.sin(turn)
    first, last = sorted((ux * start.x + uy * start.y, ux * end.x + uy * end.y))
    yield _Piece((turn / _TURN, (ux * start.y - uy * start.x) / _APART), first, last, 1.0, start)


def _round(start: Point, through: Point, end: Point) -> Iterator[_Piece]:
    """A piece of a circle, found by centre and radius; and again one full turn on, where it may meet another."""
    ax, ay, bx, by = through.x - start.x, through.y - start.y, end.x - start.x, end.y - start.y
    cross = 2 * (ax * by - ay * bx)
    a, b = ax * ax + ay * ay, bx * bx + by * by
    if abs(cross) * _FLAT < a * math.sqrt(b):
        yield from _straight(start, end)
        return
    centre = Point(start.x + (by * a - ay * b) / cross, start.y + (ax * b - bx * a) / cross)
    radius = math.dist(centre, start)
    one, other = start if cross > 0 else end, end if cross > 0 else start  # counter-clockwise
    begin = math.atan2(one.y - centre.y, one.x - centre.x) % math.tau
    sweep = (math.atan2(other.y - centre.y, other.x - centre.x) - begin) % math.tau
    where = (centre.x / _APART, centre.y / _APART, radius / _APART)
    for turn in (begin, begin + math.tau):
        yield _Piece(where, turn, turn + sweep, radius, start)
