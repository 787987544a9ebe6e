"""What a kit tells of its yarns: read as it is meant, written back the same, refused where it could mean two things."""

from __future__ import annotations

import json
from fractions import Fraction
from typing import Any

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.kit.kit import Kit, kit_values, read_kit
from layout.plan import plan
from layout.yarns.yarn import Yarn
from tests.plain_kits import METRICS, ROUND, changed, only_refusal, refusals
from tests.yarn_kits import STATED, stated_kits

_REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()


def kit_with(**changes: object) -> Kit:
    """The kit that tells its yarns, changed."""
    return read_kit(changed(STATED, **changes), METRICS)


def warp_yarn(**stated: object) -> Yarn:
    """The warp yarn that `[warp]` tells."""
    yarn = kit_with(warp=stated).amounts.warp.yarn()
    assert yarn is not None
    return yarn


@given(stated_kits())
def test_what_a_kit_tells_comes_back_the_same(values: dict[str, Any]) -> None:
    """Out to JSON and in again: the same kit, and the same plan to the last figure."""
    kit = read_kit(values, METRICS)
    again = read_kit(json.loads(json.dumps(kit_values(kit))), METRICS)
    assert again == kit
    assert kit_values(again) == kit_values(kit)
    assert plan(again).amounts == plan(kit).amounts


def test_a_kit_that_tells_nothing_carries_nothing_of_it() -> None:
    """Only what was said is written back."""
    stated = kit_values(read_kit(ROUND, METRICS))
    assert stated.keys().isdisjoint({"warp", "weft", "room"})
    assert {"draw_in", "shrinkage"}.isdisjoint(stated["weaving"])  # type: ignore[call-overload]


def test_craft_labels_write_the_count_first() -> None:
    """As sold to craft weavers: 8/2 cotton has 3360 yd in a pound."""
    assert warp_yarn(count="8/2", order="count/plies", system="ne").numbers()["yd/lb"] == 3360


def test_older_books_write_the_plies_first() -> None:
    """J. T. Taylor, Cotton Weaving and Designing: 2/40s is two 40s folded and runs as 20 hanks of 840 yd a pound."""
    assert warp_yarn(count="2/40", order="plies/count", system="ne").numbers()["yd/lb"] == 20 * 840


def test_the_order_is_never_guessed() -> None:
    """Without it the sentence names both meanings."""
    sentence = only_refusal(changed(STATED, warp={"count": "8/2", "system": "ne"}), "warp.order")
    assert "craft labels" in sentence
    assert "older books" in sentence


@pytest.mark.parametrize(("counts", "hanks"), [((60, 40), 24), ((40, 20), Fraction(40, 3)), ((48, 24), 16)])
def test_unlike_threads_fold_to_the_handbook_count(counts: tuple[int, int], hanks: Fraction) -> None:
    """60s with 40s (Taylor), 40s with 20s (Brooks, Cotton Manufacturing), 48s with 24s (Davis, Hosiery Manufacture)."""
    threads = [{"count": count, "system": "ne"} for count in counts]
    assert warp_yarn(threads=threads).numbers()["ne"] == hanks


def test_a_length_weighed_by_oneself_is_the_handbook_count() -> None:
    """Taylor: 120 yd of cotton weigh 20 grains (0.06479891 g each, by definition): 50s."""
    assert warp_yarn(grams=1.2959782, length="120 yd", weighed=True).numbers()["ne"] == 50


@given(st.integers(1, 80), st.sampled_from(["tex", "denier", "number_meter"]))
def test_counts_are_what_pint_makes_of_them(count: int, unit: str) -> None:
    """pint's textile units, from the English cotton number."""
    with _REGISTRY.context("textile"):
        theirs = (count * _REGISTRY.number_english).to(unit).magnitude
    key = "nm" if unit == "number_meter" else unit
    assert float(warp_yarn(count=count, system="ne").numbers()[key]) == pytest.approx(theirs, rel=1e-12)


