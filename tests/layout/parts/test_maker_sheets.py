"""Golden drawings of the price sheet and the shop card, and what must be true of them whatever they say."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

import pytest
from golden import listed, matches
from kits import font_metrics

from layout.box.needs import needs
from layout.box.quotes import Quote, Rates, Takes, quote, quotes
from layout.box.shop import Pack, Shop, Step
from layout.box.weights import Boards, packed
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.kit.box import Box, Item
from layout.kit.kit import read_kit
from layout.parts.price_sheet import KitPrices, price_pages
from layout.parts.shop_card import cards_on, shop_cards
from layout.plan import Plan, plan
from tests.yarn_kits import STATED

METRICS = font_metrics()
SHOP = Shop(
    "EUR",
    warp=Pack("cone", Fraction(500), "g", Fraction("14.50")),
    weft=Pack("ball", Fraction(50), "g", Fraction("4.20")),
    paper=Pack("pack", Fraction(500), "sheet", Fraction(6)),
    hour=Fraction(18),
    minutes=Fraction(25),
    margin=Fraction(2, 5),
    steps=(Step(1, Fraction(0)), Step(10, Fraction(1, 10))),
    round_to=Fraction(1, 2),
)


def boxed() -> Plan:
    """A kit whose box is described."""
    box = Box(also=(Item("beater", 1, Fraction(45)),), says="Woven on a frame.", empty=Fraction(310))
    return plan(replace(read_kit(STATED, METRICS), box=box))


def prices() -> Part:
    """The price sheet of one kit."""
    made = boxed()
    takes = lambda boxes: Takes(4 * boxes, boxes, Fraction(boxes))  # noqa: E731
    rates, needed = Rates(Fraction("4.50"), Fraction("0.80")), needs(made)
    each = KitPrices(made.kit.name, quotes(needed, SHOP, takes, rates), quote(needed, SHOP, 10, takes(10), rates))
    (page,) = price_pages([each], (166, 200), "what for", made.words, METRICS)
    return page


def card() -> Part:
    """The shop card of the same kit."""
    made = boxed()
    return shop_cards([(made, packed(made, 62_000, Boards(60_000, 3, "birch plywood")))], made.words, METRICS)


@pytest.mark.parametrize(("name", "make"), [("price-sheet", prices), ("shop-card", card)])
def test_golden_sheets(name: str, make: object) -> None:
    """As they were looked at."""
    part = prices() if make is prices else card()
    assert matches(name, listed(part))


@pytest.mark.parametrize("make", [prices, card])
def test_all_that_is_drawn_lies_in_the_box(make: object) -> None:
    """Words from their beginning to their end, and every line."""
    part = prices() if make is prices else card()
    left, low, right, high = part.box
    for shape in part.shapes:
        if isinstance(shape, Text):
            assert left <= shape.at.x
            assert shape.at.x + METRICS.width(shape.words, shape.size, shape.pen) <= right + 1e-4
            assert low <= shape.at.y <= high
        elif isinstance(shape, Curve):
            assert all(left - 1e-6 <= x <= right + 1e-4 and low - 1e-6 <= y <= high + 1e-6 for x, y in shape.points())


def test_a_card_is_a6() -> None:
    """148 x 105 mm (ISO 216), and as many as find room stand one under the other."""
    (outline,) = (shape for shape in card().shapes if isinstance(shape, Curve) and shape.pen is Pen.CUT)
    xs, ys = zip(*outline.points(), strict=True)
    assert (max(xs) - min(xs), max(ys) - min(ys)) == (148, 105)
    assert [cards_on(height) for height in (50, 105, 215.9, 216, 327)] == [1, 1, 1, 2, 3]


def test_prices_by_quantity_are_computed_anew() -> None:
    """One box alone bears whole cones and balls and a pack of paper; of ten each bears a tenth of what ten take."""
    one, ten = (found.cost.parts for found in _quotes())
    assert one["warp"] == Fraction("14.50")
    assert one["paper"] == 6
    assert ten["paper"] == Fraction(6, 10)
    assert ten["warp"] < one["warp"]
    assert one["work"] == ten["work"] == Fraction("7.50")
    assert one["board"] == ten["board"] == Fraction("4.50")
    assert one["cutting"] == ten["cutting"] == Fraction("0.80")


def _quotes() -> tuple[Quote, ...]:
    takes = lambda boxes: Takes(4 * boxes, boxes, Fraction(boxes))  # noqa: E731
    return quotes(needs(boxed()), SHOP, takes, Rates(Fraction("4.50"), Fraction("0.80")))
