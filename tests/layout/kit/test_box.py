"""What a kit says of its box: read, written back, refused."""

from __future__ import annotations

import json
from collections.abc import Mapping
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.cutting.products import CUT_PRODUCTS
from layout.kit.box import CAN_LIE, CARDS, CUT, PRINTED, Box, Item, Legal
from layout.kit.kit import kit_values, read_kit, without_legal
from layout.messages.english import ENGLISH
from layout.products import PRODUCTS
from tests.plain_kits import METRICS, ROUND, changed, only_refusal
from tests.strategies import names

KEPT = {"strips", "strip-near", "strip-far", "start-here"}

items = st.lists(
    st.fixed_dictionaries({"name": names}, optional={"number": st.integers(1, 1000), "grams": st.integers(0, 9999)}),
    max_size=5,
    unique_by=lambda item: item["name"].strip(),
)
lists = st.lists(st.sampled_from(CAN_LIE), unique=True, max_size=8)
cards = st.sampled_from(["a7", "A6", "bank card", "90 x 60 mm", "4 1/2 x 3 in", "60 x 90 mm", "11.5 x 7 cm"])
boxes = st.fixed_dictionaries(
    {"holds": lists},
    optional={
        "also": items,
        "frame": st.booleans(),
        "spare_ends": st.integers(0, 100),
        "label": cards,
        "list": cards,
        "help": cards,
        "fold": st.booleans(),
        "says": names,
        "link": st.sampled_from(["https://example.org/weir", "http://example.org/ü?x=1#y"]),
        "outside": st.sampled_from(["42 x 57 x 6 cm", "16 1/2 x 22 x 2.5 in", "42 cm x 570 mm x 6 cm"]),
        "empty": st.sampled_from(["310 g", "0.31 kg", "11 oz", 310, 12.5]),
    },
)
legals = st.fixed_dictionaries(
    {},
    optional=dict.fromkeys(("maker", "contact", "batch", "warp_fibre", "weft_fibre", "care", "age"), names)
    | {"address": st.lists(names, max_size=3), "cautions": st.lists(names, max_size=3)},
)


@given(boxes, legals)
def test_a_box_in_plain_values_is_the_same_box(box: dict[str, Any], legal: dict[str, Any]) -> None:
    """Out to JSON and in again changes nothing, and no key is written that was not given."""
    once = [name for name in ("winding", "weaving-grid") if name not in box["holds"]]
    kit = read_kit(changed(ROUND, box=box | {"once": once}, legal=legal), METRICS)
    stated = kit_values(kit)
    assert read_kit(json.loads(json.dumps(stated)), METRICS) == kit
    for table, given_there in (("box", box | {"once": once}), ("legal", legal)):
        written = stated.get(table, {})
        assert isinstance(written, Mapping)
        assert set(written) <= set(given_there)


def test_a_kit_without_a_box_says_nothing_of_it() -> None:
    """Its plain values are those of before; an empty table is no box."""
    plain = kit_values(read_kit(ROUND, METRICS))
    assert not {"box", "legal"} & set(plain)
    assert kit_values(read_kit(changed(ROUND, box={}, legal={}), METRICS)) == plain
    assert not read_kit(changed(ROUND, box={}), METRICS).box.given


def test_what_is_left_out_is_usual() -> None:
    """Strips, guides, gauge, leaflet and label in each box; grid, first sheet and frame check once for a run."""
    box = Box()
    assert box.each_holds == ("strips", "spacing-guide", "wrap-gauge", "leaflet", "label")
    assert box.run_holds == ("weaving-grid", "start-here", "frame-check")
    assert [item.name for item in box.items(ENGLISH)] == ["beater", "tapestry needle", "rod for the leashes"]
    assert box.spare_ends == 2
    assert (box.label_size.name, box.list_size.name, box.help_size.name) == ("a7", "a6", "a6")
    moved = Box(holds=("weaving-grid", "leaflet"))
    assert moved.run_holds == ("start-here", "frame-check")
    assert Box(once=("leaflet",)).each_holds == ("strips", "spacing-guide", "wrap-gauge", "label")
    assert moved.has("weaving-grid")
    assert moved.has("frame-check")
    assert not moved.has("strips")


def test_cards_have_the_sizes_of_their_standards() -> None:
    """ISO 216: A7 is 74 x 105 mm, A6 105 x 148 mm; ISO/IEC 7810: ID-1 is 85.60 x 53.98 mm (from memory)."""
    sizes = {name: (float(card.width.mm), float(card.height.mm)) for name, card in CARDS.items()}
    assert sizes == {"a7": (105, 74), "a6": (148, 105), "bank card": (85.6, 53.98)}


def test_what_can_lie_in_a_box_can_be_made() -> None:
    """Every name is that of a product, printed or cut; what comes in pieces for one end goes by its one name."""
    assert set(CUT) <= set(CUT_PRODUCTS)
    of_their_own = {"start-here", "leaflet", "help", "label"}
    assert set(PRINTED) - of_their_own <= set(PRODUCTS)
    assert set(PRODUCTS) - {"strip-near", "strip-far"} <= set(PRINTED)


@pytest.mark.parametrize(
    ("text", "grams"),
    [("310 g", 310), ("0.31 kg", 310), (310, 310), (12.5, Fraction(25, 2)), ("1 lb", Fraction("453.592"))],
)
def test_weights_are_grams(text: object, grams: Fraction) -> None:
    """A pound is 453.59237 g (international agreement of 1959); weights are kept to the milligram."""
    assert read_kit(changed(ROUND, box={"empty": text}), METRICS).box.empty == grams


def test_an_own_card_lies_on_its_longer_side() -> None:
    """However it was written."""
    card = read_kit(changed(ROUND, box={"label": "60 x 90 mm"}), METRICS).box.label_size
    assert (card.width.mm, card.height.mm) == (90, 60)


@pytest.mark.parametrize(
    ("box", "key", "said"),
    [
        ({"holds": ["leaflit"]}, "box.holds", "leaflet is meant"),
        ({"once": ["strips"]}, "", ""),
        ({"holds": ["strips"], "once": ["strips"]}, "box.once", "each name once"),
        ({"holds": ["strips", "strips"]}, "box.holds", "each name once"),
        ({"also": [{"name": "beater"}, {"name": "beater"}]}, "box.also", "each thing once"),
        ({"also": [{"grams": 5}]}, "box.also[1]", "a name"),
        ({"also": [{"name": "x"}] * 25}, "box.also", "0 to 24"),
        ({"label": "300 x 200 mm"}, "box.label", "at most 166 x 166 mm"),
        ({"help": "150 x 206 mm"}, "box.help", "at most 166 x 166 mm"),
        ({"link": "https://" + "x" * 200}, "box.link", "208 characters"),
    ],
)
def test_boxes_that_cannot_be(box: dict[str, Any], key: str, said: str) -> None:
    """One sentence with the key; what lies once in a run need not lie in each box."""
    if not key:
        assert "strips" not in read_kit(changed(ROUND, box=box), METRICS).box.each_holds
        return
    assert said in only_refusal(changed(ROUND, box=box), key)


def test_legal_words_can_be_left_off() -> None:
    """What carries no legal words is the same kit in all else."""
    legal = {"maker": "Shop by the Weir", "address": ["1 Example Lane"]}
    kit = read_kit(changed(ROUND, legal=legal, box={"also": []}), METRICS)
    assert kit.legal == Legal("Shop by the Weir", ("1 Example Lane",))
    assert without_legal(kit) == read_kit(changed(ROUND, box={"also": []}), METRICS)
    assert kit.box.items(ENGLISH) == ()
    assert Item("beater").number == 1
