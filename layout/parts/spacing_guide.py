"""The spacing guide of one heading: laid on the warp, its thick edge shows where every end should lie.

The part's x is the plan's x, 0 the centre of the weaving and left negative, as the frame stands before the weaver. The
edge to the weaving lies at y = 0; marks, numbers and words follow behind it, at depths that grow away from it, and the
scale of units stands at the edge behind.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, filled, line, rectangle
from layout.drawing.sheet import Part
from layout.drawing.signs import EYES, scissors
from layout.drawing.typeset import SMALL
from layout.messages.roles import Guide
from layout.parts.guide_sheet import guide_sheet
from layout.parts.guide_words import phrases_for
from layout.parts.lettering import lettered
from layout.parts.phrases import PlacedPhrase
from layout.parts.ruler import CORNER, Ruler
from layout.parts.strip_room import check_room, reach
from layout.plan import Plan
from layout.values.units import say_number
from layout.warps.warp import End, Layer

_NUMBER_APART = 1.5  # so much white at least between two numbers
_NUMBER_CLEAR = 0.5  # and from the edge of the paper
_STEPS = (10, 20, 50, 100, 200, 500, 1000)
_CLOSE = 1.5  # below this pitch a heavy mark would touch its neighbours, in mm
_LIMIT_DEEP = 2.4
_LOW_PAST, _LONG_ENOUGH = 1.1, 75.0  # mm past the limits, and at least from the centre
_SMALL_UNITS = {False: Fraction(10), True: Fraction(127, 10)}  # 1 cm; half an inch
_SCISSORS, _SCISSORS_ROOM = 2.0, 9.0
_EYE, _BLADES = 1.4, 5.4  # how far a pair of scissors reaches to both sides of its place, with air
_BAND = Pen.EDGE.ink.width


@dataclass(frozen=True, slots=True)
class _Depths:
    """How deep behind the edge marks reach, where the middles of numbers and of the first row of words lie, how far
    rows are apart and what lies behind the last of them; how long unit ticks are, and how far before the edge
    behind the middles of their numbers lie; where crosses stand beside the marks and before the edge behind; how wide a
    triangle at a limit is; where crosses of joints stand, between numbers and words and before the edge behind.
    """

    mark: float
    ten: float
    numbers: float
    words: float
    row: float
    behind: float
    least_rows: int
    ticks: tuple[float, float]
    unit_numbers: float | None
    cross: float
    corner: float
    limit: float
    joint: tuple[float, float]


_FULL = _Depths(7.5, 10.0, 12.0, 16.0, 4.0, 9.6, 2, (1.7, 3.4), 5.5, 5.0, CORNER, 1.3, (14.5, 7.8))
_LOW = _Depths(2.2, 2.8, 4.25, 7.3, 3.4, 2.85, 1, (0.4, 0.75), None, 6.1, 2.0, 0.9, (6.4, 2.2))  # crosses under numbers
_JOINED_ROWS = 2  # crosses of joints stand beside two rows of words at least
_MARKS = {"face": (Pen.END_MARK, Pen.TEN), "back": (Pen.END_MARK_BACK, Pen.TEN_BACK)}


def spacing_guide(
    plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()
) -> Part:
    """The guide of the heading at `end`; `low` gives a form with short marks and few words.

    Words keep clear of the `joints` (x in mm). Raises FieldError where words or totals find no room.
    """
    return _Draft(plan, end, metrics, low, joints, _LOW if low else _FULL).part()


@dataclass(slots=True)
class _Draft(Ruler):
    depths: _Depths

    def part(self) -> Part:
        """Everything drawn, in part coordinates."""
        left, right = self.paper()
        check_room(self.plan, right - left, self.metrics)
        words = self.packed(left, right)
        least = max(self.depths.least_rows, _JOINED_ROWS if self.joints else 0)
        rows = max(least, 1 + max(placed.row for placed in words))
        deep = self.depths.words + (rows - 1) * self.depths.row + self.depths.behind
        datum = self.corners(left + CORNER, right - CORNER, deep - self.depths.corner)
        low, high = sorted((0.0, self.y(deep)))
        limits = self.limits()
        shapes: list[Shape] = [rectangle(left, low, right, high, Pen.CUT), limits[0]]
        shapes += [line(Point(left, self.y(_BAND / 2)), Point(right, self.y(_BAND / 2)), Pen.EDGE), limits[1]]
        cut = self.scissors(deep, words)
        shapes += [*self.crosses(datum), *cut, *self.ends(), *self.centre(words)]
        shapes += [*self.scale(left, right, deep), *self.numbers(left, right)]
        shapes += [shape for placed in words for shape in self.worded(placed)]
        seams = self.y(self.depths.joint[0]), self.y(deep - self.depths.joint[1])
        over = EYES if cut and not self.low else 0.0  # a low guide takes all the room across a sheet
        box = (left, low - over, right, high) if self.up > 0 else (left, low, right, high + over)
        part = Part(
            f"spacing-{self.end}", "", tuple(shapes), datum, box, narrow=True, joint_rows=seams, scissors=tuple(cut)
        )
        said = guide_sheet(self.plan, self.metrics)
        return replace(
            part,
            title=said.title,
            purpose=said.purpose,
            steps=said.steps,
            notes=said.notes,
            blocks=said.blocks,
            cautions=said.cautions,
        )

    def paper(self) -> tuple[float, float]:
        """The short edges; a low guide, made to lie across a sheet, ends close to the limits where it is long."""
        left, right = reach(self.plan, [float(x) for x in self.plan.warp.end_positions], low=self.low)
        closest = max(self.half + _LOW_PAST, _LONG_ENOUGH)
        return (max(left, -closest), min(right, closest)) if self.low else (left, right)

    def y(self, depth: float) -> float:
        """The y of a depth behind the edge."""
        return -self.up * depth

    def corners(self, left: float, right: float, deep: float) -> tuple[Point, Point, Point]:
        """The register crosses: in both corners away from the edge, and beside the marks."""
        return Point(left, self.y(deep)), Point(right, self.y(deep)), Point(left, self.y(self.depths.cross))

    def packed(self, left: float, right: float) -> list[PlacedPhrase]:
        """The rows of words between both short edges of the paper."""
        edges = [left, *self.joints, right]
        phrases = phrases_for(self.plan, self.end, edges, self.metrics, up=self.up, brief=self.low)
        return self.packed_in(left, right, phrases, lambda row: self.y(self.middle(row)))

    def middle(self, row: int) -> float:
        """How deep the middle of a row of words lies."""
        return self.depths.words + row * self.depths.row

    def worded(self, placed: PlacedPhrase) -> list[Shape]:
        """The words of a phrase and its arrow head."""
        middle = self.middle(placed.row)
        return lettered(placed, self.baseline(-middle, -middle), self.metrics)

    def mark(self, x: float, deep: float, pen: Pen) -> Curve:
        """A mark from the edge to depth `deep`."""
        return self.upright(x, 0.0, -deep, pen)

    def numbered(self) -> list[tuple[int, float]]:
        """Every end with its number, counted from the side where winding begins."""
        return list(enumerate(map(float, self.plan.warp.end_positions[:: self.plan.warp.toward]), 1))

    def ends(self) -> list[Curve]:
        """One mark an end, full for one on the face and broken for one behind; every tenth a longer, stronger one."""
        layers = self.plan.warp.layers_at(self.end)[:: self.plan.warp.toward]
        return [
            self.end_mark(x, layer, ten=not number % 10)
            for (number, x), layer in zip(self.numbered(), layers, strict=True)
        ]

    def end_mark(self, x: float, layer: Layer, *, ten: bool) -> Curve:
        """The mark of one end."""
        heavy = ten and float(self.plan.warp.pitch) >= _CLOSE
        return self.mark(x, self.depths.ten if ten else self.depths.mark, _MARKS[layer][heavy])

    def limits(self) -> tuple[Region, Region]:
        """A small triangle outside each limit of the weaving, upright along it."""
        edge, deep = self.y(0.0), self.y(_LIMIT_DEEP)
        one, other = (
            filled([Point(x, edge), Point(x + out * self.depths.limit, edge), Point(x, deep)], Pen.SOLID)
            for x, out in ((-self.half, -1), (self.half, 1))
        )
        return one, other

    def centre(self, words: Sequence[PlacedPhrase]) -> list[Curve]:
        """The centre of the weaving, through the row of its word."""
        row = next(placed.row for placed in words if placed.phrase.stand == "centre")
        middle, half = self.middle(row), self.depths.row / 2 - 0.2
        return [self.upright(0.0, half - middle, -half - middle, Pen.CENTRE_SHORT)]

    def numbers(self, left: float, right: float) -> list[Text]:
        """The number of the first and of every tenth end behind its mark; of fewer where these would find no room."""
        widest = self.metrics.width(str(self.plan.warp.ends), SMALL, Pen.STRONG) + _NUMBER_APART
        step = next((n for n in _STEPS if n * float(self.plan.warp.pitch) >= widest), _STEPS[-1])
        every = self.numbered()
        shown = [(number, x) for number, x in every if number == 1 or number % step == 0]
        if len(shown) > 1 and abs(shown[1][1] - shown[0][1]) < widest:
            del shown[0]
        middle = -self.depths.numbers
        return [self.beside(str(number), x, middle, (left, right), Pen.STRONG) for number, x in shown]

    def beside(self, words: str, x: float, middle: float, paper: tuple[float, float], pen: Pen) -> Text:
        """Words with their middle at `x`, or as near to it as the edges of the paper allow."""
        half = self.metrics.width(words, SMALL, pen) / 2
        clear = half + _NUMBER_CLEAR
        at = min(max(x, paper[0] + clear), paper[1] - clear)
        return Text(Point(at - half, self.baseline(middle, middle)), SMALL, words, pen=pen)

    def ticks(self) -> tuple[list[Fraction], list[Fraction]]:
        """How far from the starting limit marking units begin, and the small units between them."""
        unit, width = self.plan.warp.sett.unit, self.plan.warp.width
        small = _SMALL_UNITS[unit.imperial]
        large = [k * unit.mm for k in range(int(width / unit.mm) + 1)]
        return large, [at for k in range(int(width / small) + 1) if (at := k * small) not in large]

    def at(self, distance: Fraction) -> float:
        """The x of a distance from the limit where winding begins."""
        return float(self.plan.warp.toward * (distance - self.plan.warp.width / 2))

    def scale(self, left: float, right: float, deep: float) -> list[Shape]:
        """The scale of units at the edge behind, each number after its tick; the last one says what is counted."""
        large, small = self.ticks()
        short, long = self.depths.ticks
        shapes: list[Shape] = [self.upright(self.at(d), -deep, short - deep, Pen.UNIT) for d in small]
        shown = self.unit_numbers(large)
        for distance in large:
            x = self.at(distance)
            shapes.append(self.upright(x, -deep, long - deep, Pen.UNIT))
            if self.depths.unit_numbers is not None and distance in shown:
                middle = self.depths.unit_numbers - deep
                shapes.append(self.beside(shown[distance], x, middle, (left, right), Pen.TEXT))
        return shapes

    def unit_numbers(self, large: Sequence[Fraction]) -> dict[Fraction, str]:
        """What stands at the ticks, from the last on as many as find room."""
        words, imperial = self.plan.words, self.plan.warp.sett.unit.imperial
        whole = Fraction(127, 5) if imperial else Fraction(10)
        shown: dict[Fraction, str] = {}
        free = float("inf")
        for distance in reversed(large):
            number = say_number(distance / whole)
            unit = Guide.INCHES if imperial else Guide.CENTIMETRES
            said = words.figure(number) if shown else words.say(unit, number=number)
            half = self.metrics.width(said, SMALL) / 2
            if float(distance) + half <= free:
                shown[distance] = said
                free = float(distance) - half - _NUMBER_APART
        return shown

    def scissors(self, deep: float, words: Sequence[PlacedPhrase]) -> list[Shape]:
        """A pair of scissors on the edge behind, in the first gap between ticks past the middle that has room.

        On a low guide they stand beside its words, and before the middle where there is room there alone. Those of the
        far guide take the next gap, since both guides may lie edge to edge.
        """
        xs = sorted(self.at(distance) for ticks in self.ticks() for distance in ticks)
        gaps = [one + _SCISSORS for one, other in pairwise(xs) if other - one >= _SCISSORS_ROOM]
        places = sorted(gaps, key=lambda x: (x < _SCISSORS, abs(x)))
        if self.low:
            places = [x for x in places if not self.is_taken(x - _EYE, x + _BLADES, words)]
        else:
            places = [x for x in places if x > _SCISSORS]
        own = places[1:] if self.end == "far" and len(places) > 1 else places
        return scissors(Point(own[0], self.y(deep))) if own else []

    def is_taken(self, left: float, right: float, words: Sequence[PlacedPhrase]) -> bool:
        """Whether words or a joint lie between two x."""
        spans = [(start, start + phrase.width(self.metrics)) for _, start, phrase in words]
        return any(one < right and left < other for one, other in (*spans, *((x, x) for x in self.joints)))
