"""From a kit and its warp to all its amounts."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from functools import partial

from layout.estimate.bought import weft_bought
from layout.estimate.height import Woven, height_asked, woven_height
from layout.estimate.narrowing import Soft, narrows_most
from layout.estimate.packs import warp_pack
from layout.estimate.pairing_advice import guess_of, pairing_of
from layout.estimate.room_left import room_left, weavable_of
from layout.estimate.warp_need import ADD_WARP, warp_need
from layout.estimate.weft_need import WeftNeed, picks_known, weft_need
from layout.kit.kit import Kit
from layout.kit.yarn_facts import YarnFacts, stated, yarn_facts
from layout.messages.english import ENGLISH
from layout.messages.roles import Reason, Stated
from layout.values.quantity import Quantity, assumed, combine, measured
from layout.warps.warp import Warp
from layout.yardage.amounts import Amounts
from layout.yardage.balls import balls
from layout.yardage.given import AmountsGiven
from layout.yardage.heading import heading_of
from layout.yardage.shrinkage import left_of, shrunk_by, to_make
from layout.yardage.take_up import bubble_rise
from layout.yardage.weft_total import drawn_in

# Up to which share each may be where the kit does not say is our choice.
DRAW_IN = assumed(0.0, ENGLISH.say(Reason.NO_DRAW_IN, most=5), 0.0, 0.05)
SHRINKAGE = assumed(0.0, ENGLISH.say(Reason.NO_SHRINKAGE, most=5), 0.0, 0.05)


def estimate(kit: Kit, warp: Warp, known: YarnFacts) -> Amounts:
    """All amounts of `kit`, of whose yarns this is `known`.

    Raises FieldError where its height cannot be woven in its frame.
    """
    given = kit.amounts
    weavable = weavable_of(kit)
    thread = warp_need(kit, warp, known)
    weft = _weft_of(kit, warp, weavable, given, known)
    high = _height(kit, weavable, given, weft.picks)
    woven = (_width(warp, _draw_in(given)), high.height)
    room = room_left(kit, warp, known.thread_at(warp.pitch), weavable, high.height)
    heading = heading_of(kit.amounts.room)
    notes, warnings = pairing_of(warp.sett, known)
    bought = weft_bought(kit, known, weft, woven, float(warp.pitch))
    cord = warp_pack(kit, thread)
    of_warp, of_weft = balls((cord,)), balls(bought.packs)
    finished, before = _finished(woven, _shrinkage(given))
    guess = guess_of(known)
    amounts = Amounts(
        warp_per_wind_mm=thread.per_wind_mm,
        warp_total_m=thread.total_m,
        warp_total_g=thread.total_g,
        heading_thread_m=thread.heading_m,
        weavable_height_mm=room.weavable,
        fringe_near_mm=room.near,
        fringe_far_mm=room.far,
        shed_stick_mm=room.stick,
        leashes=room.leashes,
        picks_per_cm=weft.picks.scaled(10) if weft.picks else None,
        weft_take_up=weft.take_up,
        weft_total_m=weft.total_m,
        weft_total_g=weft.total_g,
        weft_strands=known.weft.number if known.weft else 1,
        weft_by_colour=weft.colours,
        woven_mm=woven,
        finished_mm=finished,
        for_finished_mm=before,
        notes=notes + of_warp.notes + bought.notes + of_weft.notes,
        to_add=(*(() if known.warp else (ADD_WARP,)), *weft.to_add),
        warp_thickness_mm=known.lying,
        weft_pressed_mm=known.weft_thick.pressed if known.weft_thick else None,
        weft_soft_mm=known.weft_thick.soft if known.weft_thick else None,
        bead_mm=weft.bead,
        bubble_rise=bubble_rise(weft.take_up) if weft.take_up else None,
        weft_g_per_m2=weft.per_m2,
        weft_tails_m=weft.tails_m if weft.total_m else None,
        weft_hem_m=bought.hem_m,
        weft_spare_m=bought.spare_m,
        weft_to_buy_m=bought.to_buy_m,
        packs=(cord, *bought.packs),
        balls=of_warp.balls + of_weft.balls,
        woven_rows=high.rows,
        heading_rows=None if heading.hitched else heading.rows,
        first_guess_per_cm=guess.per_mm.scaled(10) if guess else None,
        narrowing=partial(narrows_most, given, weft, _soft(known), partial(_weft_were, kit, warp, weavable)),
    )
    return replace(amounts, warnings=(*warnings, *amounts.conflicts))


def facts_of(kit: Kit, given: AmountsGiven | None = None) -> YarnFacts:
    """What `kit` lets us know of its yarns, or would, were this `given` of them."""
    return yarn_facts(given or kit.amounts, 2 if kit.weaving.doubled_warp else 1)


def _soft(known: YarnFacts) -> Soft:
    warp, weft = known.warp_thick, known.weft_thick
    return Soft(warp.soft if warp else None, weft.soft if weft else None)


def _draw_in(given: AmountsGiven) -> Quantity:
    return stated(given.draw_in, DRAW_IN, Stated.DRAW_IN)


def _weft_were(kit: Kit, warp: Warp, weavable: Quantity, given: AmountsGiven) -> WeftNeed:
    """The weft of `kit`, were this given of its yarns and of what it makes."""
    return _weft_of(kit, warp, weavable, given, facts_of(kit, given))


def _weft_of(kit: Kit, warp: Warp, weavable: Quantity, given: AmountsGiven, known: YarnFacts) -> WeftNeed:
    """The weft of `kit`, with this given and known of its yarns and of what it makes."""
    draw = _draw_in(given)
    pitch = combine(lambda share: drawn_in(warp.pitch, share), ENGLISH.say(Reason.PITCH), draw, falling=(0,))
    high = _height(kit, weavable, given, picks_known(known, given.weft, pitch))
    return weft_need(known, given.weft, pitch, _width(warp, draw), high.height)


def _width(warp: Warp, draw: Quantity) -> Quantity:
    """The width in mm as it is woven."""
    return combine(lambda share: drawn_in(warp.width, share), ENGLISH.say(Reason.WIDTH), draw, falling=(0,))


def _height(kit: Kit, weavable: Quantity, given: AmountsGiven, picks_per_mm: Quantity | None) -> Woven:
    """The height as it is woven."""
    return woven_height(height_asked(kit, weavable), given.weft, picks_per_mm)


def _shrinkage(given: AmountsGiven) -> Quantity:
    """What is lost in washing, measured on a sample or stated."""
    if given.washed is None:
        return stated(given.shrinkage, SHRINKAGE, Stated.SHRINKAGE)
    lost = shrunk_by(given.washed.before.mm, given.washed.after.mm)
    return measured(float(lost), ENGLISH.say(Reason.SHRINKAGE))


def _finished(
    woven: tuple[Quantity, Quantity], lost: Quantity
) -> tuple[tuple[Quantity, Quantity], tuple[Quantity, Quantity]]:
    """What shrinkage leaves of the size woven, and what to weave for that size to be left: divided, never added."""
    left = tuple(combine(_left_of, ENGLISH.say(Reason.SHRUNK), side, lost, falling=(1,)) for side in woven)
    more = tuple(combine(_to_make, ENGLISH.say(Reason.TO_MAKE), side, lost) for side in woven)
    return (left[0], left[1]), (more[0], more[1])


def _left_of(size: float, share: float) -> float:
    return float(left_of(size, Fraction(share)))


def _to_make(size: float, share: float) -> float:
    return float(to_make(size, Fraction(share)))
