from __future__ import annotations

from itertools import combinations

from layout.drawing.pens import PAINTING_ORDER, Pen

ISO_128 = (0.18, 0.25, 0.35, 0.5, 0.7)  # the line widths of the ISO 128 series, in mm


def test_widths_come_from_the_series() -> None:
    """Every line is as wide as one of the ISO 128 series, but for the check bars, which lie between two of them."""
    for pen in Pen:
        if not pen.ink.fills and pen is not Pen.RULE:
            assert pen.ink.width in ISO_128
    assert Pen.RULE.ink.width not in ISO_128
    assert 0.25 < Pen.RULE.ink.width < 0.35


def test_no_two_lines_look_alike() -> None:
    """From width, dash and grey alone a reader tells which pen drew a line."""
    lines = [pen for pen in Pen if not pen.ink.fills]
    assert len(lines) == 15
    assert all(one.ink != other.ink for one, other in combinations(lines, 2))


def test_nothing_is_too_thin_to_print() -> None:
    """No line is thinner than 0.18 mm, which home printers would lose."""
    assert min(pen.ink.width for pen in Pen if not pen.ink.fills) >= 0.18


def test_what_is_measured_is_black_and_drawn_through() -> None:
    """Marks, units, limits, bars and crosses are black; marks are not dashed. Nothing depends on a colour."""
    for pen in (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.EDGE, Pen.RULE, Pen.REGISTER):
        assert (pen.ink.grey, pen.ink.dash) == (0.0, ())
    assert all(0 <= pen.ink.grey < 1 for pen in Pen if pen is not Pen.ON_BLACK)


def test_lines_that_are_cut_or_folded_are_dashed() -> None:
    """Cut, fold and centre are dashed, each in its own way."""
    dashes = {pen.ink.dash for pen in (Pen.CUT, Pen.FOLD, Pen.CENTRE)}
    assert len(dashes) == 3
    assert all(len(dash) % 2 == 0 and min(dash) > 0 for dash in dashes)


def test_words_are_painted_last() -> None:
    """The order of painting names every pen once, tints first and words last."""
    assert sorted(PAINTING_ORDER.values()) == list(range(len(Pen)))
    assert PAINTING_ORDER[Pen.TINT] == 0
    words = [pen for pen in Pen if pen.ink.words]
    assert sorted(PAINTING_ORDER[pen] for pen in words) == list(range(len(Pen) - len(words), len(Pen)))
