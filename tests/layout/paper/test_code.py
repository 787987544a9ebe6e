from __future__ import annotations

import pytest

from layout.drawing.pens import Pen
from layout.drawing.shapes import Region
from layout.kit.kit import Paper
from layout.kit.paper_size import named_size
from layout.paper.code import code, code_box
from layout.paper.regions import regions

GRID = regions(Paper(named_size("common")))
MODULES = tuple(
    "".join("#.#..##"[(row * row + 5 * column * row + column) % 7] for column in range(18)) for row in range(18)
)


@pytest.mark.parametrize(("mirrored", "left"), [(False, 8.6), (True, 189.9 + 0.6)])
def test_modules_lie_where_they_stand_in_the_value(mirrored: bool, left: float) -> None:
    """Each black module is covered once, each white one never: 0.6 mm wide, 249.3 to 260.1 mm under the upper edge."""
    (area,) = code(MODULES, GRID, mirrored=mirrored)
    assert isinstance(area, Region)
    assert area.pen is Pen.SOLID
    found = [["."] * 18 for _ in range(18)]
    for run in area.contours:
        xs, ys = zip(*run.points(), strict=True)
        row = round((278.694 - max(ys) - 249.3) / 0.6)
        assert max(ys) - min(ys) == pytest.approx(0.6)
        assert 278.694 - max(ys) == pytest.approx(249.3 + 0.6 * row, abs=0.01)
        first, last = (min(xs) - left) / 0.6, (max(xs) - left) / 0.6
        assert (first, last) == pytest.approx((round(first), round(last)), abs=0.01)
        for column in range(round(first), round(last)):
            assert found[row][column] == "."
            found[row][column] = "#"
    assert tuple(map("".join, found)) == MODULES


def test_neighbours_in_a_row_are_one_rectangle() -> None:
    """A full row is drawn as one area, so that no seam shows between its modules."""
    (area,) = code(("#" * 18, "." * 18) * 9, GRID)
    assert isinstance(area, Region)
    assert len(area.contours) == 9


def test_without_modules_nothing_is_drawn() -> None:
    """A sheet without a code leaves its place white."""
    assert code(None, GRID) == []
    assert code_box(GRID) == (8, 18, 20, 30)
    assert code_box(GRID, mirrored=True) == pytest.approx((189.9, 18, 201.9, 30), abs=0.01)
