"""What a packed box weighs, as far as that is known."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import NamedTuple

from layout.box.needs import Need, needs
from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles.buying import Weighed
from layout.plan import Plan
from layout.values.quantity import Quantity, assumed, combine, measured

PAPER_G_PER_M2 = 80
"""What office paper weighs; assumed, and said where a weight is."""

DENSITIES: Mapping[str, float] = {"birch plywood": 0.68}
"""What a cubic centimetre of a stock weighs in g (common practice, no source); any other stock is not known."""

_MM2_PER_M2, _MM3_PER_CM3 = 1e6, 1000


class Boards(NamedTuple):
    """What is cut for one box: its area in mm2, how thick, and of what."""

    area: float
    thickness: float
    material: str


class Weight(NamedTuple):
    """In g: what is known to weigh something, and what it is `without`, since its weight is not known."""

    grams: Quantity
    without: tuple[Message | str, ...]


def packed(plan: Plan, paper_mm2: float = 0.0, boards: Boards | None = None) -> Weight:
    """The box of this kit with all that lies in it, `paper_mm2` of printed paper and what is cut from `boards`."""
    known, without = list[Quantity](), list[Message | str]()
    for name, grams in _parts(plan, paper_mm2, boards):
        if grams is None:
            without.append(name)
        else:
            known.append(grams)
    said = ENGLISH.say(Weighed.SUM)
    return Weight(combine(lambda *each: sum(each), said, *known) if known else measured(0, said), tuple(without))


def _parts(plan: Plan, paper_mm2: float, boards: Boards | None) -> Iterator[tuple[Message | str, Quantity | None]]:
    """Each thing by its name, and what it weighs; None where that is not known."""
    box, said = plan.kit.box, ENGLISH.say(Weighed.STATED)
    if box.frame:
        yield Message(Weighed.FRAME), None
    for need in needs(plan):
        if need.kind == "leash_cord":
            yield Message(Weighed.CORD), None
        elif need.kind in ("warp", "weft"):
            yield need.name, _with_spare(need)
    for item in box.items(plan.words):
        yield item.name, None if item.grams is None else measured(float(item.number * item.grams), said)
    if paper_mm2:
        grams = paper_mm2 / _MM2_PER_M2 * PAPER_G_PER_M2
        yield Message(Weighed.PAPER), assumed(grams, ENGLISH.say(Weighed.PAPER_IS, grams=PAPER_G_PER_M2))
    if boards is not None:
        each = DENSITIES.get(boards.material.lower())
        volume = boards.area * boards.thickness / _MM3_PER_CM3
        yield boards.material, None if each is None else assumed(volume * each, ENGLISH.say(Weighed.WOOD_IS))
    yield Message(Weighed.EMPTY), None if box.empty is None else measured(float(box.empty), said)


def _with_spare(need: Need) -> Quantity | None:
    """A yarn as it lies in the box: what is taken and what is to spare."""
    if "g" not in need.taken:
        return None
    amount, spare = need.taken["g"]
    return combine(lambda one, other: one + other, amount.reason, amount, spare)
