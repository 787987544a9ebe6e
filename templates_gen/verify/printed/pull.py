"""How hard one thread of a warp pulls, from the kit's numbers alone."""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction
from itertools import product

from layout.frames.strength import Dip, Pluck
from layout.kit.kit import Kit

Span = tuple[float, float, float]
"""The least, the likely and the greatest of a number."""

_HAND: Span = (1.0, 3.0, 8.0)
_TIGHT: Span = (1.5, 4.5, 9.0)
"""What a thread pulls in N, wound by hand, or tightened where its weight is not known: said once more on purpose."""
_COTTON, _OTHER = (1.5, 1.7, 2.0), (0.5, 1.7, 6.0)
_SAME = 1e-9


def pulls_of(kit: Kit) -> Span:
    """The pull of one thread in N."""
    stated, tex = kit.strength.tension, tex_of(kit)
    facts = [(float(stated.newtons),) * 3] if stated else []
    facts += _readings(kit, tex)
    if not facts:
        return _usual(kit, tex)
    low, likely, high = facts[0]
    torn = False
    for reading in facts[1:]:
        least, most = max(low, reading[0]), min(high, reading[2])
        if least - most > _SAME * max(least, most):
            torn, least, most = True, min(low, reading[0]), max(high, reading[2])
        low, high = min(least, most), max(least, most)
        likely = min(max(reading[1], low), high)
    usual = _usual(kit, tex)
    if stated or torn or low > usual[2] or high < usual[0]:
        return low, likely, high
    low, high = max(low, usual[0]), min(high, usual[2])
    return low, min(max(likely, low), high), high


def tex_of(kit: Kit) -> Fraction | None:
    """How heavy a thread of the warp is in g per km; None where the kit does not say."""
    yarn = kit.amounts.warp.yarn()
    return yarn.tex if yarn else None


def stretch_of(kit: Kit, tex: Fraction) -> Span:
    """The pull in N that would stretch a thread to twice its length."""
    least, likely, most = _COTTON if kit.amounts.warp.fibre == "cotton" else _OTHER
    return least * float(tex), likely * float(tex), most * float(tex)


def _usual(kit: Kit, tex: Fraction | None) -> Span:
    if kit.strength.tensioner == "none":
        return _HAND
    if tex is None:
        return _TIGHT
    least, likely, most = (min(float(tex * Fraction(k, 1000)), 15.0) for k in (5, 15, 30))
    return least, likely, most


def _readings(kit: Kit, tex: Fraction | None) -> Iterator[Span]:
    if tex is not None and kit.strength.dip:
        yield _by_dip(kit.strength.dip, stretch_of(kit, tex))
    if tex is not None and kit.strength.pluck:
        yield _by_pitch(kit.strength.pluck, float(tex))


def _by_dip(dip: Dip, stretch: Span) -> Span:
    """Half the load is carried by each half of the thread, at the slope that the dip gives it."""
    half, deep = float(dip.length.mm) / 2, float(dip.depth.mm)
    off = min(0.5, deep / 2)

    def at_rest(aside: float, stiff: float) -> float:
        slope = math.atan2(aside, half)
        return max(float(dip.load.newtons) / 2 / math.sin(slope) - stiff * (1 / math.cos(slope) - 1), 0.0)

    every = [at_rest(*corner) for corner in product((deep - off, deep + off), (stretch[0], stretch[2]))]
    return min(every), at_rest(deep, stretch[1]), max(every)


def _by_pitch(pluck: Pluck, tex: float) -> Span:
    """A wave runs twice the free length in one period: v = 2 L f, and T = mu v^2."""
    metres, hertz = float(pluck.length.mm) / 1000, float(pluck.hertz)
    every = [tex * share / 1e6 * (2 * metres * f) ** 2 for share, f in product((0.94, 1.06), (hertz - 2, hertz + 2))]
    return min(every), tex / 1e6 * (2 * metres * hertz) ** 2, max(every)
