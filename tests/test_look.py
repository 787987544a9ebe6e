"""The promise of every sheet: no word meets another or a mark, none leaves the margins, few sizes, none too small."""

from __future__ import annotations

import math
from itertools import chain

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from ink import corners, ink_of, letter_ink, meetings
from kits import FLAT, font_metrics, kit_of, sheets_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Text, line
from layout.drawing.sheet import Sheet
from layout.drawing.typeset import is_tall
from layout.plan import plan
from layout.values.errors import FieldError, FieldErrors

GAP = 0.3
"""The least white in mm between a word's ink and any other."""

SIDE, TOP = 8.0, 13.0  # our own margins, stated once more
LEAST = 7.5 * 25.4 / 72  # a PDF unit is 1/72 in (ISO 32000)


def frame(weaving: str, outer: str, side: str = "10 mm", margin: str = "3 mm") -> dict[str, object]:
    """A weaving of this width in a frame of that one."""
    return {
        "weaving.width": weaving,
        "frame.outer_width": outer,
        "frame.side_width": side,
        "frame.margin": margin,
    }


ENDS: tuple[dict[str, object], ...] = (
    *({"frame.bar_diameter": f"{mm} mm"} for mm in (4, 6, 9, 10.4, 12, 16, 22, 40, 60)),
    FLAT | {"frame.thickness": "3 mm"},
    FLAT | {"frame.edge_radius": "4 mm"},
    FLAT | {"frame.thickness": "60 mm"},
)
SETTS: tuple[dict[str, object], ...] = tuple(
    {"sett.given": sett}
    for sett in ("1 ends/cm", "2.5 ends/cm", "5 ends/cm", "12 ends/cm", "4 epi", "7.5 epi", "12 epi")
)
WIDTHS: tuple[dict[str, object], ...] = (
    frame("20 mm", "50 mm"),
    frame("20 mm", "40 cm"),
    frame("45 mm", "80 mm"),
    frame("18 cm", "30 cm"),
    frame("24 cm", "40 cm"),
    frame("12 in", "18 in"),
    frame("60 cm", "70 cm"),
)
PAPERS: tuple[dict[str, object], ...] = tuple(
    {"paper.size": size}
    for size in ("common", "a4", "letter", "a3", "11x17", "148 x 210 mm", "210 x 148 mm", "600 x 3000 mm")
)
LAYS: tuple[dict[str, object], ...] = tuple({"paper.lay": lay} for lay in ("auto", "straight", "diagonal", "tiles"))
NAMES: tuple[dict[str, object], ...] = (
    {"name": "W" * 40},
    {"name": "Ấm Ỗ ngựa gỗ ỆẪ qyj " + "Ỗ" * 20, "yarns.warp": "Ỗq" * 20, "yarns.weft": "sợi len gấp đôi Ắ ỵ"},
    {"name": "Йод и Ёлка, рама для Ольги цвета щавеля", "yarns.warp": "льняная нить щ", "yarns.weft": "шерсть"},
    {"name": "Jørgen ǻ Ř, long & wide, jig", "yarns.warp": "Jj" * 20, "yarns.weft": "ď⁄"},
    {},
)
TURNS: tuple[dict[str, object], ...] = (
    {},
    {"weaving.near_end": "top"},
    {"weaving.start": "right"},
    {"weaving.first_pass": "back", "weaving.near_end": "top"},
    {"weaving.slant": "face straight", "weaving.start": "right"},
    {"weaving.slant": "face straight", "weaving.first_pass": "back"},
)
_DIMENSIONS = (ENDS, SETTS, WIDTHS, PAPERS, LAYS, NAMES, TURNS)
_STRIDES = (1, 5, 3, 7, 1, 2, 1)


