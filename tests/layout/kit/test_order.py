"""What a kit says of its order: read, written back, refused; on which parts it stands."""

from __future__ import annotations

import json
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.pane import Paned
from layout.drawing.shapes import Text
from layout.drawing.sheet import Part
from layout.kit.kit import Kit, kit_values, read_kit, without_buyer
from layout.kit.order import OrderGiven
from layout.plan import plan
from layout.products import PRODUCTS
from layout.run.sets import PLACED
from layout.values.errors import FieldError
from templates_gen.languages.catalogues import words_of
from tests.plain_kits import METRICS, ROUND, changed, only_refusal
from tests.strategies import names

orders = st.fixed_dictionaries({}, optional={"number": names, "buyer": names})
SAID = {"en": "Order 1042", "es": "Pedido 1042", "de": "Auftrag 1042", "fr": "Commande 1042"}
LEAFLET = {
    "en": "Made for Weir Studio: ",
    "es": "Hecho para Weir Studio: ",
    "de": "Für Weir Studio gemacht: ",
    "fr": "Fait pour Weir Studio : ",
}


def kit_with(order: dict[str, Any], **changes: Any) -> Kit:
    """The usual kit with an order."""
    return read_kit(changed(ROUND, order=order, **changes), METRICS)


@given(orders)
def test_an_order_in_plain_values_is_the_same_order(order: dict[str, str]) -> None:
    """Out to JSON and in again changes nothing, and no key is written that was not given."""
    kit = kit_with(order)
    stated = kit_values(kit)
    assert read_kit(json.loads(json.dumps(stated)), METRICS) == kit
    assert stated.get("order", {}) == {key: said.strip() for key, said in order.items()}


def test_a_kit_without_an_order_says_nothing_of_it() -> None:
    """Empty texts and an empty table are no order."""
    plain = kit_values(read_kit(ROUND, METRICS))
    assert "order" not in plain
    for empty in ({}, {"number": ""}, {"number": "", "buyer": ""}):
        assert kit_values(kit_with(empty)) == plain


def test_a_buyer_can_be_left_off() -> None:
    """What carries no buyer is the same kit in all else."""
    kit = kit_with({"number": "1042", "buyer": "Weir Studio"})
    assert kit.order == OrderGiven("1042", "Weir Studio")
    assert without_buyer(kit) == kit_with({"number": "1042"})


@pytest.mark.parametrize(("key", "most"), [("number", 40), ("buyer", 60)])
def test_what_cannot_be_printed_in_one_line_is_refused(key: str, most: int) -> None:
    """Too long by one letter, no text, more lines than one, letters that the print font lacks."""
    assert getattr(kit_with({key: "7" * most}).order, key) == "7" * most
    for wrong in ("7" * (most + 1), 1042, ["7"], "10\n42", "10\t42", "\u202e1042", "織"):
        assert f"for example {key} = " in only_refusal(changed(ROUND, order={key: wrong}), f"order.{key}")


@pytest.mark.parametrize("language", SAID)
@pytest.mark.parametrize("name", PLACED)
def test_every_part_that_lies_beside_others_names_its_order(name: str, language: str) -> None:
    """Once, in its language; a part of no order says nothing of one."""
    box = {"holds": ["help", "label"]}
    for order, times in (({"number": "1042"}, 1), ({}, 0)):
        kit = kit_with(order, box=box, paper={"language": language})
        parts = PRODUCTS[name].alone(plan(kit, words_of(kit)), METRICS)
        assert [says(part, SAID[language]) for part in parts] == [times] * len(parts)


@pytest.mark.parametrize("name", ["strips", "spacing-guide"])
def test_every_piece_that_has_room_names_its_order(name: str) -> None:
    """Once between any two joints; a piece of 16 mm goes without, and a part in one piece says it once."""
    ordered = plan(kit_with({"number": "1042"}))
    for joints, times in (((), [1]), ((-40.0, 40.0), [1, 1, 1]), ((0.0, 146.0), [1, 1, 0])):
        for build in PRODUCTS[name].builds(ordered, METRICS):
            assert not isinstance(build, Paned)
            part = build(False, joints)
            left, _, right, _ = part.box
            spans = pairwise([left, *joints, right])
            at = [shape.at.x for shape in part.shapes if isinstance(shape, Text) and shape.words == "Order 1042"]
            assert [sum(low < x < high for x in at) for low, high in spans] == times


def says(part: Part, words: str) -> int:
    """How often a part says just that within what is cut out."""
    left, low, right, high = part.trim
    found = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words == words]
    return sum(left < shape.at.x < right and low < shape.at.y < high for shape in found)


@pytest.mark.parametrize("language", LEAFLET)
def test_a_leaflet_says_for_whom_it_was_made(language: str) -> None:
    """Before what it is for, in its language."""
    kit = kit_with({"buyer": "Weir Studio"}, paper={"language": language})
    bare = kit_with({}, paper={"language": language})
    made, usual = (PRODUCTS["leaflet"].alone(plan(each, words_of(each)), METRICS)[0] for each in (kit, bare))
    assert made.purpose == LEAFLET[language] + usual.purpose


@pytest.mark.parametrize("buyer", ["W" * 60, "Wm " * 20])
@pytest.mark.parametrize("size", ["common", "a3", "148 x 210 mm"])
def test_the_longest_buyer_has_room(buyer: str, size: str) -> None:
    """On usual, large and small paper; the leaflet then takes one sheet more at most."""
    plain, named = (
        PRODUCTS["leaflet"].alone(plan(kit_with(order, paper={"size": size})), METRICS)
        for order in ({}, {"buyer": buyer})
    )
    assert len(named) <= len(plain) + 1


def test_a_number_that_finds_no_room_on_a_short_strip_is_refused() -> None:
    """By its key, with the length of the strip and a number that has room there."""
    frame = ROUND["frame"] | {"outer_width": "11 cm", "side_width": "2 cm", "margin": "5 mm"}
    small = {"frame": frame, "weaving": ROUND["weaving"] | {"width": "5 cm"}}
    with pytest.raises(FieldError, match=r"^order.number: needs fewer characters, or a wider frame.* 68 mm") as found:
        PRODUCTS["strips"].alone(plan(kit_with({"number": "W" * 40}, **small)), METRICS)
    assert PRODUCTS["strips"].alone(plan(kit_with({"number": found.value.example[-2:-1]}, **small)), METRICS)
