"""What there is to say of the templates of one kind of frame end."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Iterator, Sequence
from typing import Generic

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Block
from layout.frames.kinds.frame_end import Ends
from layout.messages.catalogue import Role
from layout.messages.roles import Template
from layout.parts.template.levels import Levels, Opening
from layout.plan import Plan
from layout.warps.warp import End

Numbered = Sequence[tuple[int, float]]


class TemplateKind(ABC, Generic[Ends]):
    """What a template is of one kind of frame end."""

    work: str
    """What is done by it: the names of its sheets are found by that."""
    reading: tuple[Role, ...]
    """How an opening, its number and the dots are named."""
    cautions: tuple[Role, ...]
    cut: Role = Template.STEP_CUT
    heading: Role = Template.READING
    """Of the list that says what every sign means."""

    @abstractmethod
    def levels(self, ends: Ends, *, low: bool) -> Levels:
        """How high everything stands; `low` for small sheets."""

    @abstractmethod
    def openings(self, ends: Ends, marks: Numbered, plan: Plan, *, low: bool) -> Iterator[Opening]:
        """What is sawn, drilled or nailed."""

    @abstractmethod
    def steps(self, ends: Ends, plan: Plan, *, low: bool) -> Iterator[str]:
        """What to do, after it is cut out."""

    @abstractmethod
    def pictures(self, ends: Ends, plan: Plan, metrics: FontMetrics, *, low: bool) -> Iterator[Block]:
        """How it lies, and how the warp goes."""

    def first(self, end: End) -> int:
        """The number of the first mark of a frame end."""
        return 1
