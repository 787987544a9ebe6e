"""Templates for notches, pegs and nails, and strips that find the notches of a bar."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
import shapely
from golden import listed, matches
from ink import corners, meetings
from kits import NAILS, NOTCHED, PEGGED, font_metrics, plan_of, strip_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Part
from layout.paper.sheets import printed
from layout.products import laid
from layout.values.errors import FieldError
from layout.warps.warp import End

HELD = NOTCHED | {"frame.notch_density": "5 per cm"}
IN_PAIRS = NOTCHED | {"frame.notch_density": "1.25 per cm"}
SHORT: dict[str, object] = {"weaving.width": "44 mm"}  # 11 ends of 4 mm: limits at -22 and 22
GOLDEN: dict[str, tuple[dict[str, object], End]] = {
    "notch-template-near": (NOTCHED | SHORT, "near"),
    "notches-held-far-every-second": (HELD | SHORT, "far"),
    "notches-held-far-two-ends": (IN_PAIRS | SHORT, "far"),
    "nail-template-near": (NAILS | SHORT | {"frame.nail_length": "10 mm"}, "near"),
    "drilling-template-far": (PEGGED | SHORT | {"weaving.doubled_selvedges": 1}, "far"),
}
KINDS: dict[str, dict[str, object]] = {
    "notches": NOTCHED,
    "notches in a thin board": NOTCHED | {"frame.thickness": "3 mm", "frame.notch_depth": "3 mm"},
    "every second notch": HELD,
    "two ends to a notch": IN_PAIRS,
    "pegs": PEGGED | {"sett.given": "4 epi"},
    "close rows of pegs": PEGGED | {"frame.row_distance": "5 mm", "frame.edge_distance": "6 mm"},
    "nails": NAILS | {"sett.given": "5 ends/cm"},
    "nails at the edge": NAILS | {"frame.edge_distance": "3 mm"},
}
WAYS: dict[str, dict[str, object]] = {
    "usual": {"weaving.width": "24 cm"},
    "from the right, top": {"weaving.near_end": "top", "weaving.start": "right", "weaving.width": "4 cm"},
    "long, on small paper": {"weaving.width": "24 cm", "paper.size": "148 x 210 mm"},
}


def words(part: Part) -> str:
    """All words of a part, one after the other."""
    return " ".join(shape.words for shape in part.shapes if isinstance(shape, Text))


def openings(part: Part) -> list[shapely.Polygon]:
    """What is grey, left to right."""
    grey = [shape for shape in part.shapes if isinstance(shape, Region) and shape.pen is Pen.TINT]
    return sorted((polygon(shape.contours[0]) for shape in grey), key=lambda each: each.centroid.x)


def polygon(path: Curve) -> shapely.Polygon:
    """A closed path, through the middles of its arcs too."""
    points = [path.start]
    for end, through in path.steps:
        points += [through, end] if through else [end]
    return shapely.Polygon(points)


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_templates(name: str) -> None:
    """The template is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, end = GOLDEN[name]
    assert matches(name, listed(strip_of(changes, end)))


@pytest.mark.parametrize(("near_end", "up"), [("bottom", 1), ("top", -1)])
def test_notches_by_hand(near_end: str, up: int) -> None:
    """Eleven notches from -20 by 4 mm, 1.2 mm wide, from 10 mm over the edge to 6 mm toward the weaving."""
    part = strip_of(NOTCHED | SHORT | {"weaving.near_end": near_end})
    low, high = sorted((-10 * up, 6 * up))
    for k, each in enumerate(openings(part)):
        assert each.bounds == pytest.approx((-20 + 4 * k - 0.6, low, -20 + 4 * k + 0.6, high))
    assert len(openings(part)) == 11
    (fold,) = [s for s in part.shapes if isinstance(s, Curve) and s.pen is Pen.FOLD]
    assert fold.start.y == fold.steps[0].end.y == 0


def test_holes_by_hand() -> None:
    """Near pegs from -22 by 8 mm: the first 22 mm from the edge (10 + 12), the next 10 mm, and so on; 2.5 mm wide."""
    part = strip_of(PEGGED | SHORT)
    found = openings(part)
    assert [each.centroid.x for each in found] == pytest.approx([-22, -14, -6, 2, 10, 18])
    assert [each.centroid.y for each in found] == pytest.approx([22, 10] * 3)
    assert all(each.bounds[2] - each.bounds[0] == pytest.approx(2.5) for each in found)


