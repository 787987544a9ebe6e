from __future__ import annotations

import re
from itertools import product

import pytest
from kits import layings_of, plan_of

from layout.errors import FieldError
from layout.paper.choice import Laying

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
    return layings_of(plan_of(changes))[0]


@pytest.mark.parametrize(
    ("changes", "way", "low"),
    [
        ({"weaving.width": "15 cm"}, "straight", False),
        ({"weaving.width": "24 cm"}, "diagonal", False),
        (TWELVE, "diagonal", True),
        (TWELVE | {"paper.size": "a3"}, "straight", False),
        (TWO_FEET, "tiles", False),
    ],
)
def test_straight_then_diagonal_then_low_then_tiles(changes: dict[str, object], way: str, *, low: bool) -> None:
    """One piece before several, the full form before the low one, straight before diagonal."""
    laying = near(changes)
    assert laying.way == way
    assert any("Low form" in note for note in laying.notes) == low
    assert (len(laying.sheets) == 1 and len(laying.sheets[0]) == 1) == (way != "tiles")


@pytest.mark.parametrize("way", ["straight", "diagonal", "tiles"])
def test_a_way_can_be_forced(way: str) -> None:
    """The kit's own choice is followed where it can be, even where another would come first."""
    assert near({"weaving.width": "15 cm", "paper.lay": way}).way == way


SMALL = "148 x 210 mm"
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
    advice = re.findall(r'(paper\.\w+) = "([^"]+)"', error.example)
    assert advice
    for key, value in advice:
        assert near(changes | {key: value}).sheets


def test_a_part_of_more_than_a_roll_says_what_would_do() -> None:
    """Where no sheet of the list holds a part straight, a sheet of one's own or tiles are named."""
    with pytest.raises(
        FieldError, match=r"needs a sheet that holds the part straight, got a part 612\.0 mm long"
    ) as caught:
        near(TWO_FEET | {"paper.lay": "straight"})
    assert 'paper.lay = "tiles"' in caught.value.example


def test_the_notes_say_why_a_strip_is_low() -> None:
    """A low strip says whether the sheet or the bar asked for it."""
    (note,) = near(TWELVE).notes
    assert note == "Low form, the outermost line only: the full strip is too tall to lie on this sheet in one piece."
    (thin,) = near({"frame.bar_diameter": "5 mm"}).notes
    assert thin.startswith("Low form: this bar is too thin")
