"""How a maker buys and sells is read whole, written back, and refused by key."""

from __future__ import annotations

import tomllib
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics

from layout.box.shop import ONE, Pack, Shop, Step
from layout.box.shop_inputs import SHOP
from layout.box.shop_values import read_shop, shop_values
from layout.kit.input import tables_of
from layout.values.errors import FieldErrors

METRICS = font_metrics()
money = st.integers(0, 10**8).map(lambda cents: cents / 100)
words = st.sampled_from(["ball", "cone", "Strähne", "écheveau"])


def _pack(*sizes: tuple[str, st.SearchStrategy[Any]], needed: bool = False) -> st.SearchStrategy[dict[str, Any]]:
    """A pack of one of these sizes, or, where it is not needed, of none."""
    size = st.one_of(*(st.fixed_dictionaries({key: value}) for key, value in sizes))
    rest = st.fixed_dictionaries({}, optional={"pack": words, "price": money})
    return st.builds(lambda one, other: one | other, size if needed else size | st.just({}), rest)


grams = ("grams", st.floats(0.01, 9999).map(lambda number: round(number, 3)))
length = ("length", st.sampled_from(["50 m", "1/3 m", "100 yd", "2500 mm"]))
yarn = _pack(grams, length)
named = st.lists(st.sampled_from(["madder", "ash grey", "indigo", "beater"]), unique=True, max_size=4)


def _list(pack: st.SearchStrategy[dict[str, Any]]) -> st.SearchStrategy[list[dict[str, Any]]]:
    one = named.filter(len)
    return one.flatmap(
        lambda names: st.tuples(*(pack.map(lambda it, n=name: {"name": n} | it) for name in names)).map(list)
    )


steps = st.lists(st.integers(1, 500), min_size=1, max_size=24, unique=True).map(
    lambda starts: [{"from": start, "less": f"{100 * k / 31} %"} for k, start in enumerate(sorted(starts))]
)
shops = st.fixed_dictionaries(
    {},
    optional={
        "buy": st.fixed_dictionaries(
            {"currency": st.sampled_from(["EUR", "kr", "£"])},
            optional={
                "warp": yarn,
                "weft": yarn,
                "colours": _list(yarn),
                "leash_cord": _pack(length, needed=True),
                "paper": _pack(("sheets", st.integers(1, 5000)), needed=True),
                "also": _list(_pack(("number", st.integers(1, 100)))),
                "hour": money,
                "minutes": st.integers(0, 600),
            },
        ),
        "sell": st.fixed_dictionaries(
            {},
            optional={
                "margin": st.sampled_from(["40 %", 0.25, "33,3 %"]),
                "quantities": steps,
                "round_to": st.just(0.5),
            },
        ),
        "class": st.fixed_dictionaries({}, optional={"people": st.integers(1, 500), "at_a_table": st.integers(1, 9)}),
    },
)


@given(shops)
def test_a_shop_is_written_back(values: dict[str, Any]) -> None:
    """What is read and written back reads as the very same shop, and so does it again."""
    shop = read_shop(values, METRICS)
    assert read_shop(shop_values(shop), METRICS) == shop


@given(shops)
def test_a_shop_without_money_has_none(values: dict[str, Any]) -> None:
    """No price, hour, margin, step or currency is left; packs and the class are."""
    shop = read_shop(values, METRICS)
    bare = shop_values(shop.unpriced)
    assert "price" not in repr(bare)
    assert "sell" not in bare
    assert not bare.get("buy", {}).keys() & {"currency", "hour", "minutes"}
    assert bare.get("class") == shop_values(shop).get("class")
    assert shop.unpriced.colours.keys() == shop.colours.keys()


def test_money_is_exact() -> None:
    """A price is the decimal that was written, not the float next to it."""
    text = '[buy]\ncurrency = "EUR"\nwarp = {pack = "cone", grams = 500, price = 14.10}\n[sell]\nmargin = "40 %"\n'
    shop = read_shop(tomllib.loads(text), METRICS)
    assert shop.warp == Pack("cone", Fraction(500), "g", Fraction(1410, 100))
    assert shop.margin == Fraction(2, 5)
    assert shop.steps == ONE


def test_an_empty_shop_says_nothing() -> None:
    """No table at all reads as a shop of nothing."""
    assert read_shop({}, METRICS) == Shop()
    assert shop_values(Shop()) == {}
    assert shop_values(Shop(steps=(Step(1, Fraction(0)), Step(5, Fraction(1, 20))))) == {
        "sell": {"quantities": [{"from": 1}, {"from": 5, "less": 0.05}]}
    }


