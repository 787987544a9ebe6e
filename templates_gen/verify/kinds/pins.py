"""What is true of templates for pegs and nails alike."""

from __future__ import annotations

from collections.abc import Iterator

from layout.messages.catalogue import Catalogue
from layout.messages.roles import Template
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.truth import Asked

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