BALL = {"grams": 50, "length": "160 m"}
REFUSED: list[tuple[dict[str, Any], str, str]] = [
    ({"warp": {"count": 8}}, "warp.system", "the system that the count is in"),
    ({"warp": {"system": "ne"}}, "warp.count", "to be given beside system"),
    ({"warp": {"plies": 2}}, "warp.count", "to be given beside plies"),
    ({"warp": {"count": 8, "system": "cut"}}, "warp.system", "200 yd a pound"),
    ({"warp": {"count": 8, "system": "ne", "order": "count/plies"}}, "warp.order", '"8/2" beside it'),
    ({"warp": {"count": "8/2", "system": "ne", "order": "count/plies", "plies": 2}}, "warp.plies", "left out"),
    ({"warp": {"count": "8/0", "system": "ne", "order": "count/plies"}}, "warp.count", "above zero"),
    ({"warp": {"count": "8/2,5", "system": "ne", "order": "count/plies"}}, "warp.count", "whole number of plies"),
    ({"warp": {"count": 0.0001, "system": "ne"}}, "warp.count", "1 to 50000 tex"),
    ({"warp": {"count": 0.5, "system": "tex"}}, "warp.count", "1 to 50000 tex"),
    ({"warp": {"count": 8, "system": "ne", **BALL}}, "warp", "one way of saying"),
    ({"warp": {"count": 8, "system": "ne", "weighed": True}}, "warp.weighed", "grams and a length"),
    ({"warp": {"count": 300, "system": "m/100g", "plies": 2}}, "warp.plies", "finished yarn"),
    (
        {"warp": {"count": "8/2", "order": "count/plies", "system": "yd/lb"}},
        "warp.system",
        "counts the singles of 8/2",
    ),
    ({"warp": {"grams": 50}}, "warp.length", "both grams and a length"),
    ({"warp": {"length": "9 m"}}, "warp.grams", "both grams and a length"),
    ({"warp": {"threads": [{}]}}, "warp.threads[1]", "by count or by weight"),
    ({"warp": {"threads": [{"count": 8}]}}, "warp.threads[1].system", "the system"),
    ({"warp": {"threads": [BALL], "plies": 2}}, "warp.plies", "left out beside threads"),
    ({"warp": {"threads": [{"cuont": 8, "system": "ne"}]}}, "warp.threads[1].cuont", "did you mean count?"),
    ({"warp": {"wrap": {"turns": 9}}}, "warp.wrap", "turns and window"),
    ({"warp": {"wrap": 9}}, "warp.wrap", "table of keys"),
    ({"warp": {"fibre": "steel"}}, "warp.fibre", '"cotton"'),
    ({"weft": {"strands": [{"number": 60}, {"number": 60}]}}, "weft.strands", "at most 100 strands"),
    ({"weft": {"strands": [{"count": "8/2", "system": "ne"}]}}, "weft.strands[1].order", "older books"),
    ({"weft": {"sample": {"grams": 9, "width": "10 cm"}}}, "weft.sample", "grams and width and height"),
    ({"weft": {"sample": {"grams": 0, "width": "1 cm", "height": "1 cm"}}}, "weft.sample.grams", "a number from"),
    ({"weft": {"sample": {"grams": 9, "width": "0 cm", "height": "9 cm"}}}, "weft.sample.width", "1 mm"),
    ({"weft": {"pick": {"straight": "99 mm", "woven": "100 mm"}}}, "weft.pick.straight", "at least the width"),
    ({"weft": {"picks": {"number": 9, "over": "1 cm"}, "beads": {"number": 9, "over": "1 cm"}}}, "weft.beads", "both"),
    ({"weft": {"colours": [{"name": "a", "share": 60}]}}, "weft.colours", "a sum of 60"),
    ({"weft": {"colours": [{"name": "a", "share": 50}, {"name": "a", "share": 50}]}}, "weft.colours", "named once"),
    ({"weft": {"colours": [{"share": 50}]}}, "weft.colours[1]", "name and share"),
    ({"weft": {"colours": [{"name": "a", "share": -1}]}}, "weft.colours[1].share", "a number from 0 to 100"),
    ({"weaving": {"height": "9 cm", "washed": {"before": "9 cm"}}}, "weaving.washed", "before and after"),
    ({"weaving": {"height": "9 cm", "washed": {"before": "9 cm", "after": "10 cm"}}}, "weaving.washed.after", "9 cm"),
    (
        {"weaving": {"height": "9 cm", "washed": {"before": "9 cm", "after": "8 cm"}, "shrinkage": 0.1}},
        "weaving.shrinkage",
        "left out beside washed",
    ),
    ({"weft": 5}, "weft", "table of keys"),
    ({"warp.count": 8}, "warp.count", "known keys"),
]


@pytest.mark.parametrize(("stated", "key", "says"), REFUSED, ids=[f"{key}: {says}" for _, key, says in REFUSED])
def test_what_is_told_by_halves_or_twice_is_refused(stated: dict[str, Any], key: str, says: str) -> None:
    """One clear sentence, with the key it is about and an example."""
    ((field, sentence),) = refusals(ROUND | stated)
    assert (field, says in sentence) == (key, True), sentence
    assert len(sentence.splitlines()) == 1
