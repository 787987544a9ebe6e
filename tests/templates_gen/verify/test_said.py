"""Words that were read, each accounted for."""

from __future__ import annotations

import pytest

from layout.drawing.shapes import Point
from templates_gen.verify.said import account

LINES = ("Nur für neues", "Garn: die", "Fadendichte", "prüfen.")


def standing(x: float, lines: tuple[str, ...], top: float = 0.0) -> list[tuple[Point, str]]:
    """Lines one under the other, which begin where a float may say that they begin."""
    return [(Point(x + (k % 2) * 4e-15, top - 4.0 * k), line) for k, line in enumerate(lines)]


@pytest.mark.parametrize("x", [21.85, 40.05, -0.05, 0.05, 1e2 + 0.05])
def test_lines_of_two_columns_are_each_taken_together(x: float) -> None:
    """Wherever a column begins: the rounding of floats parts none."""
    other = ("Den Stab", "einweben", "unter jedem", "Kettfaden")
    found = [*standing(x, LINES), *standing(x + 45, other, 0.5)]
    accounted = account(found, [" ".join(LINES), " ".join(other)])
    assert accounted.wrong == []
    assert set(accounted.places) == {" ".join(LINES), " ".join(other)}


def test_a_line_too_many_or_too_few_is_found() -> None:
    """Of one column as of two."""
    assert account(standing(5, LINES[:-1]), [" ".join(LINES)]).wrong
    assert account(standing(5, (*LINES, "sofort.")), [" ".join(LINES)]).wrong


def test_a_line_of_a_longer_message_is_not_taken_for_one_of_its_own() -> None:
    """A single word stands twice: as a line of a sentence, and alone in another column."""
    found = [*standing(5, LINES), (Point(60, -90), LINES[2])]
    accounted = account(found, [LINES[2], " ".join(LINES)])
    assert accounted.wrong == []
    assert accounted.places[LINES[2]] == [Point(60, -90)]
    assert account(found[:-1], [LINES[2], " ".join(LINES)]).wrong
