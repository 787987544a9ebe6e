"""Money that gets into a file for a buyer is found, on its sheets and in what it carries; nothing else is taken so."""

from __future__ import annotations

import json

import pytest
from kits import FILES, font_metrics, kit_of, plan_of

from layout.box.shop_values import shop_values
from layout.drawing.shapes import Point, Text
from layout.drawing.sheet import Sheet
from templates_gen.files.kept import planned
from templates_gen.files.outputs import Outputs
from templates_gen.files.price_file import PRICE_FILE, price_output
from templates_gen.files.run_about import about_run
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.verify.run.money import prove_no_money
from tests.templates_gen.verify.test_price_sheet import RUNS
from tests.templates_gen.verify.test_to_buy import SHOP

RUN = RUNS["one kit, all priced"]


def sheet(*words: tuple[float, float, str]) -> Sheet:
    """A sheet that says these words, each at its place."""
    return Sheet("", 200, 200, tuple(Text(Point(x, y), 3.0, said) for x, y, said in words))


@pytest.mark.parametrize(
    "words",
    ["14.50 EUR", "14,50 eur", "EUR 14.50", "EUR14", "for 14EUR each", "at least 29.33 EUR, without work"],
)
def test_a_price_on_a_sheet_is_found(words: str) -> None:
    """Before the currency or behind it, in one word or in two that stand side by side."""
    assert prove_no_money("shop-card.pdf", [sheet((10, 10, words))], "{}", "EUR").problems
    assert prove_no_money("weir/label.pdf", [sheet((10, 10, words))], "{}", "EUR").problems
    assert not prove_no_money("maker-prices.pdf", [sheet((10, 10, words))], "{}", "EUR").problems
    assert prove_no_money("shop-card.pdf", [sheet((10, 10, "14.50"), (24, 10, "EUR"))], "{}", "EUR").problems
    assert prove_no_money("shop-card.pdf", [sheet((24, 10, "14.50"), (10, 10, "EUR"))], "{}", "EUR").problems


def test_other_figures_are_no_money() -> None:
    """A blank for the price, the word alone, a word that holds it, figures of the kit, a file without a currency."""
    plain = [
        (10, 10, "Price"),
        (30, 60, "EUR"),
        (10, 80, "10 EUROPEAN oaks"),
        (10, 90, "6.35 per inch"),
        (10, 99, "14.50"),
    ]
    assert not prove_no_money("shop-card.pdf", [sheet(*plain)], "{}", "EUR").problems
    assert not prove_no_money("shop-card.pdf", [sheet((10, 10, "14.50 EUR"))], "{}", "").problems


def test_the_makers_own_words_are_theirs() -> None:
    """A line of text, an item and a name may hold a sum that the maker wrote there, whole or in part; no other may."""
    box = {"says": "Kits from 20 EUR", "also": [{"name": "voucher of 5 EUR"}]}
    inputs = json.dumps({"file": "shop-card.pdf", "run": {"kits": [{"name": "Oak, 30 EUR", "box": box}]}})
    own = ("Kits from 20 EUR", "from 20 EUR", "Frame, voucher of 5 EUR, rod", "Oak, 30 EUR")
    assert not prove_no_money(
        "shop-card.pdf", [sheet(*((10, 10 * k, said) for k, said in enumerate(own)))], inputs, "EUR"
    ).problems
    for words in ("20 EUR each", "14.50 EUR", "voucher of 6 EUR", "Kits from 20 EUR 3 EUR"):
        assert prove_no_money("shop-card.pdf", [sheet((10, 10, words))], inputs, "EUR").problems
    bare = json.dumps({"run": {"kits": [{"box": {"says": "EUR"}}]}})
    assert prove_no_money("shop-card.pdf", [sheet((10, 10, "3 EUR"))], bare, "EUR").problems


def test_a_run_whose_maker_speaks_of_money_is_made() -> None:
    """Such words on label, list and shop card refuse no run."""
    kit = kit_of({"box": {"says": "Kits from 20 EUR", "also": [{"name": "voucher of 5 EUR"}]}})
    found = Range("Fair", (RangeKit(kit, 2, shop=SHOP),), SHOP, copies_said=True)
    outputs = RunOutputs(found, [planned(kit)], font_metrics(), None)
    for file in outputs.files:
        output = file.draw()
        assert prove_no_money(file.name, output.sheets, output.about.inputs, SHOP.currency).sound, file.name


def test_the_price_sheet_under_another_name_is_found() -> None:
    """By its inputs, and a sum in any of its rows by the word beside it."""
    output = price_output(RUN, font_metrics())
    assert not prove_no_money(PRICE_FILE, output.sheets, output.about.inputs, "EUR").problems
    assert prove_no_money("print-1-time.pdf", output.sheets, output.about.inputs, "EUR").problems


def test_a_shop_in_the_inputs_is_found() -> None:
    """Only the maker's files carry it; a run's own do not, nor does a stock without its prices."""
    for file in ("print-1-time.pdf", "shop-card.pdf", "class-sheet.pdf", "job.pdf"):
        about = about_run("a range", RUN.kits, "what", file)
        assert not prove_no_money(file, (), about.inputs, "EUR").problems
        values = json.loads(about.inputs)
        for more in ({"shop": shop_values(SHOP)}, {"run": {"buy": {"hour": 3}}}, {"stock": {"prices": {"sheet": 4.5}}}):
            assert prove_no_money(file, (), json.dumps(values | more), "EUR").problems
        assert not prove_no_money(file, (), json.dumps(values | {"stock": {"prices": {}}}), "EUR").problems
    assert json.loads(about_run("a range", RUN.kits, "what", PRICE_FILE).inputs)["shop"]


def test_no_file_of_a_kit_holds_money() -> None:
    """Every file that `make` makes of a kit, even where the maker's currency is a word that sheets say."""
    outputs = Outputs(plan_of(), font_metrics())
    for name in FILES:
        output = outputs.output(name)
        assert not prove_no_money(name, output.sheets, output.about.inputs, "EUR").problems
