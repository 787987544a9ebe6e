"""The strip of one frame end: a marking strip that is wrapped round it, or the template by which it is made.

The part's y axis runs up the paper; its x is the plan's x, 0 the centre of the weaving and left negative, as the frame
stands before the weaver. All positions come from the plan as exact fractions and are turned into mm once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Text, line, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL, is_tall
from layout.parts.marking.kinds import MARKING, wrapped_strip
from layout.parts.phrases import PlacedPhrase
from layout.parts.ruler import CORNER, Ruler
from layout.parts.strip_room import NUMBER_GAP, check_room, free_of, reach
from layout.parts.strip_words import notes_for, phrases_for, title_of
from layout.parts.strips.bands import EDGE_CLEAR, Bands
from layout.parts.strips.strips import beside, full_bands, low_bands, outlines
from layout.plan import Plan
from layout.warps.warp import End

_TEN_MORE = 0.6
_FLUSH = 1e-6  # mm


def strip(plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()) -> Part:
    """The strip of `end`; `low` gives a form that lies on small sheets.

    Words keep clear of the `joints` (x in mm). Raises LayoutError where the full form cannot be had on this bar, and
    FieldError where words or totals find no room.
    """
    ends, tall = plan.kit.frame.ends, is_tall(plan.kit.name)
    if ends.name in MARKING:
        return wrapped_strip(plan, end, metrics, low=low, joints=joints)
    bands = low_bands(ends, tall=tall) if low else full_bands(ends, tall=tall)
    flush = abs(bands.back) < _FLUSH
    return _Draft(plan, end, metrics, low, joints, bands).part(notes_for(plan, end, low=low, flush=flush))


@dataclass(slots=True)
class _Draft(Ruler):
    bands: Bands

    @property
    def contacts(self) -> list[float]:
        warp = self.plan.warp
        return [float(x) for x in (warp.near if self.end == "near" else warp.far)]

    def part(self, notes: tuple[str, ...]) -> Part:
        """Everything drawn, in part coordinates."""
        left, right = reach(self.plan, self.contacts, low=self.low, beside=beside(self.plan))
        check_room(self.plan, right - left, self.metrics)
        words = self.packed(left, right)
        floors = self.bands.rows(1 + max(placed.row for placed in words))
        front = max(self.bands.front, max(floors) + self.bands.row + EDGE_CLEAR)
        back = min(self.bands.back, min(floors) - EDGE_CLEAR)
        low, high = sorted((self.up * front, self.up * back))
        datum = self.corners(left + CORNER, low + CORNER, right - CORNER, high - CORNER)
        shapes: list[Shape] = [rectangle(left, low, right, high, Pen.CUT)]
        shapes += [line(Point(left, self.up * v), Point(right, self.up * v), pen) for v, pen in self.bands.lines]
        shapes += self.crosses(datum)
        shapes += [*self.winds(), *self.units(), *self.limits(), *self.centre(words, floors)]
        shapes += outlines(self.plan, self.end, self.up)
        shapes += [shape for placed in words for shape in self.phrase(placed, floors[placed.row])]
        title = title_of(self.plan, self.end)
        return Part(f"strip-{self.end}", title, tuple(shapes), datum, (left, low, right, high), notes, narrow=True)

    def corners(self, left: float, low: float, right: float, high: float) -> tuple[Point, Point, Point]:
        """The register crosses: in three corners, and clear of marks that reach to the back of the paper."""
        uprights = [*self.contacts, -self.half, self.half] if self.bands.marks_reach_back else []
        lefts, rights = free_of(uprights, left, 1), free_of(uprights, right, -1)
        if self.up > 0:
            return Point(lefts, low), Point(rights, low), Point(left, high)
        return Point(left, low), Point(right, low), Point(lefts, high)

    def packed(self, left: float, right: float) -> list[PlacedPhrase]:
        """The rows of words between both edges of the paper."""

        def height_of(row: int) -> float:
            return self.up * self.bands.rows(row + 1)[row]

        phrases = phrases_for(self.plan, self.end, up=self.up, brief=self.low)
        return self.packed_in(left, right, phrases, height_of)

    def winds(self) -> list[Curve]:
        """One mark a contact; every tenth one stronger."""
        marks = []
        for number, x in enumerate(self.contacts, 1):
            low, high = self.bands.span(number - 1)
            ten = number % 10 == 0
            marks.append(self.upright(x, low - _TEN_MORE * ten, high, Pen.TEN if ten else Pen.MARK))
        return marks

    def units(self) -> list[Shape]:
        """A long mark at every unit line, with the running total of winds inside the unit that it ends."""
        low, high = self.bands.numbers
        shapes: list[Shape] = []
        for exact, total in self.plan.warp.unit_lines(self.end):
            x, words = float(exact), str(total)
            before = NUMBER_GAP + self.metrics.width(words, SMALL) if self.plan.warp.toward > 0 else -NUMBER_GAP
            shapes.append(self.upright(x, self.bands.units_from, self.bands.units_to, Pen.UNIT))
            shapes.append(Text(Point(x - before, self.baseline(low, high)), SMALL, words))
        return shapes

    def limits(self) -> list[Curve]:
        """Bold lines at both limits of the weaving."""
        low, high = min(span[0] for span in map(self.bands.span, (0, 1))), self.bands.units_to
        return self.limit_lines(low, high)

    def centre(self, words: Sequence[PlacedPhrase], floors: Sequence[float]) -> list[Curve]:
        """The centre of the weaving: across the marks and through the row of its word."""
        low, high = self.bands.marks
        words_from = next(floors[placed.row] for placed in words if placed.phrase.stand == "centre")
        return self.centre_lines(low - _TEN_MORE, high, (words_from, words_from + self.bands.row))

    def row_foot(self, floor: float) -> float:
        """The y of the lower edge, as the words stand, of the row at v = `floor`."""
        return floor if self.up > 0 else -floor - self.bands.row

    def phrase(self, placed: PlacedPhrase, floor: float) -> list[Shape]:
        """The words of a phrase and its arrow head, in the row above `floor`."""
        return self.words_at(placed, self.row_foot(floor))
