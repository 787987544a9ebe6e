"""Whatever the two kerfs of a stock, none among them: what is cut is written, read back and proven, or refused."""

from __future__ import annotations

from functools import cache

import pytest
import shapely
from beams import area_of, left_over
from cut_plans import stock_with
from hypothesis import given, settings
from hypothesis import strategies as st
from kits import KINDS, font_metrics, kit_of

from layout.cutting.parts.outline import boxed, outline
from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.kerf import Kerf, drawn
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, circle
from layout.plan import Plan, plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings, read, write
from templates_gen.writers.cutting.overlaps import overlap

KERFS = st.one_of(st.just(0.0), st.floats(0.001, 0.35))
FINEST = 1e-4  # mm: a spot that is simulated has some width


@cache
def planned(kind: str) -> Plan:
    """The plan of a kit of that kind of frame."""
    return plan(kit_of(KINDS[kind] | {"weaving.height": "28 cm"}))


@cache
def printed(kind: str) -> frozenset[str]:
    """The files of the same kit without a stock."""
    return frozenset(Outputs(planned(kind), font_metrics()).files)


@pytest.mark.parametrize(
    ("kind", "kerf_x", "kerf_y"),
    [("round bars, odd", 0.3325, 0.3333), ("notched ends", 0.2, 0.0), ("pegged ends", 0.01, 0.3),
     *(pytest.param(*case, marks=pytest.mark.slow)
       for case in (("round bars, odd", 0.0, 0.2), ("pegged ends", 0.0, 0.2), ("round bars, odd", 0.0, 0.0)))],
)  # fmt: skip
def test_no_cut_file_of_a_flat_kerf_is_refused(kind: str, kerf_x: float, kerf_y: float) -> None:
    """Every part, its drawing, the boards and the job sheet of a stock with no kerf one way or both."""
    assert lacking_or_wrong(kind, kerf_x, kerf_y) == []


@pytest.mark.slow
@settings(max_examples=9, deadline=None)
@given(st.sampled_from(["round bars, odd", "notched ends", "pegged ends"]), KERFS, KERFS)
def test_no_cut_file_of_any_kerf_is_refused(kind: str, kerf_x: float, kerf_y: float) -> None:
    """The same for kerfs that nobody chose, of any ratio."""
    assert lacking_or_wrong(kind, kerf_x, kerf_y) == []


def lacking_or_wrong(kind: str, kerf_x: float, kerf_y: float) -> list[str]:
    """Products that are not made, and what the proofs say of those that are."""
    stock = stock_with(kerf_x=kerf_x, kerf_y=kerf_y, width=800.0, height=600.0)
    outputs = Outputs(planned(kind), font_metrics(), stock=stock)
    found = sorted(set(CUT_PRODUCTS) & set(cut_suiting(planned(kind))) & set(outputs.without))
    files = [file for file in outputs.files if file not in printed(kind)]
    assert {file.partition("-")[0] for file in files} > {"board", "job.pdf", "trial", "wrap"}
    for output in map(outputs.output, files):
        said = findings(planned(kind), output, read(output, write(output))).problems
        found += [f"{output.file}: {each}" for each in said]
    return found


@settings(max_examples=60, deadline=None)
@given(st.floats(0.4, 6), st.floats(0.0, 0.9), st.floats(0.0, 0.3), st.booleans())
def test_a_flat_spot_leaves_what_was_wanted(size: float, share: float, ratio: float, upright: bool) -> None:
    """Widths along x and y are right, and rounds are off by at most 0.16 of a kerf less than a radius."""
    wide = share * size + 0.01
    kerf_x, kerf_y = (wide * ratio, wide) if upright else (wide, wide * ratio)
    board, hole = outline(boxed(0, 0, 40, 20, size)), circle(Point(20, 10), size, Pen.THROUGH)
    cuts = drawn(board, (hole,), Kerf(kerf_x, kerf_y))
    assert overlap(cuts) is None
    made = left_over(cuts, max(kerf_x, FINEST), max(kerf_y, FINEST))
    wanted = area_of(board, [hole])
    assert made.bounds == pytest.approx(wanted.bounds, abs=2e-3)
    assert made.interiors[0].bounds == pytest.approx(wanted.interiors[0].bounds, abs=2e-3)
    assert shapely.hausdorff_distance(made.boundary, wanted.boundary) <= 0.16 * wide + 5e-3
