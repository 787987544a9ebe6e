"""What to buy in one sentence: packs by name, what is left, what nobody says how it is sold, and what it comes to."""

from __future__ import annotations

from fractions import Fraction

from layout.box.buying import Material, Purchase, Wanted, purchases
from layout.box.needs import Need, Taken
from layout.box.scopes import Scope
from layout.box.shop import Pack, Shop
from layout.values.quantity import measured
from templates_gen.screen.buying_report import buy_sentences, buy_values

NOTHING, RUN = measured(0, "so"), Material(90, 8)


def need(kind: str, name: str, colour: str = "", unit: str = "g", amount: float = 1000) -> Need:
    """A need without spare."""
    return Need(kind, name, colour, {unit: Taken(measured(amount, "so"), NOTHING)})  # type: ignore[arg-type, dict-item]


SHOP = Shop(
    "EUR",
    warp=Pack("cone", Fraction(500), "g", Fraction("14.50")),
    weft=Pack("", Fraction(50), "g", Fraction("4.20")),
    paper=Pack("pack", Fraction(500), "sheet", Fraction(6)),
)
NEEDS = (
    need("warp", "heron cord", amount=182),
    need("weft", "marsh wool", "madder", amount=100),
    need("leash_cord", "", unit="m", amount=4.25),
    need("bought_in", "beater", unit="piece", amount=1),
)


def bought(*needs: Need, boxes: int = 10, shop: Shop = SHOP, material: Material = RUN) -> tuple[Purchase, ...]:
    """What these boxes take."""
    return purchases([Wanted(needs, boxes)], shop, material)


def test_a_run_in_one_sentence() -> None:
    """Packs by their own word, balls and packs by ours; a sum that says what has no price."""
    line, paid = buy_sentences(bought(*NEEDS), "EUR")
    assert line == (
        "Buy: 4 x cone of heron cord (500 g each; 180 g left), 20 balls of marsh wool, madder (50 g each), "
        "43 m of leash cord, 10 x beater, 1 x pack of paper (500 sheets each; 410 sheets left), 8 boards."
    )
    assert paid == "That is at least 148.00 EUR, without leash cord, beater, 8 boards."  # 58.00, 84.00 and 6.00


def test_all_priced_and_imperial() -> None:
    """In yards and ounces for a kit in inches; a sum without ifs where all has a price; nothing where nothing is."""
    line, paid = buy_sentences(bought(NEEDS[0], material=Material()), "EUR", imperial=True)
    assert line == "Buy: 4 x cone of heron cord (18 oz each; 6.3 oz left)."
    assert paid == "That is 58.00 EUR."
    (line,) = buy_sentences(bought(NEEDS[2], material=Material()), "EUR", imperial=True)
    assert line == "Buy: 47 yd of leash cord."
    assert buy_sentences((), "EUR") == ("Buy: nothing.",)


def test_values_for_programs() -> None:
    """Exact figures with nulls where nothing is known."""
    cone, *_, cord = buy_values([Scope("run", "", 10, bought(NEEDS[0], NEEDS[2], material=Material()))])
    assert (cone["packs"], cone["paid"], cone["kit"], cone["left"]) == (4, 58.0, None, 180.0)
    assert (cord["packs"], cord["paid"], cord["name"], cord["needed"]) == (None, None, None, 42.5)
