"""The spacing guide of one heading: laid on the warp, its long edge shows where every end should lie.

The part's x is the plan's x, 0 the centre of the weaving and left negative, as the frame stands before the weaver. The
edge to the weaving lies at y = 0; marks, numbers and words follow behind it, at depths that grow away from it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Text, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL, centred, is_tall
from layout.parts.guide_words import notes_for, phrases_for, title_of
from layout.parts.phrases import PlacedPhrase
from layout.parts.ruler import CORNER, Ruler
from layout.parts.strip_room import check_room, reach
from layout.plan import Plan
from layout.warps.warp import End

_TALLER = 0.8
_NUMBER_APART = 1.5  # so much white at least between two numbers
_NUMBER_CLEAR = 0.5  # and from the edge of the paper
_STEPS = (10, 20, 50, 100, 200, 500, 1000)


@dataclass(frozen=True, slots=True)
class _Depths:
    """How deep behind the edge marks reach, where numbers stand and words begin, in rows so high and clear below."""

    face: float
    back: float
    unit: float
    limit: float
    numbers: tuple[float, float]
    words: float
    row: float
    clear: float


_FULL = _Depths(6.0, 3.2, 7.0, 7.6, (8.0, 10.8), 11.0, 3.8, 0.8)
_LOW = _Depths(2.7, 1.5, 3.2, 3.5, (3.6, 6.4), 6.45, 3.2, 0.35)


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

    @property
    def row(self) -> float:
        """The height of a row of words."""
        return self.depths.row + (_TALLER if is_tall(self.plan.kit.name) and not self.low else 0.0)

    def part(self) -> Part:
        """Everything drawn, in part coordinates."""
        warp = self.plan.warp
        left, right = reach(self.plan, [float(x) for x in warp.end_positions], low=self.low)
        check_room(self.plan, right - left, self.metrics)
        words = self.packed(left, right)
        deep = self.depths.words + (1 + max(placed.row for placed in words)) * self.row + self.depths.clear
        datum = self.corners(left + CORNER, right - CORNER, deep - CORNER)
        low, high = sorted((0.0, self.y(deep)))
        shapes: list[Shape] = [rectangle(left, low, right, high, Pen.CUT)]
        shapes += self.crosses(datum)
        shapes += [*self.ends(), *self.units(), *self.limits(), *self.centre(words), *self.numbers(left, right)]
        shapes += [shape for each in words for shape in self.words_at(each, self.foot(each.row))]
        notes = (notes_for(self.plan, self.end, brief=self.low),)
        title = title_of(self.end)
        return Part(f"spacing-{self.end}", title, tuple(shapes), datum, (left, low, right, high), notes, narrow=True)

    def y(self, depth: float) -> float:
        """The y of a depth behind the edge."""
        return -self.up * depth

    def corners(self, left: float, right: float, deep: float) -> tuple[Point, Point, Point]:
        """The register crosses: in both corners away from the edge, and beside the numbers where these begin."""
        beside = Point(left if self.plan.warp.toward > 0 else right, self.y(sum(self.depths.numbers) / 2))
        return Point(left, self.y(deep)), Point(right, self.y(deep)), beside

    def packed(self, left: float, right: float) -> list[PlacedPhrase]:
        """The rows of words between both short edges of the paper."""
        phrases = phrases_for(self.plan, self.end, up=self.up, brief=self.low)
        return self.packed_in(left, right, phrases, self.foot)

    def foot(self, row: int) -> float:
        """The y of the lower edge, as the words stand, of a row of words."""
        depth = self.depths.words + (row + (self.up > 0)) * self.row
        return self.y(depth)

    def mark(self, x: float, deep: float, pen: Pen) -> Curve:
        """A mark from the edge to depth `deep`."""
        return self.upright(x, 0.0, -deep, pen)

    def numbered(self) -> list[tuple[int, float]]:
        """Every end with its number, counted from the side where winding begins."""
        return list(enumerate(map(float, self.plan.warp.end_positions[:: self.plan.warp.toward]), 1))

    def ends(self) -> list[Curve]:
        """One mark an end, long on the face and short on the back; every tenth a stronger one."""
        deep = {"face": self.depths.face, "back": self.depths.back}
        layers = self.plan.warp.layers_at(self.end)[:: self.plan.warp.toward]
        return [
            self.mark(x, deep[layer], Pen.MARK if number % 10 else Pen.TEN)
            for (number, x), layer in zip(self.numbered(), layers, strict=True)
        ]

    def units(self) -> list[Curve]:
        """A longer line at every marking unit, counted from the limit where winding begins."""
        lines = self.plan.warp.unit_lines("near")
        return [self.mark(float(x), self.depths.unit, Pen.UNIT) for x, _ in lines]

    def limits(self) -> list[Curve]:
        """Bold lines at both limits of the weaving."""
        return self.limit_lines(0.0, -self.depths.limit)

    def centre(self, words: Sequence[PlacedPhrase]) -> list[Curve]:
        """The centre of the weaving: across the marks and through the row of its word."""
        row = next(placed.row for placed in words if placed.phrase.stand == "centre")
        from_depth = self.depths.words + row * self.row
        return self.centre_lines(0.0, -self.depths.limit, (-from_depth, -from_depth - self.row))

    def numbers(self, left: float, right: float) -> list[Text]:
        """The number of every tenth end under its mark, inside the paper; of fewer where these would find no room."""
        widest = self.metrics.width(str(self.plan.warp.ends), SMALL) + _NUMBER_APART
        step = next((n for n in _STEPS if n * float(self.plan.warp.pitch) >= widest), _STEPS[-1])
        low, high = self.depths.numbers
        baseline = self.baseline(-low, -high)
        texts = []
        for number, x in self.numbered()[step - 1 :: step]:
            half = self.metrics.width(str(number), SMALL) / 2 + _NUMBER_CLEAR
            inside = min(max(x, left + half), right - half)
            texts.append(centred(str(number), SMALL, Point(inside, baseline), self.metrics))
        return texts
