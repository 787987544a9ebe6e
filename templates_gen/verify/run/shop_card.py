"""The shop cards proven: each of its size, with the kit's sizes, what lies in the box and weighs what, and no more."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from functools import reduce
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point
from layout.drawing.sheet import Piece, Sheet
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles import Unit
from layout.messages.roles.buying import Prices, ShopCard, Weighed
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.buying import Tables
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said
from templates_gen.verify.found_parts import FoundPart, found_on
from templates_gen.verify.printed.box_list import box_list, sides_said
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.run.to_buy_numbers import asked_of, woven_mm
from templates_gen.verify.said import account, outside

_WIDE, _HIGH, _APART = 148.0, 105.0, 6.0  # A6 across (ISO 216)
_PAPER, _KG, _OUNCE = 80, 1000, 28.349523125
_DENSITIES: Mapping[str, float] = {"birch plywood": 0.68}
_TILE = "B"


class Carded(NamedTuple):
    """A kit with a card: its plan, how many boxes there are, the paper in a box in mm2, and the area, thickness and
    material of what is cut for it.
    """

    plan: Plan
    boxes: int
    paper: float
    boards: tuple[float, float, str] | None


def prove_shop_cards(
    sheets: Sequence[Sheet], laid: Sequence[Sequence[Piece]], name: str, kits: Sequence[Carded]
) -> Findings:
    """All sheets, the cards on them in the order of the kits."""
    total, rest = NOTHING, list(kits)
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        found, wrong = found_on(sheet, pieces, where)
        total += wrong + check_furniture(sheet, [piece.part.name for piece in pieces]).at(where)
        for seen in found:
            count = len(list(seen.paths(Pen.CUT)))
            here, rest = rest[:count], rest[count:]
            problems = [*_outlines(seen, count), *_words(seen, here), *_head(seen, name, kits, (number, len(sheets)))]
            total += Findings(0.0, tuple(problems)).at(where)
    return total if not rest else total + Findings(0.0, (finding(Tables.CARDS, number=len(rest)),))


def _outlines(seen: FoundPart, count: int) -> Iterator[Finding]:
    """Each card is as large as it must be, one under the other."""
    for k, path in enumerate(sorted(seen.paths(Pen.CUT), key=lambda path: -path.start.y)):
        top = -k * (_HIGH + _APART)
        corners = [Point(x, y) for x in (0.0, _WIDE) for y in (top - _HIGH, top)]
        points = path.points()
        apart = [min(math.dist(corner, point) for point in points) for corner in corners]
        if len(points) != len(corners) or not path.closed or max(apart) > LIMIT:
            yield finding(Tables.CARD_SIZE, number=k + 1)
    if not count:
        yield finding(Tables.CARD_SIZE, number=1)


def _words(seen: FoundPart, kits: Sequence[Carded]) -> Iterator[Finding]:
    """What each card says, within its outline."""
    for k, kit in enumerate(kits):
        top = -k * (_HIGH + _APART)
        found = [(at, words) for at, words in seen.words() if top - _HIGH <= at.y <= top]
        tried = [account(found, each, may, kit.plan.words).wrong for each, may in _ways(kit)]
        yield from min(tried, key=len)


def _ways(kit: Carded) -> Iterator[tuple[list[str], list[str]]]:
    """What a card must and may say: with all that lies in the box, or with the first so many things of it."""
    plan, say = kit.plan, kit.plan.words.say
    names = [row for row, _ in box_list(plan)]
    box, frame, sett = plan.kit.box, plan.kit.frame, plan.warp.sett.per_mm
    wide, high = (sides_said(plan, side) for side in woven_mm(plan))
    across, up = (sides_said(plan, side.mm) for side in (frame.outer_width, frame.outer_height))
    warp = said_of(plan.kit, sett, plan.warp.sett.unit)
    fixed = [
        plan.kit.name,
        *([box.says] if box.says else []),
        *(say(role) for role in (ShopCard.FRAME, ShopCard.WEAVING, ShopCard.WARP, ShopCard.HOLDS, ShopCard.PACKED)),
        say(ShopCard.SIZE, width=across, height=up),
        say(ShopCard.SIZE, width=wide, height=high),
        warp["facts"],
        _weight(kit),
        say(ShopCard.PRICE),
    ]
    if box.outside:
        sides = zip(("width", "height", "depth"), (sides_said(plan, side.mm) for side in box.outside), strict=True)
        fixed += [say(ShopCard.BOX), say(ShopCard.SIDES, **dict(sides))]
    for kept in range(len(names), -1, -1):
        more = [say(ShopCard.MORE, number=len(names) - kept)] if kept < len(names) else []
        first, *others = [*names[:kept], *more]
        holds = reduce(lambda before, after: say(ShopCard.BETWEEN, before=before, after=after), others, first)
        yield [*fixed, holds], [box.link] if box.link else []


def _weight(kit: Carded) -> str:
    """What the box weighs, added up again."""
    plan, say, box = kit.plan, kit.plan.words.say, kit.plan.kit.box
    grams, without = 0.0, []
    if box.frame:
        without.append(say(Weighed.FRAME))
    for one in asked_of(plan):
        if one.kind == "leash_cord":
            without.append(say(Weighed.CORD))
        elif one.kind in ("warp", "weft"):
            if "g" in one.units:
                grams += one.units["g"].likely + one.units["g"].likely_spare
            else:
                without.append(one.name)
    for item in box.items(plan.words):
        if item.grams is None:
            without.append(item.name)
        else:
            grams += item.number * float(item.grams)
    grams += kit.paper * _PAPER / 1e6
    if kit.boards is not None:
        area, thick, material = kit.boards
        each = _DENSITIES.get(material.lower())
        if each is None:
            without.append(material)
        else:
            grams += area * thick / 1000 * each
    if box.empty is None:
        without.append(say(Weighed.EMPTY))
    else:
        grams += float(box.empty)
    return _said_weight(plan, grams, without)


def _said_weight(plan: Plan, grams: float, without: Sequence[str]) -> str:
    say = plan.words.say
    if plan.kit.frame.outer_width.imperial:
        weight = say(Unit.OUNCE, number=say_number(grams / _OUNCE, 1))
    elif grams < _KG:
        weight = say(Unit.GRAM, number=say_number(grams, 0))
    else:
        weight = say(Unit.KILOGRAM, number=say_number(grams / _KG, 1))
    if not without:
        return weight
    least = say(ShopCard.LEAST, weight=weight)
    return say(ShopCard.WITHOUT, weight=least, things=plan.words.listed(without))


def _head(seen: FoundPart, name: str, kits: Sequence[Carded], number: tuple[int, int]) -> Iterator[Finding]:
    """What the sheet says outside the cards."""
    words = kits[0].plan.words
    counts = [words.say(Prices.KITS, kits=len(kits)), words.say(Prices.BOXES, boxes=sum(kit.boxes for kit in kits))]
    shown = words.say(Sheets.NUMBER, number=number[0], total=number[1])
    wanted = [words.say(ShopCard.NAME), words.say(ShopCard.PURPOSE), name, words.listed(counts), shown, _TILE]
    yield from account(outside(seen.sheet, [seen]), wanted).wrong
