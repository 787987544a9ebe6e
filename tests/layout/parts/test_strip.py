from __future__ import annotations

import math

import pytest
import shapely
from golden import listed, matches
from kits import FLAT, font_metrics, plan_of, strip_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Part
from layout.parts.strip import strip
from layout.products import PRODUCTS
from layout.values.errors import LayoutError
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SHORT: dict[str, object] = {"weaving.width": "88 mm"}  # 11 winds of 8 mm: limits at -44 and 44

GOLDEN: dict[str, tuple[dict[str, object], End, bool]] = {
    "round-bar-near": (SHORT, "near", False),
    "round-bar-far-from-the-right": (SHORT | {"weaving.start": "right"}, "far", False),
    "flat-end-top-face-straight": (
        SHORT | FLAT | {"frame.edge_radius": "3 mm", "weaving.near_end": "top", "weaving.slant": "face straight"},
        "near",
        False,
    ),
    "low-near-back-first": (SHORT | {"weaving.first_pass": "back"}, "near", True),
}


def uprights(part: Part, pen: Pen) -> list[float]:
    """The x of every upright line of a pen, left to right."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and len(shape.steps) == 1]
    return sorted(path.start.x for path in paths if path.start.x == path.steps[0].end.x)


def levels(part: Part, pen: Pen) -> list[float]:
    """The y of every level line of a pen that runs from edge to edge, bottom to top."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and not shape.closed]
    return sorted(p.start.y for p in paths if abs(p.steps[0].end.x - p.start.x) == pytest.approx(part.length))


def words(part: Part) -> list[str]:
    """Everything a part says."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


def totals(part: Part) -> list[Text]:
    """The running totals, left to right."""
    found = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    return sorted(found, key=lambda text: text.at.x)


def tip_after(part: Part, said: str) -> tuple[float, float]:
    """Which way the arrow head drawn after these words points."""
    index = next(k for k, shape in enumerate(part.shapes) if isinstance(shape, Text) and said in shape.words)
    head = part.shapes[index + 1]
    assert isinstance(head, Region)
    tip, *tail = head.contours[0].points()
    middle = [sum(axis) / 2 for axis in zip(*tail, strict=True)]
    return round(tip.x - middle[0], 6), round(tip.y - middle[1], 6)


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_strips(name: str) -> None:
    """The strip is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, end, low = GOLDEN[name]
    assert matches(name, listed(strip_of(changes, end, low=low)))


def test_marks_by_hand() -> None:
    """2.5 ends per cm over 88 mm: near marks from -44 by 8 mm to 44, far ones 4 mm on; tens stronger."""
    near, far = strip_of(SHORT), strip_of(SHORT, "far")
    assert uprights(near, Pen.TEN) == [-44 + 10 * 8]  # the tie-on is 0
    assert uprights(near, Pen.MARK) == [-44 + 8 * j for j in range(12) if j != 10]
    assert uprights(far, Pen.TEN) == [-40 + 9 * 8]  # the first far mark is 1
    assert uprights(far, Pen.MARK) == [-40 + 8 * j for j in range(11) if j != 9]


def test_units_and_totals_by_hand() -> None:
    """Five winds to 4 cm: lines at -4 and 36, with 5 and 10 in the unit that each line ends."""
    part = strip_of(SHORT)
    assert uprights(part, Pen.UNIT) == [-4, 36]
    assert [text.words for text in totals(part)] == ["5", "10"]
    for text, line in zip(totals(part), (-4, 36), strict=True):
        end = text.at.x + font_metrics().width(text.words, text.size)
        assert line - end == pytest.approx(0.8)
    turned = strip_of(SHORT | {"weaving.start": "right"})
    assert uprights(turned, Pen.UNIT) == [-36, 4]
    assert [text.at.x for text in totals(turned)] == pytest.approx([-36 + 0.8, 4 + 0.8])
    assert [text.words for text in totals(turned)] == ["10", "5"]


@pytest.mark.parametrize("end", ENDS)
def test_limits_and_centre(end: End) -> None:
    """Bold limits stand at both sides of the weaving, the centre line at 0 on the marks and at its word."""
    part = strip_of(SHORT, end)
    assert uprights(part, Pen.EDGE) == [-44, 44]
    assert uprights(part, Pen.CENTRE) == [0, 0]
    (word,) = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words == "centre"]
    assert word.at.x == pytest.approx(0.8)


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("low", [False, True])
def test_shared_strips_are_symmetric(end: End, *, low: bool) -> None:
    """With the slant shared a strip's marks mirror onto themselves, and a start at the right mirrors every line."""
    part, turned = strip_of({}, end, low=low), strip_of({"weaving.start": "right"}, end, low=low)
    marks = sorted(uprights(part, Pen.MARK) + uprights(part, Pen.TEN))
    assert marks == [-x + 0.0 for x in reversed(marks)]
    for pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE):
        assert uprights(turned, pen) == [-x + 0.0 for x in reversed(uprights(part, pen))]


@pytest.mark.parametrize("near_end", ["bottom", "top"])
@pytest.mark.parametrize("end", ENDS)
def test_the_weaving_edge_faces_the_weaving(near_end: str, end: End) -> None:
    """At the bottom of the frame the edge to the weaving is up on the paper, at the top it is down; words say so."""
    part = strip_of({"weaving.near_end": near_end}, end)
    up = 1 if (near_end == "bottom") == (end == "near") else -1
    assert all(text.at.y * up > 0 for text in totals(part))
    assert tip_after(part, "this edge to the weaving") == (0, pytest.approx(2.2 * up))
    assert ("bottom" if up > 0 else "top") in part.notes[0]


