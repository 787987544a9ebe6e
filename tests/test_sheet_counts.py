"""How many sheets a kit takes: kit.pdf, with the sheet that says where to begin and without the grid."""

from __future__ import annotations

from collections import Counter

import pytest
from kits import KINDS, font_metrics, plan_of

from layout.plan import Plan, plan
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file

SMALL: dict[str, object] = {"weaving.width": "8 cm", "frame.outer_width": "20 cm"}
LARGE: dict[str, object] = {"weaving.width": "1.2 m", "frame.outer_width": "1.3 m"}
PAPERS = ("common", "a4", "letter", "a3", "11x17")
DEMO = plan(kit_file.demo())


def sheets(planned: Plan) -> Counter[str]:
    """The sheets of kit.pdf by the part that each is called after."""
    output = Outputs(planned, font_metrics(), ["kit"]).output("kit.pdf")
    return Counter(sheet.name.split()[0] for sheet in output.sheets)


def test_the_demo_takes_six() -> None:
    """One sheet for each step: where to begin, the check, the gauge, both strips, winding, both guides."""
    found = sheets(DEMO)
    assert found.total() == 6
    assert set(found.values()) == {1}
    assert list(found) == ["start-here", "frame-check", "wrap-gauge", "strips", "winding", "spacing-guide"]


@pytest.mark.parametrize("size", PAPERS)
def test_a_small_kit_takes_six(size: str) -> None:
    """8 cm wide, on every paper."""
    assert sheets(plan_of(SMALL | {"paper.size": size})).total() <= 6


@pytest.mark.parametrize("size", PAPERS)
def test_who_does_not_print_has_one_less(size: str) -> None:
    """A box holds no sheet that says how to print."""
    for changes in ({}, SMALL):
        download = sheets(plan_of(changes | {"paper.size": size}))
        box = sheets(plan_of(changes | {"paper.size": size, "paper.for": "box"}))
        assert box == download - Counter({"start-here": 1})


@pytest.mark.parametrize("kind", KINDS)
def test_what_belongs_to_one_step_shares_a_sheet(kind: str) -> None:
    """Of every kind both guides stand on one sheet, and each other product takes no more than one for each part."""
    found = sheets(plan_of(KINDS[kind]))
    assert found["spacing-guide"] == 1
    assert found.total() <= 7


@pytest.mark.parametrize("size", PAPERS)
def test_a_large_kit_takes_ten(size: str) -> None:
    """1.2 m wide, strips and guides in pieces: ten sheets on small paper, eight on the largest named ones."""
    found = sheets(plan_of(LARGE | {"paper.size": size}))
    pieces = 2 if size in ("a3", "11x17") else 3
    assert (found["strips"], found["spacing-guide"]) == (pieces, pieces)
    assert found.total() == 4 + 2 * pieces


def test_the_grid_is_a_file_of_its_own() -> None:
    """It stands in no other file, and the first sheet names its file."""
    assert "weaving-grid" not in sheets(DEMO)
    assert "weaving-grid.pdf" in Outputs(DEMO, font_metrics()).files