@pytest.mark.parametrize(("near_end", "up"), [("bottom", 1), ("top", -1)])
def test_nails_by_hand(near_end: str, up: int) -> None:
    """Near nails from -22 by 8 mm in one row, 10 mm from the edge, 1.8 mm wide; the row's line runs through all."""
    part = strip_of(NAILS | SHORT | {"weaving.near_end": near_end})
    found = openings(part)
    assert [each.centroid.x for each in found] == pytest.approx([-22, -14, -6, 2, 10, 18])
    assert [each.centroid.y for each in found] == pytest.approx([10 * up] * 6)
    assert all(each.bounds[3] - each.bounds[1] == pytest.approx(1.8) for each in found)
    rows = [p for p in part.shapes if isinstance(p, Curve) and p.pen is Pen.HELP and p.start.x < -23]
    assert [(p.start.y, p.steps[0].end.y) for p in rows] == [(10 * up, 10 * up)]


def test_every_hole_has_its_cross() -> None:
    """An upright through the middle of every hole, 1.6 mm past it, and the line of its row."""
    part = strip_of(PEGGED | SHORT)
    lines = [p for p in part.shapes if isinstance(p, Curve) and p.pen is Pen.HELP]
    hairs = [p for p in lines if p.start.x == p.steps[0].end.x]
    assert sorted(p.start.x for p in hairs) == pytest.approx([-22, -14, -6, 2, 10, 18])
    assert [abs(p.steps[0].end.y - p.start.y) for p in hairs] == pytest.approx([2.5 + 3.2] * 6)
    assert {p.start.y for p in lines if p not in hairs} == {10.0, 22.0}


def test_notches_that_stay_empty_are_outlined_alone() -> None:
    """With an end in every second notch of 2 mm, the ten between eleven grey ones are white."""
    part = strip_of(HELD | SHORT)
    outlines = [s for s in part.shapes if isinstance(s, Curve) and s.closed and s.pen is Pen.HELP]
    middles = sorted(polygon(each).centroid.x for each in outlines)
    assert middles == pytest.approx([-20 + 2 * k for k in range(21)])
    assert [each.centroid.x for each in openings(part)] == pytest.approx([-20 + 4 * k for k in range(11)])


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("end", ["near", "far"])
@pytest.mark.parametrize("low", [False, True])
def test_nothing_lies_on_an_opening(kind: str, end: End, low: bool) -> None:
    """No word, dot or line but its own cross, the fold, the line of its row and that of the ground it stands on."""
    part = strip_of(KINDS[kind] | WAYS["usual"], end, low=low)
    holes = shapely.unary_union(openings(part))
    assert not holes.is_empty
    for shape in part.shapes:
        for area in _ink(shape):
            assert not holes.intersects(area), shape


def _ink(shape: Curve | Region | Text) -> Iterator[shapely.Geometry]:
    """What must not lie on an opening."""
    if isinstance(shape, Text):
        yield shapely.Polygon(corners(shape))
    elif isinstance(shape, Region):
        if shape.pen is not Pen.TINT:
            yield polygon(shape.contours[0])
    elif shape.pen not in (Pen.HELP, Pen.HOLE, Pen.FOLD, Pen.CUT):
        low, high = shape.start, shape.steps[0].end
        if abs(high.x - low.x) < 200:  # else it is the line of the ground
            yield shapely.LineString(shape.points()).buffer(shape.pen.ink.width / 2)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("way", WAYS)
def test_sheets_of_templates_are_good_drawings(kind: str, way: str) -> None:
    """Words keep 0.3 mm of white around them on every sheet."""
    planned = plan_of(KINDS[kind] | WAYS[way])
    sheets = printed(planned, laid("strips", planned, font_metrics()), font_metrics())
    assert sheets
    for each in sheets:
        assert meetings(each.sheet, 0.3) == []


@pytest.mark.parametrize("kind", KINDS)
def test_numbers_stand_at_their_own_openings(kind: str) -> None:
    """The opening that is nearest along the template is the one that a number counts."""
    for end in ("near", "far"):
        part = strip_of(KINDS[kind] | {"weaving.width": "24 cm"}, end)
        xs = [each.centroid.x for each in openings(part)]
        first = 0 if end == "near" and kind not in list(KINDS)[:4] else 1
        figures = [s for s in part.shapes if isinstance(s, Text) and s.words.isdigit()]
        assert len(figures) > 3
        for figure in figures:
            points = corners(figure)
            middle = (min(x for x, _ in points) + max(x for x, _ in points)) / 2
            assert min(range(len(xs)), key=lambda k: abs(xs[k] - middle)) == int(figure.words) - first


