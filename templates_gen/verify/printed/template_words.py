"""What a template and its sheet say: nothing but what the kit asks for, each in its place."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction

from layout.messages.catalogue import Role
from layout.messages.roles import Marking, Sheet, Template
from layout.plan import Plan
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Openings
from templates_gen.verify.finding import NOTHING, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.joining import joining
from templates_gen.verify.kinds.truth import Asked, Form
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.outline import name_of
from templates_gen.verify.places import misplaced
from templates_gen.verify.printed.expected import ends_of, expected
from templates_gen.verify.printed.warp_words import of_no_order, order_on_each, said_of
from templates_gen.verify.said import account, words_on

_NAMED = 60.0  # a template at least so long says which one it is, in mm
_LETTER, _AROUND = 1.45, 8.0  # what a letter takes, and what is left free about a phrase, where all are there
_NAMES: Mapping[str, tuple[Role, Role]] = {
    "near": (Marking.NEAR, Marking.NEAR_BRIEF),
    "far": (Marking.FAR, Marking.FAR_BRIEF),
}
_PIECES: Mapping[str, tuple[Role, Role]] = {
    "near": (Marking.NEAR_PIECE, Template.NEAR_PIECE),
    "far": (Marking.FAR_PIECE, Template.FAR_PIECE),
}
"""What a piece is called, in full and where there is little room."""


def check_template_words(plan: Plan, end: str, form: Form, pieces: Sequence[FoundPart]) -> Findings:
    """Every phrase at most once, all where they have room, and what the sheets say."""
    say = plan.words.say
    sides = {side: say(role, **values) for side, (role, values) in _sides(plan, end).items()}
    brief = {side: say(role) for side, role in (("left", Marking.LEFT), ("right", Marking.RIGHT))}
    whole = len(pieces) == 1
    if whole:
        named = [[say(role) for role in _NAMES[end]]]
    else:
        count = len(pieces)
        named = [[say(role, number=k, total=count) for role in _PIECES[end]] for k in range(1, count + 1)]
    all_said = [*sides.values(), *(each[0] for each in named if whole), say(Marking.CENTRE), say(Template.TO_WEAVING)]
    order = order_on_each(plan.kit, pieces)
    all_said += order
    length = max(seen.part.box[2] for seen in pieces) - min(seen.part.box[0] for seen in pieces)
    room = length / 2 if order else length  # an order in the middle parts the room of the others
    all_there = whole and sum(_LETTER * len(words) + _AROUND for words in all_said) <= room
    may = [*all_said, *brief.values(), *(words for each in named for words in each)]
    accounted = account(words_on(pieces), all_said if all_there else order, may)
    places = {words: found[0] for words, found in accounted.places.items()}
    left, right = (places.get(sides[side], places.get(brief[side])) for side in ("left", "right"))
    wrong = [*accounted.wrong, *of_no_order(plan.kit, pieces), *misplaced(left, right, places.get(say(Marking.CENTRE)))]
    times = [sum(each in places for each in both) for both in named]
    must = [length >= _NAMED] if whole else [seen.part.length >= 2 * _NAMED for seen in pieces]
    if any(count > 1 or (each and not count) for count, each in zip(times, must, strict=True)):
        wrong.append(finding(Openings.NAME))
    found = Findings(0.0, tuple(problem.at(end_place(end)) for problem in wrong))
    return found + _sheets(plan, end, form, pieces)


def _sheets(plan: Plan, end: str, form: Form, pieces: Sequence[FoundPart]) -> Findings:
    """The sheets of a template: its own, or those that it shares. What to do stands on the first one."""
    sett, say = plan.warp.sett, plan.words.say
    warp = said_of(plan.kit, sett.per_mm, sett.unit)
    names = truth_of(plan.kit).sheets(plan.kit.frame.ends)
    both, own = say(names.both), say(names.near if end == "near" else names.far)
    total = NOTHING
    for seen in pieces:
        title = both if name_of(seen.sheet) == both else own
        about = _sheet_says(plan, form, title, pieces)
        shared = title == both and end == "far" and len(pieces) > 1
        first = seen.number[0] == pieces[0].number[0] and not shared
        if not first:
            said = (*about.steps, *about.notes, *about.beside, *about.cautions)
            about = About(title, about.purpose, may=(*about.may, *said))
        lows = (False, True) if first else (False,)
        found = [check_heads([seen], title, warp, [], low=low, joined=False, more=about) for low in lows]
        total += min(found, key=lambda each: len(each.problems))
    return total


def _sheet_says(plan: Plan, form: Form, title: str, pieces: Sequence[FoundPart]) -> About:
    """What a sheet of templates says beside them."""
    kit, say, sett = plan.kit, plan.words.say, plan.warp.sett
    asked = Asked(plan.words, sett.per_mm, ends_of(kit, sett.per_mm), form)
    names = truth_of(kit).sheets(kit.frame.ends)
    said = truth_of(kit).says(kit.frame.ends, asked)
    small = Length(Fraction("6.35"), "in") if sett.unit.imperial else Length(Fraction(10), "cm")
    lengths = {"small": say_length(small, plan.words), "unit": say_length(sett.unit, plan.words)}
    beside = [
        *said.beside,
        say(truth_of(kit).dots(kit.frame.ends), **lengths),
        *map(say, (Template.A_CENTRE, Template.CROSSES, Template.CUT)),
    ]
    cautions = (*said.cautions, say(Sheet.KNIFE))
    return About(
        title, say(names.purpose), tuple(said.steps), tuple(joining(pieces)), tuple(beside), cautions, tuple(said.may)
    )


def _sides(plan: Plan, end: str) -> dict[str, tuple[Marking, dict[str, int]]]:
    """What stands at both ends of the template: the warp begins at the near end with its first mark."""
    kit, sett = plan.kit, plan.warp.sett
    start = kit.weaving.start
    stop = "right" if start == "left" else "left"
    found: dict[str, tuple[Marking, dict[str, int]]] = {"left": (Marking.LEFT, {}), "right": (Marking.RIGHT, {})}
    marks = expected(kit, sett.per_mm, sett.unit.mm)
    first = truth_of(kit).first_near if end == "near" else 1
    if end == "near":
        found[start] = (Marking.ON_LEFT if start == "left" else Marking.ON_RIGHT, {"number": first})
    passes = ends_of(kit, sett.per_mm)
    if end == ("far" if passes % 2 else "near"):
        off = Marking.OFF_LEFT if stop == "left" else Marking.OFF_RIGHT
        last = first + len(marks.near if end == "near" else marks.far) - 1
        found[stop] = (off, {"number": last})
    return found
