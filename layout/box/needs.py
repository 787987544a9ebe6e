"""What one box takes: yarns, cord and what is bought in, with what is to spare of each."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Literal, NamedTuple

from layout.box.shop import Unit
from layout.kit.yarn_facts import stated
from layout.messages.english import ENGLISH
from layout.messages.roles import Stated
from layout.messages.roles.buying import Buying
from layout.plan import Plan
from layout.values.quantity import Quantity, assumed, combine, measured
from layout.yardage.amounts import PackNeed
from layout.yardage.warp_thread import KNOT

Kind = Literal["warp", "weft", "leash_cord", "bought_in", "paper", "board"]

CORD_SPARE = 0.10
"""A cord is tied twice before it sits. Our own choice."""

_KNOTS = 2


class Taken(NamedTuple):
    """What is taken in one unit, and what is to spare besides."""

    amount: Quantity
    spare: Quantity


class Need(NamedTuple):
    """One thing that a box takes, in every unit in which that is known.

    `name` is what the kit calls it, `colour` empty where it has none. It is bought by the likely figure where a sample
    was counted or weighed (`sampled`), else by the highest. `ball_g` is what a ball weighs, where the kit says so.
    """

    kind: Kind
    name: str
    colour: str
    taken: Mapping[Unit, Taken]
    sampled: bool = False
    ball_g: float | None = None

    def spare(self, unit: Unit) -> float:
        """What is to spare of the figure by which it is bought."""
        spare = self.taken[unit].spare
        return spare.value if self.sampled else spare.high

    def figure(self, unit: Unit) -> float:
        """By which it is bought, with its spare."""
        amount = self.taken[unit].amount
        return (amount.value if self.sampled else amount.high) + self.spare(unit)


def spare_end(plan: Plan) -> Quantity:
    """A spare end of the warp in mm: half of the way there and back, and a knot at either end."""
    knot = stated(plan.kit.amounts.warp.knot, KNOT, Stated.KNOT)
    said = ENGLISH.say(Buying.SPARE_END)
    return combine(lambda way, each: way / 2 + _KNOTS * each, said, plan.amounts.warp_per_wind_mm, knot)


def needs(plan: Plan) -> tuple[Need, ...]:
    """All that one box of this kit takes, in the order in which it is packed."""
    warp, *weft = plan.amounts.packs
    return (_warp(plan, warp), *map(_weft, weft), _cord(plan), *_bought_in(plan))


def _warp(plan: Plan, pack: PackNeed) -> Need:
    """The warp with its spare, and the spare ends besides."""
    yarn, number = plan.kit.amounts.warp.yarn(), plan.kit.box.spare_ends
    more_m = spare_end(plan).scaled(number / 1000) if number else None
    more_g = more_m.scaled(float(yarn.grams_per_metre)) if more_m and yarn else None
    known: tuple[tuple[Unit, Quantity | None, Quantity | None], ...]
    known = (("g", pack.grams, more_g), ("m", pack.metres, more_m))
    taken: dict[Unit, Taken] = {
        unit: _with_ends(amount, pack.spare, more) for unit, amount, more in known if amount is not None
    }
    return Need("warp", pack.yarn, "", taken, pack.sampled, pack.ball_g)


def _with_ends(woven: Quantity, spare: Quantity, more: Quantity | None) -> Taken:
    whole = woven if more is None else combine(lambda one, other: one + other, woven.reason, woven, more)
    return Taken(whole, _share(woven, spare))


def _weft(pack: PackNeed) -> Need:
    known: tuple[tuple[Unit, Quantity | None], ...] = (("g", pack.grams), ("m", pack.metres))
    taken: dict[Unit, Taken] = {
        unit: Taken(amount, _share(amount, pack.spare)) for unit, amount in known if amount is not None
    }
    return Need("weft", pack.yarn, pack.colour, taken, pack.sampled, pack.ball_g)


def _share(amount: Quantity, share: Quantity) -> Quantity:
    return combine(lambda one, other: one * other, amount.reason, amount, share)


def _cord(plan: Plan) -> Need:
    together = plan.amounts.leashes.together.scaled(1 / 1000)
    spare = _share(together, assumed(CORD_SPARE, ENGLISH.say(Buying.CORD_SPARE)))
    return Need("leash_cord", "", "", {"m": Taken(together, spare)})


def _bought_in(plan: Plan) -> Iterator[Need]:
    said = ENGLISH.say(Buying.NUMBER)
    for item in plan.kit.box.items(plan.words):
        yield Need("bought_in", item.name, "", {"piece": Taken(measured(item.number, said), measured(0, said))})
