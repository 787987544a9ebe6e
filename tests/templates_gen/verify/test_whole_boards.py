from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from types import MappingProxyType

import pytest
from kits import NOTCHED, plan_of

from layout.cutting.products import CUT_PRODUCTS
from layout.values.units import read_length
from templates_gen.inputs.stock_file import built_in
from templates_gen.verify.whole_boards import boards_lacking, copies, is_of_boards

Made = dict[str, list[str]]
FIRST, SECOND = "board-1of2-600x400mm-kerf-0.20.svg", "board-2of2-600x400mm-kerf-0.20.svg"


def made() -> Made:
    """Two boards with a comb and a stick, and the files of their parts."""
    return {
        "comb-250x30mm-kerf-0.20.svg": ["comb", "reference-square"],
        "shed-stick-480x30mm-kerf-0.20.svg": ["shed-stick", "reference-square"],
        "trial-cut-154x56mm-kerf-0.20.svg": ["trial-cut", "reference-square"],
        FIRST: ["comb", "reference-square"],
        SECOND: ["shed-stick", "reference-square"],
        "job.pdf": ["job-board"],
    }


def said(files: Mapping[str, list[str]], needed: Mapping[str, int] = MappingProxyType({})) -> str:
    """What is wrong with the boards among these files."""
    return "; ".join(
        map(str, boards_lacking(files, [file for file in files if not is_of_boards(file)], ("svg",), needed))
    )


@pytest.mark.parametrize(
    ("thickness", "sheet", "layers"),
    [("10 mm", "3 mm", 4), ("9 mm", "3 mm", 3), ("9.01 mm", "3 mm", 4), ("6 mm", "0.1 mm", 60),
     ("1/2 in", "1/8 in", 4), ("3 mm", "10 mm", 1), ("2 mm", "2/3 mm", 3)],
)  # fmt: skip
def test_bars_are_as_many_as_their_layers(thickness: str, sheet: str, layers: int) -> None:
    """So many sheets, glued, reach the thickness of the frame end, and one less does not, for both sides."""
    planned = plan_of(NOTCHED | {"frame.thickness": thickness})
    stock = replace(built_in(), thickness=float(read_length(sheet).mm))
    assert copies(planned.kit, stock) == {"end-bar-near": layers, "end-bar-far": layers}
    assert CUT_PRODUCTS["end-bars"].copies(planned, stock) == layers


def test_copies_that_are_needed_must_lie_there() -> None:
    """A bar of three layers lies on the boards three times, and nothing else lies there more than once."""
    files = made()
    files[SECOND] += ["comb", "comb"]
    assert said(files, {"comb": 3}) == ""
    assert "comb lies on the boards 3 times as svg where 4 was wanted" in said(files, {"comb": 4})
    assert copies(plan_of().kit, built_in()) == {}


def test_whole_boards_lack_nothing() -> None:
    """Every part lies on one board; the trial cut on none; without parts there are no boards."""
    assert said(made()) == ""
    assert said({}) == ""


SPOILT: dict[str, tuple[Callable[[Made], object], str]] = {
    "a board missing": (lambda files: files.pop(SECOND), "shed-stick lies on the boards 0 times as svg where 1"),
    "all boards missing": (lambda files: [files.pop(FIRST), files.pop(SECOND)], "comb lies on the boards 0 times"),
    "a part twice": (lambda files: files[SECOND].append("comb"), "comb lies on the boards 2 times as svg where 1"),
    "a part of no file": (lambda files: files[FIRST].append("rail"), "rail lies on the boards 1 times as svg where 0"),
    "the trial cut": (lambda files: files[FIRST].append("trial-cut"), "trial-cut lies on the boards 1 times"),
    "no square": (lambda files: files[FIRST].remove("reference-square"), "1 reference squares on 2 boards"),
    "another number": (
        lambda files: files.update({FIRST.replace("1of2", "3of2"): files.pop(FIRST)}),
        "not numbered from 1 to 2",
    ),
    "another count": (
        lambda files: files.update({FIRST.replace("1of2", "1of3"): files.pop(FIRST)}),
        "not numbered from 1 to 2",
    ),
}


@pytest.mark.parametrize("name", SPOILT)
def test_what_is_missing_or_too_many_rings(name: str) -> None:
    """Each is said in a sentence."""
    files = made()
    SPOILT[name][0](files)
    assert SPOILT[name][1] in said(files)


def test_boards_are_known_by_their_names() -> None:
    """A board of any kerf, and the job sheet; nothing else."""
    assert all(map(is_of_boards, (FIRST, "board-1of1-500x60.5mm-no-kerf.dxf", "job.pdf")))
    assert not any(map(is_of_boards, ("board.svg", "comb-250x30mm-kerf-0.20.svg", "kit.pdf")))
