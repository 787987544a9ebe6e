"""Which rings are the targets of a sheet: those that agree on one map, found by trying triples.

Walking from one target to the next would carry an error on; of all triples the one is taken that most rings agree with.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, product
from typing import NamedTuple

import numpy

from templates_gen.scan.frames import Map, scale_and_turn, similarity
from templates_gen.scan.nominal import Target
from templates_gen.scan.picture import Numbers
from templates_gen.scan.rings import Rings

NEAR, MORE = 1.5, 0.06
"""A ring is a candidate if it is so many mm off where the code says, and this share of its distance from the code."""

AGREES = 0.7
"""Mm that a ring may be off the map of three others."""

RATIO, SKEW = 0.08, 0.02
"""A scan of a print is stretched and slanted by less."""

STRAY = 4.0
"""Mm: a ring that is so near the place of a target, and does not agree, is that target where something has moved."""

_EACH = 4
_TRIANGLE, _SHARE = 5000.0, 0.25  # mm2, or of the rectangle of a small sheet: flatter triples say nothing of scale
_SLIDE = 15.0  # mm from both corners, for a target that has moved along its edge


class Agreement(NamedTuple):
    """For each target its ring (None where there is none), and the map from the sheet to the bed by these."""

    rings: tuple[Numbers | None, ...]
    map: Map

    @property
    def agreeing(self) -> int:
        """How many targets have a ring."""
        return sum(ring is not None for ring in self.rings)


def agreement(
    targets: Sequence[Target], rings: Rings, code: tuple[Numbers, Numbers], *, mirrored: bool = False
) -> Agreement | None:
    """The best of all triples; None where no three rings could be targets.

    `code` is where the corners of the code stand on the sheet and where they were found on the bed, in mm.
    """
    places, corners = code
    rough = similarity(places, corners, mirrored=mirrored)
    at = numpy.array([target.at for target in targets])
    nearest = [_candidates(rings, *each) for each in zip(rough.to(at), _reaches(at, places), strict=True)]
    best: tuple[int, float, Map] | None = None
    for three in combinations(range(len(targets)), 3):
        if not _spans(at[list(three)], at):
            continue
        for chosen in product(*(nearest[each] for each in three)):
            found = _by(at[list(three)], rings.places[list(chosen)], mirrored=mirrored)
            if found is None:
                continue
            score = _score(found, at, rings, nearest)
            if best is None or score > best[:2]:
                best = (*score, found)
    if best is None:
        return None
    return _refined(targets, at, rings, best[2])


def stray(targets: Sequence[Target], rings: Rings, agreed: Agreement) -> float | None:
    """How far a target's ring is off its place, in mm, that is seen near it and does not agree; None where none is."""
    missing = [target.at for target, ring in zip(targets, agreed.rings, strict=True) if ring is None]
    if not missing:
        return None
    taken = numpy.array([ring for ring in agreed.rings if ring is not None])
    free = [ring for ring in rings.places if numpy.hypot(*(taken - ring).T).min() > AGREES]
    if not free:
        return None
    back = agreed.map.back(numpy.array(free))
    off = min(float(numpy.hypot(*(back - numpy.array(at)).T).min()) for at in missing)
    return off if off <= STRAY else None


def _reaches(at: Numbers, places: Numbers) -> Numbers:
    away = numpy.hypot(*(at - places.mean(0)).T)
    reach: Numbers = NEAR + MORE * away
    return reach


def _candidates(rings: Rings, place: Numbers, reach: float) -> list[int]:
    away = numpy.hypot(*(rings.places - place).T)
    near = numpy.nonzero(away <= reach)[0]
    return [int(each) for each in near[numpy.argsort(away[near])][:_EACH]]


def _spans(three: Numbers, at: Numbers) -> bool:
    one, two = three[1] - three[0], three[2] - three[0]
    sides = at.max(0) - at.min(0)
    return bool(abs(one[0] * two[1] - one[1] * two[0]) / 2 >= min(_TRIANGLE, _SHARE * sides[0] * sides[1]))


def _by(three: Numbers, found: Numbers, *, mirrored: bool) -> Map | None:
    """The map of three points, if it is one that a print and a scan can have."""
    rows = numpy.column_stack([three, numpy.ones(3)])
    solved = numpy.linalg.solve(rows, found)
    matrix = solved[:2].T
    scale, _ = scale_and_turn(matrix @ numpy.diag([-1.0 if mirrored else 1.0, 1.0]))
    if scale.x <= 0 or scale.y <= 0 or abs(scale.x / scale.y - 1) > RATIO or abs(scale.skew / scale.y) > SKEW:
        return None
    return Map(matrix, solved[2])


def _score(found: Map, at: Numbers, rings: Rings, nearest: Sequence[Sequence[int]]) -> tuple[int, float]:
    count, total = 0, 0.0
    for place, near in zip(found.to(at), nearest, strict=True):
        if near:
            off = float(numpy.hypot(*(rings.places[list(near)] - place).T).min())
            if off <= AGREES:
                count, total = count + 1, total + off
    return count, -total


def _refined(targets: Sequence[Target], at: Numbers, rings: Rings, found: Map) -> Agreement:
    """The rings that agree; for a target that may have moved, the one on its edge."""
    low, high = at.min(0), at.max(0)
    back = found.back(rings.places)
    taken: list[Numbers | None] = []
    for target, place in zip(targets, at, strict=True):
        away = numpy.hypot(*(back - place).T)
        if not (away <= AGREES).any() and target.slides is not None:
            other = 1 - target.slides
            along = back[:, target.slides]
            off = numpy.abs(back[:, other] - place[other])
            free = (low[target.slides] + _SLIDE < along) & (along < high[target.slides] - _SLIDE) & (off <= AGREES)
            away = numpy.where(free, off, numpy.inf)
        nearest = int(away.argmin()) if len(away) else 0
        taken.append(rings.places[nearest] if len(away) and away[nearest] <= AGREES else None)
    return Agreement(tuple(taken), found)
