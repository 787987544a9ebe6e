"""Kits side by side: what differs first, in the words as typed; what says the same in other units is alike."""

from __future__ import annotations

import pytest

from templates_gen.desk.kits.compare import MOST, Compared, compare
from templates_gen.desk.slip.typed import example
from templates_gen.languages.catalogues import catalogue_of

ENGLISH = catalogue_of("en")
KIT = example()


def of(rows: tuple[Compared, ...], label: str) -> Compared:
    """The row of that label."""
    return next(row for row in rows if row.label == label)


def test_differences_stand_first_as_typed_and_in_mm() -> None:
    """A width in inches beside one in centimetres: as typed, and by how much more or less."""
    found = compare(
        [KIT, {**KIT, "name": "Weir", "frame.outer_width": "16 in"}, {**KIT, "frame.outer_width": "39 cm"}],
        ENGLISH,
        "cm",
    )
    assert found.names == ("Willow frame, small", "Weir", "Willow frame, small")
    row = of(found.differing, "Whole frame, side to side")
    assert row.values == ("40 cm", "16 in", "39 cm")
    assert row.notes == ("", "406.4 mm, 6.4 mm more", "390 mm, 10 mm less")
    assert of(found.alike, "Whole frame, end to end").values == ("55 cm",) * 3


@pytest.mark.parametrize(
    ("field", "one", "other"),
    [
        ("frame.outer_width", "40 cm", "400 mm"),
        ("frame.outer_width", "8 in", "20.32 cm"),
        ("weaving.start", "", "left"),
        ("weaving.start", "left", " Left "),
        ("warp.plies", "30", "30 "),
    ],
)
def test_what_says_the_same_is_alike(field: str, one: str, other: str) -> None:
    """Other units, other capitals, and what stands where nothing is typed, are no difference."""
    kits = [{**KIT, "weaving.width": "8 cm", field: text} for text in (one, other)]
    found = compare(kits, ENGLISH, "cm")
    assert [row.label for row in found.differing] == []
    assert len(found.alike) > 30


def test_numbers_that_follow_differ_too() -> None:
    """What is computed stands below what is typed, apart from a line that is called the same."""
    found = compare([KIT, {**KIT, "weaving.width": "20 cm"}], ENGLISH, "cm")
    labels = [row.label for row in found.differing]
    assert labels.index("Width") < labels.index("Winds")
    assert of(found.differing, "Winds").values == ("30", "25")
    assert "Numbers: Warp" in labels
    assert len(labels) == len(set(labels))


def test_lines_keep_the_order_of_the_slip() -> None:
    """A line that the first kit lacks stands where the others have it."""
    other = {**KIT, "frame.ends": "notched ends", "frame.thickness": "10 mm", "frame.notch_width": "1 mm"}
    other |= {"weft.colours[4].name": "ochre", "weft.colours[4].share": "1"}
    labels = [row.label for row in compare([KIT, other], ENGLISH, "cm").differing]
    places = [labels.index(each) for each in ("What carries the warp at both ends", "Colour 4: Name of the colour")]
    assert places == sorted(places)
    assert "How thick the boards are" in labels[places[0] : places[1]]


def test_a_kit_that_cannot_be_read_is_compared_by_its_lines() -> None:
    """Numbers that nobody knows are said so; nothing is refused."""
    found = compare([KIT, {"name": "x", "frame.outer_width": "40 c"}], ENGLISH, "in")
    assert of(found.differing, "Whole frame, side to side").values == ("40 cm", "40 c")
    assert of(found.differing, "Sett").values[1] == "not known"


def test_at_most_four_are_compared() -> None:
    """A fifth is left out, and it is said in the language of the page."""
    found = compare([KIT] * 6, catalogue_of("de"), "cm")
    assert len(found.names) == MOST == len(found.alike[0].values)
    assert found.differing == ()
