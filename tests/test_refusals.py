"""Every example that a refusal gives, pasted where it says, is read or meets a different complaint; chains end."""

from __future__ import annotations

import copy
import random
from collections.abc import Mapping, Sequence
from fractions import Fraction
from typing import Any

import pytest

from layout.cutting.stock.stock_inputs import STOCK
from layout.cutting.stock.stock_values import read_stock, stock_values
from layout.kit.input import Input
from layout.kit.inputs import INPUTS
from layout.kit.kit import kit_values, read_kit
from layout.kit.lookup import KIT
from layout.messages.roles import Entry
from layout.plan import plan
from layout.values.errors import FieldError
from layout.values.units import Length, exact_length
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file as kitfile
from templates_gen.inputs import stock_file as stockfile
from templates_gen.lettering.fonts import metrics
from tests.pasting import chain, pasted, refused, remembering
from tests.plain_kits import FLAT, NOTCHED, PEGGED, ROUND, placed

BAD: list[Any] = [
    None, "", 0, -1, 1, 7, 10**9, 10**400, 1.5, float("nan"), float("inf"), True, [], [1], {}, {"x": 1}, "x" * 500,
    "40", "40 cm", "-3 cm", "0 mm", "1,234 mm", "1/0 in", "1 3/2 in", "3 m", "30 m", "1 mm", "8 epi", "900 epi",
    "150 g", "0 N", "5 %", "200 %", "8/2", "8,500", "cut", "10 x 10 mm", "ende", "\x1b[2J", "\u6f22\u5b57", "#12",
]  # fmt: skip
"""Values that are wrong for most inputs: types, forms, units, sizes."""

_LENGTHS = ("0 mm", "0.5 mm", "3 mm", "12 mm", "45 mm", "1 1/2 in", "60 mm", "5 in", "40 cm", "1 m", "100 in", "3 m")
_SETTS = ("1 per cm", "3 epi", "25 per 10 cm", "10 per cm", "40 epi", "60 per cm", "0.1 per cm", "13 epi")
USUAL: Mapping[str, tuple[Any, ...]] = {
    "length": _LENGTHS, "width": _LENGTHS, "sett": _SETTS, "density": _SETTS, "flag": (True, False),
    "whole": (0, 1, 3, 10, 60, 1000), "amount": (1, 0.05, 50, 100), "share": (0, 0.5, "5 %", "90 %"),
    "force": ("1 N", "1 g", "10 kg"), "count": (8, "8/2", 200, 0.5), "system": ("ne", "tex", "yd/lb", "lea"),
    "size": ("common", "a3", "148 x 210 mm"),
}  # fmt: skip
"""Values that are right by themselves, and may disagree with others."""

READINGS = (
    [(1, "5 cm")], [(60, "1 cm")], [(13, "5 cm"), (30, "5 cm")], [(3, "1 in"), (8, "1 in"), (9, "1 in")], [(1, "1 mm")],
    [(11, "2 in")], [(10_000, "3 m")], [(1, "8 cm")],
)  # fmt: skip


def planned(values: Mapping[str, Any]) -> None:
    """Read and plan a kit."""
    plan(read_kit(values, metrics()))


def laid(values: Mapping[str, Any]) -> None:
    """Read and plan a kit, and lay its parts on paper."""
    outputs = Outputs(plan(read_kit(values, metrics())), metrics())
    assert all(outputs.printed.layings(name) for name in outputs.printed.names)


def stocked(values: Mapping[str, Any]) -> None:
    """Read a stock."""
    read_stock(values, metrics())


def _of_its_kind(spec: Input, every: Sequence[Input]) -> int:
    """Which of all inputs of its kind this is."""
    return [each.key for each in every if each.kind == spec.kind].index(spec.key)


def _shared(spec: Input, every: Sequence[Input], values: Sequence[Any]) -> list[Any]:
    """The values to try at this input: all at the first of its kind, shared out among every four of the others."""
    number = _of_its_kind(spec, every)
    return list(values[(number - 1) % 4 :: 4]) if number else list(values)


def _ends(spec: Input) -> list[Any]:
    """The limits of an input, half of them and twice as much."""
    return [
        exact_length(Length(each.mm * by)) for each in (spec.low, spec.high) if each for by in (Fraction(1, 2), 1, 2)
    ]


def _example_works(spec: Input, values: Sequence[Any]) -> None:
    use = remembering(planned)
    found = [chain(placed(spec.key, value)[0], use, KIT) for value in [*values, *_ends(spec)]]
    assert sum(map(bool, found)) > len(values) / 4  # words take most texts
    assert max(map(len, found)) <= 4


@pytest.mark.parametrize("spec", INPUTS, ids=lambda spec: spec.key)
def test_the_example_for_bad_values_of_a_kit_works(spec: Input) -> None:
    """At every key, values of many wrong kinds, and values at and beyond its limits; all of them for every kind."""
    _example_works(spec, _shared(spec, INPUTS, BAD))


@pytest.mark.slow
@pytest.mark.parametrize("spec", INPUTS, ids=lambda spec: spec.key)
def test_the_example_for_every_bad_value_of_a_kit_works(spec: Input) -> None:
    """At every key, values of every wrong kind."""
    _example_works(spec, BAD)


def test_every_bad_value_is_tried_at_every_kind_of_key() -> None:
    """Whoever leaves values out at some keys tries each at another key of the kind, in both tables."""
    for every in (INPUTS, STOCK.inputs):
        for kind in {spec.kind for spec in every}:
            tried = [repr(value) for spec in every if spec.kind == kind for value in _shared(spec, every, BAD)]
            assert set(tried) == set(map(repr, BAD))


