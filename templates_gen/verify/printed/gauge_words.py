"""Everything that a wrap gauge and its sheets say beside the table: halves, yarns, windows, pictures, what to do."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import product

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge, SheetName
from layout.plan import Plan
from layout.values.units import Length, in_unit, say_length
from templates_gen.messages.roles.proof_printed import Card
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.printed.gauge_fields import back_of, rule_of, words_of_table
from templates_gen.verify.printed.pairs import laid_of, most_pairs, pairs_in, window_of
from templates_gen.verify.printed.warp_words import order_on, said_of
from templates_gen.verify.said import account, words_on

HOW = "gauge-how"
"""How the card is wound, where that has a sheet of its own."""

_WIDE, _HIGH = 203.9, 246.0  # smaller paper holds the card and how it is wound on two sheets: stated again
_LABELS = ("1 in", "2 in", "5 cm")
_LETTERS = ("a", "b", "c")
_PICTURES = (Gauge.HOW, Gauge.SEEN_WARP, Gauge.SEEN_WEFT, Gauge.CATCH, Gauge.WIND, Gauge.FILL)
_SIGNS = (Gauge.IS_CUT, Gauge.IS_FOLD, Gauge.IS_WARP, Gauge.IS_WEFT)
_LAST = (Gauge.ALONE, Gauge.CAUTION)
_OUTSIDE = (Gauge.FRONT, Gauge.BACK, Gauge.TURN)
STEPS = (Gauge.STEP_CUT, Gauge.STEP_NOTCHES, Gauge.STEP_WIND, Gauge.STEP_COUNT)
"""What is done with the card, in order."""


def label_in(label: str, words: Catalogue) -> str:
    """The label of a window in the language of the card."""
    number, unit = label.split()
    return in_unit(number, unit, words)


def gauge_is_two(kit: Kit) -> bool:
    """Whether the gauge comes on two sheets."""
    return kit.paper.width < _WIDE or kit.paper.height < _HIGH


def check_card_words(plan: Plan | None, seen: FoundPart) -> Findings:
    """Every message of the card once and nothing else, each yarn under its own word; without a plan for any kit."""
    words = plan.words if plan else ENGLISH
    small = plan is not None and gauge_is_two(plan.kit)
    in_table = words_of_table(seen)
    rest = [word for word in words_on([seen]) if word not in in_table]
    must = [
        *(label_in(label, words) for label in _LABELS),
        words.say(Gauge.OF_TABLE),
        words.say(Gauge.WARP),
        words.say(Gauge.WEFT),
    ]
    may = [words.say(role) for role in _OUTSIDE] if small else []
    must += [] if small else [words.say(role) for role in _OUTSIDE]
    if plan:
        must += order_on(plan.kit)
        may += [plan.kit.warp, plan.kit.weft, _others(plan)]
    alone = small or seen.in_run  # how it is wound stands elsewhere
    ways = ([],) if alone else (_how(plan, words), _how(plan, words, pictures=False))
    accounted = min((account(rest, [*must, *way], may) for way in ways), key=lambda each: len(each.wrong))
    wrong = list(accounted.wrong)
    if not wrong:
        wrong += _named(plan, seen, accounted.places, words)
    return Findings(0.0, tuple(wrong))


def check_how_words(plan: Plan, seen: FoundPart) -> Findings:
    """The same of the sheet that says how the card is wound: with its pictures, or without any of them."""
    pictured, bare = (
        account(words_on([seen]), _how(plan, plan.words, pictures=pictures)).wrong for pictures in (True, False)
    )
    return Findings(0.0, tuple(pictured) if bare else ())


def check_gauge_sheets(plan: Plan, pieces: Sequence[FoundPart]) -> Findings:
    """What the sheets say outside of the part; the steps stand where there is room for them."""
    words, (seen,) = plan.words, pieces
    steps = tuple(map(words.say, STEPS))
    if gauge_is_two(plan.kit) and (seen.part.name == HOW) != (plan.kit.paper.width >= _WIDE):
        steps = ()
    about = About("", words.say(SheetName.PURPOSE_WRAP_GAUGE), steps)
    sett = plan.warp.sett
    warp_words = said_of(plan.kit, sett.per_mm, sett.unit)
    return check_heads(pieces, words.say(SheetName.NAME_WRAP_GAUGE), warp_words, (), more=about)


def _how(plan: Plan | None, words: Catalogue, *, pictures: bool = True) -> list[str]:
    """What is said of winding, and of the kit where its count gives its sett."""
    said = [*map(words.say, (*(_PICTURES if pictures else ()), *_SIGNS, *_LAST)), *(_LETTERS if pictures else ())]
    return said + ([*_this_kit(plan)] if plan else [])


def _this_kit(plan: Plan) -> Iterator[str]:
    kit, sett = plan.kit, plan.warp.sett
    window = window_of(sett.unit)
    pairs = most_pairs(kit, sett.unit)
    _, ends = laid_of(kit, pairs / window.mm, sett.unit.mm)
    if pairs and ends / sett.unit.mm == sett.per_mm:
        said = say_length(window, plan.words)
        words = said_of(kit, sett.per_mm, sett.unit)["sett"]
        yield plan.words.say(Gauge.THIS_KIT, pairs=pairs, window=said, sett=words)


def _others(plan: Plan) -> str:
    """How many pairs the same sett gives in the two windows that are not the table's."""
    over, inch = window_of(plan.warp.sett.unit), Fraction(127, 5)
    windows = Length(inch, "in"), Length(2 * inch, "in"), Length(Fraction(50), "cm")
    (one, first), (other, second) = (
        (say_length(each, plan.words), pairs_in(plan.kit, each.mm)) for each in windows if each != over
    )
    return plan.words.say(Gauge.OTHERS, one=one, first=first, other=other, second=second)


