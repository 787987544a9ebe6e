"""How much warp thread a frame takes: the path, knots, heading rows, spare, and what tension stretches."""

from __future__ import annotations

from fractions import Fraction

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed
from layout.values.limits import plain
from layout.values.quantity import Quantity, assumed, combine

KNOT = assumed(100.0, ENGLISH.say(Assumed.KNOT))
TAIL = assumed(150.0, ENGLISH.say(Assumed.TAIL))
SPARE = assumed(0.1, ENGLISH.say(Assumed.SPARE))
STRETCH = assumed(0.0, ENGLISH.say(Assumed.STRETCH), 0.0, 0.02)


def weight(length: Quantity, tex: Fraction) -> Quantity:
    """The weight in g of a length in mm at `tex` grams in a kilometre."""
    values = {"metres": plain(round(length.value / 1000, 2)), "tex": plain(round(float(tex), 1))}
    said = ENGLISH.say(Computed.WEIGHT, **values)
    return combine(lambda mm: mm / 1e6 * float(tex), said, length)


def warp_thread(
    path: Quantity,
    heading: Quantity,
    knots: int = 2,
    knot: Quantity = KNOT,
    stretch: Quantity = STRETCH,
    spare: Quantity = SPARE,
) -> Quantity:
    """All the warp thread in mm as it leaves the ball, not under tension.

    The path is covered by stretched thread, so it takes path / (1 + stretch); knots and heading rows are added, then
    the spare share. Doubled ends are counted in the path by the caller.
    """

    def total(way: float, rows: float, longer: float, extra: float, each: float) -> float:
        return (way / (1 + longer) + rows + knots * each) * (1 + extra)

    values = {"stretch": plain(stretch.value), "knots": knots, "spare": plain(100 * spare.value)}
    return combine(total, ENGLISH.say(Computed.WARP, **values), path, heading, stretch, spare, knot, falling=(2,))
