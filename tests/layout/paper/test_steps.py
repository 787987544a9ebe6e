from __future__ import annotations

import pytest
from kits import font_metrics

from layout.drawing.typeset import NAME
from layout.messages.english import ENGLISH
from layout.messages.roles import SheetName
from layout.paper.head import WEAVE
from layout.paper.steps import FINISH, HEADING, LEASHES, MARKS, NAMES, PLACES, named, place_of
from layout.products import PRODUCTS


@pytest.mark.parametrize("product", PRODUCTS)
@pytest.mark.parametrize("work", MARKS)
def test_every_product_has_its_place_and_its_name(product: str, work: str) -> None:
    """Whatever the kind of frame."""
    assert product in PLACES
    found = named(product, work)
    assert found is not None
    assert ENGLISH.messages[found.name]
    assert ENGLISH.messages[found.purpose]


def test_the_steps_count_from_one_to_eight() -> None:
    """The tile of a step is its number; a sheet of no step shows a letter or the mark."""
    places = [*PLACES.values(), LEASHES, HEADING, FINISH]
    assert {place.step for place in places if place.step} == set(range(1, 9))
    assert all(place.tile == str(place.step) for place in places if place.step)
    assert {place.tile for place in places if not place.step} == {"B", "G", "L", "P", WEAVE}


def test_a_part_that_is_cut_has_neither() -> None:
    """Its drawing stands outside the order of the work."""
    assert place_of("shed-stick") == ("", 0)
    assert named("shed-stick") is None


def test_every_name_is_used_and_fits_a_narrow_head() -> None:
    """No name is broken beside a tall part, where 97 mm are free."""
    used = {role for names in (NAMES, *MARKS.values()) for each in names.values() for role in each}
    check = {SheetName.NAME_PRINTER_CHECK, SheetName.PURPOSE_PRINTER_CHECK}  # which is of no kit
    assert used | check | {SheetName.PURPOSE_STRIPS_ENDS} == set(SheetName)  # what a loose rod has instead of winds
    for role in (each.name for names in (NAMES, *MARKS.values()) for each in names.values()):
        assert font_metrics().width(ENGLISH.say(role), NAME) < 97
