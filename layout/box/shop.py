"""How a maker buys and sells: packs and their prices, work, margins, quantities, a class. Money is exact.

It stands in the range file and in no kit, so that no file for a buyer can carry it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction
from types import MappingProxyType
from typing import Literal, NamedTuple

Unit = Literal["g", "m", "sheet", "piece"]
"""In what a thing is counted that is bought."""


@dataclass(frozen=True, slots=True)
class Pack:
    """How a thing is sold: what a pack is called, how much of the `unit` is in it, what it costs.

    A `size` of None is that of the ball that the kit names; a `price` of None is not known.
    """

    pack: str
    size: Fraction | None
    unit: Unit
    price: Fraction | None = None


class Step(NamedTuple):
    """From so many boxes on (`start`) the price of each is less by a share."""

    start: int
    less: Fraction


ONE = (Step(1, Fraction(0)),)
"""The steps of a maker who sells each box at one price."""


@dataclass(frozen=True, slots=True)
class Shop:
    """All of it; what was left out is None or empty.

    `weft` holds for every yarn of the weft without an entry in `colours`, which go by the name of a colour, of a yarn,
    or of both ("yarn, colour"). An `hour` of work has a price, a box takes so many `minutes`; `margin` is the share of
    the price that is left once the costs are paid, and prices are rounded up to steps of `round_to`.
    """

    currency: str = ""
    warp: Pack | None = None
    weft: Pack | None = None
    colours: Mapping[str, Pack] = field(default_factory=lambda: MappingProxyType({}))
    leash_cord: Pack | None = None
    paper: Pack | None = None
    also: Mapping[str, Pack] = field(default_factory=lambda: MappingProxyType({}))
    hour: Fraction | None = None
    minutes: Fraction | None = None
    margin: Fraction | None = None
    steps: tuple[Step, ...] = ONE
    round_to: Fraction | None = None
    people: int | None = None
    at_a_table: int | None = None

    @property
    def unpriced(self) -> Shop:
        """The same without any money: what may be said to whoever is not the maker."""

        def bare(pack: Pack | None) -> Pack | None:
            return pack and replace(pack, price=None)

        def each(packs: Mapping[str, Pack]) -> Mapping[str, Pack]:
            return {name: replace(pack, price=None) for name, pack in packs.items()}

        return Shop(
            warp=bare(self.warp),
            weft=bare(self.weft),
            colours=each(self.colours),
            leash_cord=bare(self.leash_cord),
            paper=bare(self.paper),
            also=each(self.also),
            people=self.people,
            at_a_table=self.at_a_table,
        )
