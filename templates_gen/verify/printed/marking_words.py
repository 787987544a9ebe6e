"""What a marking strip and its sheet say: nothing but what the kit asks for, each in its place."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from layout.drawing.shapes import Point
from layout.frames.kinds.flat_ends import FlatEnd
from layout.kit.kit import Kit
from layout.messages.roles import Marking, Sheet, SheetName
from layout.plan import Plan
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Wraps
from templates_gen.verify.finding import NOTHING, Finding, Findings, end_place, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads, why_low
from templates_gen.verify.joining import joining
from templates_gen.verify.kinds.truth import Form
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.places import misplaced
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.warp_words import of_no_order, order_on_each, said_of
from templates_gen.verify.said import account, words_on

_NAMED = 60.0  # a strip at least so long says which one it is, in mm
_LETTER, _AROUND = 1.45, 8.0  # what a letter takes, and what is left free about a phrase, where all are there


def check_marking_words(plan: Plan, end: str, form: Form, pieces: Sequence[FoundPart]) -> Findings:
    """Every phrase at most once, all where they have room, and what the sheets say."""
    kit, sett = plan.kit, plan.warp.sett
    say = plan.words.say
    sides = {side: say(role, **values) for side, (role, values) in _sides(kit, end, sett.per_mm).items()}
    brief = {side: say(role) for side, role in (("left", Marking.LEFT), ("right", Marking.RIGHT))}
    whole = len(pieces) == 1
    name, short, numbered = _NAMES[end]
    counted = [] if whole else [{"number": k, "total": len(pieces)} for k in range(1, len(pieces) + 1)]
    labels = [[say(role, **each) for role in (numbered, Sheet.PIECE)] for each in counted]
    names = [say(name), say(short)] if whole else []
    all_said = [*sides.values(), *names[:1], say(Marking.CENTRE), say(_goes(kit)), *map(say, _layer(kit, end))]
    order = order_on_each(kit, pieces)
    all_said += order
    length = max(seen.part.box[2] for seen in pieces) - min(seen.part.box[0] for seen in pieces)
    room = length / 2 if order else length  # an order in the middle parts the room of the others
    all_there = whole and sum(_LETTER * len(words) + _AROUND for words in all_said) <= room
    may = [*all_said, *brief.values(), *names, *(words for label in labels for words in label)]
    accounted = account(words_on(pieces), all_said if all_there else order, may)
    places = {words: found[0] for words, found in accounted.places.items()}
    wrong = [*accounted.wrong, *of_no_order(kit, pieces), *_misplaced(sides, brief, say(Marking.CENTRE), places)]
    unnamed = whole and length >= _NAMED and not any(each in places for each in names)
    for label, seen in zip(labels, pieces, strict=False):
        unnamed |= seen.part.length >= 2 * _NAMED and not any(each in places for each in label)
    if unnamed:
        wrong.append(finding(Wraps.NAME))
    total = Findings(0.0, tuple(problem.at(end_place(end)) for problem in wrong))
    return total + _sheets(plan, end, form, pieces)


_NAMES = {
    "near": (Marking.NEAR, Marking.NEAR_BRIEF, Marking.NEAR_PIECE),
    "far": (Marking.FAR, Marking.FAR_BRIEF, Marking.FAR_PIECE),
}


def _sheets(plan: Plan, end: str, form: Form, pieces: Sequence[FoundPart]) -> Findings:
    """The sheets of a strip; all of them give the same reason for a low form."""
    reasons = [(reason,) for reason in why_low(plan.words)] if form == "low" else [()]
    found = [_sheets_with(plan, end, form, pieces, reason) for reason in reasons]
    return min(found, key=lambda each: len(each.problems))


def _sheets_with(plan: Plan, end: str, form: Form, pieces: Sequence[FoundPart], reason: tuple[str, ...]) -> Findings:
    """The sheets of a strip: its own, or those that it shares. What to do must stand on the first one."""
    sett, say = plan.warp.sett, plan.words.say
    warp = said_of(plan.kit, sett.per_mm, sett.unit)
    own = say(SheetName.NAME_STRIP_NEAR if end == "near" else SheetName.NAME_STRIP_FAR)
    both = say(SheetName.NAME_STRIPS)
    total = NOTHING
    for seen in pieces:
        found = []
        for title in (both, own):
            about = _sheet_says(plan, form, title, pieces)
            about = about._replace(notes=(*reason, *about.notes))
            first = seen.number[0] == pieces[0].number[0] and not (title == both and end == "far" and len(pieces) > 1)
            if not first:
                about = about._replace(steps=(), notes=(), cautions=(), may=(*about.said()[2:], *about.may))
            found.append(check_heads([seen], title, warp, [], joined=False, more=about))
        total += min(found, key=lambda each: len(each.problems))
    return total


def _sheet_says(plan: Plan, form: Form, title: str, pieces: Sequence[FoundPart]) -> About:
    """What a sheet of strips says beside them; what is only explained is left out where there is no room."""
    kit, say, low = plan.kit, plan.words.say, form == "low"
    board = isinstance(kit.frame.ends, FlatEnd)
    lay = {
        (False, False): Marking.STEP_WRAP_BAR,
        (False, True): Marking.STEP_WRAP_EDGE,
        (True, False): Marking.STEP_ALONG_BAR,
        (True, True): Marking.STEP_ALONG_EDGE,
    }
    glue = Marking.STEP_GLUE_ALONG if low else Marking.STEP_GLUE
    steps = (Marking.STEP_CUT, lay[low, board], Marking.STEP_SLIDE, glue)
    cautions = (Marking.CAUTION_KNIFE, Marking.CAUTION_CHILDREN)
    ends = truth_of(kit).on_rod
    read = [
        Marking.READING,
        Marking.A_MARK_END if ends else Marking.A_MARK,
        Marking.A_NUMBER_END if ends else Marking.A_NUMBER,
        Marking.A_CENTRE,
        Marking.AN_ARROW,
        Marking.CROSSES,
        Marking.CUT,
        Marking.FOLDED,
        Marking.GLUED,
    ]
    unit = plan.warp.sett.unit
    small = Length(Fraction("6.35"), "in") if unit.imperial else Length(Fraction(10), "cm")
    lengths = {"small": say_length(small, plan.words), "unit": say_length(unit, plan.words)}
    return About(
        title,
        say(SheetName.PURPOSE_STRIPS_ENDS if ends else SheetName.PURPOSE_STRIPS),
        tuple(map(say, steps)),
        tuple(joining(pieces)),
        cautions=tuple(map(say, cautions)),
        may=(*map(say, (*_section(kit, low=low), *read)), say(Marking.A_SCALE, **lengths), _size(plan)),
    )


def _section(kit: Kit, *, low: bool) -> list[Marking]:
    """The names in the picture of the lower bar: the thread goes up the face where it is the near one, face first."""
    board = isinstance(kit.frame.ends, FlatEnd)
    up = (kit.weaving.near_end == "bottom") == (kit.weaving.first_pass == "face")
    way = [Marking.UP_FACE, Marking.DOWN_BEHIND] if up else [Marking.DOWN_FACE, Marking.UP_BEHIND]
    return [
        Marking.SECTION_LOW if low else Marking.SECTION_EDGE if board else Marking.SECTION,
        Marking.FROM_RIGHT,
        Marking.BOARD if board else Marking.BAR,
        Marking.WEAVING_EDGE,
        Marking.NUMBERS,
        Marking.OUTERMOST,
        Marking.BACK_LINE,
        Marking.FLAP,
        *([Marking.ON_FACE, Marking.BEHIND] if truth_of(kit).on_rod else way),
    ]


def _size(plan: Plan) -> str:
    """How thick the bar or the board is."""
    size: Length = getattr(plan.kit.frame.ends, "thickness", None) or getattr(plan.kit.frame.ends, "diameter")  # noqa: B009
    return say_length(size, plan.words)


def _misplaced(
    sides: Mapping[str, str], brief: Mapping[str, str], centre: str, places: Mapping[str, Point]
) -> Iterator[Finding]:
    left, right = (places.get(sides[side], places.get(brief[side])) for side in ("left", "right"))
    yield from misplaced(left, right, places.get(centre))


def _sides(kit: Kit, end: str, sett: Fraction) -> dict[str, tuple[Marking, dict[str, int]]]:
    """What stands at both ends of the strip: the warp begins at the near end with mark 0."""
    start = kit.weaving.start
    stop = "right" if start == "left" else "left"
    found: dict[str, tuple[Marking, dict[str, int]]] = {"left": (Marking.LEFT, {}), "right": (Marking.RIGHT, {})}
    if truth_of(kit).on_rod:
        return found
    if end == "near":
        found[start] = (Marking.ON_LEFT if start == "left" else Marking.ON_RIGHT, {"number": 0})
    passes = ends_of(kit, sett)
    if end == ("far" if passes % 2 else "near"):
        off = Marking.OFF_LEFT if stop == "left" else Marking.OFF_RIGHT
        found[stop] = (off, {"number": (passes + 1) // 2})
    return found


def _goes(kit: Kit) -> Marking:
    return Marking.ENDS_GO if truth_of(kit).on_rod else Marking.WINDS_GO


def _layer(kit: Kit, end: str) -> list[Marking]:
    """Which ends of a figure eight are in front at that end."""
    if kit.weaving.how_wound != "figure eight":
        return []
    return [Marking.ODD if truth_of(kit).faces(kit, 0)[end == "far"] else Marking.EVEN]
