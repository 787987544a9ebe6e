"""A sheet that lacks all that one pen draws is judged, whatever is missing: the proof itself never stops."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from kits import FLAT, NAILS, NOTCHED, PEGGED, font_metrics, plan_of

from layout.drawing.sheet import Sheet, pen_of
from templates_gen.document import Document
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import findings
from templates_gen.verify.finding import Findings

KITS = {"round bars": {}, "flat ends": FLAT, "notches": NOTCHED, "pegs": PEGGED, "nails": NAILS}
FILES = ("strips.pdf", "strip-far.svg", "spacing-guide.pdf", "wrap-gauge.pdf", "winding.pdf", "frame-check.pdf")
NEEDED = {
    *("CUT", "MARK", "TEN", "END_MARK", "END_MARK_BACK", "TEN_BACK", "REGISTER", "RULE", "TARGET", "UNIT", "HOLE"),
    *("LIMIT", "SOLID"),
}
"""Pens of what is measured or cut along: a sheet that lacks one of them is never sound."""
READ = {"TEXT", "STRONG", "ON_BLACK"}
"""Pens of words, which only a PDF holds as words."""


def lacking(sheets: tuple[Sheet, ...]) -> Iterator[tuple[str, tuple[Sheet, ...]]]:
    """The sheets without one pen, and its name, for every pen of every sheet."""
    for k, sheet in enumerate(sheets):
        for pen in {pen_of(shape) for shape in sheet.shapes}:
            left = tuple(shape for shape in sheet.shapes if pen_of(shape) is not pen)
            yield pen.name, (*sheets[:k], replace(sheet, shapes=left), *sheets[k + 1 :])


@pytest.mark.parametrize("ends", KITS)
@pytest.mark.parametrize("file", FILES)
def test_a_pen_that_is_missing_is_judged(file: str, ends: str) -> None:
    """Wrong both in the drawing and in the file, so that nothing but the proof can find it."""
    planned = plan_of(KITS[ends])
    output = Outputs(planned, font_metrics()).output(file)
    rung = set()
    for pen, sheets in lacking(tuple(output.sheets)):
        result = findings(planned, replace(output, sheets=sheets), Document(sheets, output.about))
        assert isinstance(result, Findings)
        if result.sound:
            assert pen not in NEEDED
            assert not (file.endswith(".pdf") and pen in READ)
        else:
            rung.add(pen)
    assert rung
