"""Where the spans, the rules and the ladders of a printer check stand on a paper. mm, y up, from its lower left."""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.shapes import Point
from layout.drawing.spans import Spans, spans_of
from layout.kit.kit import Paper

FROM, UNTIL, FLOOR = 22.0, 40.0, 42.0
"""The field of words begins so far from the left edge, and ends so far from the right one and from the lower one."""

NO_CROSS = 300.0
"""A diagonal up to this long is measured with one steel rule; a longer one has a cross at its middle, in mm."""

_ACROSS_UP, _UP_ASIDE = 36.0, 27.0
_RULE_UP, _RULE_RIGHT, _RULE_STEP = 24.8, 37.0, 10.0
_NARROW, _SHARE, _USUAL = 160.0, 0.36, 75.0  # as the target at the bottom stands
_BESIDE_TARGET, _TOP_FROM, _TOP_LEFT = 5.0, 46.0, 54.0
_LOW, _SIDE_DOWN, _LOW_DOWN = 180.0, 52.0, 34.0  # on a sheet that is low, the flights at the sides begin higher


class Places(NamedTuple):
    """The ends of the four spans, A to H in order; the rule across; where the ladders at the four edges begin."""

    spans: Spans
    ends: tuple[tuple[Point, Point], ...]
    rule: tuple[Point, float]
    below: float
    above: float
    aside: float

    @property
    def middle(self) -> Point:
        """Where the diagonals cross."""
        (one, other) = self.ends[2]
        return Point((one.x + other.x) / 2, (one.y + other.y) / 2)


def places_on(paper: Paper) -> Places:
    """The places on a paper: spans as long as it allows, each about its middle."""
    width, height = paper.width, paper.height
    spans = spans_of(width, height)
    half, rise = spans.across / 2, spans.up / 2
    left, right = (width - spans.wide) / 2, (width + spans.wide) / 2
    low, high = (height - spans.high) / 2, (height + spans.high) / 2
    upright = width - _UP_ASIDE
    ends = (
        (Point(width / 2 - half, _ACROSS_UP), Point(width / 2 + half, _ACROSS_UP)),
        (Point(upright, height / 2 - rise), Point(upright, height / 2 + rise)),
        (Point(left, low), Point(right, high)),
        (Point(left, high), Point(right, low)),
    )
    long = _RULE_STEP * ((width - _RULE_RIGHT - FROM) // _RULE_STEP)
    target = _USUAL if width >= _NARROW else _SHARE * width
    below, above = target + _BESIDE_TARGET, max(_TOP_FROM, width / 2 - _TOP_LEFT)
    aside = height - (_SIDE_DOWN if height >= _LOW else _LOW_DOWN)
    return Places(spans, ends, (Point(FROM, _RULE_UP), long), below, above, aside)
