"""Few straight lines in place of a letter's curves, none of them further off than allowed.

Corners on a curve are put a little outside of its bend, so that a line lies partly outside and partly inside. That
takes fewer lines than chords, and keeps the areas of letters.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import NamedTuple

Units = tuple[float, float]
Piece = tuple[Units | None, Units]
"""A step of a contour: where its quadratic curve bends, if it is one, and where it ends."""

_SAMPLED, _OUTSIDE = 0.03, 0.95  # of what is allowed: what lies between samples; how far outside corners are put

_SMOOTH = math.cos(math.radians(15))


class _Sample(NamedTuple):
    """A point of the contour, and where a corner for it would be put."""

    on: Units
    corner: Units


def chords(contour: Sequence[Piece], furthest: float) -> list[Units]:
    """The corners of a closed line that lies nowhere more than `furthest` off the contour, nor the contour off it.

    The first piece says where the contour begins. Each corner is as far from the last one as it can be.
    """
    samples = _samples(contour, furthest)
    kept, at, last = [samples[0].corner], 0, len(samples) - 1
    limit = (furthest * (1 - _SAMPLED)) ** 2
    while at < last:
        reach = at + 1
        while reach < last and _near(samples, at, reach + 1, limit):
            reach += 1
        at = reach
        kept.append(samples[at].corner)
    return kept if len(set(kept)) > 2 else [sample.on for sample in samples]


def _near(samples: Sequence[_Sample], first: int, last: int, limit: float) -> bool:
    """Whether all samples between two lie near the line from corner to corner; `limit` is a square."""
    (x, y), (end_x, end_y) = samples[first].corner, samples[last].corner
    dx, dy = end_x - x, end_y - y
    long = dx * dx + dy * dy
    for (on_x, on_y), _ in samples[first + 1 : last]:
        px, py = on_x - x, on_y - y
        along = px * dx + py * dy
        if not 0 <= along <= long or (px * dy - py * dx) ** 2 > limit * long:
            return False
    return True


def _samples(contour: Sequence[Piece], furthest: float) -> list[_Sample]:
    """Points on the contour, so close that lines between them hardly leave it.

    A quadratic with corners A, B, C lies at most |A - 2B + C| / (4 n^2) off n chords of equal parameter steps.
    """
    (_, (x, y)), *pieces = contour
    samples = [_Sample((x, y), (x, y))]
    before, way = 0.0, (0.0, 0.0)  # to which side the piece before bent, if it did, and which way it ended
    for bend, (end_x, end_y) in pieces:
        if bend is None:
            samples.append(_Sample((end_x, end_y), (end_x, end_y)))
            before, way = 0.0, (0.0, 0.0)
        else:
            ux, uy, vx, vy = bend[0] - x, bend[1] - y, end_x - bend[0], end_y - bend[1]
            side = math.copysign(_OUTSIDE * furthest, ux * vy - uy * vx)
            if side == before and _smooth(way, (ux, uy)):
                samples[-1] = _outside(samples[-1].on, (ux, uy), side)
            count = math.ceil(math.sqrt(math.hypot(vx - ux, vy - uy) / (4 * _SAMPLED * furthest))) or 1
            for k in range(1, count):
                t = k / count
                on = (x + t * (2 * ux + t * (vx - ux)), y + t * (2 * uy + t * (vy - uy)))
                samples.append(_outside(on, (ux + t * (vx - ux), uy + t * (vy - uy)), side))
            samples.append(_Sample((end_x, end_y), (end_x, end_y)))
            before, way = side, (vx, vy)
        x, y = end_x, end_y
    return samples


def _smooth(way: Units, other: Units) -> bool:
    """Whether two directions differ by less than 15 degrees."""
    return way[0] * other[0] + way[1] * other[1] > _SMOOTH * math.hypot(*way) * math.hypot(*other)


def _outside(on: Units, way: Units, side: float) -> _Sample:
    """A sample of a curve that runs the given way, and its corner to the right of that by `side`."""
    long = math.hypot(*way)
    return _Sample(on, (on[0] + side * way[1] / long, on[1] - side * way[0] / long) if long else on)