def combination(number: int) -> dict[str, object]:
    """The `number`th of a walk that meets every value of every list, in ever new company."""
    picked = [
        values[(number * stride + number // (4 * (k + 1))) % len(values)]
        for k, (values, stride) in enumerate(zip(_DIMENSIONS, _STRIDES, strict=True))
    ]
    return dict(chain.from_iterable(changes.items() for changes in picked))


USUAL = 48
TABLE = [combination(number) for number in range(USUAL)]
LARGE: list[dict[str, object]] = [
    frame("as wide as fits", "3 m") | {"sett.given": "5 ends/cm"},
    frame("as wide as fits", "3 m") | {"sett.given": "12 epi", "paper.size": "a4", "weaving.start": "right"} | NAMES[1],
    frame("as wide as fits", "3 m") | {"paper.size": "600 x 3000 mm"} | FLAT,
]


def drawn(changes: dict[str, object]) -> list[Sheet]:
    """The sheets of a kit; none where its paper is refused in one sentence that names the key."""
    planned = plan(kit_of(changes))
    try:
        return [printed.sheet for printed in sheets_of(planned)]
    except FieldError as error:
        may_be_refused = planned.kit.paper.lay != "auto"  # what may lie as it likes must find a way
        if may_be_refused and error.field == "paper.lay" and "\n" not in str(error):
            return []
        raise


def outside(sheet: Sheet) -> list[str]:
    """Words whose ink, and lines whose middle, leaves the printable area."""
    found = []
    for shape in sheet.shapes:
        if isinstance(shape, Text):
            points = corners(shape)
        else:
            points = [p for path in (shape.contours if isinstance(shape, Region) else (shape,)) for p in path.points()]
        for x, y in points:
            if not (SIDE - 1e-6 <= x <= sheet.width - SIDE + 1e-6 and TOP - 1e-6 <= y <= sheet.height - TOP + 1e-6):
                found.append(f"{shape.words if isinstance(shape, Text) else shape.pen.value} at {x:.2f}, {y:.2f}")
    return found


def test_every_value_is_tried() -> None:
    """The table below leaves out no bar, sett, width, paper, way of laying, name or turn."""
    for values in _DIMENSIONS:
        for changes in values:
            assert any(changes.items() <= combined.items() for combined in TABLE)


@pytest.mark.parametrize(
    "number", [*range(USUAL), *(pytest.param(each, marks=pytest.mark.slow) for each in range(USUAL, 96))]
)
def test_every_sheet_is_a_good_drawing(number: int) -> None:
    """Words keep 0.3 mm of white around them; nothing leaves the margins; at most four sizes, none under 7.5 pt."""
    for sheet in drawn(combination(number)):
        assert meetings(sheet, GAP) == []
        assert outside(sheet) == []
        sizes = {shape.size for shape in sheet.shapes if isinstance(shape, Text)}
        assert len(sizes) <= 4
        assert min(sizes) >= LEAST - 1e-9


@pytest.mark.parametrize("changes", LARGE)
def test_long_strips_are_good_drawings(changes: dict[str, object]) -> None:
    """A frame of 3 m keeps the same white and margins, on whatever number of sheets."""
    sheets = drawn(changes)
    assert sheets
    for sheet in sheets[:: max(1, len(sheets) // 12)]:
        assert meetings(sheet, GAP) == []
        assert outside(sheet) == []


def test_a_frame_without_room_for_words_is_refused() -> None:
    """A strip too short for any word is refused with the width that would do, and the advice works."""
    tight = frame("as wide as fits", "40 mm", side="15 mm")
    with pytest.raises(FieldError, match=r"frame\.outer_width: needs at least 26 mm between the sides") as caught:
        drawn(tight | {"sett.given": "5 ends/cm"})
    assert drawn(tight | {"sett.given": "5 ends/cm", "frame.outer_width": caught.value.example.split('"')[1]})


def test_a_marking_unit_without_room_for_totals_is_refused() -> None:
    """Totals closer than their figures are wide are refused, and the advice works."""
    with pytest.raises(FieldError, match=r"sett\.marking_unit: needs at least 4\.\d mm") as caught:
        drawn({"sett.given": "5 ends/cm", "sett.marking_unit": "4 mm"})
    assert drawn({"sett.given": "5 ends/cm", "sett.marking_unit": caught.value.example.split('"')[1]})


def test_a_kit_that_cannot_be_says_so_by_key() -> None:
    """A frame whose sides meet is refused before anything is drawn."""
    with pytest.raises(FieldErrors, match="frame"):
        drawn(frame("20 mm", "40 mm", side="25 mm"))


def test_tall_letters_are_known() -> None:
    """Every letter of the font that rises above 0.83 em is known to be tall, by the outlines themselves."""
    rising = [letter for letter in font_metrics().advances if (box := letter_ink(letter)[0]) and box.top > 0.83]
    missed = [letter for letter in rising if not is_tall(letter)]
    assert len(rising) > 100
    assert missed == []


places = st.floats(-20, 20)


@given(places, places, st.floats(-180, 180), places, places)
@settings(max_examples=60, deadline=None)
def test_gaps_are_what_shapely_measures(x: float, y: float, angle: float, to_x: float, to_y: float) -> None:
    """The gap between turned words and a line is the distance of their polygons."""
    words, stroke = Text(Point(1, 2), 4.0, "Jig", angle), line(Point(x, y), Point(to_x, to_y), Pen.EDGE)
    assume(math.dist((x, y), (to_x, to_y)) > 0.1)
    ink = shapely.LineString([(x, y), (to_x, to_y)]).buffer(Pen.EDGE.ink.width / 2, cap_style="flat")
    gap = shapely.Polygon(corners(words)).distance(ink)
    found = meetings(Sheet("", 10, 10, (words, stroke)), 2.0)
    assert bool(found) == (gap < 2.0) or gap == pytest.approx(2.0, abs=1e-6)
    if found:
        assert min(meeting.gap for meeting in found) == pytest.approx(gap, abs=1e-6)


def test_ink_sees_words_on_words_and_on_arrows() -> None:
    """Overlapping words, a word on a filled region and a word on a line are each found."""
    word, other = Text(Point(0, 0), 3.0, "near"), Text(Point(2, 0.5), 3.0, "far", 30.0)
    blot = Region((Curve(Point(-5, -5), line(Point(-5, -5), Point(9, -5), Pen.SOLID).steps, Pen.SOLID),), Pen.SOLID)
    assert {meeting.other for meeting in meetings(Sheet("", 9, 9, (word, other)), GAP)} == {"near", "far"}
    assert meetings(Sheet("", 9, 9, (word, line(Point(-1, 1), Point(9, 1), Pen.MARK))), GAP)
    assert not meetings(Sheet("", 9, 9, (word, blot)), GAP)
    assert len(ink_of((word, blot)).half) == 8
