from __future__ import annotations

from fractions import Fraction

import pytest
import shapely
import shapely.affinity
from golden import listed, matches
from hypothesis import given
from hypothesis import strategies as st
from kits import NOTCHED, PEGGED, font_metrics, kit_of, plan_of
from languages import made_up
from test_look import outside

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.paper.sheets import lay as laying
from layout.paper.sheets import printed
from layout.parts.gauge_form import narrow_form, wide_form
from layout.parts.gauge_table import ROWS, gauge_table, neighbours
from layout.parts.wrap_gauge import card_alone, wrap_gauge
from layout.plan import plan
from layout.products import PRODUCTS
from layout.values.units import read_length

INCH: dict[str, object] = {"sett": {"readings": [{"pairs": 9, "window": "1 in"}]}}
CM: dict[str, object] = {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}]}}


def gauge(changes: dict[str, object]) -> Part:
    """The gauge of a kit."""
    return wrap_gauge(plan_of(changes), font_metrics())


def paths(part: Part, pen: Pen) -> list[Curve]:
    """Every path of a pen."""
    return [each for each in part.shapes if isinstance(each, Curve) and each.pen is pen]


SMALL: dict[str, dict[str, object]] = {
    "roomy": {},
    "narrow": {"paper.size": "148 x 210 mm"},
    "lying": {"paper.size": "210 x 148 mm"},
}


def card(paper: str, *, low: bool = False) -> Part:
    """The card of a kit as a kind of paper has it."""
    planned = plan_of(CM | SMALL[paper])
    return card_alone(planned, font_metrics(), low=low) if SMALL[paper] else wrap_gauge(planned, font_metrics())


CARDS = pytest.mark.parametrize(
    ("paper", "low"), [("roomy", False), *((size, low) for size in ("narrow", "lying") for low in (False, True))]
)


@pytest.mark.parametrize(("name", "changes"), [("wrap-gauge-cm", CM), ("wrap-gauge-inch", INCH)])
def test_golden_gauges(name: str, changes: dict[str, object]) -> None:
    """The gauge is, to the micrometre and the letter, the one that was looked at and kept."""
    assert matches(name, listed(gauge(changes)))


@CARDS
def test_windows_lie_between_the_inks(paper: str, low: bool) -> None:
    """With the ink of 0.9 mm laid round each edge by shapely, 25.4, 50.8 and 50 mm are left free on any paper."""
    bold = sorted(paths(card(paper, low=low), Pen.EDGE), key=lambda path: (path.start.y, path.start.x))
    inks = [shapely.LineString(path.points()).buffer(0.9 / 2, cap_style="flat") for path in bold]
    free = [one.distance(other) for one, other in zip(inks[0::2], inks[1::2], strict=True)]
    assert free == pytest.approx([25.4, 50.8, 50.0], abs=1e-9)


@CARDS
def test_the_folded_card_has_its_notches_on_one_another(paper: str, low: bool) -> None:
    """Folded by shapely's mirror: every cut in the front lies on the same cut in the back."""
    cuts = [path for path in paths(card(paper, low=low), Pen.CUT) if len(path.points()) in (3, 4)]
    lines = [shapely.LineString([*path.points(), *([path.start] if path.closed else [])]) for path in cuts]
    whole = shapely.union_all(lines)
    mirrored = shapely.affinity.scale(whole, 1, -1, origin=(0, 0))
    assert whole.hausdorff_distance(mirrored) < 1e-9


@CARDS
def test_every_bold_edge_leads_from_a_notch(paper: str, low: bool) -> None:
    """The yarn that a notch holds lies along the bold line: they share a point, and all notches hold one."""
    part = card(paper, low=low)
    bold = shapely.union_all([shapely.LineString(path.points()) for path in paths(part, Pen.EDGE)])
    vees = [path for path in paths(part, Pen.CUT) if len(path.points()) == 3]
    diamonds = [path for path in paths(part, Pen.CUT) if path.closed and path.start.x == path.points()[2].x]
    front = [path.points() for path in (*diamonds, *(each for each in vees if each.start.y > 0))]
    assert len(front) >= len(paths(part, Pen.EDGE))
    assert all(min(bold.distance(shapely.Point(point)) for point in points) < 1e-9 for points in front)


def test_two_inches_and_five_centimetres_begin_on_one_line() -> None:
    """On a narrow card yarn that is wound straight up from there is counted in both."""
    _, two, five = narrow_form().windows
    assert two.start == five.start


