"""What a winding picture shows, read from its lines, arrows, knots, rings and words; it knows nothing of any kit.

The first two crosses mark the near end, left and right, the third the far end; what lies beyond the second is the view
from the right.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import product
from math import dist
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape
from templates_gen.messages.roles.proof_printed import Sample
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.boxes import middle_of
from templates_gen.verify.found_parts import FoundPart

_WHOLE, _HALF = 0.6, 0.3  # of the frame's height: what is longer is a pass; shorter, half of one
_STRAIGHT = 1e-3  # by how much the slopes of both halves may differ
_ON = 0.01  # an arrow belongs to a pass when its middle lies so near to it, in mm


class DrawnPass(NamedTuple):
    """One pass: its x at both ends, the way the winding goes, whether it is on the face at the near end and at the far
    end, and of each arrow whether it leads up. Its `foot`, as drawn, and its `slope` tell where it is at any height.
    """

    near: float
    far: float
    face: bool
    arrows: list[bool]
    far_face: bool
    foot: Point
    slope: float

    def at(self, y: float) -> float:
        """Its x, as drawn, at a height."""
        return self.foot.x + self.slope * (y - self.foot.y)

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


class Ring(NamedTuple):
    """A ring with what stands in it."""

    at: Point
    radius: float
    words: str


@dataclass(frozen=True, slots=True)
class Picture:
    """`passes` in the order of winding; their x is turned so that the winding goes on to +x, all other x is as drawn.

    `level` are the threads that lie level. `side_knots` are seen from the right of the frame, whose right side is at
    `right`, `other_knots` belong to no view. `words` stand in no ring and on no tile.
    """

    toward: int
    near: float
    far: float
    right: float
    passes: list[DrawnPass]
    knots: list[Point]
    side_arrows: list[SideArrow]
    pointers: list[Point]
    words: list[tuple[Point, str]]
    rings: list[Ring]
    level: list[Curve]
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

    def numbers(self, *, far: bool) -> list[tuple[float, str]]:
        """The figures outside a frame end, in the order of winding, and where each begins."""
        edge, out = (self.far, 1) if far else (self.near, -1)
        out = out if self.near_below else -out
        found = [(at.x, said) for at, said in self.words if said.isdigit() and 0 < out * (at.y - edge) + _LOW < _OUT]
        return sorted(found, key=lambda each: self.toward * each[0])

    def sample(self, at: Point) -> Sample:
        """What stands before words that begin at `at`, as a legend shows it."""
        foot, head = at.y - _ROUND, at.y + _ROUND + _ROUND

        def before(x: float, y: float) -> bool:
            return at.x - _SAMPLE < x < at.x and foot < y < head

        pens = [line.pen for line in self.level if before(line.steps[0].end.x, line.start.y)]
        knots = sum(1 for knot in self.other_knots if before(knot.x, knot.y))
        found = (pens.count(Pen.THREAD), pens.count(Pen.THREAD_BACK), knots)
        return _SHOWN.get(found, Sample.OTHER)


_ROUND, _SAMPLE = 1.2, 3.6
_OUT, _LOW = 7.0, 2.5  # numbers begin so far outside an end at most; they may begin below the lower line
_SHOWN = {(1, 0, 0): Sample.FULL, (0, 1, 0): Sample.BROKEN, (0, 0, 1): Sample.KNOT}
_KNOTS, _RINGS = (1.0, 1.6), (2.3, 3.3)  # between what lie the radii of knots, and of rings, in mm
_ROUND_STEPS = 8


def picture_of(seen: FoundPart, toward: int) -> Picture:
    """What one picture shows."""
    left, right, other = seen.part.datum
    shapes = list(seen.shapes())
    arrows = list(arrows_in(shapes))
    knots = list(_discs(shapes))
    lines = [shape for shape in shapes if isinstance(shape, Curve) and len(shape.steps) == 1]
    faces = [line for line in lines if line.pen in (Pen.THREAD, Pen.THREAD_BACK)]
    inside = [arrow for arrow in arrows if left.x < arrow[0].x < right.x]
    low, high = sorted((left.y, other.y))
    passes = sorted(
        passes_between((line for line in faces if line.start.x < right.x), left.y, other.y, inside, toward),
        key=lambda one: one.middle,
    )
    rings, words = split_words(shapes, list(seen.words()))
    return Picture(
        toward,
        left.y,
        other.y,
        right.x,
        passes,
        [at for at in knots if left.x < at.x < right.x and low < at.y < high],
        [_side_arrow(arrow, left.y, other.y) for arrow in arrows if arrow.at.x > right.x and low <= arrow.at.y <= high],
        [arrow.at for arrow in inside if abs(arrow.ahead.x) > abs(arrow.ahead.y)],
        words,
        rings,
        [line for line in faces if abs(line.start.y - line.steps[0].end.y) <= LIMIT],
        [at for at in knots if at.x > right.x and low <= at.y <= high],
        [at for at in knots if not low <= at.y <= high],
    )


def _discs(shapes: list[Shape]) -> Iterator[Point]:
    """Filled discs of the size of knots."""
    for shape in shapes:
        if isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == _ROUND_STEPS:
            xs = [point.x for point in shape.contours[0].points()]
            if _KNOTS[0] < (max(xs) - min(xs)) / 2 < _KNOTS[1]:
                yield middle_of(shape.contours[0])


def split_words(
    shapes: Iterable[Shape], words: Sequence[tuple[Point, str]]
) -> tuple[list[Ring], list[tuple[Point, str]]]:
    """Every ring with what stands in it, and all words that stand in none and on no tile."""
    rings, tiles = list[Ring](), list[Box]()
    for shape in shapes:
        if isinstance(shape, Curve) and shape.pen in (Pen.RING, Pen.OUTLINE) and len(shape.steps) == _ROUND_STEPS:
            xs = [point.x for point in shape.points()]
            radius, at = (max(xs) - min(xs)) / 2, middle_of(shape)
            inside = [said for place, said in words if dist(place, at) < radius]
            if _RINGS[0] < radius < _RINGS[1] and inside:
                rings.append(Ring(at, radius, inside[0]))
        elif isinstance(shape, Region) and shape.pen is Pen.SOLID and len(shape.contours[0].steps) == _TILE_STEPS:
            corners = shape.contours[0].points()
            across, up = [at.x for at in corners], [at.y for at in corners]
            tiles.append((min(across), min(up), max(across), max(up)))

    def free(place: Point) -> bool:
        in_ring = any(dist(place, ring.at) < ring.radius for ring in rings)
        return not in_ring and not any(_inside(place, tile) for tile in tiles)

    return rings, [(place, said) for place, said in words if free(place)]


_TILE_STEPS = 3


def _inside(place: Point, box: Box) -> bool:
    left, low, right, high = box
    return left < place.x < right and low < place.y < high


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


def _whole(lines: Iterable[Curve], near: float, far: float) -> Iterator[tuple[_Line, _Line]]:
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


def passes_between(
    lines: Iterable[Curve], near: float, far: float, arrows: list[Arrow], toward: int
) -> Iterator[DrawnPass]:
    """Lines that lead from one end to the other; what a frame end hides of one is gone on with."""
    for low, top in _whole(lines, near, far):
        one, other, slope = low.one, top.other, (top.other.x - low.one.x) / (top.other.y - low.one.y)
        at_near = one.x if low.face else one.x + slope * (near - one.y)
        at_far = other.x if top.face else one.x + slope * (far - one.y)
        own = [ahead for at, ahead in arrows if abs(one.x + slope * (at.y - one.y) - at.x) < _ON]
        ups = [(ahead.y > 0) == (far > near) for ahead in own if abs(ahead.x - slope * ahead.y) < _ON]
        yield DrawnPass(toward * at_near, toward * at_far, low.face, ups, top.face, one, slope)
