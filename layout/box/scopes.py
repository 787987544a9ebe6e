"""What to buy for one kit of a range, for a class with it, and for the whole run."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Literal, NamedTuple

from layout.box.buying import NO_MATERIAL, Material, Purchase, Wanted, purchases
from layout.box.needs import Need
from layout.box.shop import Shop


class Boxed(NamedTuple):
    """So many `boxes` of the kit of that name, each of which takes these `needs`."""

    name: str
    needs: tuple[Need, ...]
    boxes: int


class Scope(NamedTuple):
    """What is bought for what: all boxes of one `kit`, one for everybody in a class, or all boxes of a run."""

    scope: Literal["kit", "class", "run"]
    kit: str
    boxes: int
    bought: tuple[Purchase, ...]


def to_buy(kits: Sequence[Boxed], shop: Shop, material: Material = NO_MATERIAL) -> tuple[Scope, ...]:
    """Each kit, a class with each, the run. Packs are rounded up in each, so those of kits together may be more.

    Paper and boards are those of the run. The class is left out where the shop says none.
    """
    return tuple(_scopes(kits, shop, material))


def _scopes(kits: Sequence[Boxed], shop: Shop, material: Material) -> Iterator[Scope]:
    for name, needs, boxes in kits:
        yield Scope("kit", name, boxes, purchases([Wanted(needs, boxes)], shop))
    for name, needs, _ in kits if shop.people else ():
        yield Scope("class", name, shop.people or 0, purchases([Wanted(needs, shop.people or 0)], shop))
    whole = [Wanted(needs, boxes) for _, needs, boxes in kits]
    yield Scope("run", "", sum(boxes for _, boxes in whole), purchases(whole, shop, material))
