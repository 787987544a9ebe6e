"""What every kind of frame end says about itself. A kind is a frozen dataclass of its sizes, in its own module."""

from __future__ import annotations

from abc import ABC, abstractmethod
from fractions import Fraction
from typing import ClassVar, TypeVar

from layout.frames.bar import Bar, Board
from layout.frames.materials import material_of
from layout.frames.strength import Strength
from layout.messages.catalogue import Role
from layout.messages.roles import Beam
from layout.values.units import Length, Sett


class FrameEnd(ABC):
    """Both ends of a frame. Its `name` stands in the kit file; `kind` says how it carries the warp.

    A warp is "wound" round both ends, or goes there and back on the face: "notched", "pegged", "nailed" and what else
    there is.
    """

    __slots__ = ()
    kind: ClassVar[str]
    name: ClassVar[str]
    thread_moves_ends: ClassVar[bool] = False
    """Whether a thicker thread lies elsewhere: beside pegs and nails it does, in notches and round bars it does not."""

    @property
    @abstractmethod
    def inset_mm(self) -> Fraction:
        """How far within the outermost line of the frame no weaving can be."""

    @property
    @abstractmethod
    def deep_mm(self) -> Fraction:
        """From face to back."""

    @abstractmethod
    def pass_mm(self, high: float) -> float:
        """How long a pass is from mark to mark, on a frame `high` mm from end to end."""

    @abstractmethod
    def turn_mm(self, wide: float, spacing: Fraction, thread: float) -> float:
        """The way from the weaving's side of an end `wide` mm, out round it, and back to that side.

        It runs along the middle of a thread `thread` mm thick, half of that off the wood; from one mark to the next lie
        `spacing` mm.
        """

    @abstractmethod
    def beam(self, strength: Strength, span: Fraction) -> Bar | Board | Role:
        """The end as a beam over `span` mm, or the role of what the kit would have to say for it."""

    def pulled_by(self, newtons: float) -> tuple[str, ...]:
        """What to take care of where every end pulls with so many N at what it turns round; nothing if that holds."""
        return ()

    @property
    def wide_mm(self) -> Fraction | None:
        """How much of the frame's height it takes, where its own sizes say that."""
        return None

    @property
    def notches(self) -> Sett | None:
        """How close notches are that are there already, which allow some setts only."""
        return None

    @property
    def cut_parts(self) -> tuple[str, ...]:
        """The names of the products that are cut for it alone."""
        return ()


Ends = TypeVar("Ends", bound=FrameEnd)
"""One kind of frame end, for pieces that are made for that kind alone."""


def board(thickness: Length, strength: Strength, span: Fraction, cut: Fraction = Fraction(0)) -> Board | Role:
    """A frame end that is a board as a beam, less the `cut` mm that notches take of its width."""
    material, width = material_of(strength, thickness.mm), strength.end_width
    if material is None:
        return Beam.GIVE_BOTH if width is None else Beam.GIVE_MATERIAL
    if width is None:
        return Beam.GIVE_WIDTH
    return Board(thickness.mm, width.mm - cut, span, material.modulus)
