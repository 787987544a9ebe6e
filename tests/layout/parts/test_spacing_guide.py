from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from golden import listed, matches
from kits import NOTCHED, PEGGED, font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Part
from layout.paper.sheets import lay
from layout.parts.spacing_guide import spacing_guide
from layout.products import PRODUCTS
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SHORT: dict[str, object] = {"weaving.width": "88 mm"}  # 22 ends at 4 mm: limits at -44 and 44
TWELVE: dict[str, object] = {"weaving.width": "12 in", "frame.outer_width": "18 in", "sett.given": "8 epi"}

USUAL: dict[str, object] = {"room": {}}  # what is assumed where a kit says nothing of its headings

GOLDEN: dict[str, tuple[dict[str, object], End, bool]] = {
    "spacing-near": (SHORT, "near", False),
    "spacing-far-back-first-from-the-right": (
        SHORT | {"weaving.first_pass": "back", "weaving.start": "right"},
        "far",
        False,
    ),
    "spacing-near-low-inch": (SHORT | {"sett.given": "6 epi"}, "near", True),
    "spacing-near-notched": (SHORT | NOTCHED, "near", False),
}


def guide(changes: dict[str, object], end: End = "near", *, low: bool = False) -> Part:
    """One guide of a kit."""
    return spacing_guide(plan_of(changes), end, font_metrics(), low=low)


FACE, BACK = (Pen.END_MARK, Pen.TEN), (Pen.END_MARK_BACK, Pen.TEN_BACK)


def marks(part: Part, *pens: Pen) -> dict[float, float]:
    """How long each mark of these pens is, by its x; every one begins at the edge to the weaving, y = 0."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen in pens]
    assert all(path.start.y == 0 and path.start.x == path.steps[0].end.x for path in paths)
    return {path.start.x: abs(path.steps[0].end.y) for path in sorted(paths)}


def units(part: Part) -> dict[float, float]:
    """How long each tick of the scale of units is, by its x; every one begins at the edge behind."""
    cut = next(shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.CUT)
    behind = max(abs(point.y) for point in cut.points())
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.UNIT]
    assert all(abs(path.start.y) == pytest.approx(behind) for path in paths)
    return {path.start.x: round(abs(path.start.y - path.steps[0].end.y), 6) for path in sorted(paths)}


def limits(part: Part) -> list[float]:
    """The x of the upright side of each triangle, from left to right."""
    solids = [shape for shape in part.shapes if isinstance(shape, Region) and shape.pen is Pen.SOLID]
    corners = [solid.contours[0].points() for solid in solids]
    return sorted(deep.x for at, _, deep in (each for each in corners if each[0].y == each[1].y == 0) if at.x == deep.x)


def numbers(part: Part) -> dict[str, float]:
    """The middle of every number of an end."""
    texts = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    strong = [text for text in texts if text.pen is Pen.STRONG]
    return {text.words: text.at.x + font_metrics().width(text.words, text.size, text.pen) / 2 for text in strong}


def words(part: Part) -> str:
    """Everything a part says."""
    return " | ".join(shape.words for shape in part.shapes if isinstance(shape, Text))


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_guides(name: str) -> None:
    """The guide is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, end, low = GOLDEN[name]
    assert matches(name, listed(guide(changes, end, low=low)))


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("low", [False, True])
def test_ends_by_hand(end: End, *, low: bool) -> None:
    """22 ends at 4 mm over 88 mm: from -42 by 4 mm to 42, the tenth and the twentieth stronger, at -6 and 34."""
    part = guide(SHORT, end, low=low)
    assert list(marks(part, *FACE, *BACK)) == [-42 + 4 * k for k in range(22)]
    assert list(marks(part, Pen.TEN, Pen.TEN_BACK)) == [-42 + 9 * 4, -42 + 19 * 4]
    assert numbers(part) == pytest.approx({"1": -42, "10": -6, "20": 34})
    assert limits(part) == [-44, 44]


@pytest.mark.parametrize("low", [False, True])
def test_units_by_hand(*, low: bool) -> None:
    """Every 4 cm from the left limit a long tick, and a short one at every cm between; the last number names the cm."""
    found = units(guide(SHORT, low=low))
    long = max(found.values())
    assert [x for x, size in found.items() if size == long] == [-44, -4, 36]
    assert list(found) == [-44 + 10 * k for k in range(9)]
    if not low:
        assert "0 | 4 | 8 cm" in words(guide(SHORT))


def test_units_in_inches() -> None:
    """An inch kit has ticks at every half inch (12.7 mm by definition), and says inches."""
    part = guide(TWELVE)
    assert list(units(part)) == pytest.approx([-152.4 + 12.7 * k for k in range(25)])
    assert words(part).endswith(" in") or " in |" in words(part)


def test_full_and_broken_by_turns() -> None:
    """Wound from the left, face first: the odd marks are full, the even ones broken; back first, the other way."""
    for changes, face in (
        ({}, 0),
        ({"weaving.first_pass": "back"}, 1),
        ({"weaving.start": "right"}, 1),  # 22 ends: the first from the right is the last from the left
        ({"weaving.start": "right", "weaving.first_pass": "back"}, 0),
    ):
        part = guide(SHORT | changes)
        every = sorted([*marks(part, *FACE), *marks(part, *BACK)])
        assert list(marks(part, *FACE)) == every[face::2]
        assert list(marks(part, *BACK)) == every[1 - face :: 2]


@pytest.mark.parametrize("changes", [NOTCHED, PEGGED])
def test_ends_on_the_face_are_all_full(changes: dict[str, object]) -> None:
    """Between notches or pegs there is one layer: no broken mark is drawn, and none is explained."""
    part = guide(SHORT | changes)
    assert marks(part, *FACE)
    assert not marks(part, *BACK)
    assert not any("broken" in entry.words for block in part.blocks for entry in block.entries)


