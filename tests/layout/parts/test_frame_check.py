"""The frame check sheet: its numbers by hand, and golden drawings."""

from __future__ import annotations

import math

import pytest
from golden import listed, matches
from kits import font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.parts.frame_check import checks, frame_check, frame_check_in_two
from layout.parts.frame_pull import measuring_table

# A frame of 30 x 40 cm has diagonals of 50 cm (the 3-4-5 triangle).
RIGHT: dict[str, object] = {
    "frame.outer_width": "30 cm",
    "frame.outer_height": "40 cm",
    "frame.material": "steel",
    "frame.tension": "2 N",
}
WEIGHED: dict[str, object] = {
    "frame.outer_height": "400 mm",
    "weaving.height": "20 cm",
    "warp": {"count": 300, "system": "tex", "fibre": "cotton"},
}
GOLDEN: dict[str, tuple[dict[str, object], bool]] = {
    "frame-check": (RIGHT, False),
    "frame-check-low-inches": (
        {"frame.outer_width": "18 in", "frame.outer_height": "24 in", "warp": WEIGHED["warp"]},
        True,
    ),
}


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_sheets(name: str) -> None:
    """The sheet is the one that was looked at and kept."""
    changes, low = GOLDEN[name]
    assert matches(name, listed(frame_check(plan_of(changes), font_metrics(), low=low)))


def test_numbers_by_hand() -> None:
    """3-4-5: both diagonals 500 mm; half a pitch of 4 mm is 2 mm, and makes them differ by 300 x 4 / 500 = 2.4 mm."""
    diagonals, parallel, centre, pull, _ = (check.sentence for check in checks(plan_of(RIGHT)))
    assert "both 500 mm, 19.69 in; at most 2.4 mm, 0.094 in apart" in diagonals
    assert "at both sides 400 mm, 15.75 in; at most 2 mm, 0.079 in apart" in parallel
    assert "150 mm, 5.91 in from the left side" in centre
    assert "50 threads of 2 N pull on each bar with 100 N, 22 lb." in pull


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
    """Without a tension of its own the sheet gives a range and says that it is assumed; 400 N are 90 pounds-force."""
    sentence = checks(plan_of({}))[3].sentence
    assert (
        "50 threads of 3 N (1 to 8 N, assumed) pull on each bar with 150 N (50 to 400 N), 34 lb (11 to 90 lb)"
        in sentence
    )
    assert "computed" not in sentence
    assert "more than 0.7 mm, 0.028 in (span / 500)" in sentence


def test_a_bar_is_said_to_bend_up_to_the_most_it_may() -> None:
    """The likely bending first, then that under the greatest pull with the least modulus."""
    planned = plan_of({"frame.material": "beech"})
    bent = planned.load.bending
    assert bent is not None
    assert f"by {bent.value:.2f} mm" in checks(planned)[3].sentence
    assert f"up to {bent.high:.2f} mm" in checks(planned)[3].sentence


def test_the_table_measures_a_pull() -> None:
    """300 tex over 400 mm, computed by hand: 88 Hz at 1 N would be wrong by the square root of 1.5; 125 Hz is 3 N.

    By statics 3 N and 0.28 N of stretch (EA 510 N, of which a dip of a sixtieth takes 1 / 1800) hold up 22 g there.
    """
    table = measuring_table(plan_of(WEIGHED))
    assert [row[0] for row in table] == ["pull, N", "weight, g", "pitch, Hz"]
    assert [row[3] for row in table] == ["3", "22", "125"]
    assert [row[1] for row in table] == ["1", "9", "72"]
    assert measuring_table(plan_of({})) == ()


@pytest.mark.parametrize("inch", [False, True])
def test_what_the_table_says_is_read_by_the_kit(inch: bool) -> None:
    """Whoever finds a weight or a pitch of the table, and gives it to the kit, is given back the pull of its column."""
    size = {"frame.outer_height": "16 in", "frame.outer_width": "14 in", "weaving.height": "9 in"} if inch else {}
    kit = WEIGHED | size
    pulls, weights, pitches = (row[1:] for row in measuring_table(plan_of(kit)))
    high, unit = ("16 in", "oz") if inch else ("400 mm", "g")
    for pull, weight, pitch in zip(pulls, weights, pitches, strict=True):
        plucked = plan_of(kit | {"frame.pluck": {"hertz": int(pitch), "length": high}}).load.thread
        dip = {"load": f"{weight} {unit}", "length": "600 mm", "depth": "10 mm"}
        dipped = plan_of(kit | {"frame.dip": dip}).load.thread
        assert plucked.value == pytest.approx(min(int(pull), plucked.high), rel=0.02)
        assert dipped.value == pytest.approx(min(int(pull), dipped.high), rel=0.08)  # whole grams of nine


def test_two_small_cards_hold_what_one_sheet_does() -> None:
    """Every sentence of the low form stands on one of the two cards, and the caution on both."""
    planned = plan_of(WEIGHED)
    cards = frame_check_in_two(planned, font_metrics())
    assert [part.name for part in cards] == ["frame-check", "pull-check"]
    said = ["".join("".join(shape.words.split()) for shape in part.shapes if isinstance(shape, Text)) for part in cards]
    for number, check in enumerate(checks(planned)):
        assert "".join(check.sentence.split()) in said[number >= 3]
    assert all("storesenergy" in words for words in said)


def test_there_is_room_to_write() -> None:
    """Two diagonals, two sides, the bending and a measured thread: seven lines to write on, each named."""
    part = frame_check(plan_of(RIGHT), font_metrics(), low=True)
    assert sum(1 for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.HELP) == 7
    said = [shape.words for shape in part.shapes if isinstance(shape, Text)]
    named = ["one", "other", "left", "right", "bent by", "free length", "weight or pitch"]
    assert [each for each in said if each in named] == named


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
