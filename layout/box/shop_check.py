"""What a maker says of buying must be of something that a kit of the range has."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from layout.box.buying import names_of
from layout.box.needs import Need
from layout.box.shop import Shop
from layout.kit.likeness import closest
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles.buying import BuyNeed
from layout.values.errors import FieldError, leave_out, shown
from layout.values.uses import Use


def shop_errors(shop: Shop, boxes: Iterable[Sequence[Need]]) -> Iterator[FieldError]:
    """A refusal of each colour, yarn or thing in [buy] that none of these boxes takes."""
    every = [need for needs in boxes for need in needs]
    weft = dict.fromkeys(name for need in every if need.kind == "weft" for name in names_of(need))
    things = dict.fromkeys(need.name for need in every if need.kind == "bought_in")
    for key, said, known in (("buy.colours", shop.colours, weft), ("buy.also", shop.also, things)):
        for row, name in enumerate(said, 1):
            if name not in known:
                yield _unknown(key, name, list(known), row)


def _unknown(key: str, name: str, known: list[str], row: int) -> FieldError:
    if not known:
        return FieldError(key, BuyNeed.NONE_OF_A_KIT, shown(name), leave_out(key.rpartition(".")[2]))
    meant = closest(name, known)
    needed = Message(BuyNeed.OF_A_KIT, {"names": ENGLISH.listed(known)})
    if meant:
        needed = Message(BuyNeed.OF_A_KIT_MEANT, {"meant": meant})
    named = FieldError(key, needed, shown(name), f'name = "{meant or known[0]}"')
    return named.offering(*(Use(f"{key}[{row}].name", each) for each in ([meant] if meant else known)))