def test_units_are_dots() -> None:
    """Open ones 1 cm apart from the limit on, full ones at the marking unit of 2 cm; no line stands for a unit."""
    part = strip_of(NOTCHED)  # 20 cm
    full = [s for s in part.shapes if isinstance(s, Region) and s.pen is Pen.SOLID and s.contours[0].steps[0].through]
    dots = [s for s in part.shapes if isinstance(s, Curve) and s.pen is Pen.UNIT]
    assert [polygon(s.contours[0]).centroid.x for s in full] == pytest.approx([-100 + 20 * k for k in range(11)])
    assert [polygon(s).centroid.x for s in dots] == pytest.approx([-90 + 20 * k for k in range(10)])


def test_an_odd_warp_is_tied_off_at_the_far_end() -> None:
    """31 ends: the near end has the tie-on alone, the far end the tie-off at the other side, each with its mark."""
    wide = {"weaving.width": "12.4 cm"}  # 31 ends
    for kind, on, off in ((NOTCHED, 1, 31), (PEGGED, 0, 16), (NAILS, 0, 16)):
        near, far = words(strip_of(kind | wide, "near")), words(strip_of(kind | wide, "far"))
        assert f"left, tie on at {on}" in near
        assert "tie off" not in near
        assert f"right, tie off at {off}" in far
        assert "tie on" not in far


@pytest.mark.parametrize(
    ("kind", "caution"),
    [
        (NOTCHED, "Use the saw as its maker says"),
        (PEGGED, "Use the drill as its maker says"),
        (NAILS, "with pliers, not with fingers"),
    ],
)
def test_tools_have_their_caution(kind: dict[str, object], caution: str) -> None:
    """Whoever saws, drills or nails reads to wear glasses and to mind the tool, and how a knife is used."""
    said = " ".join(strip_of(kind).cautions)
    assert "Safety glasses on" in said
    assert caution in said
    assert "blades are not for children" in said


def test_steps_say_the_sizes() -> None:
    """Of what is sawn, drilled and nailed."""
    assert "Saw out the grey: 1.2 mm wide, 6 mm deep." in strip_of(NOTCHED).steps
    assert "Prick every cross with an awl. Drill 2.5 mm holes there, upright." in strip_of(PEGGED).steps
    long = NAILS | {"frame.nail_length": "12 mm"}
    assert any("nails of 1.8 mm until 12 mm stand out" in step for step in strip_of(long).steps)


def test_both_templates_stand_on_one_sheet() -> None:
    """Beside one text, as long as they are not over 252 mm."""
    for kind in (NOTCHED, HELD, PEGGED, NAILS):
        (laying,) = laid("strips", plan_of(kind | {"weaving.width": "24 cm"}), font_metrics())
        assert laying.way == "tall"
        assert [piece.part.name for piece in laying.sheets[0]] == ["strip-near", "strip-far"]


def test_a_notch_keeps_a_tooth_beside_it() -> None:
    """A notch every 4 mm may be 3 mm wide, and leaves a millimetre; wider is refused, and the advice works."""
    plan_of(NOTCHED | {"frame.notch_width": "3 mm"})
    with pytest.raises(
        FieldError, match=r"^frame\.notch_width: needs a notch and a tooth of 1 mm to fit in the 4 mm"
    ) as no:
        plan_of(NOTCHED | {"frame.notch_width": "3.1 mm"})
    plan_of(NOTCHED | {"frame.notch_width": no.value.example.split('"')[1]})
    plan_of(HELD | {"frame.notch_width": "2 mm"})
    with pytest.raises(FieldError, match=r"^frame\.notch_width: needs a notch to fit in the 2 mm"):
        plan_of(HELD | {"frame.notch_width": "2.1 mm"})


def test_a_peg_with_its_thread_is_held_against_the_pitch() -> None:
    """A peg of 3.5 mm fits in a pitch of 4 mm; with a warp that wraps 10 turns in a centimetre it does not."""
    thin = plan_of(PEGGED | {"frame.peg_diameter": "3.5 mm"})
    assert thin.warnings == ()
    wrapped = plan_of(PEGGED | {"frame.peg_diameter": "3.5 mm", "warp": {"wrap": {"turns": 10, "window": "1 cm"}}})
    assert any(w.startswith("Peg and thread together (4.5 mm) exceed the pitch (4 mm)") for w in wrapped.warnings)
