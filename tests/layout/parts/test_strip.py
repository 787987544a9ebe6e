from __future__ import annotations

import math
from itertools import pairwise

import pytest
import shapely
from golden import listed, matches
from kits import CROSSED, FLAT, ROD, font_metrics, plan_of, strip_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text
from layout.drawing.sheet import Part
from layout.parts.strip import strip
from layout.products import PRODUCTS
from layout.values.errors import LayoutError
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SHORT: dict[str, object] = {"weaving.width": "88 mm"}  # 11 winds of 8 mm: limits at -44 and 44
CLOSE: dict[str, object] = {"sett.given": "12 per cm"}

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
VARIETY: dict[str, dict[str, object]] = {
    "usual": {},
    "from the right": {"weaving.start": "right"},
    "at the top": {"weaving.near_end": "top"},
    "boards": FLAT,
    "boards, a straight face": FLAT | {"weaving.slant": "face straight"},
    "figure eight": CROSSED,
    "loose rod": ROD,
    "close": CLOSE,
    "close, from the right": CLOSE | {"weaving.start": "right"},
    "close from a rod": CLOSE | ROD,
    "inches": {"sett.given": "8 epi"},
    "a few": {"sett.given": "1 per cm", "weaving.width": "4 cm"},
}


def uprights(part: Part, pen: Pen) -> list[float]:
    """The x of every upright line of a pen, left to right, each once."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and len(shape.steps) == 1]
    return sorted({path.start.x for path in paths if path.start.x == path.steps[0].end.x})


def spans(part: Part, pen: Pen) -> list[tuple[float, float, float]]:
    """Every upright line of a pen: its x, and from which to which y it reaches."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and len(shape.steps) == 1]
    return [
        (path.start.x, *sorted((path.start.y, path.steps[0].end.y)))
        for path in paths
        if path.start.x == path.steps[0].end.x
    ]


def levels(part: Part, pen: Pen) -> list[float]:
    """The y of every level line of a pen that runs from edge to edge, bottom to top."""
    paths = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is pen and not shape.closed]
    return sorted(p.start.y for p in paths if abs(p.steps[0].end.x - p.start.x) == pytest.approx(part.length))


def paper(part: Part) -> tuple[float, float, float, float]:
    """What is cut out: left, bottom, right, top."""
    (cut,) = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.CUT]
    xs, ys = zip(*cut.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def words(part: Part) -> list[str]:
    """Everything a part says."""
    return [shape.words for shape in part.shapes if isinstance(shape, Text)]


def numbers(part: Part) -> list[Text]:
    """The numbers, left to right."""
    found = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words.isdigit()]
    return sorted(found, key=lambda text: text.at.x)


def heads(part: Part) -> list[tuple[Point, Point]]:
    """Tip, and vector to the tip from the middle of the side opposite, of every triangle with two sides alike."""
    found = []
    for shape in part.shapes:
        if isinstance(shape, Region) and len(shape.contours[0].steps) == 2:
            tip, one, other = shape.contours[0].points()
            if math.dist(tip, one) == pytest.approx(math.dist(tip, other)):
                found.append((tip, Point(tip.x - (one.x + other.x) / 2, tip.y - (one.y + other.y) / 2)))
    return found


def above(changes: dict[str, object], end: End) -> int:
    """+1 where the weaving lies above the strip on the paper."""
    return 1 if (end == "near") == (changes.get("weaving.near_end", "bottom") == "bottom") else -1


@pytest.mark.parametrize("name", GOLDEN)
def test_golden_strips(name: str) -> None:
    """The strip is, to the micrometre and the letter, the one that was looked at and kept."""
    changes, end, low = GOLDEN[name]
    assert matches(name, listed(strip_of(changes, end, low=low)))


def test_marks_by_hand() -> None:
    """2.5 ends per cm over 88 mm: near marks from -44 by 8 mm to 44, far ones 4 mm on; every fifth is heavy."""
    near, far = strip_of(SHORT), strip_of(SHORT, "far")
    assert uprights(near, Pen.TEN) == [-44 + 8 * j for j in (0, 5, 10)]  # the tie-on is 0
    assert uprights(near, Pen.MARK) == [-44 + 8 * j for j in range(12) if j % 5]
    assert uprights(far, Pen.TEN) == [-40 + 8 * j for j in (4, 9)]  # the first far mark is 1
    assert uprights(far, Pen.MARK) == [-40 + 8 * j for j in range(11) if j not in (4, 9)]


