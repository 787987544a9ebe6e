"""The overview of a run: what each kit is, what its box takes, and what that costs, a row for each kit."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.box.quotes import Quote
from layout.plan import Plan
from layout.values.quantity import Quantity, combine


class Singly(NamedTuple):
    """What one set takes where each is made by itself: sheets in the box, sheets once for a run, boards.

    `seconds` is the cutter's time for what lies in one box, `seconds_once` that for what is cut once for all of them;
    None where it is not known.
    """

    each: int = 0
    once: int = 0
    boards: int = 0
    seconds: Fraction | None = Fraction(0)
    seconds_once: Fraction | None = Fraction(0)


class Row(NamedTuple):
    """One kit; lengths are mm, sett is ends per mm. What is not known is None."""

    name: str
    folder: str
    boxes: int
    sett: Fraction
    ends: int
    winds: int | None
    width: Fraction
    height: Fraction
    warp_m: Quantity | None
    warp_g: Quantity | None
    weft_m: Quantity | None
    weft_g: Quantity | None
    cord_m: Quantity
    singly: Singly
    quote: Quote


def overview_row(plan: Plan, boxes: int, folder: str, singly: Singly, quote: Quote) -> Row:
    """The row of a kit; a height that the kit leaves open is that which is woven."""
    warp, amounts, asked = plan.warp, plan.amounts, plan.kit.weaving.height
    return Row(
        plan.kit.name,
        folder,
        boxes,
        warp.sett.per_mm,
        warp.ends,
        warp.winds,
        warp.width,
        asked.mm if asked else Fraction(amounts.woven_mm[1].value),
        amounts.warp_total_m,
        amounts.warp_total_g,
        amounts.weft_total_m,
        amounts.weft_total_g,
        amounts.leashes.together.scaled(1 / 1000),
        singly,
        quote,
    )


class Whole(NamedTuple):
    """All boxes of a run together; `sheets` of paper and `boards` are those of the whole run. None is not known."""

    boxes: int
    warp_m: Quantity | None
    weft_g: Quantity | None
    sheets: int
    boards: int
    cost: Fraction
    price: Fraction | None


def whole_of(rows: Sequence[Row], sheets: int, boards: int) -> Whole:
    """The sums of all rows, each by its number of boxes."""
    prices = [row.boxes * row.quote.price.each for row in rows if row.quote.price]
    return Whole(
        sum(row.boxes for row in rows),
        _sum([(row.warp_m, row.boxes) for row in rows]),
        _sum([(row.weft_g, row.boxes) for row in rows]),
        sheets,
        boards,
        sum((row.boxes * row.quote.cost.whole for row in rows), Fraction(0)),
        sum(prices, Fraction(0)) if len(prices) == len(rows) else None,
    )


def _sum(figures: Sequence[tuple[Quantity | None, int]]) -> Quantity | None:
    known = [figure.scaled(number) for figure, number in figures if figure is not None]
    return combine(lambda *each: sum(each), known[0].reason, *known) if len(known) == len(figures) else None
