"""SVG files in a real browser: as large as they say, every line at its place; and what its printing makes of them."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
import pypdfium2
import pytest
from browser import browser
from kits import font_metrics, plan_of
from pdf_scale import fitted

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.inputs import stock_file

PX = 25.4 / 96  # CSS Values 3, 6.2: one px is 1/96 in
SNAPPED = 1 / 64  # px: a browser keeps lengths to that
NEAR = 0.02  # mm
A4 = (210.0, 297.0)
LINES = (Pen.MARK, Pen.TEN, Pen.UNIT, Pen.END_MARK, Pen.END_MARK_BACK, Pen.TEN_BACK, Pen.EDGE, Pen.REGISTER)
MEASURE = """
const box = e => { const r = e.getBoundingClientRect(); return [r.left, r.top, r.right, r.bottom]; };
const groups = {};
for (const g of document.querySelectorAll("g[id]")) groups[g.id] = [...g.querySelectorAll("path")].map(box);
return {whole: box(document.documentElement), groups};
"""


class Shown(NamedTuple):
    """A file as the browser shows it, in px, and as it prints it on A4."""

    sheet: Sheet
    whole: list[float]
    groups: dict[str, list[list[float]]]
    printed: bytes


@pytest.fixture(scope="module")
def shown(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Shown]:
    """Every SVG file of a kit, all opened by one browser."""
    outputs = Outputs(plan_of(), font_metrics(), stock=stock_file.built_in())
    return dict(_shown(outputs, tmp_path_factory.mktemp("svg")))


def _shown(outputs: Outputs, folder: Path) -> Iterator[tuple[str, Shown]]:
    with browser() as opened:
        for name in outputs.files:
            if name.endswith(".svg"):
                output = outputs.output(name)
                file = folder / name
                file.write_bytes(write(output))
                seen: dict[str, Any] = opened.opened(file, MEASURE)
                yield name, Shown(output.sheets[0], seen["whole"], seen["groups"], opened.printed(*A4))


def test_every_file_is_as_large_as_it_says(shown: dict[str, Shown]) -> None:
    """Width and height in mm, to the 64th of a pixel that browsers keep."""
    assert len(shown) > 8
    for name, (sheet, (left, top, right, bottom), _, _) in shown.items():
        assert (left, top) == (0, 0), name
        assert right == pytest.approx(sheet.width / PX, abs=SNAPPED), name
        assert bottom == pytest.approx(sheet.height / PX, abs=SNAPPED), name


def test_every_mark_lies_at_its_place(shown: dict[str, Shown]) -> None:
    """Marks, units and crosses of strips and guides, to 20 micrometres: a browser draws on whole pixels."""
    count = 0
    for name, (sheet, _, groups, _) in shown.items():
        for pen in LINES:
            drawn = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is pen]
            there = groups.get(pen.value, [])
            if not there:
                continue
            assert len(there) == len(drawn), name
            for box, line in zip(there, drawn, strict=True):
                xs, ys = zip(*line.points(), strict=True)
                nominal = (min(xs), sheet.height - max(ys), max(xs), sheet.height - min(ys))
                assert [px * PX for px in box] == pytest.approx(nominal, abs=NEAR), name
                count += 1
    assert count > 150


def test_printing_them_is_right_to_half_a_pixel(shown: dict[str, Shown]) -> None:
    """Where a sheet fits the paper it is stretched to whole pixels, each way for itself: by up to 0.13 mm a side.

    That is more than 0.01 %, so what is measured is printed from PDF.
    """
    tried, worst = 0, 0.0
    for name, (sheet, _, _, printed) in shown.items():
        if sheet.width > A4[0] or sheet.height > A4[1] or "kerf" in name:
            continue
        page = pypdfium2.PdfDocument(printed)[0]
        curves = [shape for shape in sheet.shapes if isinstance(shape, Curve)]
        drawn = np.array([point for curve in curves for point in curve.points()]) * 72 / 25.4
        top = page.get_height() - sheet.height * 72 / 25.4
        came = fitted(drawn, page, np.array([[1, 0], [0, 1], [0, top]]))
        for scale, side in ((came.x, sheet.width), (came.y, sheet.height)):
            assert abs(scale - 1) * side <= PX / 2, name
            worst = max(worst, abs(scale - 1))
        tried += 1
    assert tried > 3
    assert worst > 1e-4