def _named(
    plan: Plan | None, seen: FoundPart, places: Mapping[str, list[Point]], words: Catalogue
) -> Iterator[Finding]:
    """Each yarn stands after its own word, or there is a line to write it on; warp comes before weft."""
    low, fold = back_of(seen)
    there = [places[words.say(role)] for role in (Gauge.WARP, Gauge.WEFT)]  # pictures may say the same word
    right = [
        (warp, weft)
        for warp, weft in product(*there)
        if fold > warp.y > weft.y - LIMIT and (warp.y > weft.y + LIMIT or warp.x < weft.x)
    ]
    warp, weft = right[0] if right else (there[0][-1], there[1][0])
    if not right:
        yield finding(Card.LINES)
    rule = rule_of(seen)
    level = [path.start.y for path in seen.lines() if path.pen is Pen.HELP and low < path.start.y < fold]
    blanks = [y for y in level if rule and y != rule[1]]
    named = {words.say(Gauge.WARP): warp, words.say(Gauge.WEFT): weft}
    yarns = (plan.kit.warp, plan.kit.weft) if plan else ()
    count = sum(len(places.get(name, ())) for name in dict.fromkeys(yarns))  # both may be one
    if count + len(blanks) != 2:
        yield finding(Card.NAMES)
    for label, name in zip(named.values(), yarns, strict=False):
        if len(set(yarns)) == 2 and name in places and _before(places[name][0], named.values()) != label:
            yield finding(Card.LINES)
    front, back = (places.get(words.say(role), [None])[0] for role in (Gauge.FRONT, Gauge.BACK))
    if front and back and not front.y > fold > back.y:
        yield finding(Card.HALVES)


def _before(at: Point, others: Iterable[Point]) -> Point:
    """The last of the others that is read before what stands at a place."""
    return max(others, key=lambda other: (_reading(other) <= _reading(at), _reading(other)))


def _reading(at: Point) -> tuple[int, float]:
    return round(-10 * at.y), at.x
