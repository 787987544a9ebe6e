from __future__ import annotations

import pytest

from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, PaperSize, named_size
from layout.paper.regions import BODY, regions

POINT = 72 / 25.4


def own(width: float, height: float) -> Paper:
    """A sheet of its own size, in mm."""
    return Paper(PaperSize("own", round(width * POINT), round(height * POINT)))


def test_the_common_sheet_has_its_grid() -> None:
    """Gutters of 12, a field from 22 to 188 and from 18 above to 18 below, a column of text as far as 119 mm."""
    grid = regions(Paper(named_size("common")))
    assert grid.field == pytest.approx((22, 18, 188, 278.7 - 18), abs=0.01)
    assert grid.head == pytest.approx((8, 278.7 - 30, 188, 278.7 - 18), abs=0.01)
    assert grid.column == pytest.approx((22, 278.7 - 248.2, 119, 278.7 - 40), abs=0.01)
    assert (grid.left, grid.right, grid.body_top) == pytest.approx((22, 188, 278.7 - BODY), abs=0.01)


@pytest.mark.parametrize("name", PAPERS)
def test_every_named_sheet_is_roomy(name: str) -> None:
    """The fixed places hold on all of them, and gutters and head keep their size."""
    paper = Paper(named_size(name))
    grid = regions(paper)
    assert grid.roomy
    assert grid.left == 22
    assert paper.width - grid.right == pytest.approx(21.9)
    assert grid.head[3] - grid.head[1] == pytest.approx(12)


@pytest.mark.parametrize("sides", [(148, 210), (210, 148), (180, 300)])
def test_a_small_sheet_is_not(sides: tuple[float, float]) -> None:
    """A narrow or a low one keeps no fixed places, and its column stays inside the field."""
    grid = regions(own(*sides))
    assert not grid.roomy
    assert grid.column[2] <= grid.right
