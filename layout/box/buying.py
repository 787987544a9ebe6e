"""What to buy for a number of boxes: needs added up over all of them, and rounded up to packs once."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.box.needs import Kind, Need
from layout.box.shop import Pack, Shop, Unit
from layout.values.exact_sum import ExactSum
from layout.values.limits import ROUNDING

MISPRINTS, LEAST_MISPRINTS = Fraction(2, 100), 2
"""Of paper so much is to spare, and at least so many sheets. Our own choice."""


class Wanted(NamedTuple):
    """So many boxes that take these needs each."""

    needs: tuple[Need, ...]
    boxes: int


class Material(NamedTuple):
    """What a run is made of besides: sheets of paper and boards, and what a board costs."""

    sheets: int = 0
    boards: int = 0
    board_price: Fraction | None = None


NO_MATERIAL = Material()

Key = tuple[Kind, str, str, Unit, Pack | None]
"""What a thing is, in what it counts, and how it is sold."""


@dataclass(frozen=True, slots=True)
class Purchase:
    """One thing to buy. All amounts are exact, in `unit`.

    `likely`, `low` and `high` are what all boxes take, `spare` what is to spare besides, `needed` that by which packs
    are counted, its spare with it. Without a `pack`, or one whose size is not known, `packs` and `left` are None: so
    much is needed, and how it is sold is not known. `paid` is None where the price is not known.
    """

    kind: Kind
    name: str
    colour: str
    unit: Unit
    likely: Fraction
    low: Fraction
    high: Fraction
    spare: Fraction
    needed: Fraction
    pack: Pack | None = None

    @property
    def key(self) -> Key:
        """What it is, and how it is sold."""
        return self.kind, self.name, self.colour, self.unit, self.pack

    @property
    def packs(self) -> int | None:
        """The least number of packs that holds what is needed; none where nothing is."""
        if self.pack is None or self.pack.size is None:
            return None
        return math.ceil(self.needed * (1 - Fraction(ROUNDING)) / self.pack.size) or int(self.needed > 0)

    @property
    def left(self) -> Fraction | None:
        """What is left of the packs where the likely figure is taken, before the spare is used."""
        packs = self.packs
        if packs is None or self.pack is None or self.pack.size is None:
            return None
        return max(packs * self.pack.size - self.likely, Fraction(0))

    @property
    def paid(self) -> Fraction | None:
        """What the packs cost; nothing where none is bought."""
        if self.needed == 0:
            return Fraction(0)
        if self.packs is None or self.pack is None or self.pack.price is None:
            return None
        return self.packs * self.pack.price


class Basket:
    """What boxes take, added up: a sum a thing, however many boxes there are."""

    def __init__(self, shop: Shop) -> None:
        self._shop = shop
        self._sums: dict[Key, _Sums] = {}

    def add(self, needs: Iterable[Need], boxes: int) -> None:
        """So many boxes that take these `needs` each."""
        for need in needs:
            self._sums.setdefault(key_of(need, self._shop), _Sums()).add(need, unit_of(need, self._shop), boxes)

    def bought(self, material: Material = NO_MATERIAL) -> tuple[Purchase, ...]:
        """All that is to be bought: each yarn in each colour, cord, things, then paper and boards."""
        each = (sums.purchase(*key) for key, sums in self._sums.items())
        return tuple(sorted(each, key=lambda one: _ORDER.index(one.kind))) + tuple(_made_of(material, self._shop))


class _Sums:
    """What all boxes take of one thing: likely, at least, at most, to spare, and by what it is bought."""

    __slots__ = ("_of_it",)

    def __init__(self) -> None:
        self._of_it = tuple(ExactSum() for _ in range(5))

    def add(self, need: Need, unit: Unit, boxes: int) -> None:
        """What so many boxes take."""
        amount = need.taken[unit].amount
        figures = amount.value, amount.low, amount.high, need.spare(unit), need.figure(unit)
        for whole, each in zip(self._of_it, figures, strict=True):
            whole.add(each, boxes)

    def purchase(self, kind: Kind, name: str, colour: str, unit: Unit, pack: Pack | None) -> Purchase:
        """The one thing to buy that it comes to."""
        likely, low, high, spare, needed = (each.value for each in self._of_it)
        return Purchase(kind, name, colour, unit, likely, low, high, spare, needed, pack)


def purchases(wanted: Iterable[Wanted], shop: Shop, material: Material = NO_MATERIAL) -> tuple[Purchase, ...]:
    """All that is to be bought for these boxes, in the order of `Basket.bought`."""
    basket = Basket(shop)
    for needs, boxes in wanted:
        basket.add(needs, boxes)
    return basket.bought(material)


_ORDER: tuple[Kind, ...] = ("warp", "weft", "leash_cord", "bought_in")


def key_of(need: Need, shop: Shop) -> Key:
    """What is bought together: the same thing, sold in the same packs."""
    return need.kind, need.name, need.colour, unit_of(need, shop), pack_of(need, shop)


def pack_of(need: Need, shop: Shop) -> Pack | None:
    """How a thing is sold: as the shop says, else in the balls that the kit names; None where nobody says."""
    pack = _said(need, shop)
    ball = None if need.ball_g is None else Fraction(need.ball_g)
    if pack is None:
        return Pack("", ball, "g") if ball and "g" in need.taken else None
    if pack.size is None:
        return Pack(pack.pack, ball, "g", pack.price)
    return pack if pack.unit in need.taken else None


def _said(need: Need, shop: Shop) -> Pack | None:
    if need.kind == "warp":
        return shop.warp
    if need.kind == "leash_cord":
        return shop.leash_cord
    if need.kind == "bought_in":
        return shop.also.get(need.name)
    return next((shop.colours[name] for name in names_of(need) if name in shop.colours), shop.weft)


def names_of(need: Need) -> tuple[str, ...]:
    """By what a yarn of the weft can be named in [buy]: yarn and colour, colour, yarn."""
    return (f"{need.name}, {need.colour}", need.colour, need.name) if need.colour else (need.name,)


def unit_of(need: Need, shop: Shop) -> Unit:
    """In what a thing is bought: as its packs are, else in g where its weight is known."""
    pack = pack_of(need, shop)
    if pack is not None and pack.unit in need.taken:
        return pack.unit
    return next(unit for unit in ("g", "m", "piece") if unit in need.taken)


def figure_of(need: Need, unit: Unit) -> Fraction:
    """By which one box counts, exactly."""
    return Fraction(need.figure(unit))


def _made_of(material: Material, shop: Shop) -> Iterator[Purchase]:
    """Paper with what is misprinted, and boards."""
    if material.sheets:
        sheets = Fraction(material.sheets)
        spare = Fraction(max(LEAST_MISPRINTS, math.ceil(sheets * MISPRINTS)))
        yield Purchase("paper", "", "", "sheet", sheets, sheets, sheets, spare, sheets + spare, shop.paper)
    if material.boards:
        boards = Fraction(material.boards)
        pack = Pack("", Fraction(1), "piece", material.board_price)
        yield Purchase("board", "", "", "piece", boards, boards, boards, Fraction(0), boards, pack)
