"""What a marking strip and a spacing guide share: an edge with marks, units, limits and the centre of the weaving.

v runs across the ruler from its line of reference, positive toward the weaving; x is the plan's x, 0 the centre of the
weaving and left negative, as the frame stands before the weaver.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, cross, line
from layout.drawing.sheet import JOINT_THIRD
from layout.drawing.typeset import SMALL
from layout.parts.lettering import FOOT, lettered
from layout.parts.phrases import Packer, Phrase, PlacedPhrase
from layout.plan import Plan
from layout.warps.warp import End

SEAM = 1.5
"""Words keep so far from the middle of a cross of a joint, in mm."""

CORNER = 0.8
"""How far from both edges of the paper a register cross stands, in mm."""
_ARM = 0.5
_WORDS_SPACE = 1.9
_CLEAR = 0.2  # from the line of the centre to the edges of the row of its word


@dataclass(slots=True)
class Ruler:
    """A ruler for the frame end or heading at `end`; words keep clear of the `joints` (x in mm)."""

    plan: Plan
    end: End
    metrics: FontMetrics
    low: bool
    joints: Sequence[float]

    @property
    def up(self) -> int:
        """+1 where the weaving lies above the ruler on the paper, -1 where it lies below."""
        return 1 if (self.end == "near") == (self.plan.kit.weaving.near_end == "bottom") else -1

    @property
    def half(self) -> float:
        """From the centre of the weaving to a limit."""
        return float(self.plan.warp.width / 2)

    def upright(self, x: float, low: float, high: float, pen: Pen) -> Curve:
        """A mark across the ruler from v = `low` to `high`."""
        return line(Point(x, self.up * low), Point(x, self.up * high), pen)

    def baseline(self, low: float, high: float) -> float:
        """The y of a baseline that centres capitals between v = `low` and `high`."""
        return self.up * (low + high) / 2 - self.metrics.cap * SMALL / 2

    def limit_lines(self, low: float, high: float) -> list[Curve]:
        """Bold lines at both limits of the weaving."""
        return [self.upright(x, low, high, Pen.EDGE) for x in (-self.half, self.half)]

    def centre_lines(self, low: float, high: float, row: tuple[float, float]) -> list[Curve]:
        """The centre of the weaving: across the marks, and through the `row` of its word."""
        first, last = row
        inward = _CLEAR if last > first else -_CLEAR
        return [
            self.upright(0.0, low, high, Pen.CENTRE),
            self.upright(0.0, first + inward, last - inward, Pen.CENTRE),
        ]

    def crosses(self, datum: Sequence[Point]) -> list[Curve]:
        """The hairs of the register crosses."""
        return [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]

    def packed_in(
        self, left: float, right: float, phrases: list[Phrase], height_of: Callable[[int], float]
    ) -> list[PlacedPhrase]:
        """The rows of words between both short edges of the paper; `height_of` a row is the y of its lower edge."""
        walls = [(joint - SEAM, joint + JOINT_THIRD + SEAM) for joint in self.joints]
        packer = Packer(left + _WORDS_SPACE, right - _WORDS_SPACE, walls, self.metrics, height_of)
        return packer.pack(phrases)

    def words_at(self, placed: PlacedPhrase, foot: float) -> list[Shape]:
        """The words of a phrase and its arrow head, in the row whose lower edge as the words stand is y = `foot`."""
        return lettered(placed, foot + FOOT, self.metrics)
