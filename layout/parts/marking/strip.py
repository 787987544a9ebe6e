"""The marking strip of one frame end that a warp is wound round.

The part's y axis runs up the paper; its x is the plan's x, 0 the centre of the weaving and left negative, as the frame
stands before the weaver. All positions come from the plan as exact fractions and are turned into mm once.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, line, rectangle
from layout.drawing.sheet import JOINT_THIRD, Part
from layout.drawing.signs import EYES, triangle
from layout.drawing.typeset import SMALL
from layout.parts.marking.flap import ARROW, Placed, set_in_row
from layout.parts.marking.levels import Levels
from layout.parts.marking.numbering import HEAVY, Number, numbers
from layout.parts.marking.sheet_words import explained
from layout.parts.marking.signs import Room, signs
from layout.parts.marking.words import wishes
from layout.parts.order_phrase import check_order
from layout.parts.ruler import CORNER, Ruler
from layout.parts.strip_room import check_length, free_of, reach
from layout.plan import Plan
from layout.warps.warp import End

_TICK, _LONG_TICK = 0.9, 1.7
_CENTRE_LONG, _CENTRE_WIDE = 1.9, 2.2
_JOINT, _LOW_JOINT = 1.3, 0.5  # crosses of joints stand so far from the weaving edge, or above the outermost line
_WHITE = 0.6  # between a number and a mark that runs through its lane
_INCH, _CENTIMETRE = Fraction(127, 20), Fraction(10)  # mm: 1/4 in and 1 cm, the units of the small scale


def marking_strip(plan: Plan, end: End, metrics: FontMetrics, levels: Levels, *, joints: Sequence[float] = ()) -> Part:
    """The strip of `end`, as high as `levels` say; words and arrows keep clear of the `joints` (x in mm)."""
    return _Draft(plan, end, metrics, levels.low, joints, levels).part()


def first_mark(plan: Plan, end: End) -> int:
    """The number of the first mark of a strip: the tie-on of a wound warp is 0."""
    return 0 if end == "near" and plan.warp.kind == "wound" else 1


def small_unit(plan: Plan) -> Fraction:
    """The unit of the small scale on the flap, in mm."""
    return _INCH if plan.warp.sett.unit.imperial else _CENTIMETRE


@dataclass(slots=True)
class _Draft(Ruler):
    levels: Levels

    @property
    def contacts(self) -> list[float]:
        """Where every wind crosses, in the order of winding."""
        return [float(x) for x in self.plan.warp.marks(self.end)]

    @property
    def first(self) -> int:
        """The number of the first mark."""
        return first_mark(self.plan, self.end)

    def part(self) -> Part:
        """Everything drawn, in part coordinates."""
        levels, contacts = self.levels, self.contacts
        warp = self.plan.warp
        left, right = ends = reach(self.plan, [float(x) for x in (*warp.near, *warp.far)], low=self.low)
        low, high = sorted((self.up * levels.edge, self.up * levels.free))
        datum = self.corners(left + CORNER, low + CORNER, right - CORNER, high - CORNER)
        numbered = numbers(contacts, self.first, ends, self.metrics)
        seams = [x + more for x in self.joints for more in (0.0, JOINT_THIRD)]
        room = Room(ends, contacts, [(each.left, each.right) for each in numbered], datum[2].x, seams)
        check_length(self.plan, right - left)
        shapes: list[Shape] = [rectangle(left, low, right, high, Pen.CUT)]
        shapes += [line(Point(left, self.up * v), Point(right, self.up * v), pen) for v, pen in levels.lines]
        shapes += self.crosses(datum)
        shapes += [self.centre(), *self.marks(numbered), *map(self.figure, numbered)]
        shapes += self.words(ends)
        box = left, low, right, high
        arrows, cut = list[Shape](), list[Shape]()
        if not self.low:
            arrows, cut = signs(room, self.up * levels.edge, self.up)
            over = EYES if cut else 0.0
            shapes += [*self.flap(left, right), *self.ticks(), *arrows, *cut]
            box = (left, low - over, right, high) if self.up < 0 else (left, low, right, high + over)
        rows = self.up * (_LOW_JOINT if self.low else levels.edge - _JOINT), self.up * levels.words
        part = Part(f"strip-{self.end}", "", tuple(shapes), datum, box, joint_rows=rows, scissors=tuple(cut))
        return explained(part, self.plan, self.metrics, low=self.low, arrows=bool(arrows))

    def corners(self, left: float, low: float, right: float, high: float) -> tuple[Point, Point, Point]:
        """The register crosses: behind in both corners, and at the left of the weaving edge, clear of marks."""
        reaches = self.contacts
        behind, before = (low, high) if self.up > 0 else (high, low)
        if self.low:  # marks come close to this edge, and none to the other
            return (
                Point(free_of(reaches, left, 1), behind),
                Point(free_of(reaches, right, -1), behind),
                Point(left, before),
            )
        return Point(left, behind), Point(right, behind), Point(free_of(reaches, left, 1), before)

    def marks(self, numbered: Sequence[Number]) -> Iterator[Curve]:
        """A mark at every contact, every fifth one heavy; it leaves out the number of another mark that it meets."""
        levels, own = self.levels, {each.number for each in numbered}
        half = self.metrics.cap * SMALL / 2 + _WHITE
        for number, x in enumerate(self.contacts, self.first):
            pen = Pen.MARK if number % HEAVY else Pen.TEN
            top = levels.numbered if number in own else levels.plain
            if not self.low and any(each.left - _WHITE < x < each.right + _WHITE for each in numbered):
                yield self.upright(x, levels.back, levels.numbers - half, pen)
                yield self.upright(x, levels.numbers + half, top, pen)
            else:
                yield self.upright(x, levels.back, top, pen)

    def figure(self, number: Number) -> Text:
        """A number beside its mark."""
        at = Point(number.left, self.baseline(self.levels.numbers, self.levels.numbers))
        return Text(at, SMALL, str(number.number), pen=Pen.STRONG)

    def centre(self) -> Region:
        """A triangle at the weaving edge."""
        return triangle(Point(0.0, self.up * self.levels.edge), Point(0, self.up), _CENTRE_LONG, _CENTRE_WIDE)

    def flap(self, left: float, right: float) -> list[Shape]:
        """Grey where it is glued, with the line of the centre across."""
        low, high = sorted((self.up * self.levels.back, self.up * self.levels.free))
        grey = Region((rectangle(left, low, right, high, Pen.TINT),), Pen.TINT)
        return [grey, self.upright(0.0, self.levels.back, self.levels.free, Pen.CENTRE_SHORT)]

    def ticks(self) -> Iterator[Curve]:
        """The small scale along the free edge, from the limit where winding begins to the other one."""
        warp, free = self.plan.warp, self.levels.free
        long = multiples(warp.sett.unit.mm, warp.width)
        for distance in sorted(long | multiples(small_unit(self.plan), warp.width)):
            x = float(warp.toward * (distance - warp.width / 2))
            yield self.upright(x, free + (_LONG_TICK if distance in long else _TICK), free, Pen.UNIT)

    def words(self, ends: tuple[float, float]) -> list[Shape]:
        """What is said on the flap, or above the numbers of a low strip."""
        count = self.first, self.first + len(self.contacts) - 1
        edges = [ends[0], *self.joints, ends[1]]
        placed = set_in_row(wishes(self.plan, self.end, count, edges), ends, self.joints, self.metrics)
        check_order(self.plan, placed, ends[1] - ends[0])
        return [shape for each in placed for shape in self.phrase(each)]

    def phrase(self, placed: Placed) -> list[Shape]:
        """The words of a phrase, and its arrow head after them in the list."""
        phrase, middle = placed.phrase, self.up * self.levels.words
        at = Point(placed.start + phrase.words_from, middle - self.metrics.cap * SMALL / 2)
        shapes: list[Shape] = [Text(at, SMALL, phrase.words, pen=phrase.pen)]
        if phrase.arrow:
            tip = placed.start + (phrase.width(self.metrics) if phrase.arrow > 0 else 0.0)
            shapes.append(triangle(Point(tip, middle), Point(phrase.arrow, 0), ARROW, ARROW))
        return shapes


def multiples(unit: Fraction, width: Fraction) -> set[Fraction]:
    """Every multiple of a unit from 0 to the width."""
    return {unit * k for k in range(width // unit + 1)}
