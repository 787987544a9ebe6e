"""How high is woven, in whole beads, and how high its headings are: from the kit's numbers alone.

A bead that was counted is taken from the kit itself; a guess can only be the one that the plan tells.
"""

from __future__ import annotations

from fractions import Fraction

from layout.kit.kit import Kit
from layout.plan import Plan
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.tight import as_woven, woven_at

_FINEST = 10**6  # the finest part in which a guess, or what fits, is said
_ROW, _ROWS = 1.5, 2  # how high a heading row is, and how many there are, if a kit does not say
_BY_HAND, _BY_NEEDLE = 80.0, 40.0  # the room for a hand, or a needle, if a kit does not say


def together_mm(kit: Kit) -> float:
    """How far above the near end's edge a heading may begin, and as far below the far end's."""
    ends, stated = kit.frame.ends, kit.strength.end_width
    inside = float((stated or kit.frame.side_width).mm)
    return truth_of(kit).together(ends, kit, inside)


def heading_mm(kit: Kit) -> float:
    """How high one heading is: as stated, or row upon row; an edge of half hitches as high as one."""
    room = kit.amounts.room
    if isinstance(room.heading, str):
        return _ROW
    if room.heading is not None:
        return float(room.heading.mm)
    return sum([_ROW] * (_ROWS if room.heading_rows is None else room.heading_rows))


def asked_mm(kit: Kit) -> Fraction:
    """The height that is asked for; where it is as high as fits, all that ends, headings and hand leave."""
    if kit.weaving.height is not None:
        return kit.weaving.height.mm
    room = kit.amounts.room
    hand = _BY_NEEDLE if room.worked == "with a needle" else _BY_HAND
    hand = hand if room.hand is None else float(room.hand.mm)
    sliding = truth_of(kit).open_mm(kit.frame.ends, as_woven(kit))
    left = (float(woven_at(kit).mm) if sliding is None else sliding) - hand
    for _ in ("near", "far"):
        left -= heading_mm(kit) + (together_mm(kit) if sliding is None else 0.0)
    return Fraction(left).limit_denominator(_FINEST)


def bead_mm(plan: Plan) -> Fraction | None:
    """How high a bead is; None where nothing says."""
    weft, guess = plan.kit.amounts.weft, plan.amounts.picks_per_cm
    if weft.picks:
        return 2 * weft.picks.over.mm / weft.picks.number
    if weft.beads:
        return weft.beads.over.mm / weft.beads.number
    return 20 / Fraction(guess.value).limit_denominator(_FINEST) if guess else None


def rows_of(plan: Plan) -> int:
    """How many whole beads are woven, one laid upon another; none where their height is not known."""
    bead = bead_mm(plan)
    return int(asked_mm(plan.kit) / bead) if bead else 0


def woven_mm(plan: Plan) -> float:
    """How high is woven: in whole beads where one fits, else as high as asked for."""
    rows, bead = rows_of(plan), bead_mm(plan)
    return float(rows * bead) if rows and bead else float(asked_mm(plan.kit))
