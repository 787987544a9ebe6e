"""What a proof asks of one kind of frame end. Nothing here or beside this calls what it proves."""

from __future__ import annotations

import math
from abc import ABC, abstractmethod
from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import Generic, Literal, NamedTuple

from layout.drawing.pens import Pen
from layout.frames.kinds.frame_end import Ends
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Count, Gauge, SheetName, Template, Winding
from templates_gen.messages.roles.proof_printed import Mark
from templates_gen.verify.finding import Finding
from templates_gen.verify.kinds.opening import Opening

Form = Literal["full", "low"]
Marks = tuple[tuple[Fraction, ...], tuple[Fraction, ...]]
"""Distances from the limit where winding starts, of the marks of the near end and of the far end."""
Course = tuple[float, float]
"""How far an end is off its place at the outer edge of the near end, and at that of the far end."""


class Across(NamedTuple):
    """Heights on a strip: from the weaving `edge` marks reach to the `back` line, where the flap begins that ends at
    the `free` edge; numbers have their middle in the `lane`. A `low` strip has no flap, and no mark reaches less far
    than to `marks_to`.
    """

    edge: float
    back: float
    free: float
    lane: float
    marks_to: float
    low: bool


class Sheets(NamedTuple):
    """What the sheet of both templates is called, that of each alone, and what it is for."""

    both: SheetName
    near: SheetName
    far: SheetName
    purpose: Role


class Says(NamedTuple):
    """What the sheet of a template says: things to do in their order, pictures and signs, cautions, and what `may`
    stand there where it has room.
    """

    steps: list[str]
    beside: list[str]
    cautions: list[str]
    may: list[str]


class Asked(NamedTuple):
    """What the words of a sheet go by: the sett in ends per mm, how many ends there are, and the form of the strip."""

    words: Catalogue
    sett: Fraction
    ends: int
    form: Form


class Truth(ABC, Generic[Ends]):
    """One kind of frame end. Heights on a strip are mm from the outermost line, positive toward the weaving."""

    laid: int
    """How many ends are laid by what is counted off: a wind lays two, a peg turns two, a notch holds one."""
    counted: Gauge
    sett: tuple[Count, Count]
    """How the sett is said, by the inch and by the centimetre."""
    legend: tuple[Winding, ...]
    first_near = 1
    """The number of the first mark of the near end."""
    glued = False
    """Whether a strip is wrapped round the frame end and glued on behind."""
    full_is_flush = False
    """Whether both forms have the same lines, and the full one begins at the outer edge."""
    cut: tuple[str, ...] = ()
    """Which products are cut for such ends alone."""
    winds = False
    """Whether the warp is counted in winds; the near marks then count from 0, the tie-on."""
    on_rod = False
    """Whether the thread is tied to a loose rod, and goes round both frame ends there and back."""
    opening = Mark.NOTCH
    """What is sawn or drilled."""

    @abstractmethod
    def follow(self, ends: Ends, kit: Kit, middles: list[Fraction], pitch: Fraction) -> Marks:
        """The marks, found by following the thread: its middles are where the ends are wanted."""

    @abstractmethod
    def leans(self, ends: Ends, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """How much further on each pass is at the far end, in the order of winding."""

    def faces(self, kit: Kit, k: int) -> tuple[bool, bool]:
        """Whether the end laid k-th (0 the first) is in front at the near end, and at the far end."""
        return True, True

    def touched(self, near: list[float], far: list[float], count: int) -> list[tuple[float, float]]:
        """Where each end meets both frame ends, in the order of winding: from each mark on to the next one opposite."""
        way = [mark for pair in zip(near, [*far, math.nan], strict=False) for mark in pair]
        steps = [(way[k], way[k + 1]) for k in range(count)]
        return [step if k % 2 == 0 else step[::-1] for k, step in enumerate(steps)]

    @abstractmethod
    def lines(self, ends: Ends, form: str) -> list[tuple[float, Pen]]:
        """Where the fold and register lines of a strip must lie."""

    def across(self, ends: Ends, form: Form) -> Across:
        """How high everything stands on a strip that is wrapped round a frame end."""
        raise NotImplementedError

    def paper(self, ends: Ends, form: str, low: float, high: float) -> Iterator[Finding]:
        """Whether the paper of a strip reaches as far as its form needs it."""
        return iter(())

    def numbers(self, ends: Ends) -> Winding:
        """Where the numbers in a picture are from: from what marks the bars."""
        marking = self.glued or self.sheets(ends).both is SheetName.NAME_STRIPS
        return Winding.BY_STRIPS if marking else Winding.BY_TEMPLATES

    def sheets(self, ends: Ends) -> Sheets:
        """What the sheets of templates are called."""
        raise NotImplementedError

    def says(self, ends: Ends, asked: Asked) -> Says:
        """What stands beside templates, in the sizes of the kit."""
        raise NotImplementedError

    def dots(self, ends: Ends) -> Template:
        """How the dots of a template are named."""
        return Template.DOTS

    def filled(self, ends: Ends, marks: Sequence[Fraction], to_weaving: int, form: Form) -> list[Opening]:
        """What must be sawn or drilled, mark by mark; `to_weaving` is +1 where the weaving lies above."""
        return []

    def empty(self, ends: Ends, marks: Sequence[Fraction], to_weaving: int) -> list[Opening]:
        """What is there and stays empty."""
        return []

    @abstractmethod
    def together(self, ends: Ends, kit: Kit, inside: float) -> float:
        """How high above the near end's edge all ends are where a heading may begin, `inside` mm within a board."""

    def way_mm(self, ends: Ends, high: float) -> float:
        """How far the marks of both ends are from each other along the thread."""
        raise NotImplementedError

    def open_mm(self, ends: Ends, kit: Kit) -> float | None:
        """How much warp headings, weaving and hand may share, where that is not all between the frame ends."""
        return None

    def courses(self, ends: Ends, kit: Kit, near: list[float], far: list[float]) -> list[Course] | None:
        """Every end's course, where it does not run from mark to mark on the unrolled frame."""
        return None

    def leaves_thickness_out(self, kit: Kit) -> bool:
        """Whether the fan depends on a thickness that the kit does not say."""
        return False

    @abstractmethod
    def inertia(self, ends: Ends, kit: Kit) -> float | None:
        """Second moment of area of a frame end in mm4; None where the kit does not say enough."""

    def asks_for(self, ends: Ends) -> tuple[str, ...]:
        """Which products are cut for these ends alone."""
        return self.cut

    def layers_of(self, ends: Ends) -> Fraction | None:
        """How thick in mm the bars are that are cut in layers; None where none are."""
        return None


def board_inertia(kit: Kit, thickness: float, cut: float = 0.0) -> float | None:
    """Second moment of area of a board, less what notches take of its width."""
    width = kit.strength.end_width
    return None if width is None else thickness * (float(width.mm) - cut) ** 3 / 12
