"""What is true of pegs and nails, and of their templates, alike."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.frames.kinds.frame_end import Ends
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Template, Winding
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.truth import Asked, Truth
from templates_gen.verify.printed.pegs import end_thickness

_CROSS, _BEHIND = 1.6, 0.8  # a cross reaches so far past a hole, and the paper so far past the cross; mm
_SHOWN = 5  # pins in the picture


def _free(outer: float, wide: float, form: str) -> float:
    """Where the paper ends away from the weaving: at the outer edge, or as far beyond the outermost row as needed."""
    beyond = outer - wide / 2 - _CROSS - _BEHIND
    return min(0.0, beyond) if form == "full" else beyond


def paper_of_holes(outer: float, wide: float, form: str, low: float) -> Iterator[Finding]:
    """Whether the paper ends where its form asks for it: holes `wide` mm wide stand `outer` mm from the edge."""
    flap = _free(outer, wide, form)
    if not abs(low - flap) <= LIMIT:
        yield finding(Strips.PAPER, low=low, flap=flap)


def lay_of_holes(asked: Asked, outer: Length, wide: float) -> str:
    """How a template is laid: edge to edge with the board, or its row so far from the edge."""
    if _free(float(outer.mm), wide, asked.form) == 0:
        return asked.words.say(Template.STEP_LAY_EDGE)
    return asked.words.say(Template.STEP_LAY_ROW, outer=say_length(outer, asked.words))


def path_of_pins(words: Catalogue) -> list[str]:
    """What the picture of the way round them says in any case, and the list that it stands in."""
    roles = map(words.say, (Template.NEAR_BAR, Template.READING))
    return [*roles, words.say(Template.TIE_ON, number=0)]


def far_pins(asked: Asked) -> list[str]:
    """Which pins of the far bar the picture may name: those to which an end goes up from the first near ones."""
    shown = min(_SHOWN, asked.ends // 2 + 1)
    return [asked.words.say(Template.FAR_PIN, number=k + 1) for k in range(shown) if 2 * k < asked.ends]


class Pin(NamedTuple):
    """How far the outermost pins stand from the edge, and how wide they are."""

    edge: Length
    wide: Length


class Pins(Truth[Ends]):
    """Frame ends round whose pins the thread turns, two of its ends at each."""

    laid = 2
    legend = (Winding.ON_FACE, Winding.KNOT)
    first_near = 0
    full_is_flush = True

    @abstractmethod
    def pin(self, ends: Ends) -> Pin:
        """The pins of the kit."""

    def leans(self, ends: Ends, kit: Kit, pitch: Fraction, *, in_pairs: bool) -> Iterator[Fraction]:
        """From a pin to the next, a pitch on at the other end: between the sides that face each other each end's
        middle line lies half a pin and half a thread beside the centres.
        """
        lean = pitch - self.pin(ends).wide.mm - Fraction(end_thickness(kit) or 0)
        while True:
            yield lean
            yield -lean

    def paper(self, ends: Ends, form: str, low: float, high: float) -> Iterator[Finding]:
        """From the outer edge of the board, or from so far beyond the outermost pins that every cross is whole."""
        pin = self.pin(ends)
        yield from paper_of_holes(float(pin.edge.mm), float(pin.wide.mm), form, low)

    def leaves_thickness_out(self, kit: Kit) -> bool:
        """The thread lies beside its pins."""
        return end_thickness(kit) is None


def beside_pins(asked: Asked, roles: tuple[Role, ...], number: Role) -> list[str]:
    """What the pictures of pins say, and how `number` counts them at both ends."""
    counts = {"near": asked.ends // 2, "far": (asked.ends + 1) // 2}
    return [*map(asked.words.say, roles), asked.words.say(number, **counts), *path_of_pins(asked.words)]
