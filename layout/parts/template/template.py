"""The template of one frame end: what is sawn, drilled or nailed by it, in its real size and place.

The part's y axis runs up the paper; its x is the plan's x, 0 the centre of the weaving and left negative, as the frame
stands before the weaver. All positions come from the plan as exact fractions and are turned into mm once.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text, line, rectangle
from layout.drawing.sheet import JOINT_THIRD, Part
from layout.drawing.signs import DOT, dots, scissors, triangle
from layout.drawing.typeset import SMALL
from layout.parts.marking.flap import Placed, set_in_row
from layout.parts.marking.numbering import said_of
from layout.parts.marking.strip import multiples, small_unit
from layout.parts.order_phrase import check_order
from layout.parts.ruler import CORNER, Ruler
from layout.parts.strip_room import check_length, reach
from layout.parts.template.kinds import template_kind
from layout.parts.template.levels import Levels, Opening
from layout.parts.template.room import around, clear, first_clear, inward, near_to
from layout.parts.template.sheet_words import explained
from layout.parts.template.words import TO_WEAVING, wishes
from layout.plan import Plan
from layout.warps.warp import End

_CROSS, _SEAM = 0.6, 1.15  # half of a register cross, and of one at a joint, with its line
_ROUND_DOT = DOT + 0.15
_FROM_END, _EYES, _BLADES = 30.0, 2.2, 5.0  # scissors: how far from the end, how far inward, how long
_EYE = 1.1
_WHITE, _LETTERS = 0.35, 0.7  # about a number, and what letters may reach past capitals
_ARROW, _HEAD = 1.6, 2.0


def template(plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()) -> Part:
    """The template of `end`; `low` gives a form that lies on small sheets.

    Words and dots keep clear of the `joints` (x in mm). Raises FieldError where there is no room for words.
    """
    levels = template_kind(plan).levels(plan.kit.frame.ends, low=low)
    return _Draft(plan, end, metrics, low, joints, levels).part()


@dataclass(slots=True)
class _Draft(Ruler):
    levels: Levels
    taken: list[Box] = field(default_factory=list)

    def part(self) -> Part:
        """Everything drawn, in part coordinates."""
        levels, warp = self.levels, self.plan.warp
        openings = self.openings()
        beside = max(each.wide for each in openings) / 2
        left, right = reach(self.plan, [float(x) for x in (*warp.near, *warp.far)], low=self.low, beside=beside)
        check_length(self.plan, right - left)
        self.taken += [each.box() for each in openings]
        self.taken += [around(x, v, _SEAM) for x, v in self.seams()]
        units = list(self.units())
        datum = self.corners(left, right)
        low, high = sorted((self.up * levels.edge, self.up * levels.free))
        shapes: list[Shape] = [rectangle(left, low, right, high, Pen.CUT)]
        shapes += [line(Point(left, self.up * v), Point(right, self.up * v), pen) for v, pen in levels.lines]
        shapes += [*self.crosses(datum), self.centre(), *units]
        shapes += [shape for each in openings for shape in each.drawn(self.up)]
        shapes += [*self.numbers(openings, left, right), *self.words(left, right)]
        box = left, low, right, high
        at = None if self.low else self.scissors(left, right)
        cut = [] if at is None else scissors(Point(at, self.up * levels.edge))
        shapes += cut
        if cut:
            over = self.up * (levels.edge + _EYES)
            box = left, min(low, over), right, max(high, over)
        rows = self.up * levels.joint_rows[0], self.up * levels.joint_rows[1]
        part = Part(f"strip-{self.end}", "", tuple(shapes), datum, box, joint_rows=rows, scissors=tuple(cut))
        return explained(part, self.plan, self.metrics, low=self.low)

    def marks(self) -> list[tuple[int, float]]:
        """Where every opening lies in which an end goes, with its number, in the order of winding."""
        first = template_kind(self.plan).first(self.end)
        return list(enumerate(map(float, self.plan.warp.marks(self.end)), first))

    def openings(self) -> list[Opening]:
        """All that is sawn or drilled."""
        ends = self.plan.kit.frame.ends
        return list(template_kind(self.plan).openings(ends, self.marks(), self.plan, low=self.low))

    def seams(self) -> Iterator[tuple[float, float]]:
        """Where crosses of joints will stand."""
        first, second = self.levels.joint_rows
        for x in self.joints:
            yield from ((x, first), (x, second), (x + JOINT_THIRD, first))

    def units(self) -> Iterator[Shape]:
        """A dot at every small unit, full at the marking unit, from the limit where winding begins to the other one."""
        warp, v = self.plan.warp, self.levels.dots
        full = multiples(warp.sett.unit.mm, warp.width)
        seams = list(self.taken)
        for distance in sorted(full | multiples(small_unit(self.plan), warp.width)):
            x = float(warp.toward * (distance - warp.width / 2))
            if clear(around(x, v, _ROUND_DOT), seams):
                self.taken.append(around(x, v, _ROUND_DOT))
                yield from dots([Point(x, self.up * v)], full=distance in full)

    def corners(self, left: float, right: float) -> tuple[Point, Point, Point]:
        """The register crosses: at both ends of the free edge, and at the left of the weaving edge."""
        found = []
        places = ((left, 1, self.levels.free + CORNER), (right, -1, self.levels.free + CORNER))
        for begin, way, v in (*places, (left, 1, self.levels.edge - CORNER)):
            xs = inward(begin + way * CORNER, begin + way * (right - left) / 3)
            x = first_clear(xs, v, _CROSS, self.taken)
            found.append(Point(begin + way * CORNER if x is None else x, self.up * v))
        self.taken += [around(at.x, self.up * at.y, _CROSS) for at in found]
        return found[0], found[1], found[2]

    def centre(self) -> Curve:
        """The centre of the weaving, from the edge across the row of words."""
        words, dots_at, edge = self.levels.words, self.levels.dots, self.levels.edge
        dotted = dots_at > words and not clear(around(0.0, dots_at, _ROUND_DOT), self.taken)
        return self.upright(0.0, words - 1.6, dots_at - 0.9 if dotted else edge, Pen.CENTRE_SHORT)

    def numbers(self, openings: Sequence[Opening], left: float, right: float) -> Iterator[Text]:
        """Numbers beside their own openings: toward the weaving, or away from it where there is no room there."""
        used = {each.number: each for each in openings if each.used}
        rows = [(left, v - 0.2, right, v + 0.2) for v, _ in self.levels.lines]
        for number in said_of(list(used), float(self.plan.warp.spacing)):
            own, said = used[number], str(number)
            half = self.metrics.width(said, SMALL, Pen.STRONG) / 2
            x = min(max(own.x, left + half + _WHITE), right - half - _WHITE)
            for v in (own.v + self.levels.to_number, own.v - self.levels.to_number):
                box = around(x, v, half, self.metrics.cap * SMALL / 2)
                inside = self.levels.free + _WHITE <= box[1] and box[3] <= self.levels.edge - _WHITE
                if inside and clear(box, [*self.taken, *rows], _WHITE):
                    self.taken.append(box)
                    yield Text(Point(x - half, self.baseline(v, v)), SMALL, said, pen=Pen.STRONG)
                    break

    def words(self, left: float, right: float) -> list[Shape]:
        """What is said, in one row."""
        numbers = [number for number, _ in self.marks()]
        edges = [left, *self.joints, right]
        walls = [x + more for x in self.joints for more in (0.0, JOINT_THIRD)]
        wanted = wishes(self.plan, self.end, (numbers[0], numbers[-1]), edges)
        placed = set_in_row(wanted, (left, right), walls, self.metrics)
        check_order(self.plan, placed, right - left)
        return [shape for each in placed for shape in self.phrase(each)]

    def phrase(self, placed: Placed) -> list[Shape]:
        """The words of a phrase, and an arrow to the weaving before them."""
        phrase, v = placed.phrase, self.levels.words
        x = placed.start + phrase.words_from
        half = self.metrics.cap * SMALL / 2
        wide = self.metrics.width(phrase.words, SMALL, phrase.pen)
        self.taken.append((placed.start, v - half - _LETTERS, x + wide, v + half + _LETTERS))
        shapes: list[Shape] = [Text(Point(x, self.baseline(v, v)), SMALL, phrase.words, pen=phrase.pen)]
        if phrase.thing == TO_WEAVING:
            shapes += self.arrow(placed.start + 1.0)
        return shapes

    def arrow(self, x: float) -> tuple[Curve, Region]:
        """A short arrow to the weaving in the row of words."""
        v, up = self.levels.words, self.up
        shaft = self.upright(x, v - _ARROW, v + _ARROW - _HEAD + 0.4, Pen.OUTLINE)
        return shaft, triangle(Point(x, up * (v + _ARROW)), Point(0, up), _HEAD, _HEAD)

    def scissors(self, left: float, right: float) -> float | None:
        """The x of a pair of scissors on the weaving edge, clear of dots, words and crosses; None without room."""
        edge = self.levels.edge
        taken = [*self.taken, (-1.1, self.levels.words, 1.1, edge)]
        for x in near_to(right - _FROM_END, (left + _BLADES, right - 2 * _BLADES)):
            eyes, blades = (x - _EYE, edge - _EYES, x + _EYE, edge), (x, edge - 0.9, x + _BLADES, edge)
            if clear(eyes, taken, _WHITE) and clear(blades, taken, _WHITE):
                return x
        return None