def test_numbers_by_hand() -> None:
    """0, 1, 5 and 10 stand 1 mm to the right of their marks, on the far strip 1, 5 and 10; the last one turns round."""
    near, far = numbers(strip_of(SHORT)), numbers(strip_of(SHORT, "far"))
    assert [(text.words, text.at.x) for text in near] == [("0", -43), ("1", -35), ("5", -3), ("10", 37)]
    assert [(text.words, text.at.x) for text in far] == [("1", -39), ("5", -7), ("10", 33)]
    turned = numbers(strip_of({"weaving.start": "right", "weaving.width": "20 cm"}))
    assert [text.words for text in turned] == ["25", "20", "15", "10", "5", "1", "0"]
    width = font_metrics().width("0", turned[-1].size, Pen.STRONG)
    assert turned[-1].at.x == pytest.approx(100 - 1 - width)


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("low", [False, True])
@pytest.mark.parametrize("name", VARIETY)
def test_a_number_stands_beside_its_own_mark(name: str, end: End, *, low: bool) -> None:
    """No mark is nearer to a number than its own, whatever the spacing; none runs through it."""
    planned, part = plan_of(VARIETY[name]), strip_of(VARIETY[name], end, low=low)
    first = 0 if end == "near" and planned.warp.kind == "wound" else 1
    marks = dict(enumerate(map(float, planned.warp.marks(end)), first))
    for text in numbers(part):
        left, right = text.at.x, text.at.x + font_metrics().width(text.words, text.size, Pen.STRONG)
        own = marks[int(text.words)]
        assert min(abs(left - own), abs(right - own)) == pytest.approx(1)
        foot, top = text.at.y, text.at.y + 1.9
        for pen in (Pen.MARK, Pen.TEN):
            for x, low_y, high_y in spans(part, pen):
                if left - 0.3 < x < right + 0.3:
                    assert high_y < foot - 0.3 or top + 0.3 < low_y


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("name", VARIETY)
def test_every_mark_reaches_the_weaving_edge(name: str, end: End) -> None:
    """Seen from the face, every wind's mark begins at the weaving edge; behind, it ends at the back line, the fold."""
    part, up = strip_of(VARIETY[name], end), above(VARIETY[name], end)
    _, bottom, _, top = paper(part)
    edge, back = (top, levels(part, Pen.FOLD)[0]) if up > 0 else (bottom, levels(part, Pen.FOLD)[-1])
    marks = plan_of(VARIETY[name]).warp.marks(end)
    reach: dict[float, list[float]] = {}
    for pen in (Pen.MARK, Pen.TEN):
        for x, low, high in spans(part, pen):
            reach.setdefault(x, []).extend((low, high))
    assert sorted(reach) == sorted(map(float, marks))
    for ys in reach.values():
        assert (max(ys) if up > 0 else min(ys)) == pytest.approx(edge)
        assert (min(ys) if up > 0 else max(ys)) == pytest.approx(back)


@pytest.mark.parametrize("name", VARIETY)
def test_the_flap_and_its_scale(name: str) -> None:
    """6 mm behind the back line are grey; ticks stand on their free edge by 1 cm or 1/4 in, longer at marking units."""
    for end in ENDS:
        planned, part, up = plan_of(VARIETY[name]), strip_of(VARIETY[name], end), above(VARIETY[name], end)
        left, bottom, right, top = paper(part)
        free = bottom if up > 0 else top
        (grey,) = [shape for shape in part.shapes if isinstance(shape, Region) and shape.pen is Pen.TINT]
        low, high = sorted((free, free + 6 * up))
        outline = shapely.Polygon(grey.contours[0].points())
        assert outline.bounds == pytest.approx((left, low, right, high))
        assert outline.area == pytest.approx(6 * (right - left))
        ticks = spans(part, Pen.UNIT)
        small = 6.35 if planned.warp.sett.unit.imperial else 10.0
        assert {round(abs(high - low), 6) for _, low, high in ticks} <= {0.9, 1.7}
        assert all((low if up > 0 else high) == pytest.approx(free) for _, low, high in ticks)
        long = sorted(x for x, low, high in ticks if high - low > 1)
        assert [b - a for a, b in pairwise(long)] == pytest.approx([float(planned.warp.sett.unit.mm)] * (len(long) - 1))
        xs = sorted(x for x, *_ in ticks)
        assert max(b - a for a, b in pairwise(xs)) <= small + 1e-6
        assert planned.warp.toward * xs[:: planned.warp.toward][0] == pytest.approx(-float(planned.warp.width) / 2)


