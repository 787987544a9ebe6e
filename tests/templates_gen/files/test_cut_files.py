"""Every product that is cut, in every format: written, read back, compared and proven."""

from __future__ import annotations

import pytest
from cut_plans import file_of, stock_with
from kits import NOTCHED, PEGGED, plan_of

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from templates_gen.document import About
from templates_gen.files.formats import FORMATS
from templates_gen.verify.compare import compare
from templates_gen.verify.cut_parts.prove_cut import prove_cut

KINDS: dict[str, dict[str, object]] = {"end-bars": NOTCHED, "peg-jig": PEGGED}


@pytest.mark.parametrize("name", CUT_PRODUCTS)
def test_every_form_of_a_product_comes_back_right(name: str) -> None:
    """For a cutter and for the eye: within a micrometre of what was drawn, and of what kit and stock ask for."""
    planned, stock = plan_of(KINDS.get(name, {})), stock_with(grain="x", kerf_x=0.22, kerf_y=0.18)
    assert name in cut_suiting(planned)
    sheet, laid = file_of(name, planned, stock)
    for form in CUT_PRODUCTS[name].forms:
        about = About("cut", "{}", None if form == "pdf" else stock.operations)
        back = FORMATS[form].read(FORMATS[form].write([sheet], about))
        assert compare([sheet], back.sheets).sound
        assert prove_cut(planned, stock, back.sheets[0], laid).sound
