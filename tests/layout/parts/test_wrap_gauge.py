from __future__ import annotations

import math
from fractions import Fraction

import pytest
import shapely
from golden import listed, matches
from hypothesis import given
from hypothesis import strategies as st
from kits import NOTCHED, PEGGED, font_metrics, plan_of

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Part
from layout.paper.sheets import lay as laying
from layout.parts.gauge_table import ROWS, gauge_table, neighbours
from layout.parts.wrap_gauge import HEIGHT, LENGTH, wrap_gauge
from layout.products import PRODUCTS
from layout.values.units import read_length

INCH: dict[str, object] = {"sett": {"readings": [{"pairs": 9, "window": "1 in"}]}}
CM: dict[str, object] = {"sett": {"readings": [{"pairs": 13, "window": "5 cm"}]}}


def gauge(changes: dict[str, object]) -> Part:
    """The gauge of a kit."""
    return wrap_gauge(plan_of(changes), font_metrics())


def edges(part: Part, y: float) -> list[float]:
    """The x of every bold edge that reaches the long edge at `y`, left to right."""
    paths = [each for each in part.shapes if isinstance(each, Curve) and each.pen is Pen.EDGE]
    return sorted(path.start.x for path in paths if path.start.y == y)


@pytest.mark.parametrize(("name", "changes"), [("wrap-gauge-cm", CM), ("wrap-gauge-inch", INCH)])
def test_golden_gauges(name: str, changes: dict[str, object]) -> None:
    """The gauge is, to the micrometre and the letter, the one that was looked at and kept."""
    assert matches(name, listed(gauge(changes)))


def test_windows_lie_between_the_inks() -> None:
    """With the ink of 0.9 mm laid round each edge by shapely, 25.4, 50.8 and 50 mm are left free."""
    part = gauge(CM)
    for y, wanted in ((0.0, (25.4, 50.8)), (-HEIGHT, (50.0,))):
        inks = [shapely.LineString([(x, 0), (x, 9)]).buffer(0.9 / 2, cap_style="flat") for x in edges(part, y)]
        free = [one.distance(other) for one, other in zip(inks[0::2], inks[1::2], strict=True)]
        assert free == pytest.approx(wanted, abs=1e-9)


def test_two_inches_and_five_centimetres_begin_on_one_line() -> None:
    """Yarn that is wound straight up from there is counted at both long edges."""
    part = gauge(CM)
    assert edges(part, 0.0)[2] == edges(part, -HEIGHT)[0]


def test_slits_reach_the_edges_and_keep_off_the_ink() -> None:
    """Six slits begin at an edge of the card or at the fold, and none comes within 1.5 mm of a bold edge's middle."""
    part = gauge(CM)
    paths = [each for each in part.shapes if isinstance(each, Curve)]
    slits = [each for each in paths if each.pen is Pen.CUT and not each.closed]
    bold = [shapely.LineString(each.points()) for each in paths if each.pen is Pen.EDGE]
    assert len(slits) == 6
    for slit in slits:
        assert slit.start.x in (0, LENGTH) or slit.start.y in (0, -HEIGHT)
        assert math.dist(*slit.points()) == 7.5
        assert min(shapely.LineString(slit.points()).distance(edge) for edge in bold) > 1.5


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
    """How a pair and how one yarn are wrapped, both blank names, every window's label; all above the label below."""
    words = [shape.words for shape in gauge(CM).shapes if isinstance(shape, Text)]
    assert {"Warp", "Weft", "1 in", "2 in", "5 cm", "Wrap gauge"} <= set(words)
    keys = ("weft first", "not squeezed", "is not counted", "until the window takes no more")
    assert sum(any(key in said for said in words) for key in keys) == len(keys)
    lines = [shape.at.y for shape in gauge(CM).shapes if isinstance(shape, Text) and shape.at.x == 3]
    assert len([y for y in lines if -29 < y < -12]) == len(keys)  # inside both slits of a short edge


@pytest.mark.parametrize("lay", ["auto", "straight", "diagonal", "tiles"])
@pytest.mark.parametrize("size", ["common", "letter", "148 x 210 mm", "210 x 148 mm"])
def test_the_card_lies_straight_whatever_the_kit_says(size: str, lay: str) -> None:
    """It lies whole and straight on the smallest sheet, however long parts are to be laid."""
    planned = plan_of({"paper.size": size, "paper.lay": lay})
    (build,) = PRODUCTS["wrap-gauge"].builds(planned, font_metrics())
    ((piece,),) = laying(planned, build, font_metrics()).sheets
    assert piece.placing.degrees in (0, 90)