@pytest.mark.parametrize("end", ENDS)
def test_the_centre_is_a_triangle_at_the_weaving_edge(end: End) -> None:
    """Its tip stands on the edge, at 0; on the flap the centre is a line with its word beside it."""
    part, up = strip_of(SHORT, end), above(SHORT, end)
    _, bottom, _, top = paper(part)
    assert (Point(0, top if up > 0 else bottom), Point(0, pytest.approx(1.9 * up))) in heads(part)
    assert uprights(part, Pen.CENTRE_SHORT) == [0]
    (word,) = [shape for shape in part.shapes if isinstance(shape, Text) and shape.words == "centre"]
    assert word.at.x == pytest.approx(1.4)


@pytest.mark.parametrize("end", ENDS)
@pytest.mark.parametrize("low", [False, True])
def test_shared_strips_are_symmetric(end: End, *, low: bool) -> None:
    """With the slant shared a strip's marks mirror onto themselves, and a start at the right mirrors every line."""
    part, turned = strip_of({}, end, low=low), strip_of({"weaving.start": "right"}, end, low=low)
    marks = sorted(uprights(part, Pen.MARK) + uprights(part, Pen.TEN))
    assert marks == [-x + 0.0 for x in reversed(marks)]
    for pen in (Pen.MARK, Pen.TEN, Pen.UNIT):
        assert uprights(turned, pen) == [-x + 0.0 for x in reversed(uprights(part, pen))]


@pytest.mark.parametrize("near_end", ["bottom", "top"])
@pytest.mark.parametrize("end", ENDS)
def test_the_weaving_edge_faces_the_weaving(near_end: str, end: End) -> None:
    """At the bottom of the frame the weaving edge is up on the paper, at the top down; three arrows point to it."""
    changes: dict[str, object] = {"weaving.near_end": near_end}
    part, up = strip_of(changes, end), above(changes, end)
    assert all(text.at.y * up > 0 for text in numbers(part))
    arrows = [(tip, ahead) for tip, ahead in heads(part) if abs(ahead.y) == pytest.approx(2.2)]
    assert [ahead.y for _, ahead in arrows] == pytest.approx([2.2 * up] * 3)
    lines = uprights(part, Pen.MARK) + uprights(part, Pen.TEN)
    assert min(abs(tip.x - x) for tip, _ in arrows for x in lines) >= 2


def test_arrows_and_scissors_want_room() -> None:
    """Between marks that stand close there is neither; then no legend says what an arrow means."""
    roomy, close = strip_of({}), strip_of(CLOSE | {"frame.outer_width": "40 cm", "weaving.width": "30 cm"})
    assert any("towards the weaving" in entry.words for block in roomy.blocks for entry in block.entries)
    assert not any("towards the weaving" in entry.words for block in close.blocks for entry in block.entries)
    assert close.box == paper(close)
    assert roomy.box[3] - paper(roomy)[3] == pytest.approx(2.12)  # the eyes of the scissors


@pytest.mark.parametrize(("start", "way"), [("left", 1), ("right", -1)])
def test_the_way_of_winding(start: str, way: int) -> None:
    """The winds go on toward the arrow; the tie-on is at the side where winding begins, the tie-off at the other."""
    part = strip_of({"weaving.start": start})
    assert [ahead.x for _, ahead in heads(part) if ahead.x] == pytest.approx([2 * way])
    on, off = ("left", "right")[::way]
    assert {f"{on}, tie on at 0", f"{off}, tie off at 25", "winds go on this way"} <= set(words(part))


def test_an_odd_warp_is_tied_off_at_the_far_end() -> None:
    """Eleven ends, five winds and a pass: the near strip has the tie-on alone, the far one the tie-off at mark 6."""
    near, far = (words(strip_of(SHORT | {"weaving.width": "44 mm", "weaving.tie_off": "far end"}, end)) for end in ENDS)
    assert "left, tie on at 0" in near
    assert "right" in near
    assert {"left", "right, tie off at 6"} <= set(far)


