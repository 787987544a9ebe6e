"""The first sheet of a kit: its numbers by hand, every step with its sheets, whatever kind of kit and paper."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from ink import meetings
from kits import FLAT, KINDS, NOTCHED, font_metrics, layings_of, plan_of
from test_look import GAP, NAMES, outside

from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.paper.first_sheet import contents_of, with_first_sheet
from layout.paper.sheets import printed
from layout.parts.start_here import Contents, Room, start_here
from layout.parts.start_icons import HIGH, WIDE, icon
from layout.parts.start_numbers import kit_figures
from layout.parts.start_steps import work_steps
from layout.plan import plan
from layout.values.by_rule import by_rule
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file

DEMO = plan(kit_file.demo())
ROOM = Room(166.0, 200.0)
PAPERS = ("common", "148 x 210 mm", "a3", "letter", "210 x 148 mm", "11x17", "a4", "600 x 3000 mm")
HERE = Contents({"1": (2, 2), "G": (3, 3), "2": (4, 5), "3": (6, 6)}, "weaving-grid.pdf")


def words_of(parts: tuple[Part, ...]) -> list[str]:
    """All words of parts."""
    return [shape.words for part in parts for shape in part.shapes if isinstance(shape, Text)]


def test_the_numbers_of_the_demo_by_hand() -> None:
    """24 cm at 2.5 ends per cm are 60 ends, 30 winds; 2.5 x 2.54 are 6.35 to the inch; 2 % less than 240 is 235.2."""
    sett, warp, width, height, *_, frame = kit_figures(DEMO)
    assert (sett.value, sett.remarks) == ("2.5 ends per cm", ("6.35 ends per inch",))
    assert (warp.value, warp.remarks) == ("30 winds, 60 ends", ("5 winds to every 4 cm",))
    assert (width.value, width.remarks) == ("240 mm on the frame", ("235 mm woven",))
    assert height.remarks == ("244 beads (488 picks)",)
    assert (frame.value, frame.remarks) == ("400 mm x 550 mm", ("round bars of 15 mm",))


@pytest.mark.parametrize(
    ("mm", "metric", "inches", "fine"),
    [
        (400, "400 mm", "15 3/4 in", False),
        (457.2, "457 mm", "18 in", False),
        (1.54, "1.5 mm", "1/16 in", True),
        (0.1, "0.5 mm", "1/32 in", True),
        (680.07, "680 mm", "26 3/4 in", False),
        (12.7, "13 mm", "1/2 in", False),
    ],
)
def test_lengths_by_a_ruler(mm: float, metric: str, inches: str, fine: bool) -> None:
    """By hand: the nearest millimetre and sixteenth of an inch, or half of that."""
    assert by_rule(mm, ENGLISH, imperial=False, fine=fine) == metric
    assert by_rule(mm, ENGLISH, imperial=True, fine=fine) == inches


@given(st.fractions(Fraction(1, 100), 5000), st.booleans(), st.booleans())
def test_what_a_ruler_shows_is_near(mm: Fraction, imperial: bool, fine: bool) -> None:
    """Never further off than half a line, where it is not less than one; and always a line of a ruler."""
    number, unit = by_rule(mm, ENGLISH, imperial=imperial, fine=fine).rsplit(" ", 1)
    value = sum(map(Fraction, number.split())) * (Fraction(127, 5) if unit == "in" else 1)
    step = (Fraction(127, 80) if imperial else Fraction(1)) / (2 if fine else 1)
    assert (value / step).denominator == 1
    assert abs(value - mm) <= step / 2 or (fine and value == step)


@pytest.mark.parametrize("kind", KINDS)
def test_every_step_has_its_picture(kind: str) -> None:
    """Nine steps, eight with numbers in their order and the gauge; each picture within its 20 x 13 mm, give or take."""
    steps = work_steps(plan_of(KINDS[kind]), grid=True)
    assert [step.tile for step in steps if step.tile.isdigit()] == list("12345678")
    assert [step.tile for step in steps if not step.tile.isdigit()] == ["G"]
    for step in steps:
        for shape in icon(step.icon):
            paths = shape.contours if isinstance(shape, Region) else (shape,)
            for path in paths:
                assert isinstance(path, Curve)
                assert all(-0.6 <= at.x <= WIDE + 0.6 and -HIGH - 0.6 <= at.y <= 0.6 for at in path.points())


def test_kinds_have_pictures_of_their_own() -> None:
    """Strips, notches, pegs and nails are told apart, and so are the ways to wind."""
    seen = {(step.tile, step.icon) for kind in KINDS for step in work_steps(plan_of(KINDS[kind]), grid=True)}
    assert {icon for tile, icon in seen if tile == "2"} == {"strips", "notches", "pegs", "nails"}
    assert {icon for tile, icon in seen if tile == "3"} == {"round", "eight", "rod", "face"}


def test_bars_are_bars_and_boards_boards() -> None:
    """Round frame ends are bars, all others boards."""
    for kind, word, other in (({}, "bar", "board"), (FLAT, "board", "bar"), (NOTCHED, "board", "bar")):
        said = " ".join(words_of(start_here(plan_of(kind), HERE, ROOM, font_metrics())))
        assert f"each {word}." in said
        assert f"each {other}" not in said


def test_steps_lead_to_their_sheets() -> None:
    """One sheet, several, a file of its own, none."""
    said = words_of(start_here(DEMO, HERE, ROOM, font_metrics()))
    assert {"sheet 2", "sheets 4 to 5", "weaving-grid.pdf"} <= set(said)
    assert not {"sheet 7", "sheet 1"} & set(said)


@pytest.mark.parametrize("size", ["common", "a4", "letter", "a3", "11x17", "148 x 210 mm"])
@pytest.mark.parametrize("kind", ["round bars", "nails", "loose rod, flat ends, doubled"])
def test_sheets_are_numbered_with_the_first_ones(kind: str, size: str) -> None:
    """What it says of sheets is true of the file that it begins, though it takes more than one sheet on small paper."""
    planned = plan_of(KINDS[kind] | {"paper.size": size})
    layings = layings_of(planned)
    every = with_first_sheet(planned, layings, font_metrics())
    first = [laying for laying in every if laying.part.name == "start-here"]
    assert len(first) == (1 if size != "148 x 210 mm" else len(first)) >= 1
    contents = contents_of(planned, layings, len(first), font_metrics())
    said = words_of(tuple(laying.part for laying in first))
    for tile in ("1", "G", "2", "3", "5"):
        begin, end = contents.sheets[tile]
        assert (f"sheet {begin}" if begin == end else f"sheets {begin} to {end}") in said


@pytest.mark.parametrize("high", [200.0, 150.0, 128.0, 100.0, 66.0, 50.0])
@pytest.mark.parametrize("wide", [253.0, 166.0, 104.0])
def test_small_rooms_take_more_sheets(wide: float, high: float) -> None:
    """Nothing is left out in a small room, and no part is higher than it; rows of words are never under one another."""
    parts = start_here(DEMO, HERE, Room(wide, high), font_metrics())
    assert all(part.height <= high + 2 for part in parts)
    whole = start_here(DEMO, HERE, Room(166.0, 220.0), font_metrics())
    assert sorted("".join(words_of(parts)).replace(" ", "")) == sorted("".join(words_of(whole)).replace(" ", ""))


def test_tiles_hang_on_one_thread() -> None:
    """The tiles of the steps stand one under the other in order, evenly or further apart where a step says more."""
    (part,) = start_here(DEMO, HERE, Room(166.0, 215.0), font_metrics())
    tiles = [shape.at.y for shape in part.shapes if isinstance(shape, Text) and shape.words in list("12345678")]
    assert all(above - below >= 11 for above, below in pairwise(tiles[:8]))


@pytest.mark.parametrize("number", range(len(KINDS)))
def test_it_is_a_good_drawing(number: int) -> None:
    """No word meets another on any paper, with whatever names, and nothing leaves the margins."""
    kind = list(KINDS.values())[number]
    for size in (PAPERS[number % len(PAPERS)], PAPERS[(number + 3) % len(PAPERS)]):
        planned = plan_of(kind | {"paper.size": size} | NAMES[number % len(NAMES)])
        for sheet in printed(
            planned, with_first_sheet(planned, [], font_metrics(), "weaving-grid.pdf"), font_metrics()
        ):
            assert meetings(sheet.sheet, GAP) == []
            assert outside(sheet.sheet) == []


def test_a_box_has_no_first_sheet() -> None:
    """Who does not print needs none."""
    planned = plan_of({"paper.for": "box"})
    layings = layings_of(planned)
    assert list(with_first_sheet(planned, layings, font_metrics())) == layings


@pytest.mark.parametrize("kind", KINDS)
def test_no_sheet_speaks_of_winds_where_every_end_has_its_mark(kind: str) -> None:
    """A wind is two ends, on a warp that goes round both frame ends; no other kit has any."""
    planned = plan_of(dict(KINDS[kind]))
    sheets = Outputs(planned, font_metrics()).output("kit.pdf").sheets
    said = " ".join(shape.words for sheet in sheets for shape in sheet.shapes if isinstance(shape, Text))
    has_winds = planned.warp.kind == "wound"
    assert bool(re.search(r"\b(every|the|first) wind\b|\bwinds\b", said)) == has_winds