def test_the_thick_edge_ends_at_the_marks() -> None:
    """The outer side of its ink lies on y = 0, from one end of the paper to the other."""
    part = guide(SHORT)
    (band,) = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.EDGE]
    ink = shapely.LineString(band.points()).buffer(0.9 / 2, cap_style="flat")
    assert ink.bounds == pytest.approx((part.box[0], -0.9, part.box[2], 0.0))


def test_numbers_are_counted_from_where_winding_begins() -> None:
    """From the right, the tenth end is as far from the right limit as it was from the left one."""
    assert numbers(guide(SHORT | {"weaving.start": "right"})) == pytest.approx({"1": 42, "10": 6, "20": -34})


@pytest.mark.parametrize(("per_cm", "step"), [(2.5, 10), (12, 10), (20, 20), (50, 50)])
def test_numbers_keep_apart(per_cm: float, step: int) -> None:
    """Every tenth end is numbered, at finer setts every twentieth or fiftieth, and no two numbers come near."""
    part = guide({"sett.given": f"{per_cm} ends/cm", "sett.marking_unit": "1 cm"})
    found = [int(each) for each in numbers(part) if each != "1"]
    assert found[:3] == [step, 2 * step, 3 * step]
    texts = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    for pen in (Pen.STRONG, Pen.TEXT):
        spans = sorted(
            (text.at.x, text.at.x + font_metrics().width(text.words, text.size, pen))
            for text in texts
            if text.pen is pen
        )
        assert all(other[0] - one[1] > 1 for one, other in pairwise(spans))
        assert spans[-1][1] < part.box[2] - 0.4


@pytest.mark.parametrize("near_end", ["bottom", "top"])
@pytest.mark.parametrize("end", ENDS)
def test_the_thick_edge_faces_the_weaving(near_end: str, end: End) -> None:
    """At the bottom of the frame the guide lies below its edge, at the top above it; its words say which it is."""
    part = guide({"weaving.near_end": near_end}, end)
    below = (near_end == "bottom") == (end == "near")
    assert (part.box[3] == 0) == below
    assert (part.box[1] == 0) == (not below)
    assert f"{end.capitalize()} guide, seen from the face" in words(part)


def test_the_fan_is_said() -> None:
    """The figures computed by hand in the test of the fan stand beside the guides, with the tolerance in words."""
    near, far = guide(USUAL).notes
    assert near == (
        "At the near heading, 48 mm from the outer edge, ends lie up to 1.6 mm off; from 219 mm on no push is needed: "
        "they lie within a tenth of the pitch."
    )
    assert far.startswith("At the far heading, ")
    assert "the near guide 48 mm, the far one" in guide(USUAL).steps[1]


def test_the_fan_in_inches() -> None:
    """An inch kit says inches: 8 epi on the same frame are off by 3.175 x 0.406 = 1.289 mm, 0.051 in."""
    near = guide(USUAL | {"sett.given": "8 epi"}).notes[0]
    assert "1.9 in from the outer edge, ends lie up to 0.051 in off; from 8.6 in on" in near


def test_where_nothing_is_off_the_sheet_says_so() -> None:
    """Notches hold the ends where they should be."""
    assert guide(NOTCHED).notes[0].startswith("At the near heading the ends lie right by themselves")


@pytest.mark.parametrize("paper", ["common", "a4", "letter"])
@pytest.mark.parametrize("sett", ["4 epi", "8 epi", "12 epi", "3/cm"])
def test_twelve_inches_lie_in_one_piece(paper: str, sett: str) -> None:
    """A guide for a 12 in weaving comes out on one sheet in one piece, in its low form if need be."""
    planned = plan_of(TWELVE | {"sett.given": sett, "paper.size": paper})
    for build in PRODUCTS["spacing-guide"].builds(planned, font_metrics()):
        laying = lay(planned, build, font_metrics())
        assert [len(pieces) for pieces in laying.sheets] == [1]


@pytest.mark.parametrize("low", [False, True])
@pytest.mark.parametrize("changes", [{}, {"sett.given": "12 epi"}, NOTCHED])
def test_crosses_stand_clear(changes: dict[str, object], *, low: bool) -> None:
    """Each datum point has its cross, inside the paper, clear of every mark; the three do not lie in one line."""
    part = guide(changes, low=low)
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and not shape.closed]
    lines = [shapely.LineString(path.points()) for path in paths if path.pen is not Pen.REGISTER]
    for point in part.datum:
        around = [p for p in paths if p.pen is Pen.REGISTER and math.dist(p.start, point) == pytest.approx(0.5)]
        assert len(around) == 2
        cross = shapely.Point(point).buffer(0.5)
        assert shapely.box(*part.box).contains(cross)
        assert min(line.distance(cross) for line in lines) > 0.2
    assert shapely.Polygon(part.datum).area > 100


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("sett", ["2 per cm", "5 per cm", "8 epi"])
def test_a_low_guide_shows_where_it_is_cut(sett: str, end: End) -> None:
    """A pair of scissors, whose eyes are circles, stands on the edge behind, as on a full guide."""
    for width in ("17 cm", "20 cm", "13 in"):
        made = guide({"weaving.width": width, "sett.given": sett, "frame.outer_width": "20 in"}, end, low=True)
        eyes = [shape for shape in made.shapes if isinstance(shape, Curve) and shape.pen is Pen.OUTLINE]
        behind = max(made.box[1], made.box[3], key=abs)
        assert len(eyes) == 2
        assert all(
            min(y for _, y in eye.points()) - 1.2 < behind < max(y for _, y in eye.points()) + 1.2 for eye in eyes
        )
