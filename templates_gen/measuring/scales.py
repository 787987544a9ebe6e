"""The scale of a sheet apart from that of its scanner, as far as it can be known.

A scanner is off by itself: across by its lens or row of sensors, along by its carriage. So a scan alone says what comes
out of one millimetre as this scanner sees it. Two things say more: the scanner's own scale, which the pictures are
corrected by before they are read; and distances that were measured on the paper with a steel rule. One of these makes
the scale in its own direction sure and says nothing of the other: both errors of a scanner are different ones. With a
distance in both directions, one along a diagonal makes the skew sure too.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from math import hypot, sqrt
from typing import NamedTuple

from layout.drawing.shapes import Point
from layout.messages.catalogue import Role
from templates_gen.messages.roles.measure import Pair
from templates_gen.scan.seen import Seen

RULE = 0.2
"""A steel rule is read to so many mm by eye: two ends, each to about half of a line. Common practice, no source."""

PAIRS: Mapping[str, tuple[tuple[int, int], tuple[int, int]]] = {
    "top": ((0, 1), (1, 1)),
    "bottom": ((0, 0), (1, 0)),
    "left": ((0, 0), (0, 1)),
    "right": ((1, 0), (1, 1)),
    "rising": ((0, 0), (1, 1)),
    "falling": ((0, 1), (1, 0)),
}
"""Which two of the targets in the corners are meant: how far across and up the sheet each of them stands."""

PAIR_NAMES: Mapping[str, Role] = {
    "top": Pair.TOP,
    "bottom": Pair.BOTTOM,
    "left": Pair.LEFT,
    "right": Pair.RIGHT,
    "rising": Pair.RISING,
    "falling": Pair.FALLING,
}
ACROSS, UP, DIAGONALS = ("top", "bottom"), ("left", "right"), ("rising", "falling")


class Distance(NamedTuple):
    """A distance between the middles of two targets as a rule shows it, in mm; `pair` is a name in `PAIRS`."""

    pair: str
    mm: float


@dataclass(frozen=True)
class Reference:
    """What is known beside the scan: distances on the paper, each to `rule_within` mm at 95 %.

    `scanner` is the scanner's own scale across and along its bed, known to `scanner_within` as a share; the pictures
    were read with it.
    """

    distances: tuple[Distance, ...] = ()
    rule_within: float = RULE
    scanner: tuple[float, float] | None = None
    scanner_within: float = 0.0


class Factor(NamedTuple):
    """A share, and how far off it may be at 95 %; it is `sure` where the scanner's own error is no part of it."""

    value: float
    within: float
    sure: bool = False


class Scales(NamedTuple):
    """What comes out of one millimetre across the sheet (`x`) and up it (`y`), None where the resolution is not known;
    how far one millimetre up leans to the right, and x over y."""

    x: Factor | None
    y: Factor | None
    skew: Factor
    ratio: Factor

    def along(self, way: Point) -> Factor | None:
        """The scale in a direction on the sheet of length 1."""
        wanted = [factor for factor, share in ((self.x, way.x), (self.y, way.y)) if abs(share) > _SLIGHT]
        if None in wanted or self.x is None or self.y is None:
            return None
        x, y, skew = self.x, self.y, self.skew
        value = hypot(x.value * way.x + skew.value * way.y, y.value * way.y)
        within = sqrt((way.x**2 * x.within) ** 2 + (way.y**2 * y.within) ** 2 + (way.x * way.y * skew.within) ** 2)
        slanted = abs(way.x * way.y) > _SLIGHT
        sure = all(each.sure for each in wanted if each) and (skew.sure or not slanted)
        return Factor(value, within, sure)


_SLIGHT = 1e-3  # of a direction: what lies along the sheet or up it