@pytest.mark.parametrize("seed", [0, 1, 2, *(pytest.param(seed, marks=pytest.mark.slow) for seed in range(3, 12))])
def test_the_examples_for_inputs_that_disagree_work(seed: int) -> None:
    """One to five values that are right alone, at random: whoever does what each refusal says comes to a kit."""
    choose, found = random.Random(seed), 0  # noqa: S311
    for _ in range(25):
        found += bool(chain(_at_random(choose), planned, KIT))
    assert found > 8


def test_the_examples_for_parts_that_fit_no_sheet_work() -> None:
    """Where a part finds no room on paper, as the kit's own values are by then."""
    ways: list[dict[str, Any]] = [
        {"paper": {"lay": "straight"}, "frame": {"outer_width": "70 cm"}, "weaving": {"width": "60 cm"}},
        {"paper": {"size": "148 x 210 mm", "lay": "diagonal"}},
        {"frame": {"outer_width": "80 mm"}},
        {"sett": {"given": "12 per cm", "marking_unit": "1 mm"}},
    ]
    met = []
    for way in ways:
        values = copy.deepcopy(ROUND)
        for table, keys in way.items():
            values[table] = {**({} if table == "sett" else values.get(table, {})), **keys}
        met += [error.field for error in chain(values, laid, KIT)]
    assert {"paper.lay", "frame.outer_width", "sett.marking_unit"} <= set(met)


def _at_random(choose: random.Random) -> dict[str, Any]:
    values: dict[str, Any] = copy.deepcopy(choose.choice([ROUND, FLAT, NOTCHED, PEGGED]))
    usual = [spec for spec in INPUTS if "[]" not in spec.key and (spec.kind in USUAL or spec.choices)]
    for spec in choose.sample(usual, choose.randint(1, 5)):
        place: dict[str, Any] = values
        for table in spec.key.split(".")[:-1]:
            place = place.setdefault(table, {})
        place[spec.leaf] = choose.choice(USUAL.get(spec.kind) or spec.choices)
    if choose.random() < 0.5:
        readings = [{"pairs": pairs, "window": window} for pairs, window in choose.choice(READINGS)]
        values["sett"] = {**values["sett"], "readings": readings}
    return values


@pytest.mark.parametrize("key", ["outer_height", "yarns.bar_diameter", "frame.outer_widht", "papre", "zygote", "a b"])
def test_the_example_for_a_strange_key_works(key: str) -> None:
    """In the wrong table, misspelt, or like none: the line is put right, moved, or left out."""
    values = copy.deepcopy(ROUND)
    table, _, leaf = key.rpartition(".")
    (values[table] if table else values)[leaf] = {"size": "a4"} if key == "papre" else "40 cm"
    assert chain(values, planned, KIT)


def _stock_example_works(spec: Input, bad: Sequence[Any]) -> None:
    met, use = 0, remembering(stocked)
    for value in [*bad, "0.001 mm", "20 mm", "50 mm", "#ffffff"]:
        values = stock_values(stockfile.built_in())
        place: Any = values.setdefault(spec.table, {}) if spec.table else values
        place[spec.leaf] = value
        met += bool(chain(values, use, STOCK))
    assert met > len(bad) / 3


@pytest.mark.parametrize("spec", STOCK.inputs, ids=lambda spec: spec.key)
def test_the_example_for_bad_values_of_a_stock_works(spec: Input) -> None:
    """At every key of a stock file, values of many wrong kinds; all of them for every kind of key."""
    _stock_example_works(spec, _shared(spec, STOCK.inputs, BAD))


@pytest.mark.slow
@pytest.mark.parametrize("spec", STOCK.inputs, ids=lambda spec: spec.key)
def test_the_example_for_every_bad_value_of_a_stock_works(spec: Input) -> None:
    """At every key of a stock file, values of every wrong kind."""
    _stock_example_works(spec, BAD)


def test_two_alike_colours_are_offered_one_that_is_free() -> None:
    """Whichever two operations are alike, in whatever colour: the example is unlike all the others."""
    own = stock_values(stockfile.built_in())["colours"]
    assert isinstance(own, dict)
    for first in own:
        for second in own:
            if first == second:
                continue
            for colour in {*own.values(), "#000000", "#c0392b"}:
                values = stock_values(stockfile.built_in()) | {"colours": own | {first: colour, second: colour}}
                met = chain(values, stocked, STOCK)
                assert 1 <= len(met) <= 2


def test_what_is_given_twice_for_the_kerf_can_be_left_out() -> None:
    """A kerf beside one for each way."""
    values = stock_values(stockfile.built_in())
    for cutting in (
        {"kerf": "0.2 mm", "kerf_x": "0.2 mm"},
        {"kerf": "0.2 mm", "kerf_y": "0.2 mm"},
        {"kerf_x": "1 mm"},
        {},
    ):
        assert chain(values | {"cutting": cutting}, stocked, STOCK)


def test_doing_what_a_refusal_says_can_fail() -> None:
    """The demo kit is taken; a refusal that offers what it refuses is caught."""
    assert chain(kit_values(kitfile.demo()), planned, KIT) == []

    def stubborn(values: Mapping[str, Any]) -> None:
        raise FieldError("name", Entry.NAME_SEEN, repr(values["name"]), 'name = "x"')

    with pytest.raises(AssertionError, match=r"^same: name"):
        chain(ROUND, stubborn, KIT)
    assert [each["name"] for each in pasted(ROUND, refused(ROUND, stubborn)[0], KIT)] == ["x"]
