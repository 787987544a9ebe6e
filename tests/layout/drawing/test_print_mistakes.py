"""Known mistakes of printing are named by what they make of a millimetre; what is no mistake has no name."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from layout.drawing.correction import Scale
from layout.drawing.print_mistakes import MISTAKES, likely_mistakes
from layout.drawing.printer import LIKELY_SETTING
from layout.messages.roles import PrintMistake

_SURE = Scale(0.0013, 0.001, 0.001)  # 0.25 mm over 190 and 250 mm


def named(x: float, y: float | None = None, within: Scale = _SURE) -> list[PrintMistake]:
    """What is named for such a print."""
    return [each.what for each in likely_mistakes(Scale(x, x if y is None else y, 0), within)]


@pytest.mark.parametrize(
    ("came_out", "of", "what"),
    [
        (279.4, 297.0, PrintMistake.A4_ON_LETTER),  # ANSI/ASME Y14.1 and ISO 216, the height counts
        (210.0, 215.9, PrintMistake.LETTER_ON_A4),  # the same two, the width counts
        (171.0, 200.0, PrintMistake.A4_QUEUED_LETTER),  # measured through cups-filters
        (182.7, 200.0, PrintMistake.LETTER_QUEUED_A4),
        (90.4, 100.0, PrintMistake.BROWSER_WIDE),
        (210.0, 297.0, PrintMistake.TWO_ON_ONE),  # ISO 216: A4 beside A3
        (297.0, 210.0, PrintMistake.TO_LARGER),
        (72.0, 96.0, PrintMistake.PIXELS),  # CSS counts 96 to the inch, PDF 72 (ISO 32000)
        (96.0, 72.0, PrintMistake.PIXELS),
        (25.4, 1.0, PrintMistake.UNIT),
        (1.0, 10.0, PrintMistake.UNIT),
    ],
)
def test_a_mistake_is_named(came_out: float, of: float, what: PrintMistake) -> None:
    """The nearest first: lengths of paper and units as they are published, or as they were measured."""
    assert named(came_out / of)[0] is what


def test_fitted_to_the_printable_area_is_a_range() -> None:
    """Margins of printers differ: 8.5 to 9 % were measured, and a page that is to keep 3 to 5 mm free loses less."""
    assert all(PrintMistake.FITTED in named(ratio) for ratio in (0.91, 0.913, 0.915, 0.96, 0.972))


@given(st.floats(-LIKELY_SETTING, LIKELY_SETTING), st.floats(-LIKELY_SETTING, LIKELY_SETTING))
def test_no_printer_within_one_per_cent_is_named(x: float, y: float) -> None:
    """What a printer or the damp does is no wrong setting."""
    assert named(1 + x, 1 + y) == []


@pytest.mark.parametrize("each", MISTAKES)
def test_each_is_found_at_its_figure(each: object) -> None:
    """And nowhere if the other axis came out another length: settings scale both alike."""
    what, least, most = each  # type: ignore[misc]
    for ratio in (least, (least + most) / 2, most):
        assert what in named(ratio)
        assert named(ratio, ratio * 1.02) == []
        assert named(ratio * 1.02, ratio) == []


def test_a_rough_measurement_names_no_more_than_it_can() -> None:
    """However unsure the reading, a mistake a per cent off is not named."""
    assert PrintMistake.TWO_ON_ONE not in named(0.73, within=Scale(0.2, 0.2, 0.2))