@pytest.mark.parametrize("half", [44.0, 34.0, 31.0])
def test_the_windows_stand_evenly_on_the_wide_card(half: float) -> None:
    """By hand: 166 less 126.2 of windows and 5.4 of ink leaves four spaces of 8.6 mm."""
    form = wide_form(half)
    assert [window.start for window in form.windows] == pytest.approx([9.5, 45.3, 106.5])
    assert form.length - form.windows[-1].stop == pytest.approx(9.5)


def test_table_by_hand() -> None:
    """13 pairs in 5 cm are 2.6 per cm: 10.4 to 4 cm, so 5 winds (10 ends) and 2.5 ends per cm; 2 in 2 cm, 6 in 5 cm."""
    table = gauge_table(plan_of(CM))
    assert table.units == ("2 cm", "4 cm", "5 cm")
    assert table.units[table.own] == "4 cm"
    rows = {row[0]: row[1:] for row in table.rows}
    assert rows["13"] == ("2", "2", "2.5", "5", "2.4", "6")
    assert list(rows) == ["11", "12", "13", "14", "15", "16"]


def test_nine_pairs_in_an_inch_are_eight_ends() -> None:
    """Nine pairs counted in one inch: 8 ends and 4 winds an inch (common practice, no source)."""
    table = gauge_table(plan_of(INCH))
    column = 1 + 2 * table.units.index("1 in")
    (row,) = [row for row in table.rows if row[0] == "18"]  # 18 in two inches
    assert table.over == "2 in"
    assert row[column : column + 2] == ("8", "4")


def test_without_winds_ends_are_counted_off() -> None:
    """Between notches 13 pairs in 5 cm, 10.4 to 4 cm, are 10 ends: no wind has to be whole, so 5 to 2 cm.

    Between pegs they are 5 pegs of two ends each, so 2 to 2 cm and 6 to 5 cm.
    """
    for kind, noun, row in (
        (NOTCHED, "ends", ("2.5", "5", "2.5", "10", "2.6", "13")),
        (PEGGED, "pegs", ("2", "2", "2.5", "5", "2.4", "6")),
    ):
        table = gauge_table(plan_of(CM | kind | {"sett.marking_unit": "4 cm"}))
        assert table.heads == ("per cm", noun)
        assert {row[0]: row[1:] for row in table.rows}["13"] == row


def test_notches_that_are_there_allow_three_setts() -> None:
    """With 2 notches per cm 13 pairs in 5 cm (2.6 per cm) come to an end a notch, and 20 (4 per cm) to two."""
    there = NOTCHED | {"frame.notch_density": "2 per cm", "sett": {"readings": [{"pairs": 18, "window": "5 cm"}]}}
    rows = {row[0]: row[1:] for row in gauge_table(plan_of(there)).rows}
    assert set(rows["19"][0::2]) == {"2"}
    assert set(rows["20"][0::2]) == {"4"}


@pytest.mark.parametrize(
    ("unit", "wanted"),
    [
        ("1/2 in", ["1/2 in", "1 in", "2 in"]),
        ("1 in", ["1/2 in", "1 in", "2 in"]),
        ("2 in", ["1/2 in", "1 in", "2 in"]),
        ("3 in", ["1 in", "2 in", "3 in"]),
        ("1 cm", ["1 cm", "2 cm", "4 cm"]),
        ("4 cm", ["2 cm", "4 cm", "5 cm"]),
        ("10 cm", ["4 cm", "5 cm", "10 cm"]),
        ("3 cm", ["2 cm", "3 cm", "4 cm"]),
        ("5 mm", ["5 mm", "1 cm", "2 cm"]),
    ],
)
def test_neighbours_of_a_unit(unit: str, wanted: list[str]) -> None:
    """Three units: the kit's own between the next usual ones, or at an end of these before or after two of them."""
    assert neighbours(read_length(unit)) == tuple(map(read_length, wanted))


@given(st.integers(2, 300), st.sampled_from(["1/2 in", "1 in", "2 in", "1 cm", "2 cm", "4 cm", "7 cm", "10 cm"]))
def test_the_table_never_takes_more_than_was_counted(pairs: int, unit: str) -> None:
    """In every row winds are whole, their sett holds no more ends than pairs were counted, and one more wind would."""
    sett = {"readings": [{"pairs": pairs, "window": "5 cm"}], "marking_unit": unit, "as_measured": True}
    table = gauge_table(plan_of({"sett": sett, "weaving.width": "30 cm"}))
    window, per = read_length(table.over).mm, Fraction(127, 5) if "epi" in table.heads else Fraction(10)
    assert len(table.rows) == ROWS
    for count, *fields in table.rows:
        for name, sett_words, winds in zip(table.units, fields[0::2], fields[1::2], strict=True):
            whole = 0 if winds == "\N{EN DASH}" else int(winds)
            mm = read_length(name).mm
            assert 2 * whole * window <= int(count) * mm < 2 * (whole + 1) * window
            if whole:
                assert float(sett_words) == pytest.approx(float(2 * whole / mm * per), abs=6e-4)


