"""What yarn to buy: hems or waste and spare on top of what is woven."""

from __future__ import annotations

from typing import NamedTuple

from layout.estimate.packs import spare_of, weft_packs
from layout.estimate.weft_need import WeftNeed
from layout.kit.kit import Kit
from layout.kit.yarn_facts import YarnFacts
from layout.messages.english import ENGLISH
from layout.messages.roles import Computed, YardageNeed
from layout.values.limits import plain
from layout.values.quantity import Quantity, combine
from layout.yardage.amounts import PackNeed
from layout.yardage.weft_total import area_notes, hem_length

BEAD_OF_PITCH = (0.18, 0.50)
"""How high a bead stands on published weft-faced pieces, as a share of the pitch.

Navajo blanket NMAI 22.1688 (Smithsonian): 8 ends an inch under 40, 52 and 80 picks; "Moki" sarapes: 8 under 42 and 48.
The least and the most are set about these. Our choice.
"""


class Bought(NamedTuple):
    """In m of the bundle, and every yarn to buy."""

    hem_m: Quantity | None
    spare_m: Quantity | None
    to_buy_m: Quantity | None
    packs: tuple[PackNeed, ...]
    notes: tuple[str, ...]


def weft_bought(kit: Kit, known: YarnFacts, weft: WeftNeed, woven: tuple[Quantity, Quantity], pitch: float) -> Bought:
    """What to buy for a weaving of the size `woven` at a `pitch`, all in mm, and what is unlikely about its weft."""
    notes = _bead_notes(weft, pitch) + (area_notes(weft.per_m2) if weft.per_m2 else ())
    given = kit.amounts
    hem_mm = float(given.hem.mm) if given.hem else 0.0
    packs = weft_packs(known, kit, weft, 2 * hem_mm / woven[1].value)
    if weft.laid_m is None or weft.total_m is None:
        return Bought(None, None, None, packs, notes)
    hem = hem_length(hem_mm, weft.laid_m, woven[1])
    spare = spare_of(given.weft)
    said = {"spare": plain(100 * spare.value)}
    more = combine(_share, ENGLISH.say(Computed.SPARE_WEFT, **said), weft.total_m, hem, spare)
    all_of_it = combine(_sum, ENGLISH.say(Computed.WITH_SPARE, **said), weft.total_m, hem, more)
    return Bought(hem if given.hem else None, more, all_of_it, packs, notes)


def _share(laid: float, hem: float, spare: float) -> float:
    return (laid + hem) * spare


def _sum(laid: float, hem: float, more: float) -> float:
    return laid + hem + more


def _bead_notes(weft: WeftNeed, pitch: float) -> tuple[str, ...]:
    """A sentence where beads stand lower, or higher, than on weft-faced pieces; else nothing."""
    share = weft.bead.value / pitch if weft.bead else BEAD_OF_PITCH[0]
    if BEAD_OF_PITCH[0] <= share <= BEAD_OF_PITCH[1]:
        return ()
    low, high = (plain(round(100 * bound)) for bound in BEAD_OF_PITCH)
    return (ENGLISH.say(YardageNeed.BEAD_ODD, share=plain(round(100 * share)), low=low, high=high),)
