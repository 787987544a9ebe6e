"""The way of one pick through a warp that stays straight, and how many picks lie in a millimetre.

F. T. Peirce (J. Text. Inst. 1937, T45) gives the geometry of plain cloth: p = (l - D t) cos t + D sin t and
h = (l - D t) sin t + D (1 - cos t), with h1 + h2 = D = d1 + d2. Where the warp stays straight the weft alone is
crimped: h = D, and so sin t = D / p and l = sqrt(p^2 - D^2) + D asin(D / p). Diameters are compressed ones.
"""

from __future__ import annotations

import math

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed, YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import ROUNDING, Number, exactly, plain
from layout.values.quantity import Quantity, assumed, computed, measured
from layout.yarns.diameter import Diameter, Kind, together

UPPER_BOUND = assumed(0, ENGLISH.say(Assumed.UPPER_BOUND))


def pick_length(pitch_mm: Number, diameters_mm: Number) -> float:
    """The weft in mm from one end to the next, over straight ends: sqrt(p^2 - D^2) + D asin(D / p).

    D is warp and weft diameter together; FieldError if it exceeds the pitch, since such ends do not fit.
    """
    pitch = float(pitch_mm)
    across = float(diameters_mm)
    if across > pitch * (1 + ROUNDING):
        got, example = f"{plain(across)} mm", f"{plain(0.6 * pitch)} mm"
        raise FieldError("diameters", YardageNeed.DIAMETERS, got, example, pitch=plain(pitch))
    across = min(across, pitch)
    return math.sqrt(pitch**2 - across**2) + across * math.asin(across / pitch)


def take_up(pitch_mm: Number, warp: Diameter, weft: Diameter) -> Quantity:
    """The weft take-up l / p - 1, from 0 to pi / 2 - 1 (57 %), with D = d_warp + d_weft.

    Compressed diameters give the figure itself; soft ones only an upper bound, and it says so. MixedKindsError for one
    of each.
    """
    both = together((warp, weft))
    more = pick_length(pitch_mm, both.mm) / float(pitch_mm) - 1
    reason = ENGLISH.say(Computed.TAKE_UP, ratio=plain(both.mm / float(pitch_mm)))
    if both.kind is Kind.SOFT:
        return computed(more, reason, both.figure, UPPER_BOUND)
    return computed(more, reason, both.figure)


def take_up_measured(straight_mm: Number, woven_mm: Number) -> Quantity:
    """The weft take-up from a pick drawn out of a sample: its straight length over the width it had, less 1."""
    straight = exactly(straight_mm)
    woven = exactly(woven_mm)
    reason = ENGLISH.say(Computed.PICK_DRAWN, straight=plain(straight), woven=plain(woven))
    return measured(float(straight / woven - 1), reason)


def picks_counted(picks: Number, over_mm: Number) -> Quantity:
    """Picks per mm counted on a sample."""
    count = int(picks)
    over = exactly(over_mm)
    return measured(float(count / over), ENGLISH.say(Computed.PICKS_COUNTED, picks=count, over=plain(over)))


def picks_from_beads(beads: Number, over_mm: Number) -> Quantity:
    """Picks per mm from beads counted up one end: a bead shows on every second pick only, so two picks a bead."""
    count = int(beads)
    over = exactly(over_mm)
    return measured(float(2 * count / over), ENGLISH.say(Computed.BEADS_COUNTED, beads=count, over=plain(over)))


def picks_estimated(weft: Diameter, beat: Number) -> Quantity:
    """Picks per mm guessed from the bundle: 2 beat / d, always assumed.

    `beat` is how much of the height the beads fill up one end: 1 is beaten until they touch, 0.7 leaves air.
    """
    firm = exactly(beat)
    role = Assumed.PICKS_GUESSED_AT_MOST if weft.kind is Kind.COMPRESSED else Assumed.PICKS_GUESSED
    guess = assumed(0, ENGLISH.say(role, kind=weft.named, beat=plain(firm)))
    reason = ENGLISH.say(Computed.TWO_PICKS, high=plain(weft.mm))
    return computed(2 * float(firm) / weft.mm, reason, weft.figure, guess)