def test_a_count_too_small_for_a_wind_is_a_dash() -> None:
    """Where not one wind fits in a unit, the table says so with a dash and not with a number."""
    table = gauge_table(plan_of({"sett.given": "0.2 ends/cm", "sett.marking_unit": "10 cm"}))
    assert table.rows[0] == ("1", "\N{EN DASH}", "\N{EN DASH}", "\N{EN DASH}", "\N{EN DASH}", "0.2", "1")


def test_the_card_says_how() -> None:
    """Both yarns, every window's label, what is done in four steps, three pictures with their letters, the caution."""
    part = gauge(CM)
    words = {shape.words for shape in part.shapes if isinstance(shape, Text)}
    assert {"Warp", "Weft", "1 in", "2 in", "5 cm", "seine twine 12/6", "a", "b", "c", "How to wind"} <= words
    assert "This kit: 13 pairs in 5 cm, so 2.5 ends per cm, 5 winds to 4 cm." in words
    assert any("Blades are not for children" in each for each in words)
    assert len(part.steps) == 4


def test_the_kits_own_row_is_the_one_that_gives_its_sett() -> None:
    """13 pairs in 5 cm are counted in row 13; a sett that was given, or taken as measured, follows from no row."""
    table = gauge_table(plan_of(CM))
    assert table.own_row is not None
    assert table.rows[table.own_row][0] == "13"
    assert gauge_table(plan_of({"sett.given": "7/3 ends/cm"})).own_row is None
    measured = {"sett": {"readings": [{"pairs": 11, "window": "4 cm"}], "as_measured": True}}
    assert gauge_table(plan_of(measured)).own_row is None


@given(st.integers(12, 60), st.sampled_from(["1 in", "2 in", "4 cm", "5 cm"]))
def test_the_box_holds_the_sett_that_the_kit_has(pairs: int, window: str) -> None:
    """Where a row is picked out, the fields in the kit's column are its sett and its winds."""
    planned = plan_of({"sett": {"readings": [{"pairs": pairs, "window": window}]}, "weaving.width": "30 cm"})
    table, sett = gauge_table(planned), planned.warp.sett
    if table.own_row is not None:
        _, *fields = table.rows[table.own_row]
        assert fields[2 * table.own + 1] == f"{float(sett.per_unit):g}"


@pytest.mark.parametrize("lay", ["auto", "straight", "diagonal", "tiles"])
@pytest.mark.parametrize("size", ["common", "letter", "148 x 210 mm", "210 x 148 mm"])
def test_the_card_lies_straight_whatever_the_kit_says(size: str, lay: str) -> None:
    """It lies whole and straight on the smallest sheet, however long parts are to be laid."""
    planned = plan_of({"paper.size": size, "paper.lay": lay})
    for build in PRODUCTS["wrap-gauge"].builds(planned, font_metrics()):
        ((piece,),) = laying(planned, build, font_metrics()).sheets
        assert piece.placing.degrees in (0, 90)


@pytest.mark.parametrize("size", ["148 x 210 mm", "210 x 148 mm", "203 x 210 mm", "204 x 245 mm", "300 x 150 mm"])
@pytest.mark.parametrize("name", ["W" * 40, "Heron frame"])
def test_small_paper_holds_the_card(size: str, name: str) -> None:
    """On every paper that a kit may ask for, a long name or a short one, the card and how it is wound find room."""
    planned = plan_of({"paper.size": size, "name": name})
    builds = PRODUCTS["wrap-gauge"].builds(planned, font_metrics())
    assert [laying(planned, build, font_metrics()).part.name for build in builds] == ["wrap-gauge", "gauge-how"]


@pytest.mark.parametrize("size", ["common", "letter", "a3", "148 x 210 mm", "210 x 148 mm"])
@pytest.mark.parametrize("name", ["W" * 40, "Heron frame"])
def test_words_of_any_length_find_paper(size: str, name: str) -> None:
    """In a made-up language, half as long again, the card is refused on no paper, and nothing leaves a sheet."""
    planned = plan(kit_of(CM | {"paper.size": size, "name": name}), made_up(ENGLISH))
    layings = [
        laying(planned, build, font_metrics()) for build in PRODUCTS["wrap-gauge"].builds(planned, font_metrics())
    ]
    assert [each for page in printed(planned, layings, font_metrics()) for each in outside(page.sheet)] == []
