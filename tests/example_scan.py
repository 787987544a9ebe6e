"""The scan that the pages measure: a sheet of the kit to start from, printed a little too small, with one mark off."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pypdfium2
from kits import font_metrics
from PIL import Image, ImageOps

from layout.drawing.correction import Scale
from layout.drawing.shapes import Curve, Placing, Point
from layout.drawing.sheet import Sheet
from templates_gen.document import About
from templates_gen.files.kept import planned
from templates_gen.files.outputs import kept_outputs
from templates_gen.inputs import kit_file
from templates_gen.measuring.marks import groups_on
from templates_gen.writers import pdf

SHEET, PART, WIND, OFF = 4, "strip-near", 17, 0.06
"""The sheet with both strips; on the near one a wind stands so many mm too far up."""

PRINTED = Scale(0.9985, 0.9979, 0.0004)
DPI, BED = 288, 40
"""Dots per inch: so many that a page of whole points is a whole number of pixels wide and high."""


def write_scan(path: Path) -> None:
    """The scan as PNG."""
    plan = planned(kit_file.demo())
    output = kept_outputs(plan, font_metrics()).output("kit.pdf")
    sheet, pieces = output.sheets[SHEET - 1], output.laid[SHEET - 1]
    (group,) = [group for group in groups_on(pieces, plan) if group.part == PART]
    (wind,) = [mark for mark in group.marks if mark.name.values["number"] == WIND]
    moved = _moved(sheet, wind.lines[0].start, wind.lines[0].end)
    write_printed(pdf.write([moved], About("scan", json.dumps({"file": "scan"}))), path)


def write_printed(data: bytes, path: Path) -> None:
    """The first page of a PDF as it comes out of the printer and is scanned, turned by less than a degree, as PNG."""
    shown = pypdfium2.PdfDocument(data)[0].render(scale=DPI / 72, grayscale=True).to_pil().convert("L")
    bed = ImageOps.expand(shown, BED, 255)
    x, y, skew = PRINTED
    across, slant, up = 1 / x, skew / (x * y), 1 / y  # from a place on the scan to that on the page, y down
    left, high = bed.width / 2, bed.height / 2
    back = (across, slant, left - across * left - slant * high, 0.0, up, high - up * high)
    printed = bed.transform(bed.size, Image.Transform.AFFINE, back, Image.Resampling.BICUBIC, fillcolor=255)
    printed.rotate(0.7, Image.Resampling.BICUBIC, fillcolor=255).save(path, dpi=(DPI, DPI))


def _moved(sheet: Sheet, *ends: Point) -> Sheet:
    """The same with the line between those points further up."""
    up = Placing(0, 0, OFF)
    shapes = [
        up.shapes([shape])[0] if isinstance(shape, Curve) and {*shape.points()} == {*ends} else shape
        for shape in sheet.shapes
    ]
    assert shapes != list(sheet.shapes)
    return replace(sheet, shapes=tuple(shapes))
