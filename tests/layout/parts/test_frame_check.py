"""The frame check sheet: its numbers by hand, and golden drawings."""

from __future__ import annotations

import math
import re
from fractions import Fraction

import pytest
from golden import listed, matches
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import FLAT, KINDS, NAILS, font_metrics, plan_of

from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.parts.check_items import checks, remedies
from layout.parts.frame_check import frame_check
from layout.parts.frame_pull import measuring_table
from layout.values.by_rule import by_rule
from templates_gen.files.outputs import Outputs

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
GOLDEN: dict[str, tuple[dict[str, object], tuple[float, float]]] = {
    "frame-check": (RIGHT, (166.0, 219.0)),
    "frame-check-low-inches": (
        {"frame.outer_width": "18 in", "frame.outer_height": "24 in", "warp": WEIGHED["warp"]},
        (104.0, 150.0),
    ),
}


def sheet(changes: dict[str, object]) -> Part:
    """The check of a kit on one sheet."""
    (part,) = frame_check(plan_of(changes), 166.0, 219.0, font_metrics())
    return part


def said_by(part: Part) -> list[str]:
    """All words of a part."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_sheets(name: str) -> None:
    """The sheet is the one that was looked at and kept."""
    changes, room = GOLDEN[name]
    assert matches(name, listed(frame_check(plan_of(changes), *room, font_metrics())[0]))


def test_numbers_by_hand() -> None:
    """3-4-5: both diagonals 500 mm; half a pitch of 4 mm is 2 mm, and makes them differ by 300 x 4 / 500 = 2.4 mm.

    A rule shows half millimetres: 2.5.
    """
    diagonals, parallel, middle, bend, _ = (check.sentences for check in checks(plan_of(RIGHT)))
    assert diagonals == ("Both 500 mm.", "At most 2.5 mm apart.")
    assert parallel == ("Outermost line to outermost line, both sides 400 mm.", "At most 2 mm apart.")
    assert middle[0].startswith("150 mm from both sides.")
    assert bend[2] == "50 threads of 2 N pull with 100 N, 22 lb."


def test_the_difference_of_the_diagonals_is_that_of_a_leaning_frame() -> None:
    """A far end that stands half a pitch aside: both diagonals by Pythagoras, to a hundredth of a millimetre."""
    width, height, aside = 300.0, 400.0, 2.0
    longer, shorter = math.hypot(width + aside, height), math.hypot(width - aside, height)
    assert longer - shorter == pytest.approx(width * 4 / 500, abs=0.01)


def test_an_inch_kit_is_in_inches() -> None:
    """18 x 24 in: 30 in from corner to corner, and no millimetre on the sheet."""
    inches: dict[str, object] = {"frame.outer_width": "18 in", "frame.outer_height": "24 in"}
    assert checks(plan_of(inches))[0].sentences[0] == "Both 30 in."
    assert not [words for words in said_by(sheet(inches)) if " mm" in words or " cm" in words]
    assert not [words for words in said_by(sheet({})) if " in." in words or " cm" in words]


@given(
    st.integers(60, 25000),
    st.integers(60, 25000),
    st.sampled_from(["mm", "in"]),
    st.sampled_from(["2.5 ends/cm", "7.5 epi", "12 ends/cm"]),
)
@settings(max_examples=40, deadline=None)
def test_every_length_is_a_line_of_a_rule(wide: int, high: int, unit: str, sett: str) -> None:
    """Whatever the frame, each length is a whole number of millimetres, or sixteenths of an inch; or half of that.

    Frames in tenths of a millimetre and in 1/254 in, so that few lengths lie on a line by themselves.
    """
    each = (lambda tenths: f"{tenths}/10 mm") if unit == "mm" else (lambda tenths: f"{tenths}/254 in")
    frame: dict[str, object] = {
        "frame.outer_width": each(wide + 400),
        "frame.outer_height": each(high + 2000),
        "frame.side_width": "5 mm",
        "frame.margin": "3 mm",
        "weaving.width": "2 cm",
        "weaving.height": "2 cm",
        "sett.given": sett,
        "frame.material": "beech",
    }
    for check in checks(plan_of(frame)):
        for number in re.findall(r"((?:\d+ )?\d[\d/.]*) " + unit + r"\b", " ".join(check.sentences)):
            value = sum(map(Fraction, number.split()))
            assert (value * (2 if unit == "mm" else 32)).denominator == 1, number
        assert not re.search(r"\d (cm|%s)\b" % ("in" if unit == "mm" else "mm"), " ".join(check.sentences))


def test_an_assumed_tension_is_said_to_be() -> None:
    """Without a tension of its own the sheet gives a range and says that it is assumed; 150 N are 34 pounds-force."""
    _, slack, pull = checks(plan_of({}))[3].sentences
    assert pull == "50 threads of 3 N (1 to 8 N, assumed) pull with 150 N (50 to 400 N), 34 lb."
    assert slack == "At 0.5 mm the warp grows slack."  # 350 mm / 500 are 0.7


def test_a_bar_is_said_to_bend_up_to_the_most_it_may() -> None:
    """The likely bending first, then that under the greatest pull with the least modulus."""
    planned = plan_of({"frame.material": "beech"})
    bent = planned.load.bending
    assert bent is not None
    likely, high = (by_rule(each, planned.words, imperial=False, fine=True) for each in (bent.value, bent.high))
    assert f"About {likely} is expected, {high} at most." in checks(planned)[3].sentences[1]
    stiff = checks(plan_of(RIGHT | {"frame.bar_diameter": "20 mm", "weaving.height": "20 cm"}))[3].sentences[1]
    assert stiff.startswith("Less than 0.5 mm is expected.")


@pytest.mark.parametrize("kind", KINDS)
def test_bars_are_bars_and_boards_boards(kind: str) -> None:
    """Round frame ends are bars, all others boards, in every sentence and on the picture."""
    planned = plan_of(KINDS[kind])
    (part,) = frame_check(planned, 166.0, 219.0, font_metrics())
    words = " ".join(said_by(part)).lower()
    bars = planned.kit.frame.ends.name == "round bars"
    assert ("bar" in words.replace("bare", ""), "board" in words) == (bars, not bars)


def test_what_comes_after_winding_says_so() -> None:
    """Three checks of the empty frame, then two whose heading says when they are made."""
    titles = [check.title for check in checks(plan_of({}))]
    assert [title.startswith("After winding: ") for title in titles] == [False, False, False, True, True]


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
    cards = frame_check(planned, 104.0, 150.0, font_metrics())
    assert [part.name for part in cards] == ["frame-check", "pull-check"]
    said = ["".join("".join(said_by(part)).split()) for part in cards]
    for number, check in enumerate(checks(planned)):
        assert "".join("".join(check.sentences).split()) in said[number >= 3]
    assert all("storesenergy" in words for words in said)


@pytest.mark.parametrize("high", [219.0, 214.0, 206.0])
def test_what_finds_no_room_has_a_card_of_its_own(high: float) -> None:
    """On a lower sheet the pull of one thread is on a card beside it, its number the same; nothing is said twice."""
    planned = plan_of(WEIGHED)
    parts = frame_check(planned, 166.0, high, font_metrics())
    said = "".join("".join("".join(said_by(part)) for part in parts).split())
    for check in checks(planned):
        assert said.count("".join(check.title.split())) == 1


def test_there_is_room_to_write() -> None:
    """Two lines to write on for each of the five checks, who checked it and when; each named."""
    named = ["one", "other", "left", "right", "far", "near", "far", "near", "free length", "weight or pitch"]
    assert [words for words in said_by(sheet(RIGHT)) if words in {*named, "checked by", "on"}] == [
        *named,
        "checked by",
        "on",
    ]


@pytest.mark.parametrize(("width", "height"), [("4 cm", "3 m"), ("3 m", "40 cm"), ("2 m", "2 m")])
def test_pictures_of_long_frames_stay_in_their_box(width: str, height: str) -> None:
    """Whatever its proportions, nothing is drawn outside the part's box, and each ring is on the picture twice."""
    slim: dict[str, object] = {
        "frame.side_width": "5 mm",
        "frame.margin": "3 mm",
        "weaving.width": "2 cm",
        "weaving.height": "5 cm",
    }
    part = sheet(slim | {"frame.outer_width": width, "frame.outer_height": height})
    left, low, right, high = part.box
    for shape in part.shapes:
        for point in shape.points() if isinstance(shape, Curve) else [shape.at] if isinstance(shape, Text) else []:
            assert left - 0.3 <= point.x <= right
            assert low <= point.y <= high
    assert [said_by(part).count(number) for number in "12345"] == [3, 3, 3, 2, 1]


@pytest.mark.parametrize("kind", [{}, FLAT, NAILS], ids=["bars", "flat", "nails"])
@pytest.mark.parametrize("size", ["148 x 210 mm", "210 x 148 mm", "215 x 215 mm", "common"])
def test_every_paper_says_what_to_do_where_it_is_not_right(size: str, kind: dict[str, object]) -> None:
    """Each remedy of the kit's frame ends stands somewhere on its sheets, once, whether in a table or under a card."""
    output = Outputs(plan_of(kind | {"paper.size": size}), font_metrics(), ["frame-check"]).output("frame-check.pdf")
    said = "".join(shape.words for sheet in output.sheets for shape in sheet.shapes if isinstance(shape, Text))
    squeezed = said.replace(" ", "")
    for wrong, does in remedies(plan_of(kind)):
        assert squeezed.count(does.replace(" ", "")) == 1
        assert wrong.replace(" ", "") in squeezed
