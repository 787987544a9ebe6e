"""The table of what to buy: proven cell by cell for any kits and shop, and any cell that is changed is found."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.box.buying import Material
from layout.box.needs import needs
from layout.box.scopes import Boxed, to_buy
from layout.box.shop import Pack, Shop
from layout.box.shop_values import shop_values
from layout.kit.kit import read_kit
from layout.plan import Plan, plan
from templates_gen.files.tables import to_buy_table
from templates_gen.readers.csv import read
from templates_gen.verify.run.to_buy import HEAD, Bought, Boxes, prove_to_buy
from templates_gen.writers.csv import write
from tests.plain_kits import METRICS, changed
from tests.yarn_kits import STATED

STRAND = STATED["weft"]["strands"][0]
OTHER = {"count": 8, "system": "ne", "number": 3, "colour": "indigo", "ball": 50}
SHOP = Shop(
    "EUR",
    warp=Pack("cone", Fraction(500), "g", Fraction("14.50")),
    weft=Pack("ball", Fraction(50), "g", Fraction("4.20")),
    colours={"indigo": Pack("hank", Fraction(100), "g", Fraction(9))},
    leash_cord=Pack("ball", Fraction(50), "m", Fraction("3.10")),
    paper=Pack("pack", Fraction(500), "sheet", Fraction(6)),
    also={"beater": Pack("", Fraction(1), "piece", Fraction("7.50")), "pins": Pack("card", Fraction(25), "piece")},
    people=10,
)
KITS: tuple[dict[str, Any], ...] = (
    {},
    {"weaving__hem": "20 mm", "warp__spare": "25 %", "warp__ball": 100},
    {"weft__colours": [{"name": "indigo", "share": 30, "lengths": 7}, {"name": "=ash", "share": 70}]},
    {"weft__colours": [{"name": f"colour {k}", "share": 10, "lengths": k + 1} for k in range(10)]},
    {"weft": STATED["weft"] | {"strands": [STRAND, OTHER]}},
    {"box": {"spare_ends": 0, "also": [{"name": "pins", "number": 20}]}},
    {"weft": {"sample": {"grams": 9.2, "width": "10 cm", "height": "12 cm"}}},
    {"weft": {}},
    {"warp": {}},
    {"weaving__doubled_warp": True, "weaving__width": "23.6 cm"},
)  # fmt: skip


def planned(changes: dict[str, Any], name: str = "oak") -> Plan:
    """The plan of a kit of that name."""
    return plan(read_kit(changed(STATED, **changes) | {"name": name}, METRICS))


def rows_of(plans: list[tuple[Plan, int]], shop: Shop, material: Material) -> list[list[str]]:
    """The table as it is read back from its file."""
    scopes = to_buy([Boxed(made.kit.name, needs(made), boxes) for made, boxes in plans], shop, material)
    return [list(row) for row in read(write(to_buy_table(scopes, shop.currency).rows))]


def proven(rows: list[list[str]], plans: list[tuple[Plan, int]], shop: Shop, material: Material) -> tuple[str, ...]:
    """What the proof says of the table."""
    kits = [Boxes(made, boxes) for made, boxes in plans]
    return prove_to_buy(rows, kits, shop_values(shop), Bought(*material)).sentences


@pytest.mark.parametrize("changes", KITS, ids=range(len(KITS)))
@pytest.mark.parametrize(
    "shop",
    [SHOP, Shop(), Shop(weft=Pack("", None, "g", Fraction(4)), colours={"oak, x": Pack("", Fraction(1, 3), "m")})],
)
def test_every_cell_is_found_again(changes: dict[str, Any], shop: Shop) -> None:
    """For each kind of kit, together with a plain one, one box and many."""
    plans = [(planned(changes), 10), (planned({}, "ash"), 3)]
    material = Material(90, 8, Fraction("4.50"))
    assert proven(rows_of(plans, shop, material), plans, shop, material) == ()
    assert proven(rows_of(plans[:1], shop, Material()), plans[:1], shop, Material()) == ()


def test_yarn_of_no_known_weight_in_packs_of_no_known_size_is_bought_by_length() -> None:
    """Neither the kit nor the shop says grams: the row is in metres, and the proof says the same."""
    plans, shop = [(planned({"warp": {}}), 10)], Shop(warp=Pack("cone", None, "g"))
    rows = rows_of(plans, shop, Material())
    assert rows[-1][HEAD.index("unit")] == "piece"
    assert {row[HEAD.index("unit")] for row in rows if "warp" in row} == {"m"}
    assert proven(rows, plans, shop, Material()) == ()


@given(st.data())
def test_no_cell_can_be_changed(data: st.DataObject) -> None:
    """Each cell of each row: another number, another word, or none, is found; so is a row too many, lost or moved."""
    plans = [(planned(KITS[2]), 10), (planned(KITS[5], "ash"), 3)]
    rows = rows_of(plans, SHOP, Material(90, 8, Fraction("4.50")))
    number, column = data.draw(st.integers(0, len(rows) - 1)), data.draw(st.integers(0, len(HEAD) - 1))
    cell = rows[number][column]
    if not cell:
        rows[number][column] = "1"
    elif cell.replace(".", "").isdigit() and number:
        last = str((int(cell[-1]) + data.draw(st.sampled_from([1, 9]))) % 10)
        rows[number][column] = cell[:-1] + last
    else:
        rows[number][column] = data.draw(st.sampled_from(["", f"{cell}s"]))
    assert proven(rows, plans, SHOP, Material(90, 8, Fraction("4.50")))


def test_a_lost_row_and_one_too_many_are_found() -> None:
    """Wherever they stand."""
    plans, material = [(planned({}), 10)], Material(12)
    rows = rows_of(plans, SHOP, material)
    for k in range(1, len(rows)):
        assert proven(rows[:k] + rows[k + 1 :], plans, SHOP, material)
        assert proven([*rows[:k], rows[k], *rows[k:]], plans, SHOP, material)
        if k > 1 and rows[k] != rows[k - 1]:
            assert proven([*rows[: k - 1], rows[k], rows[k - 1], *rows[k + 1 :]], plans, SHOP, material)
    assert proven([], plans, SHOP, material)


def test_packs_rounded_down_are_found() -> None:
    """One pack less in every row that has any."""
    plans, material = [(planned({}), 10)], Material(12)
    at = HEAD.index("packs")
    rows = [[*row] for row in rows_of(plans, SHOP, material)]
    spoiled = [row for row in rows[1:] if row[at] not in ("", "0")]
    assert spoiled
    for row in spoiled:
        row[at] = str(int(row[at]) - 1)
    assert len(proven(rows, plans, SHOP, material)) == len(spoiled)
