"""What a winding picture shows, read from its lines, arrows, knots and words; it knows nothing of any kit.

The first two crosses mark the near end, left and right, the third the far end; what lies beyond the second is the view
from the right.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product
from math import dist
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region
from templates_gen.messages.roles.proof_printed import Sample
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.found_parts import FoundPart

_WHOLE, _HALF = 0.6, 0.3  # of the frame's height: what is longer is a pass; shorter, half of one
_STRAIGHT = 1e-3  # by how much the slopes of both halves may differ
_ON = 0.01  # an arrow belongs to a pass when its middle lies so near to it, in mm


class DrawnPass(NamedTuple):
    """One pass: its x at both ends, the way the winding goes, whether it is on the face at the near end and at the far
    end, and of each arrow whether it leads up.
    """

    near: float
    far: float
    face: bool
    arrows: list[bool]
    far_face: bool

    @property
    def middle(self) -> float:
        """Its x at half height."""
        return (self.near + self.far) / 2

    @property
    def lean(self) -> float:
        """How much further on it is at the far end."""
        return self.far - self.near


class SideArrow(NamedTuple):
    """An arrow in the view from the right: its x, whether it leads up, how far from the near end it lies, and how much
    its way goes to the right with every mm toward the far end.
    """

    x: float
    up: bool
    away: float
    slope: float


@dataclass(frozen=True, slots=True)
class Picture:
    """`passes` in the order of winding; their x is turned so that the winding goes on to +x, all other x is as drawn.

    `level` are the threads that lie level, `rows` those across the passes (y, from x, to x). `side_knots` are seen from
    the right, `other_knots` belong to no view.
    """

    toward: int
    near: float
    far: float
    passes: list[DrawnPass]
    winds_on: list[int]
    knots: list[Point]
    side_arrows: list[SideArrow]
    words: list[tuple[Point, str]]
    level: list[Curve]
    rows: list[tuple[float, float, float]]
    side_knots: list[Point]
    other_knots: list[Point]

    @property
    def near_below(self) -> bool:
        """Whether the near end is the lower one."""
        return self.near < self.far

    @property
    def step(self) -> float:
        """From the first pass to the second."""
        return self.passes[1].middle - self.passes[0].middle if len(self.passes) > 1 else 0.0

    def is_far(self, at: Point) -> bool:
        """Whether a place is nearer to the far end."""
        return abs(at.y - self.far) < abs(at.y - self.near)

    @property
    def beyond(self) -> list[tuple[float, str]]:
        """The figures beyond the far end, in the order of winding, and where each begins."""
        out = 1 if self.near_below else -1
        beyond = [(at.x, words) for at, words in self.words if words.isdigit() and out * (at.y - self.far) > 0]
        return sorted(beyond, key=lambda each: self.toward * each[0])

    def sample(self, at: Point) -> Sample:
        """What stands before words that begin at `at`, as a legend shows it."""
        foot, head = at.y - _ROUND, at.y + _ROUND + _ROUND

        def before(x: float, y: float) -> bool:
            return at.x - _SAMPLE < x < at.x and foot < y < head

        pens = [line.pen for line in self.level if before(line.steps[0].end.x, line.start.y)]
        knots = sum(1 for knot in self.other_knots if before(knot.x, knot.y))
        found = (pens.count(Pen.THREAD), pens.count(Pen.THREAD_BACK), knots)
        return _SHOWN.get(found, Sample.OTHER)


_ROUND, _SAMPLE = 1.2, 7.0
_SHOWN = {(1, 0, 0): Sample.FULL, (0, 1, 0): Sample.BROKEN, (0, 0, 1): Sample.KNOT, (2, 0, 0): Sample.TWO}


def picture_of(seen: FoundPart, toward: int) -> Picture:
    """What one picture shows."""
    left, right, other = seen.part.datum
    shapes = list(seen.shapes())
    arrows = list(arrows_in(shapes))
    solid = [shape.contours[0] for shape in shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    knots = [_middle(contour) for contour in solid if len(contour.steps) != 2]
    lines = [shape for shape in shapes if isinstance(shape, Curve) and len(shape.steps) == 1]
    faces = [line for line in lines if line.pen in (Pen.THREAD, Pen.THREAD_BACK)]
    level = [line for line in faces if abs(line.start.y - line.steps[0].end.y) <= LIMIT]
    inside = [arrow for arrow in arrows if left.x < arrow[0].x < right.x]
    low, high = sorted((left.y, other.y))
    passes = sorted(
        _passes((line for line in faces if line.start.x < right.x), left.y, other.y, inside, toward),
        key=lambda one: one.middle,
    )
    return Picture(
        toward,
        left.y,
        other.y,
        passes,
        [1 if ahead.x > 0 else -1 for at, ahead in arrows if at.y > high],
        [at for at in knots if left.x < at.x < right.x and low < at.y < high],
        [_side_arrow(arrow, left.y, other.y) for arrow in arrows if arrow.at.x > right.x and arrow.at.y <= high],
        list(seen.words()),
        level,
        list(_rows(level, right.x, (low, high))),
        [at for at in knots if at.x > right.x and low <= at.y <= high],
        [at for at in knots if not low <= at.y <= high],
    )


def _rows(level: list[Curve], right: float, span: tuple[float, float]) -> Iterator[tuple[float, float, float]]:
    """Threads that are seen as they lie across the passes."""
    for (x, y), ((to, _),), pen, _ in level:
        if pen is Pen.THREAD and x < right and span[0] < y < span[1]:
            yield round(y, 3), min(x, to.x), max(x, to.x)


def _side_arrow(arrow: Arrow, near: float, far: float) -> SideArrow:
    up = 1 if far > near else -1
    slope = arrow.ahead.x / arrow.ahead.y * up if arrow.ahead.y else math.inf
    return SideArrow(arrow.at.x, (arrow.ahead.y > 0) == (up > 0), up * (arrow.at.y - near), slope)


class _Line(NamedTuple):
    """A line of thread from the place nearer to the near end to the other one, and whether it is on the face."""

    one: Point
    other: Point
    face: bool

    @property
    def slope(self) -> float:
        return (self.other.x - self.one.x) / (self.other.y - self.one.y)


def _whole(lines: Iterator[Curve], near: float, far: float) -> Iterator[tuple[_Line, _Line]]:
    """Lines that lead from one end to the other: each twice, or two that go on from each other at half height."""
    high, halves = abs(far - near), list[_Line]()
    for path in lines:
        one, other = sorted((path.start, path.steps[0].end), key=lambda at: abs(at.y - near))
        found = _Line(one, other, path.pen is Pen.THREAD)
        if abs(other.y - one.y) > _WHOLE * high:
            yield found, found
        elif abs(other.y - one.y) > _HALF * high:
            halves.append(found)
    for low, top in product(halves, halves):
        meet = dist(low.other, top.one) <= LIMIT and abs(low.slope - top.slope) <= _STRAIGHT
        if meet and abs(low.other.y - (near + far) / 2) <= LIMIT:
            yield low, top


def _passes(lines: Iterator[Curve], near: float, far: float, arrows: list[Arrow], toward: int) -> Iterator[DrawnPass]:
    """Lines that lead from one end to the other; what a frame end hides of one is gone on with."""
    for low, top in _whole(lines, near, far):
        one, other, slope = low.one, top.other, (top.other.x - low.one.x) / (top.other.y - low.one.y)
        at_near = one.x if low.face else one.x + slope * (near - one.y)
        at_far = other.x if top.face else one.x + slope * (far - one.y)
        own = [ahead for at, ahead in arrows if abs(one.x + slope * (at.y - one.y) - at.x) < _ON]
        ups = [(ahead.y > 0) == (far > near) for ahead in own if abs(ahead.x - slope * ahead.y) < _ON]
        yield DrawnPass(toward * at_near, toward * at_far, low.face, ups, top.face)


def _middle(contour: Curve) -> Point:
    xs, ys = zip(*contour.points(), strict=True)
    return Point((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2)
