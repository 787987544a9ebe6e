"""The legal card proven from the kit alone: the maker's words and nothing else, lines where there are none."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles.cards import Card
from layout.plan import Plan
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.card_form import (
    Sides,
    check_inside,
    check_outline,
    check_sheet,
    lines_of,
    on_card,
    room_of,
)
from templates_gen.verify.printed.warp_words import order_on
from templates_gen.verify.said import Accounted, account

_SIZES = ((57.0, 74.0), (74.0, 105.0), (105.0, 148.0), (148.0, 205.0))
_BELOW = 1.5  # a line lies so far under the name beside it, at most, in mm


def prove_legal_card(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Each legal card of a file."""
    total = Findings(0.0, ())
    most = room_of(plan.kit)
    sizes = [(min(wide, most[0]), min(high, most[1])) for wide, high in _SIZES]
    for seen in pieces:
        tries = [(size, check_outline(seen, size)) for size in sizes]
        sides, outline = next((each for each in tries if not each[1].problems), tries[0])
        total += outline
        if on_paper:
            total += Findings(0.0, tuple(_words(plan, seen, sides)))
            total += check_sheet(plan, seen, sides, Card.LEGAL_FOR)
    return total


def _asked(kit: Kit) -> dict[Card, tuple[str, ...]]:
    """The maker's words by what they are about; none where a line is to be filled in."""
    legal = kit.legal
    said = (legal.maker, "", legal.contact, legal.batch, legal.warp_fibre, legal.weft_fibre, legal.care, legal.age)
    names = (
        Card.MAKER, Card.ADDRESS, Card.CONTACT, Card.BATCH, Card.WARP_FIBRE, Card.WEFT_FIBRE, Card.CARE, Card.AGE,
    )  # fmt: skip
    found = {name: (words,) if words else () for name, words in zip(names, said, strict=True)}
    return found | {Card.ADDRESS: legal.address}


def _words(plan: Plan, seen: FoundPart, sides: Sides) -> Iterator[Finding]:
    say, asked = plan.words.say, _asked(plan.kit)
    wanted = [*map(say, asked), *(words for said in asked.values() for words in said), *plan.kit.legal.cautions]
    wanted += order_on(plan.kit)
    if not asked[Card.AGE]:
        wanted.append(say(Card.YEARS))
    found = on_card(seen, sides)
    accounted = account(found, wanted)
    yield from accounted.wrong
    yield from check_inside(found, sides)
    if not accounted.wrong:
        yield from _blanks(plan.words, seen, accounted, [name for name, words in asked.items() if not words])


def _blanks(words: Catalogue, seen: FoundPart, found: Accounted, empty: Sequence[Card]) -> Iterator[Finding]:
    """A line beside the name of everything that is left to fill in, two for an address, and no other."""
    lines = lines_of(seen, Pen.HELP)
    wanted = len(empty) + (Card.ADDRESS in empty)
    if len(lines) != wanted:
        yield finding(Cards.BLANKS, found=len(lines), wanted=wanted)
    for name in empty:
        at = found.places[words.say(name)][0]
        if not any(one.x > at.x and 0 < at.y - one.y < _BELOW for one, _ in lines):
            yield finding(Cards.BLANK, name=words.say(name))
