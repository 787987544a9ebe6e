from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import product

import pytest
from kits import font_metrics, laying_of, plan_of

from layout.drawing.sheet import Part
from layout.paper.choice import Laying
from layout.paper.joints import Build
from layout.paper.sheets import lay
from layout.values.errors import FieldError

SMALL = "148 x 210 mm"
TWELVE: dict[str, object] = {"weaving.width": "12 in", "frame.outer_width": "18 in"}
TWO_FEET: dict[str, object] = {"weaving.width": "24 in", "frame.outer_width": "30 in"}
NARROW: dict[str, object] = {
    "weaving.width": "3 cm",
    "frame.outer_width": "7 cm",
    "frame.side_width": "1 cm",
    "frame.margin": "5 mm",
}


def near(changes: dict[str, object]) -> Laying:
    """How the near strip lies."""
    return laying_of(plan_of(changes), "strip-near")


@pytest.mark.parametrize(
    ("changes", "way", "low"),
    [
        ({"weaving.width": "15 cm"}, "tall", False),
        ({"weaving.width": "24 cm"}, "tall", False),
        ({"weaving.width": "26 cm"}, "diagonal", False),
        (TWELVE | {"paper.size": "letter"}, "diagonal", True),
        (TWELVE, "tiles", False),
        (TWELVE | {"paper.size": "a3"}, "tall", False),
        (TWELVE | {"paper.size": SMALL}, "tiles", False),
        (TWO_FEET, "tiles", False),
    ],
)
def test_upright_then_diagonal_then_pieces(changes: dict[str, object], way: str, *, low: bool) -> None:
    """Upright before diagonal, one piece before several, the full form before the low one."""
    laying = near(changes)
    assert laying.way == way
    assert any("Low form" in note for note in laying.notes) == low
    assert (len(laying.sheets) == 1 and len(laying.sheets[0]) == 1) == (way != "tiles")


@pytest.mark.parametrize("way", ["straight", "diagonal", "tiles"])
def test_a_way_can_be_forced(way: str) -> None:
    """The kit's own choice is followed where it can be, even where another would come first."""
    found = near({"weaving.width": "15 cm", "paper.lay": way}).way
    assert found == ("tall" if way == "straight" else way)  # a strip that stands upright is straight


CANNOT = [
    *(TWELVE | {"paper.size": size, "paper.lay": "straight"} for size in ("common", "letter", SMALL)),
    TWELVE | {"paper.size": SMALL, "paper.lay": "diagonal"},
    *(
        TWO_FEET | {"paper.size": size, "paper.lay": way}
        for size, way in product(("a4", SMALL), ("straight", "diagonal"))
    ),
    NARROW | {"paper.lay": "tiles"},
]


@pytest.mark.parametrize("number", range(len(CANNOT)))
def test_what_is_advised_works(number: int) -> None:
    """Forcing what cannot fit is refused in one sentence, and every piece of its advice is enough by itself."""
    changes = CANNOT[number]
    with pytest.raises(FieldError) as caught:
        near(changes)
    error = caught.value
    assert error.field == "paper.lay"
    assert "\n" not in str(error)
    advice = [(f"paper.{key}", value) for key, value in re.findall(r'(\w+) = "([^"]+)"', error.example)]
    assert advice
    for key, value in advice:
        assert near(changes | {key: value}).sheets


def test_a_part_of_more_than_a_roll_says_what_would_do() -> None:
    """Where no sheet of the list holds a part straight, a sheet of one's own or tiles are named."""
    with pytest.raises(
        FieldError, match=r"needs a sheet that holds the part straight, got a part 612\.0 mm long"
    ) as caught:
        near(TWO_FEET | {"paper.lay": "straight"})
    assert 'lay = "tiles"' in caught.value.example


def test_the_notes_say_why_a_strip_is_low() -> None:
    """A low strip says whether the sheet or the bar asked for it."""
    (note,) = near(TWELVE | {"paper.size": "letter"}).notes
    assert note == "Low form: the full one is too tall to lie on this sheet in one piece."
    (thin,) = near({"frame.bar_diameter": "5 mm"}).notes
    assert thin.startswith("Low form: this bar is too thin")


def card(width: float, height: float) -> Build:
    """Makes a part that must stay whole."""

    def make(low: bool, joints: Sequence[float]) -> Part:
        shrunk = 0.5 if low else 1.0
        return Part("card", "A card", (), (), (0, 0, width * shrunk, height * shrunk), ("How to use it.",), whole=True)

    return make


def laid(changes: dict[str, object], build: Build) -> Laying:
    """How that part lies on the kit's paper."""
    return lay(plan_of(changes), build, font_metrics())


@pytest.mark.parametrize("way", ["auto", "straight", "diagonal", "tiles"])
def test_a_whole_part_lies_straight_whatever_is_asked_of_strips(way: str) -> None:
    """A card of 150 x 100 mm lies straight on one sheet, with no word of a low form."""
    laying = laid({"paper.lay": way}, card(150, 100))
    assert (laying.way, len(laying.sheets), laying.part.length) == ("straight", 1, 150)
    assert laying.notes == ()


def test_a_whole_part_takes_its_small_form_before_it_gives_up() -> None:
    """On a sheet of 148 x 210 mm the same card comes in its small form."""
    assert laid({"paper.size": SMALL}, card(150, 100)).part.length == 75


def test_a_whole_part_that_fits_nowhere_is_refused_with_the_papers_that_would_do() -> None:
    """One sentence names the key and papers that hold it, and the advice works; tiles are never offered."""
    with pytest.raises(FieldError, match=r"^paper\.size: needs a sheet that holds every part in one piece") as caught:
        laid({"paper.size": SMALL}, card(500, 300))
    assert "lay" not in caught.value.example
    assert "A card of 250 x 150 mm" in str(caught.value)
    for advice in caught.value.example.split(" or "):
        assert laid({"paper.size": advice.split('"')[1]}, card(500, 300)).way == "straight"
    with pytest.raises(FieldError, match=r"for example size = \"600 x 3000 mm\"$"):
        laid({}, card(4000, 4000))
