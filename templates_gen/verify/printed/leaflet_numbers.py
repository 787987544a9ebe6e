"""What a leaflet must say, step by step: from the kit, and of amounts, which their own tests prove."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.roles import KitNumber, Leaflet, SettUnit
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import Length, say_length
from templates_gen.verify.kinds.notched import skips_notches
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of, expected
from templates_gen.verify.printed.held import held_each, holds
from templates_gen.verify.printed.leaflet_facts import Facts, rows_of
from templates_gen.verify.printed.ruled import ruled
from templates_gen.verify.printed.warp_words import clauses

_SURE = 0.005


class Told(NamedTuple):
    """A step: the name of its picture, its title, and its words, sentence by sentence."""

    picture: str
    title: str
    said: str


def told(plan: Plan, facts: Facts) -> list[Told]:
    """Every step in its order."""
    kit, say = plan.kit, plan.words.say
    truth = truth_of(kit)
    check = Leaflet.CHECK_BARS if kit.frame.ends.name == "round bars" else Leaflet.CHECK_BOARDS
    found = [Told("frame", say(Leaflet.CHECK), say(check)), Told("marks", *_marks(plan, facts))]
    found += [Told("tie-on", say(Leaflet.TIE_ON), _tied(plan, facts)), Told("winding", *_wound(plan, facts))]
    found += [Told("tension", say(Leaflet.EVEN), _evened(plan, facts)), Told("stick", say(Leaflet.STICK), _stick(plan))]
    found += [Told("rows", say(Leaflet.ROWS), said) for said in _rows(plan)]
    found += [Told("space", say(Leaflet.SPACE), _space(plan, facts))]
    found += [Told("leashes", say(Leaflet.LEASHES), _leashes(plan, facts))]
    found += [Told("first-rows", say(Leaflet.FIRST), _first(plan)), Told("sheds", say(Leaflet.WEAVE), _weave(plan))]
    return [*found, Told("finish", say(Leaflet.FINISH), say(_FINISH[truth.on_rod]))]


_FINISH = {True: Leaflet.FINISH_ROD, False: Leaflet.FINISH_CUT}


def _marks(plan: Plan, facts: Facts) -> tuple[str, str]:
    kit, say, unit = plan.kit, plan.words.say, plan.warp.sett.unit
    ends = kit.frame.ends
    every = expected(kit, facts.sett, unit.mm)
    counts = {"near": len(every.near), "far": len(every.far)}
    if not facts.has("strips", "strip-near", "strip-far"):
        spacing = abs(every.near[1] - every.near[0]) if len(every.near) > 1 else truth_of(kit).laid / facts.sett
        said = say_length(Length(spacing, "in" if unit.imperial else "mm"), plan.words)
        return say(Leaflet.MARK), say(Leaflet.MARK_BARS, spacing=said, **counts)
    if isinstance(ends, NotchedEnd):
        if ends.density is not None:
            return say(Leaflet.NOTCHES_FIND), say(Leaflet.NOTCHES_THERE, **counts)
        deep = say_length(ends.notch_depth, plan.words)
        return say(Leaflet.NOTCHES), say(Leaflet.NOTCHES_SAW, deep=deep, **counts)
    if isinstance(ends, PeggedEnd):
        wide = say_length(ends.peg_diameter, plan.words)
        return say(Leaflet.PEGS), say(Leaflet.PEGS_DRILL, wide=wide, **counts)
    if isinstance(ends, NailEnd):
        return say(Leaflet.NAILS), say(Leaflet.NAILS_DRIVE, **counts)
    return say(Leaflet.STRIPS), say(Leaflet.STRIPS_ROUND if ends.name == "round bars" else Leaflet.STRIPS_FLAT)


def _tied(plan: Plan, facts: Facts) -> str:
    left = facts.toward > 0
    if truth_of(plan.kit).on_rod:
        return plan.words.say(Leaflet.TIE_ROD_LEFT if left else Leaflet.TIE_ROD_RIGHT)
    mark = facts.marks.at_near(facts.passes[0]).number
    return plan.words.say(Leaflet.TIE_LEFT if left else Leaflet.TIE_RIGHT, mark=mark)


def _wound(plan: Plan, facts: Facts) -> tuple[str, str]:
    kit, truth, first = plan.kit, truth_of(plan.kit), facts.passes[0]
    if truth.winds and first.face == first.far_face:
        role = Leaflet.WIND_FACE if first.face else Leaflet.WIND_BACK
    elif truth.winds:
        role = Leaflet.WIND_CROSS_BACK if first.face else Leaflet.WIND_CROSS_FACE
    elif truth.on_rod:
        role = Leaflet.WIND_ROD
    elif isinstance(kit.frame.ends, NotchedEnd):
        role = Leaflet.WIND_TEETH if skips_notches(kit.frame.ends, facts.sett) else Leaflet.WIND_TOOTH
    else:
        role = Leaflet.WIND_NAIL if isinstance(kit.frame.ends, NailEnd) else Leaflet.WIND_PEG
    count = clauses(kit, ends_of(kit, facts.sett))[0]
    title = Leaflet.WIND if truth.winds else Leaflet.THERE_AND_BACK
    return plan.words.say(title), plan.words.say(role, count=count)


def _evened(plan: Plan, facts: Facts) -> str:
    kit, say, last = plan.kit, plan.words.say, facts.passes[-1]
    if truth_of(kit).on_rod:
        said = [say(Leaflet.EVEN_ROD)]
    elif facts.far_off:
        role = Leaflet.EVEN_WINDS_FAR if truth_of(kit).winds else Leaflet.EVEN_ENDS_FAR
        said = [say(role, mark=facts.marks.at_far(last).number)]
    else:
        role = Leaflet.EVEN_WINDS_NEAR if truth_of(kit).winds else Leaflet.EVEN_ENDS_NEAR
        said = [say(role, mark=facts.marks.at_near(last).number)]
    if travel := kit.frame.travel:
        high = kit.frame.outer_height
        said.append(say(Leaflet.TIGHTEN, tight=say_length(Length(high.mm + travel.mm, high.unit), plan.words)))
    return plan.words.paragraph(said)


def _stick(plan: Plan) -> str:
    truth, say = truth_of(plan.kit), plan.words.say
    near, far = truth.faces(plan.kit, 0)
    role = Leaflet.STICK_SECOND
    if truth.winds:
        role = Leaflet.STICK_FACE if near == far else Leaflet.STICK_FRONT
    if holds(plan, "shed-stick"):
        return say(role)
    long = _ruled(plan, plan.amounts.shed_stick_mm.value)
    return plan.words.paragraph([say(Leaflet.STICK_LONG, long=long), say(role)])


def _rows(plan: Plan) -> Iterator[str]:
    rod, count = truth_of(plan.kit).on_rod, rows_of(plan.kit)
    if isinstance(plan.kit.amounts.room.heading, str):
        yield plan.words.say(Leaflet.HITCHES_FAR if rod else Leaflet.HITCHES_BOTH)
    elif count:
        yield plan.words.say(Leaflet.ROWS_FAR if rod else Leaflet.ROWS_BOTH, rows=count)


def _space(plan: Plan, facts: Facts) -> str:
    if facts.has("spacing-guide", "spacing-guide-cut"):
        return plan.words.say(Leaflet.GUIDES_LEFT if facts.toward > 0 else Leaflet.GUIDES_RIGHT)
    if facts.has("comb"):
        return plan.words.say(Leaflet.COMB)
    inch = plan.warp.sett.unit.imperial
    role, per = (SettUnit.PER_INCH, Fraction(127, 5)) if inch else (SettUnit.PER_CM, Fraction(10))
    return plan.words.say(Leaflet.BY_EYE, sett=plan.words.say(role, number=say_number(facts.sett * per)))


def _leashes(plan: Plan, facts: Facts) -> str:
    """To the ends that lie behind at the far end; where all lie in one layer, to one half of them, the smaller one."""
    behind = sum(1 for one in facts.passes if not one.far_face) or len(facts.passes) // 2
    each = _ruled(plan, plan.amounts.leashes.each.value)
    layers = truth_of(plan.kit).winds and facts.passes[0].face == facts.passes[0].far_face
    role = Leaflet.LEASHES_BEHIND if layers else Leaflet.LEASHES_UNDER
    return plan.words.say(role, each=each, number=behind)


def _first(plan: Plan) -> str:
    rise = plan.amounts.bubble_rise
    if rise is None:
        return plan.words.say(Leaflet.FIRST_ARC)
    return plan.words.say(Leaflet.FIRST_RISE, rise=_ruled(plan, rise.value * plan.amounts.woven_mm[0].value))


def _weave(plan: Plan) -> str:
    near, far = truth_of(plan.kit).faces(plan.kit, 0)
    layers = truth_of(plan.kit).winds and near == far
    said = [plan.words.say(Leaflet.WEAVE_FACE if layers else Leaflet.WEAVE_SECOND)]
    if beads := plan.amounts.woven_rows:
        size = plan.amounts.woven_mm[1]
        sure = size.high - size.low <= _SURE * size.value
        height = _ruled(plan, size.value)
        height = height if sure else plan.words.say(KitNumber.ABOUT, amount=height)
        said.append(plan.words.say(Leaflet.WEAVE_BEADS, beads=beads, height=height))
    return plan.words.paragraph(said)


def _ruled(plan: Plan, mm: float) -> str:
    return ruled(mm, plan.words, inches=plan.kit.frame.outer_width.imperial)


def beside(plan: Plan) -> list[str]:
    """What stands for things in each box that no step needs."""
    kit = plan.kit
    held, helped = held_each(plan), holds(plan, "help")
    spaced = holds(plan, "spacing-guide", "spacing-guide-cut")
    wanted = {
        Leaflet.GAUGE: any(name.startswith("wrap-gauge") for name in held),
        Leaflet.CHECK_SHEET: "frame-check" in held,
        Leaflet.WINDING_SHEET: "winding" in held,
        Leaflet.WINDING_COMBS: "winding-comb" in held,
        Leaflet.GRID: "weaving-grid" in held,
        Leaflet.START: "start-here" in held,
        Leaflet.HELP: "help" in held,
        Leaflet.COMB_TOO: "comb" in held and spaced,
        Leaflet.SPARE_ENDS: kit.box.spare_ends > 0 and not helped,
        Leaflet.NEEDLE: kit.box.also is None and not helped,
    }
    return [plan.words.say(role) for role, is_there in wanted.items() if is_there]