def test_a_strip_names_itself() -> None:
    """Which bar it is for stands on the flap; the far one has no tie-on, and a figure eight says what is in front."""
    near, far = strip_of({}), strip_of({"weaving.first_pass": "back"}, "far")
    assert "Near bar, seen from the face" in words(near)
    assert {"Far bar, seen from the face", "left", "right"} <= set(words(far))
    assert not any("tie" in said for said in words(far))
    assert "odd ends on the face" in words(strip_of(CROSSED))
    assert "even ends on the face" in words(strip_of(CROSSED, "far"))
    assert "ends go on this way" in words(strip_of(ROD))


def test_a_short_strip_keeps_what_matters_most() -> None:
    """On 40 mm of paper there is room for its brief name, and for no more than fits."""
    tight: dict[str, object] = {
        "weaving.width": "30 mm",
        "frame.outer_width": "60 mm",
        "frame.side_width": "10 mm",
        "frame.margin": "3 mm",
    }
    said = words(strip_of(tight))
    assert "near bar" in said
    assert "Near bar, seen from the face" not in said


@pytest.mark.parametrize("diameter", [12, 16, 25, 40])
def test_a_round_bar_is_wrapped_by_half_and_glued(diameter: int) -> None:
    """From face to back it is half the bar round, by shapely's buffered point; behind it a flap of 6 mm."""
    part = strip_of({"frame.bar_diameter": f"{diameter} mm"})
    half_turn = shapely.Point(0, 0).buffer(diameter / 2, quad_segs=2000).exterior.length / 2
    _, bottom, _, face = paper(part)
    (back,) = levels(part, Pen.FOLD)
    assert face - back == pytest.approx(half_turn, abs=1e-4)
    assert levels(part, Pen.REGISTER) == [0]
    assert face == pytest.approx(-back)
    assert back - bottom == pytest.approx(6)
    assert face - bottom < math.pi * diameter


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
    assert paper(part)[3] - face == pytest.approx(6)  # the weaving edge and its numbers lie on the face
    assert back - paper(part)[1] == pytest.approx(6)


def test_the_low_form_is_low() -> None:
    """It shows the outermost line only, is at most 10 mm high on 12 in, with all marks and numbers of the full one."""
    twelve: dict[str, object] = {"weaving.width": "12 in", "frame.outer_width": "18 in"}
    low, full = strip_of(twelve, low=True), strip_of(twelve)
    assert low.height <= 10
    assert levels(low, Pen.REGISTER) == [0]
    for pen in (Pen.MARK, Pen.TEN):
        assert uprights(low, pen) == uprights(full, pen)
    assert [text.words for text in numbers(low)] == [text.words for text in numbers(full)]


def test_a_thin_bar_has_only_the_low_form() -> None:
    """Where the face of a bar has no room for numbers the full form is refused, and the low one taken."""
    planned = plan_of({"frame.bar_diameter": "5 mm"})
    with pytest.raises(LayoutError, match="too thin"):
        strip(planned, "near", font_metrics())
    assert PRODUCTS["strip-near"].alone(planned, font_metrics()) == (strip(planned, "near", font_metrics(), low=True),)


@pytest.mark.parametrize("low", [False, True])
def test_crosses_stand_at_the_datum(*, low: bool) -> None:
    """Each datum point has its cross, on the paper; the three do not lie in one line."""
    for changes in ({}, {"weaving.slant": "face straight"}, FLAT):
        part = strip_of(changes, low=low)
        hairs = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.REGISTER]
        for point in part.datum:
            around = [p for p in hairs if math.dist(p.start, point) == pytest.approx(0.5)]
            assert len(around) == 2
            assert shapely.box(*paper(part)).contains(shapely.Point(point).buffer(0.5))
        assert shapely.Polygon(part.datum).area > 100


@pytest.mark.parametrize("sett", ["4 epi", "3/cm", "5/cm", "12 epi"])
@pytest.mark.parametrize("low", [False, True])
def test_crosses_keep_off_marks(sett: str, *, low: bool) -> None:
    """A cross is not drawn into a mark."""
    part = strip_of({"sett.given": sett, "weaving.slant": "face straight"}, low=low)
    for pen in (Pen.MARK, Pen.TEN):
        for x, foot, top in spans(part, pen):
            near = [point for point in part.datum if foot - 0.5 < point.y < top + 0.5]
            assert all(abs(point.x - x) >= 0.7 for point in near)
