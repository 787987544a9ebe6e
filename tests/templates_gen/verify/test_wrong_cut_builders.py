"""Wrong builders of what is cut, each found by the proof alone in a file for cutters, where words are outlines."""

from __future__ import annotations

import pytest
from cut_plans import file_of
from cut_plates import ABOUT
from kits import plan_of
from wrong_builders import Patch, Wrong
from wrong_cut import CUT, STOCK

from layout.drawing.sheet import Sheet
from templates_gen.files.formats import FORMATS
from templates_gen.verify.compare import compare
from templates_gen.verify.cut_parts.prove_cut import CUT_PROOFS, prove_cut

_LEAST = 14


def alarm(wrong: Wrong) -> tuple[Sheet, tuple[str, ...]]:
    """The sheet as the layout draws it now, and what the proof says against it once it was written and read."""
    name, _, form = wrong.file.partition(".")
    planned = plan_of(dict(wrong.kit))
    sheet, laid = file_of(name, planned, STOCK)
    found = FORMATS[form].read(FORMATS[form].write([sheet], ABOUT)).sheets
    assert compare([sheet], found).sound
    result = prove_cut(planned, STOCK, found[0], laid)
    assert bool(result.problems) == (not result.sound), "a deviation must be said"
    return sheet, result.sentences


@pytest.mark.parametrize("name", CUT)
def test_the_proof_alone_finds_a_wrong_builder(name: str, monkeypatch: Patch) -> None:
    """Right, the file passes; wrong, it is another drawing, and kit and stock speak against it."""
    honest, nothing = alarm(CUT[name])
    assert nothing == ()
    CUT[name].spoil(monkeypatch)
    spoilt, problems = alarm(CUT[name])
    assert spoilt != honest
    assert problems


def test_every_product_has_a_wrong_builder() -> None:
    """No kind of cut part is left out, and both formats for cutters are in the table."""
    assert len(CUT) >= _LEAST
    files = {wrong.file for wrong in CUT.values()}
    assert {file.partition(".")[2] for file in files} == {"svg", "dxf"}
    products = {file.partition(".")[0] for file in files}
    proven = [name for name in CUT_PROOFS if not name.startswith(("job-", "reference"))]
    assert {name for name in proven if not any(name.startswith(each.removesuffix("s")) for each in products)} == set()