@pytest.mark.parametrize(("start", "way"), [("left", 1), ("right", -1)])
def test_arrows_point_the_way_of_winding(start: str, way: int) -> None:
    """The winds go on toward the arrow; the tie-on is at the side where winding begins, the tie-off at the other."""
    part = strip_of({"weaving.start": start})
    assert tip_after(part, "the winds go on this way") == (pytest.approx(2.2 * way), 0)
    assert tip_after(part, "tie on here") == (pytest.approx(-2.2 * way), 0)
    assert tip_after(part, "tie off here") == (pytest.approx(2.2 * way), 0)
    assert any("left" in said for said in words(part))


def test_a_strip_explains_itself() -> None:
    """Kit, sett, end, side, first pass and edge stand on the strip; the far one has no tie-on."""
    near, far = strip_of({}), strip_of({"weaving.first_pass": "back"}, "far")
    for said in ("Heron frame", "2.5 ends per cm, 5 winds to 4 cm", "near end, seen from the face"):
        assert said in words(near)
    assert any("first pass on the face" in said for said in words(near))
    assert any("first pass behind the frame" in said for said in words(far))
    assert not any("tie" in said for said in words(far))
    assert {"left", "right"} <= set(words(far))


@pytest.mark.parametrize("diameter", [12, 16, 25, 40])
def test_a_round_bar_is_wrapped_by_half_and_glued(diameter: int) -> None:
    """From face to back it is half the bar round, by shapely's buffered point; behind it a gluing edge of 6 mm."""
    part = strip_of({"frame.bar_diameter": f"{diameter} mm"})
    half_turn = shapely.Point(0, 0).buffer(diameter / 2, quad_segs=2000).exterior.length / 2
    face, middle, back = reversed(levels(part, Pen.REGISTER))
    assert face - back == pytest.approx(half_turn, abs=1e-4)
    assert middle == 0
    assert part.height == pytest.approx(math.pi * diameter / 2 + 6)
    assert part.height < math.pi * diameter


@pytest.mark.parametrize(("thickness", "radius"), [(18, 0), (18, 3), (10, 5), (30, 4)])
def test_a_flat_end_is_folded_over_its_edge(thickness: float, radius: float) -> None:
    """Between the folds lies the edge from flat to flat, as long as it is on shapely's rounded board."""
    part = strip_of(FLAT | {"frame.thickness": f"{thickness} mm", "frame.edge_radius": f"{radius} mm"})
    core = shapely.box(0, radius - thickness / 2, 100 - radius, thickness / 2 - radius)
    outline = core.buffer(radius, quad_segs=2000).exterior if radius else core.exterior
    edge = outline.intersection(shapely.box(100 - radius - 1e-9, -thickness, 101, thickness)).length
    back, face = levels(part, Pen.FOLD)
    assert face - back == pytest.approx(edge, abs=1e-4)
    assert levels(part, Pen.REGISTER) == [0]
    assert part.box[3] - face >= 8 - 1e-9  # room for a flap on the face and one on the back
    assert back - part.box[1] >= 8 - 1e-9


def test_the_low_form_is_low() -> None:
    """It shows the outermost line only, is at most 10 mm high on 12 in, and has every mark of the full form."""
    twelve: dict[str, object] = {"weaving.width": "12 in", "frame.outer_width": "18 in"}
    low, full = strip_of(twelve, low=True), strip_of(twelve)
    assert low.height <= 10
    assert levels(low, Pen.REGISTER) == [0]
    for pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE, Pen.CENTRE):
        assert uprights(low, pen) == uprights(full, pen)
    assert [text.words for text in totals(low)] == [text.words for text in totals(full)]


def test_a_thin_bar_has_only_the_low_form() -> None:
    """Where the face of a bar has no room for marks and numbers the full form is refused, and the low one taken."""
    planned = plan_of({"frame.bar_diameter": "5 mm"})
    with pytest.raises(LayoutError, match="too thin"):
        strip(planned, "near", font_metrics())
    assert PRODUCTS["strip-near"].alone(planned, font_metrics()) == (strip(planned, "near", font_metrics(), low=True),)


def test_a_full_strip_never_closes_over_itself() -> None:
    """On a thin bar whose words need many rows the full form would overlap itself, and is refused."""
    narrow: dict[str, object] = {"frame.outer_width": "70 mm", "frame.side_width": "10 mm", "frame.margin": "3 mm"}
    with pytest.raises(LayoutError, match="close over itself"):
        strip_of(narrow | {"weaving.width": "40 mm", "frame.bar_diameter": "12 mm"})


@pytest.mark.parametrize("low", [False, True])
def test_crosses_stand_at_the_datum(*, low: bool) -> None:
    """Each datum point has its cross, on the paper; the three do not lie in one line."""
    for changes in ({}, {"weaving.slant": "face straight"}, FLAT):
        part = strip_of(changes, low=low)
        hairs = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.REGISTER]
        for point in part.datum:
            around = [p for p in hairs if math.dist(p.start, point) == pytest.approx(0.5)]
            assert len(around) == 2
            assert shapely.box(*part.box).contains(shapely.Point(point).buffer(0.5))
        assert shapely.Polygon(part.datum).area > 100


@pytest.mark.parametrize("sett", ["4 epi", "3/cm", "5/cm", "12 epi"])
def test_low_crosses_keep_off_marks(sett: str) -> None:
    """A cross of a low strip is not drawn into a mark or a limit."""
    part = strip_of({"sett.given": sett, "weaving.slant": "face straight"}, low=True)
    lines = uprights(part, Pen.MARK) + uprights(part, Pen.TEN) + uprights(part, Pen.EDGE)
    behind = [point for point in part.datum if point.y < 0]
    assert len(behind) == 2
    assert min(abs(point.x - x) for point in behind for x in lines) >= 0.7
