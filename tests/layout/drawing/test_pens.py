from __future__ import annotations

from itertools import combinations

from layout.cutting.stock.stock import OPERATIONS
from layout.drawing.pens import PAINTING_ORDER, Pen


def test_no_two_lines_look_alike() -> None:
    """From width, dash and grey alone a reader tells which pen drew a line, and which filled an area."""
    lines = [pen for pen in Pen if not pen.ink.fills]
    assert len(lines) == 30
    assert all(one.ink != other.ink for one, other in combinations(lines, 2))
    areas = [pen for pen in Pen if pen.ink.fills and not pen.ink.words]
    assert len({pen.ink.grey for pen in areas}) == len(areas) == 8
    assert {pen.ink.operation for pen in areas if pen.ink.operation} == set(OPERATIONS) - {"reference"}


def test_nothing_is_too_thin_to_print() -> None:
    """No line is thinner than 0.17 mm, which home printers would lose, but for the many of a grid."""
    assert min(pen.ink.width for pen in Pen if not pen.ink.fills and pen is not Pen.GRID) >= 0.17
    assert Pen.GRID.ink.width == 0.1


def test_every_line_is_black() -> None:
    """Grey fills an area that means something, and never draws a line; nothing depends on a colour."""
    assert {pen.ink.grey for pen in Pen if not pen.ink.fills} == {0.0}
    assert all(0 <= pen.ink.grey <= 1 for pen in Pen)


def test_what_is_measured_is_drawn_through() -> None:
    """Marks, units, limits, scales, crosses and cut lines are not dashed."""
    for pen in (Pen.MARK, Pen.TEN, Pen.END_MARK, Pen.UNIT, Pen.LIMIT, Pen.EDGE, Pen.RULE, Pen.REGISTER, Pen.CUT):
        assert pen.ink.dash == ()


def test_each_dash_has_a_meaning_of_its_own() -> None:
    """Fold, behind and centre are dashed, each in its own way; what is shorter has a shorter dash of its kind."""
    kinds = (Pen.FOLD, Pen.THREAD_BACK, Pen.CENTRE, Pen.CENTRE_SHORT, Pen.END_MARK_BACK, Pen.TEN_BACK, Pen.REFERENCE)
    dashes = {pen.ink.dash for pen in kinds}
    assert len(dashes) == len(kinds)
    assert dashes == {pen.ink.dash for pen in Pen} - {()}
    assert all(len(dash) % 2 == 0 and min(dash) > 0 for dash in dashes)


def test_words_are_painted_last() -> None:
    """The order of painting names every pen once, tints first and words last."""
    assert sorted(PAINTING_ORDER.values()) == list(range(len(Pen)))
    assert PAINTING_ORDER[Pen.TINT] == 0
    words = [pen for pen in Pen if pen.ink.words]
    assert sorted(PAINTING_ORDER[pen] for pen in words) == list(range(len(Pen) - len(words), len(Pen)))
