"""What is said of a first guess of a sett: for people and for programs."""

from __future__ import annotations

from layout.values.quantity import Quantity
from templates_gen.inputs.guess_options import Yarns
from templates_gen.messages.language import message
from templates_gen.messages.roles.screen import GuessRow
from templates_gen.screen.ranges import PICKS, THICK, about, range_values
from templates_gen.screen.tables import Line, aligned


def guess_values(yarns: Yarns) -> dict[str, object]:
    """For programs: the sett guessed and both thicknesses with their bounds, and what to wrap next."""
    guess = yarns.guess
    return {
        **range_values("sett_per_cm", guess.per_mm.scaled(10)),
        **range_values("sett_per_inch", guess.per_mm.scaled(25.4)),
        **range_values("warp_soft_mm", yarns.warp.soft if yarns.warp else None),
        **range_values("weft_soft_mm", yarns.weft.soft if yarns.weft else None),
        "how": guess.per_mm.origin.value,
        "assumptions": list(guess.per_mm.assumptions),
        "conflicts": list(guess.per_mm.conflicts),
        "next": message(guess.next),
    }


def guess_table(yarns: Yarns) -> str:
    """For people: the sett, both thicknesses, what is assumed, and what to wrap next."""
    guess = yarns.guess
    sett = about(guess.per_mm.scaled(10), PICKS, imperial=yarns.imperial)
    rows: list[Line] = [(message(GuessRow.SETT), sett, _why(guess.per_mm))]
    for role, yarn in ((GuessRow.WARP, yarns.warp), (GuessRow.WEFT, yarns.weft)):
        if yarn:
            rows.append((message(role), about(yarn.soft, THICK, imperial=yarns.imperial), _why(yarn.soft)))
    said = (*guess.per_mm.assumptions, *guess.per_mm.conflicts, message(guess.next))
    return "\n".join([*aligned(rows), "", *(f"  {sentence}" for sentence in said)])


def _why(figure: Quantity) -> str:
    return message(GuessRow.WHY, how=figure.origin.value, reason=figure.reason)
