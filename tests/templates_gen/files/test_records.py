from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from kits import font_metrics, plan_of

import templates_gen.files.cut_drawings as cut_drawings_module
import templates_gen.files.drawings as drawings_module
from layout.cutting.products import CUT_PRODUCTS
from layout.products import PRODUCTS
from templates_gen.files.manifest import product_of
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import stock_file

CASES = {
    "strip-near.pdf": ("strip-near", 1),
    "strip-far.svg": ("strip-far", 1),
    "spacing-guide": ("spacing-guide", 2),
    "comb.dxf": ("comb", 1),
    "shed-stick": ("shed-stick", 3),
}
"""What is asked for: the one product that it needs, and how many files there are."""


def _only(name: str, table: dict[str, Any]) -> dict[str, Any]:
    """The table, with products of every other name that fail when they are built."""

    def fails(other: str) -> Callable[..., Any]:
        return lambda *_: pytest.fail(f"{other} is built")

    return {key: product if key == name else product._replace(builds=fails(key)) for key, product in table.items()}


@pytest.mark.parametrize("asked", CASES)
def test_one_sheet_draws_that_sheet_only(asked: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """No part of another product is built for its name, its notes or its sheets."""
    name, count = CASES[asked]
    monkeypatch.setattr(drawings_module, "PRODUCTS", _only(name, dict(PRODUCTS)))
    monkeypatch.setattr(cut_drawings_module, "CUT_PRODUCTS", _only(name, dict(CUT_PRODUCTS)))
    outputs = Outputs(plan_of(), font_metrics(), (asked,), stock_file.built_in())
    assert len(outputs.files) == count
    assert all(outputs.output(file).sheets for file in outputs.files)
    assert isinstance(outputs.notes, tuple)


def test_every_record_says_the_product_and_form_of_its_name() -> None:
    """The table and the reading of a file's name agree, so that `check` draws no more than that file."""
    outputs = Outputs(plan_of(), font_metrics(), None, stock_file.built_in())
    for name, record in outputs.records.items():
        assert (record.name, record.product, record.form) == (name, product_of(name), name.rpartition(".")[2])
        if record.product != "board":
            again = Outputs(outputs.plan, font_metrics(), (f"{record.product}.{record.form}",), stock_file.built_in())
            assert again.files == (name,)
