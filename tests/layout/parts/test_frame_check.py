"""The frame check sheet: its numbers by hand, and golden drawings."""

from __future__ import annotations

import math

import pytest
from golden import listed, matches
from kits import font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.parts.frame_check import checks, frame_check

# A frame of 30 x 40 cm has diagonals of 50 cm (the 3-4-5 triangle).
RIGHT: dict[str, object] = {
    "frame.outer_width": "30 cm",
    "frame.outer_height": "40 cm",
    "frame.material": "steel",
    "frame.tension": "2 N",
}
GOLDEN: dict[str, tuple[dict[str, object], bool]] = {
    "frame-check": (RIGHT, False),
    "frame-check-low-inches": ({"frame.outer_width": "18 in", "frame.outer_height": "24 in"}, True),
}


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_sheets(name: str) -> None:
    """The sheet is the one that was looked at and kept."""
    changes, low = GOLDEN[name]
    assert matches(name, listed(frame_check(plan_of(changes), font_metrics(), low=low)))


def test_numbers_by_hand() -> None:
    """3-4-5: both diagonals 500 mm; half a pitch of 4 mm is 2 mm, and makes them differ by 300 x 4 / 500 = 2.4 mm."""
    diagonals, parallel, centre, pull = (check.sentence for check in checks(plan_of(RIGHT)))
    assert "both 500 mm, 19.69 in; at most 2.4 mm, 0.094 in apart" in diagonals
    assert "at both sides 400 mm, 15.75 in; at most 2 mm, 0.079 in apart" in parallel
    assert "150 mm, 5.91 in from the left side" in centre
    assert "50 threads of 2 N pull at each frame end with 100 N, 22 lb." in pull


def test_the_difference_of_the_diagonals_is_that_of_a_leaning_frame() -> None:
    """A far end that stands half a pitch aside: both diagonals by Pythagoras, to a hundredth of a millimetre."""
    width, height, aside = 300.0, 400.0, 2.0
    longer, shorter = math.hypot(width + aside, height), math.hypot(width - aside, height)
    assert longer - shorter == pytest.approx(width * 4 / 500, abs=0.01)


def test_inches_come_first_where_the_frame_is_in_inches() -> None:
    """18 x 24 in: 30 in from corner to corner."""
    sentence = checks(plan_of({"frame.outer_width": "18 in", "frame.outer_height": "24 in"}))[0].sentence
    assert "both 30 in, 762 mm" in sentence


def test_an_assumed_tension_is_said_to_be() -> None:
    """Without a tension of its own the sheet says that it is assumed, and without a material nothing is computed."""
    sentence = checks(plan_of({}))[-1].sentence
    assert "50 threads of 1.5 N (assumed)" in sentence
    assert "computed" not in sentence
    assert "more than 0.7 mm, 0.028 in (span / 500)" in sentence


def test_there_is_room_to_write() -> None:
    """Two diagonals, two sides and the bending: five lines to write on, each named."""
    part = frame_check(plan_of(RIGHT), font_metrics(), low=True)
    assert sum(1 for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.HELP) == 5
    said = [shape.words for shape in part.shapes if isinstance(shape, Text)]
    assert [each for each in said if each in ("one", "other", "left", "right", "bent by")] == [
        "one", "other", "left", "right", "bent by",
    ]  # fmt: skip


@pytest.mark.parametrize(("width", "height"), [("4 cm", "3 m"), ("3 m", "40 cm"), ("2 m", "2 m")])
def test_pictures_of_long_frames_stay_in_their_box(width: str, height: str) -> None:
    """Whatever its proportions, nothing is drawn outside the part's box."""
    slim = {"frame.side_width": "5 mm", "frame.margin": "3 mm", "weaving.width": "2 cm", "weaving.height": "5 cm"}
    part = frame_check(plan_of(slim | {"frame.outer_width": width, "frame.outer_height": height}), font_metrics())
    left, low, right, high = part.box
    for shape in part.shapes:
        for point in shape.points() if isinstance(shape, Curve) else [shape.at] if isinstance(shape, Text) else []:
            assert left <= point.x <= right
            assert low <= point.y <= high
