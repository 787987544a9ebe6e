"""Ruled tables: every word is set, nothing meets anything, and the table is as wide as it is asked to be."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st
from kits import font_metrics

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Text
from layout.drawing.typeset import LEAD, SMALL
from layout.parts.hanging import Hanging
from layout.parts.tables.columns import TICK
from layout.parts.tables.ruled import Column, Row, ruled, ruled_pages

METRICS = font_metrics()
words = st.lists(st.text("abcW0.Ñ", min_size=1, max_size=9), max_size=5).map(" ".join)
columns = st.lists(
    st.builds(Column, words, st.booleans(), st.booleans(), st.booleans(), st.booleans()), min_size=1, max_size=6
).filter(lambda found: not all(column.tick for column in found))


@st.composite
def tables(draw: st.DrawFn) -> tuple[list[Column], list[Row]]:
    """Columns, and rows of words for them."""
    found = [column._replace(title="") if column.tick else column for column in draw(columns)]
    row = st.tuples(*(st.just("") if column.tick else words for column in found))
    return found, draw(st.lists(st.builds(Row, row, st.booleans()), max_size=6))


def box_of(said: Text) -> Box:
    """What a text takes, from its descenders to the top of an accent on a capital."""
    wide = METRICS.width(said.words, said.size, said.pen)
    return (said.at.x, said.at.y + METRICS.descent * said.size, said.at.x + wide, said.at.y + METRICS.cap * said.size)


def words_of(table: Hanging) -> list[Text]:
    """Its texts."""
    return [shape for shape in table.shapes if isinstance(shape, Text)]


@given(tables(), st.floats(60, 180), st.sampled_from([LEAD, SMALL]))
def test_nothing_meets(table: tuple[list[Column], list[Row]], width: float, size: float) -> None:
    """No two texts meet; none crosses a rule, a box to tick or an edge; every sign is set, in its order."""
    found = ruled(*table, width, METRICS, size)
    texts = words_of(found)
    boxes = list(map(box_of, texts))
    curves = [shape for shape in found.shapes if isinstance(shape, Curve)]
    for one, other in combinations([*boxes, *(extent(curve) for curve in curves if curve.closed)], 2):
        assert one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
    for left, low, right, high in boxes:
        assert left >= 0
        assert right <= width + 1e-5
        assert high <= 0
        assert low >= -found.high
        assert not any(low <= curve.start.y <= high for curve in curves if not curve.closed)
    given = [*(column.title for column in table[0]), *(cell for row in table[1] for cell in row.cells)]
    assert sorted("".join(text.words for text in texts).replace(" ", "")) == sorted("".join(given).replace(" ", ""))


def extent(curve: Curve) -> Box:
    """The box round a curve of straight lines."""
    xs, ys = zip(*curve.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


@given(tables(), st.floats(60, 180))
def test_rules_are_as_wide_as_asked(table: tuple[list[Column], list[Row]], width: float) -> None:
    """A rule under each row, and under the titles if there are any; from the left edge to the right one."""
    curves = [shape for shape in ruled(*table, width, METRICS).shapes if isinstance(shape, Curve)]
    rules = [curve for curve in curves if not curve.closed]
    assert len(rules) == len(table[1]) + any(column.title for column in table[0])
    assert len(curves) - len(rules) == len(table[1]) * sum(column.tick for column in table[0])
    for rule in rules:
        assert extent(rule)[0] == 0
        assert extent(rule)[2] == pytest.approx(width)


def test_a_packing_list_has_boxes_names_and_amounts() -> None:
    """Rows of one line are 6.4 mm apart; amounts end at the right edge in strong letters, and a box stands before."""
    rows = [Row(("", "Leash cord", "8 m")), Row(("", "Tapestry needle", "1"))]
    found = ruled([Column(tick=True), Column(), Column(right=True, strong=True)], rows, 62, METRICS)
    texts = words_of(found)
    assert [text.words for text in texts] == ["Leash cord", "8 m", "Tapestry needle", "1"]
    assert texts[0].at.y - texts[2].at.y == pytest.approx(6.4)
    assert texts[1].pen is Pen.STRONG
    assert texts[1].at.x + METRICS.width("8 m", LEAD, Pen.STRONG) == pytest.approx(62, abs=1e-5)
    ticks = [extent(shape) for shape in found.shapes if isinstance(shape, Curve) and shape.closed]
    assert [round(right - left, 6) for left, _, right, _ in ticks] == [TICK, TICK]
    assert texts[0].at.x == pytest.approx(TICK + 2.7)


def cells_of(table: Hanging) -> list[str]:
    """Its words but for the titles, which are smaller."""
    return [text.words for text in words_of(table) if text.size == LEAD]


@given(tables(), st.floats(20, 60), st.floats(20, 60))
def test_pages_hold_what_one_table_holds(table: tuple[list[Column], list[Row]], first: float, others: float) -> None:
    """All rows in order, the titles on each page, and no page of two rows or more is higher than asked."""
    found, rows = table
    pages = ruled_pages(found, rows, 120, (first, others), METRICS)
    assert [text for page in pages for text in cells_of(page)] == cells_of(ruled(found, rows, 120, METRICS))
    for number, page in enumerate(pages):
        rules = sum(isinstance(shape, Curve) and not shape.closed for shape in page.shapes)
        if rules - any(column.title for column in found) > 1:
            assert page.high <= (others if number else first)


def test_the_widest_broken_column_gives_way() -> None:
    """Where room lacks, a broken column has more lines and the others stay on one."""
    rows = [Row(("a long sentence that goes on for some time and has no end yet", "12.50"))]
    found = ruled([Column("what", broken=True), Column("price", right=True)], rows, 60, METRICS)
    lines = [text for text in words_of(found) if text.size == LEAD]
    assert len(lines) > 2
    assert lines[-1].words == "12.50"
    assert all(one.at.y > other.at.y for one, other in pairwise(lines[:-1]))