BAD: tuple[tuple[dict[str, Any], str, str], ...] = (
    ({"buy": {"warp": {"price": "four"}}}, "buy.warp.price", "'four'"),
    ({"buy": {"warp": {"price": -1}}}, "buy.warp.price", "-1"),
    ({"buy": {"warp": {"price": float("nan")}}}, "buy.warp.price", "nan"),
    ({"buy": {"weft": {"price": True}}}, "buy.weft.price", "True"),
    ({"buy": {"weft": {"price": 1_000_001}}}, "buy.weft.price", "1000001"),
    ({"buy": {"weft": {"grams": 50, "length": "3 m"}}}, "buy.weft", "grams, length"),
    ({"buy": {"leash_cord": {"price": 3}, "currency": "EUR"}}, "buy.leash_cord.length", "nothing"),
    ({"buy": {"paper": {"price": 3}, "currency": "EUR"}}, "buy.paper.sheets", "nothing"),
    ({"buy": {"paper": {"sheets": 500, "price": 3}}}, "buy.currency", "nothing"),
    ({"buy": {"hour": 3}}, "buy.currency", "nothing"),
    ({"buy": {"currency": "kg"}}, "buy.currency", "'kg'"),
    ({"buy": {"currency": "US$2"}}, "buy.currency", "'US$2'"),
    ({"buy": {"also": [{"name": "b"}, {"name": "b"}]}}, "buy.also", "'b'"),
    ({"buy": {"colours": [{"price": 3}]}}, "buy.colours[1]", "price"),
    ({"buy": 3}, "buy", "3"),
    ({"sell": {"margin": "100 %"}}, "sell.margin", "'100 %'"),
    ({"sell": {"quantities": [{"from": 5}, {"from": 5}]}}, "sell.quantities", "5"),
    ({"sell": {"quantities": [{"less": 0.1}]}}, "sell.quantities[1]", "less"),
    ({"sell": {"quantities": [{}]}}, "sell.quantities[1]", "{}"),
    ({"sell": {"quantities": [{"from": k} for k in range(1, 30)]}}, "sell.quantities", "[{'from'"),
    ({"sell": {"round_to": 0}}, "sell.round_to", "0"),
    ({"class": {"people": 0}}, "class.people", "0"),
    ({"class": {"people": 501}}, "class.people", "501"),
)


@pytest.mark.parametrize(("values", "field", "got"), BAD)
def test_what_cannot_be_meant_is_refused(values: dict[str, Any], field: str, got: str) -> None:
    """In one sentence each, which names the key, what came, and an example that works."""
    with pytest.raises(FieldErrors) as raised:
        read_shop(values, METRICS)
    (error,) = raised.value.errors
    assert error.field == field
    assert f"got {got}" in str(error)
    table, _, leaf = field.partition(".")
    before = f"[{table}]\n" + ('currency = "EUR"\n' if table == "buy" and leaf != "currency" else "")
    outer, _, _ = leaf.rpartition(".")
    line = f"{leaf.partition('[')[0]} = [{error.example}]" if "[" in leaf else error.example if leaf else ""
    read_shop(tomllib.loads(f"{before}{outer}.{line}" if outer else f"{before}{line}"), METRICS)


def test_every_key_has_its_help() -> None:
    """And an example that is read."""
    from layout.messages.english import ENGLISH

    for spec in SHOP.inputs:
        assert ENGLISH.say(spec.help)
        tomllib.loads(f"{spec.leaf} = {spec.example}")


def test_the_page_shows_a_shop_that_is_read() -> None:
    """The example of the page about buying is whole: every key of the tables stands in it."""
    page = (Path(__file__).parents[3] / "docs" / "buying.md").read_text("utf-8")
    values = tomllib.loads(page.partition("```toml\n")[2].partition("```")[0])
    shop = read_shop(values, METRICS)
    assert shop_values(shop) == shop_values(read_shop(shop_values(shop), METRICS))
    said = {f"{table}.{key}" for table, keys in values.items() for key in keys}
    tops = {".".join(spec.key.split("[")[0].split(".")[:2]) for spec in SHOP.inputs}
    assert said == tops


@pytest.mark.parametrize("table", [table for table in tables_of(SHOP.inputs) if "." in table])
def test_what_is_no_table_is_refused_with_one_that_works(table: str) -> None:
    """The example of a whole table can be put in its place."""
    outer, leaf = table.split(".")
    with pytest.raises(FieldErrors) as found:
        read_shop({"buy": {"currency": "EUR"}, outer: {"currency": "EUR", leaf: "four"}}, font_metrics())
    (error,) = found.value.errors
    assert error.field == table
    entry = tomllib.loads(str(error).rpartition("for example ")[2])
    assert entry[leaf]
    read_shop({outer: {"currency": "EUR", **entry}}, font_metrics())
