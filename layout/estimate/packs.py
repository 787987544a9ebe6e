"""Every yarn that a kit takes, in every colour, as it is to be bought."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from functools import partial

from layout.estimate.warp_need import WarpNeed
from layout.estimate.weft_colours import Laid, laid_in_colours, sum_of, tail_of
from layout.estimate.weft_need import WeftNeed
from layout.kit.kit import Kit
from layout.kit.yarn_facts import YarnFacts, stated
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Stated
from layout.values.quantity import Quantity, combine
from layout.yardage.amounts import PackNeed
from layout.yardage.balls import MANY_COLOURS, SPARE_MANY
from layout.yardage.balls import SPARE as WEFT_SPARE
from layout.yardage.given import ColourGiven, WeftGiven
from layout.yardage.warp_thread import SPARE
from layout.yarns.label import StrandGiven


def warp_pack(kit: Kit, warp: WarpNeed) -> PackNeed:
    """The warp thread of one frame, which has its spare in it: what it is without that, and the spare."""
    given = kit.amounts.warp
    spare = stated(given.spare, SPARE, Stated.SPARE)
    bare = 1 / (1 + spare.value)
    grams = warp.total_g.scaled(bare) if warp.total_g else None
    return PackNeed("warp", kit.warp, "", grams, warp.total_m.scaled(bare), spare, ball_g=given.ball_g)


def spare_of(given: WeftGiven) -> Quantity:
    """The share of weft to spare: as stated, else more where there are many colours."""
    usual = SPARE_MANY if len(given.colours) >= MANY_COLOURS else WEFT_SPARE
    return stated(given.spare, usual, Stated.WEFT_SPARE)


def weft_packs(known: YarnFacts, kit: Kit, weft: WeftNeed, more: float) -> tuple[PackNeed, ...]:
    """Every yarn of the weft in every colour; `more` times what lies in the weaving is, besides, hem or waste.

    Strands of one yarn in one colour are added up, so that they are rounded to balls together.
    """
    given = kit.amounts.weft
    pack = partial(PackNeed, "weft", spare=spare_of(given), sampled=bool(given.beads or given.picks or given.sample))
    if known.weft is None or weft.laid_m is None:
        return tuple(_undescribed(kit, weft, 1 + more, pack))
    laid_mm = weft.laid_m.scaled(1000).scaled(1 + more)
    found: dict[tuple[StrandGiven, str], list[Laid]] = {}
    for laid in laid_in_colours(laid_mm, given, known.weft):
        yarn = replace(given.strands[laid.place], number=1, colour="")
        found.setdefault((yarn, laid.colour), []).append(laid)
    yarns = list(dict.fromkeys(yarn for yarn, _ in found))
    return tuple(
        pack(
            kit.weft if len(yarns) == 1 else _called(kit.weft, yarns.index(yarn)),
            colour,
            sum_of(of_it, [laid.number * laid.grams_per_mm for laid in of_it], laid_mm.reason),
            sum_of(of_it, [laid.number / 1000 for laid in of_it], laid_mm.reason),
            ball_g=yarn.ball_g,
        )
        for (yarn, colour), of_it in found.items()
    )


def _called(weft: str, place: int) -> str:
    return ENGLISH.say(Reason.STRAND, weft=weft, strand=place + 1)


def _undescribed(kit: Kit, weft: WeftNeed, times: float, pack: Callable[..., PackNeed]) -> Iterator[PackNeed]:
    """A weft of strands that are not described: its metres as a bundle, and grams where a sample was weighed."""
    given = kit.amounts.weft
    areas = given.colours or (ColourGiven("", Fraction(1)),)
    whole = sum(area.share for area in areas)
    for area in areas:
        share = float(area.share / whole)
        metres = weft.laid_m and _laid(weft.laid_m, share * times, 2 * area.lengths * float(tail_of(given)) / 1000)
        grams = weft.total_g.scaled(share * times) if weft.total_g and share else None
        if metres is not None or grams is not None:
            yield pack(kit.weft, area.name, grams, metres)


def _laid(whole: Quantity, share: float, tails: float) -> Quantity:
    return combine(lambda metres: metres * share + tails, whole.reason, whole)
