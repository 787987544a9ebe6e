"""What there is to say of the strips of one kind of frame end."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from typing import Generic

from layout.drawing.shapes import Curve
from layout.frames.kinds.frame_end import Ends
from layout.messages.roles import Strip
from layout.parts.strips.bands import Bands, on_the_line
from layout.plan import Plan
from layout.warps.warp import End

MARKING: Mapping[End, Strip] = {"near": Strip.MARKING_NEAR, "far": Strip.MARKING_FAR}


class StripKind(ABC, Generic[Ends]):
    """How strips lie on one kind of frame end. A row of words is `row` mm high."""

    def low(self, ends: Ends, row: float) -> Bands:
        """The low form."""
        return on_the_line()

    @abstractmethod
    def full(self, ends: Ends, row: float) -> Bands:
        """The full form."""

    def titles(self, ends: Ends) -> Mapping[End, Strip]:
        """What the strip of either end is for."""
        return MARKING

    @abstractmethod
    def way(self, plan: Plan) -> Strip:
        """How the thread goes."""

    @abstractmethod
    def use(self, ends: Ends, plan: Plan, *, low: bool, flush: bool) -> list[str]:
        """How the strip is used; `flush` where its edge lies at the frame's outer edge."""

    def beside(self, ends: Ends) -> float:
        """How far in mm what is sawn or drilled reaches to each side of its mark."""
        return 0.0

    def outlines(self, ends: Ends, plan: Plan, end: End, up: int) -> list[Curve]:
        """What is sawn or drilled, from y = 0, the outermost line; `up` is +1 where the weaving is above."""
        return []
