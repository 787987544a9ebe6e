"""The price sheet of a range, for the maker alone: what a box costs, what it is sold for, and what has no price."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.box.buying import Purchase
from layout.box.costs import Cost, Spent
from layout.box.quotes import Quote
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, cross
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles.buying import Packed, Prices
from layout.parts.hanging import Hanging, rows_of, stack
from layout.parts.tables.columns import fits
from layout.parts.tables.ruled import Column, Row, ruled
from layout.values.numerals import say_fixed, say_number

PRICE_SHEET = "price-sheet"

_FIRST, _LESS, _APART, _ARM = 3.0, 3.0, 9.0, 0.5
_BESIDE, _GAP = 62.0, 8.0
"""The costs stand in a column so wide, so far to the right of the prices, where there is room for both."""

_SPENT: Mapping[Spent, Role] = {
    "warp": Prices.WARP,
    "weft": Prices.WEFT,
    "leash_cord": Packed.CORD,
    "bought_in": Prices.BOUGHT_IN,
    "paper": Prices.PAPER,
    "board": Prices.BOARDS,
    "cutting": Prices.CUTTING,
    "work": Prices.WORK,
}
"""What money is spent on, in the order of the list."""


class KitPrices(NamedTuple):
    """One kit: the quote of each quantity, and that of the run that is made now."""

    name: str
    quotes: tuple[Quote, ...]
    run: Quote


def price_pages(
    kits: Sequence[KitPrices],
    size: tuple[float, float],
    purpose: str,
    words: Catalogue,
    metrics: FontMetrics,
) -> tuple[Part, ...]:
    """A part for each sheet, in `size` mm: kit by kit, none of them parted where a sheet can hold it whole."""
    width, height = size
    pages: list[list[Hanging]] = [[]]
    used = 0.0
    for block in (_kit(kit, width, words, metrics) for kit in kits):
        if pages[-1] and used + _APART + block.high > height:
            pages.append([])
        used = block.high + (used + _APART if pages[-1] else 0.0)
        pages[-1].append(block)
    return tuple(_part(stack(page, _APART), width, purpose, words) for page in pages)


def _kit(kit: KitPrices, width: float, words: Catalogue, metrics: FontMetrics) -> Hanging:
    """The name of a kit over its prices by quantity and what one box of the run costs."""
    blocks = [Hanging(tuple(rows_of(kit.name, LEAD, width, -_FIRST, metrics, Pen.STRONG)), _FIRST + 1.0)]
    columns, rows = _prices(kit.quotes, words)
    costs = _costs(kit.run, _BESIDE, words, metrics)
    left = width - _BESIDE - _GAP
    beside = next((size for size in (LEAD, SMALL) if left > 0 and fits(columns, rows, size, left, metrics)), None)
    if beside is not None:
        prices = ruled(columns, rows, left, metrics, beside)
        high = max(prices.high, costs.high)
        blocks.append(Hanging((*prices.shapes, *costs.at(left + _GAP, 0)), high))
    else:
        blocks += [ruled(columns, rows, width, metrics, SMALL), costs]
    if missing := lacking(kit.run.cost, words):
        said = rows_of(words.say(Prices.MISSING, things=words.listed(missing)), SMALL, width, -_FIRST, metrics)
        blocks.append(Hanging(tuple(said), -said[-1].at.y + 1.0))
    return stack(blocks, _LESS)


def lacking(cost: Cost, words: Catalogue) -> list[str]:
    """What has no price, each by its name."""
    return list(dict.fromkeys(_called(each, words) for each in cost.missing))


def _called(each: Purchase | str, words: Catalogue) -> str:
    if isinstance(each, str):
        return words.say(Prices.CUTTING if each == "cutting" else Prices.WORK)
    if each.kind in ("warp", "weft", "bought_in"):
        return words.say(Prices.COLOURED, yarn=each.name, colour=each.colour) if each.colour else each.name
    return words.say(_SPENT[each.kind])


def _prices(quotes: Sequence[Quote], words: Catalogue) -> tuple[list[Column], list[Row]]:
    """A row for each quantity: from how many boxes on, cost, price, the price of all, what is left."""
    say = words.say
    columns = [
        Column(say(Prices.FROM), right=True),
        Column(say(Prices.COST), right=True),
        Column(say(Prices.PRICE), right=True, strong=True),
        Column(say(Prices.ALL), right=True),
        Column(say(Prices.MARGIN), right=True),
    ]
    return columns, [Row(tuple(_quoted(each, words))) for each in quotes]


def _quoted(quote: Quote, words: Catalogue) -> Iterator[str]:
    """The cells of a row; no margin where something has no price."""
    yield say_number(quote.boxes, 0)
    yield money(quote.cost.whole, words)
    if quote.price is None:
        yield from ("", "", "")
        return
    yield money(quote.price.each, words)
    yield money(quote.price.each * quote.boxes, words)
    margin = words.say(Prices.PERCENT, number=say_number(100 * quote.price.margin, 1))
    yield "" if quote.cost.missing else margin


def money(value: Fraction, words: Catalogue) -> str:
    """Money to two decimals, halves away from zero, with the decimal sign of the language."""
    return words.figure(say_fixed(value, 2))


def _costs(quote: Quote, width: float, words: Catalogue, metrics: FontMetrics) -> Hanging:
    """What one box of the run costs, by what is paid for."""
    title = words.say(Prices.ONE_BOX, boxes=quote.boxes)
    columns = [Column(title, broken=True), Column(right=True)]
    parts = quote.cost.parts
    rows = [Row((words.say(role), money(parts[spent], words))) for spent, role in _SPENT.items() if spent in parts]
    whole = words.say(Prices.AT_LEAST if quote.cost.missing else Prices.TOGETHER)
    return ruled(columns, [*rows, Row((whole, money(quote.cost.whole, words)), total=True)], width, metrics, SMALL)


def _part(shown: Hanging, width: float, purpose: str, words: Catalogue) -> Part:
    low = -shown.high
    datum = (Point(_ARM, low - _ARM), Point(width - _ARM, low - _ARM), Point(width - _ARM, _ARM))
    hairs: list[Shape] = [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]
    box = (-1.0, low - 2 * _ARM, width + _ARM, 2 * _ARM)
    title = words.say(Prices.NAME)
    return Part(PRICE_SHEET, title, (*hairs, *shown.shapes), datum, box, whole=True, purpose=purpose, measured=False)
