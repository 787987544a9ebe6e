"""The sheets of prices as they were read: each row where it belongs, and nothing else said."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import chain

from layout.drawing.shapes import Text
from layout.drawing.sheet import Piece, Sheet
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles.buying import Prices
from templates_gen.messages.roles.buying import Tables
from templates_gen.messages.roles.proof import Proof, Words
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said
from templates_gen.verify.found_parts import found_on
from templates_gen.verify.printed.furniture import check_furniture
from templates_gen.verify.run.prices import Boxed, Lines, Together, lines_of
from templates_gen.verify.said import account, squeezed

_SAME = 0.01  # mm: words so near to one height stand in one row
_TILE = "B"


def prove_prices(
    sheets: Sequence[Sheet],
    laid: Sequence[Sequence[Piece]],
    name: str,
    kits: Sequence[Boxed],
    together: Callable[[int, int], Together],
) -> Findings:
    """All sheets: `together` is what boxes of a kit, by its place, take where so many are made."""
    total = NOTHING
    for number, (sheet, pieces) in enumerate(zip(sheets, laid, strict=True), 1):
        where = said(Proof.SHEET, number=number)
        total += found_on(sheet, pieces, where)[1]
        total += check_furniture(sheet, [piece.part.name for piece in pieces]).at(where)
    every = [lines_of(kit, _of(together, place)) for place, kit in enumerate(kits)]
    return total + Findings(0.0, (*_said(sheets, name, kits, every), *_rows(sheets, every)))


def _of(together: Callable[[int, int], Together], place: int) -> Callable[[int], Together]:
    return lambda boxes: together(place, boxes)


def _said(sheets: Sequence[Sheet], name: str, kits: Sequence[Boxed], every: Sequence[Lines]) -> Iterator[Finding]:
    """Every word of the file, accounted for: nothing is said twice, left out, or besides."""
    words = kits[0].plan.words
    boxes = sum(kit.boxes for kit in kits)
    facts = words.listed([words.say(Prices.KITS, kits=len(kits)), words.say(Prices.BOXES, boxes=boxes)])
    wanted = [cell for lines in every for cell in (*lines.besides, *chain(*lines.prices), *chain(*lines.costs))]
    currency = kits[0].shop.get("buy", {}).get("currency", "")
    purpose = words.say(Prices.PURPOSE_IN, currency=currency) if currency else words.say(Prices.PURPOSE)
    for number in range(1, len(sheets) + 1):
        wanted += [words.say(Prices.NAME), purpose, name, facts, _TILE]
        wanted.append(words.say(Sheets.NUMBER, number=number, total=len(sheets)))
    drop = [0.0]
    for sheet in sheets:
        drop.append(drop[-1] + sheet.height)
    found = [
        (text.at._replace(y=text.at.y - below), text.words)
        for sheet, below in zip(sheets, drop, strict=False)
        for text in sheet.shapes
        if isinstance(text, Text)
    ]
    for title in (title for lines in every for title in lines.titles):
        rows = _in_rows(squeezed(title), [words for _, words in found])
        if rows is None:
            yield finding(Words.NOWHERE, words=title)
        for row in rows or ():
            found.remove(next(word for word in found if word[1] == row))
    yield from account(found, [cell for cell in wanted if not cell.isdigit()]).wrong


def _in_rows(title: str, found: Sequence[str]) -> list[str] | None:
    """The rows that a title of a column is set in, as long as can be; None where it is not all there."""
    if not title:
        return []
    for row in sorted({row for row in found if row and title.startswith(squeezed(row))}, key=len, reverse=True):
        rest = _in_rows(title[len(squeezed(row)) :], found)
        if rest is not None:
            return [row, *rest]
    return None


def _rows(sheets: Sequence[Sheet], every: Sequence[Lines]) -> Iterator[Finding]:
    """Every row of figures, in its order, with its cells from left to right."""
    prices = [row for lines in every for row in lines.prices]
    costs = [row for lines in every for row in lines.costs]
    one = other = 0
    for seen in _heights(sheets):
        beside = [*prices[one : one + 1], *costs[other : other + 1]]
        if one < len(prices) and _fits(prices[one], seen):
            one += 1
        elif other < len(costs) and _fits(costs[other], seen):
            other += 1
        elif len(beside) == 2 and _fits((*beside[0], *beside[1]), seen):
            one, other = one + 1, other + 1
    for row in (*prices[one:], *costs[other:]):
        yield finding(Tables.PRICES, row=", ".join(row))


def _heights(sheets: Sequence[Sheet]) -> Iterator[list[str]]:
    """The words of each height, from left to right, sheet by sheet from above."""
    for sheet in sheets:
        texts = sorted((shape for shape in sheet.shapes if isinstance(shape, Text)), key=lambda text: -text.at.y)
        row: list[Text] = []
        for text in texts:
            if row and row[-1].at.y - text.at.y > _SAME:
                yield [each.words for each in sorted(row, key=lambda each: each.at.x)]
                row = []
            row.append(text)
        if row:
            yield [each.words for each in sorted(row, key=lambda each: each.at.x)]


def _fits(row: Sequence[str], seen: Sequence[str]) -> bool:
    """Whether these are the cells of a row; words may go on in lines under it, figures may not."""
    if len(row) != len(seen):
        return False
    pairs = list(zip(row, seen, strict=True))
    return all(
        cell == words
        or (not any(map(str.isdigit, cell)) and bool(words) and squeezed(cell).startswith(squeezed(words)))
        for cell, words in pairs
    )
