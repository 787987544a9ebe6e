"""What every card must be: cut out at its size, its words inside it, and under the head of its sheet."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import floor

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.kit.kit import Kit
from layout.messages.roles import SheetName
from layout.messages.roles.cards import Card, HelpCard
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_heads
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import Word, account

Sides = tuple[float, float]
"""Width and height in mm."""

_USUAL = {"label": (105.0, 74.0), "list": (148.0, 105.0), "help": (148.0, 105.0)}
"""A7 and A6 across (ISO 216)."""
_BESIDE, _ABOVE, _ABOVE_FOLDED, _ABOVE_SMALL = 43.9, 73.6, 68.6, 90.0  # what a sheet needs beside a card
_SMALL, _LESS = 250.0, 1.0


def room_of(kit: Kit) -> Sides:
    """The largest card that a sheet of this paper holds, in whole mm."""
    return floor(kit.paper.width - _BESIDE), floor(kit.paper.height - _ABOVE)


def half_of(kit: Kit) -> float:
    """The highest half of a folded card that a sheet of this paper holds, in whole mm."""
    return (kit.paper.height - (_ABOVE_SMALL if kit.paper.height < _SMALL else _ABOVE_FOLDED)) // 2


def sides_of(kit: Kit, key: str) -> Sides:
    """The sides of the card that `box.key` asks for, in mm; a usual card is smaller where the paper is."""
    asked = getattr(kit.box, key)
    if asked is not None:
        return float(asked.width.mm), float(asked.height.mm)
    (wide, high), most = _USUAL[key], room_of(kit)
    if key == "list" and kit.box.fold:
        most = most[0], half_of(kit)
    if key == "help" and half_of(kit) < high <= half_of(kit) + _LESS:
        high = half_of(kit)
    return min(wide, most[0]), min(high, most[1])


def check_outline(seen: FoundPart, sides: Sides) -> Findings:
    """One cut line round the card, from (0, 0) to its sides."""
    outlines = list(seen.paths(Pen.CUT))
    off = max(map(abs, _off(outlines[0], sides))) if len(outlines) == 1 and len(outlines[0].steps) == 3 else 9.0
    if off <= LIMIT:
        return Findings(off, ())
    return Findings(0.0, (finding(Cards.OUTLINE, width=say_number(sides[0], 2), height=say_number(sides[1], 2)),))


def _off(outline: Curve, sides: Sides) -> Iterator[float]:
    left, low, right, high = box_of(outline)
    yield from (left, low, right - sides[0], high - sides[1])


def on_card(seen: FoundPart, sides: Sides) -> list[Word]:
    """The words on the card itself."""
    return [(at, words) for at, words in seen.words() if at.y <= sides[1] + LIMIT]


def check_inside(found: Sequence[Word], sides: Sides) -> list[Finding]:
    """Words that begin outside of what is cut out."""
    outside = (words for at, words in found if not (0 < at.x < sides[0] and 0 < at.y < sides[1]))
    return [finding(Cards.PLACE, words=words) for words in outside]


LABELLED = SheetName.NAME_LABEL, SheetName.PURPOSE_LABEL


def check_sheet(
    plan: Plan,
    seen: FoundPart,
    sides: Sides,
    caption: Card | HelpCard,
    named: tuple[SheetName, SheetName] = LABELLED,
) -> Findings:
    """The head of its sheet, and over a card that is cut out by hand what it is for."""
    kit, say = plan.kit, plan.words.say
    total = NOTHING
    if seen.part.scissors:
        above = [(at, words) for at, words in seen.words() if at.y > sides[1] + LIMIT]
        total += Findings(0.0, tuple(account(above, [say(caption)]).wrong))
    warp = said_of(kit, plan.warp.sett.per_mm, plan.warp.sett.unit)
    about = About("", say(named[1]))
    return total + check_heads([seen], say(named[0]), warp, [], more=about)


def lines_of(seen: FoundPart, pen: Pen) -> list[tuple[Point, Point]]:
    """The single lines of one pen, their left or lower ends first."""
    pairs = (sorted(path.points(), key=sum) for path in seen.lines() if path.pen is pen)
    return [(one, other) for one, other in pairs]