def scales_of(seen: Seen, reference: Reference) -> Scales:
    """The scale of a sheet, with what is known beside the scan."""
    seen_x, seen_y, skew = seen.scale
    known = reference.scanner is not None
    more = reference.scanner_within if known else 0.0
    there = seen.dpi is not None
    x = Factor(seen_x, hypot(seen.within.x, more), known) if there else None
    y = Factor(seen_y, hypot(seen.within.y, more), known) if there else None
    x = _by_rule(seen, reference, ACROSS, Factor(seen_x, seen.within.x)) or x
    y = _by_rule(seen, reference, UP, Factor(seen_y, seen.within.y)) or y
    leans = Factor(skew, seen.within.skew)
    ratio = Factor(seen_x / seen_y, seen.ratio_within)
    if x and y and x.sure and y.sure:
        leans = _lean(seen, reference, x, y) or leans
        ratio = Factor(x.value / y.value, hypot(x.within, y.within), sure=True)
    return Scales(x, y, leans, ratio)


def _by_rule(seen: Seen, reference: Reference, pairs: Sequence[str], share: Factor) -> Factor | None:
    """The scale in one direction from the distances in it, their mean; None without one.

    The scan says how far the two targets are from where the sheet's own scale puts them, which a rule sees too.
    """
    found = [
        (share.value * each.mm / seen_distance(seen, each.pair), reference.rule_within / each.mm)
        for each in _of(reference, pairs)
    ]
    if not found:
        return None
    count = len(found)
    read = sqrt(sum(within**2 for _, within in found)) / count
    return Factor(sum(value for value, _ in found) / count, hypot(read, share.within), sure=True)


def _lean(seen: Seen, reference: Reference, x: Factor, y: Factor) -> Factor | None:
    """The skew from diagonals: of a diagonal D over w across and h up, D^2 = (x w + skew h)^2 + (y h)^2."""
    found = []
    for each in _of(reference, DIAGONALS):
        (left, low), (right, high) = _nominal(seen, each.pair)
        wide, high = right - left, high - low
        across = sqrt(max(each.mm**2 - (y.value * high) ** 2, 0.0))
        lean = (across - x.value * wide) / high
        parts = each.mm * reference.rule_within / (wide * high), x.within * wide / high, y.within * high / wide
        found.append((lean, hypot(*parts)))
    if not found:
        return None
    within = max(each for _, each in found)
    return Factor(sum(lean for lean, _ in found) / len(found), within, sure=True)


def _of(reference: Reference, pairs: Sequence[str]) -> Iterator[Distance]:
    return (each for each in reference.distances if each.pair in pairs)


def seen_distance(seen: Seen, pair: str) -> float:
    """How far apart both targets of a pair are as the scanner sees it, in mm."""
    one, other = _ends(seen, pair)
    made = seen.scale.made(Point(other.x - one.x, other.y - one.y))
    return hypot(made.x, made.y)


def _nominal(seen: Seen, pair: str) -> tuple[Point, Point]:
    """Where both targets of a pair stand on the sheet, from the corner at the lower left."""
    wide, high = seen.label.rectangle
    one, other = (Point(across * wide, up * high) for across, up in PAIRS[pair])
    return one, other


def _ends(seen: Seen, pair: str) -> tuple[Point, Point]:
    """Where both targets of a pair were found, from any origin; where they should be if one of them was not."""
    ends = _nominal(seen, pair)
    left = min((target.place.x for target in seen.targets), default=0.0)
    low = min((target.place.y for target in seen.targets), default=0.0)
    found = [_found(seen, Point(left + end.x, low + end.y)) for end in ends]
    if found[0] is None or found[1] is None:
        return ends
    return found[0], found[1]


def _found(seen: Seen, place: Point) -> Point | None:
    near = (each.found for each in seen.targets if hypot(each.place.x - place.x, each.place.y - place.y) < _NEAR)
    return next(near, None)


_NEAR = 0.1  # mm


def nominal_distance(rectangle: tuple[float, float], pair: str) -> float:
    """How far apart both targets of a pair are on the drawing, in mm; `rectangle` is that of the targets."""
    (one, two), (three, four) = PAIRS[pair]
    return hypot((three - one) * rectangle[0], (four - two) * rectangle[1])
