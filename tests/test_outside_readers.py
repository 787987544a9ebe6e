"""A second opinion on every kind of sheet: pdfium reads the PDF's own objects, resvg rasterises the SVG.

Both are programs from outside the project that share no code with our readers.
"""

from __future__ import annotations

import ctypes
import math
from typing import Any

import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from plain_kits import FLAT, NOTCHED, PEGGED, ROUND, changed
from rasters import inked, svg_pixels

from layout.drawing.correction import Scale
from layout.drawing.pens import Pen
from layout.drawing.printer import Printer
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import read_kit
from layout.plan import Plan, plan
from templates_gen.files.for_printer import with_printer
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.lettering.fonts import metrics

PT = 25.4 / 72  # ISO 32000: one unit of a PDF page is 1/72 in
FLOAT32 = 0.0003  # pdfium keeps coordinates as 32-bit floats: below 0.3 micrometres on these sheets, in mm

SHEETS: dict[str, dict[str, Any]] = {
    "straight": changed(ROUND, weaving__width="15 cm"),
    "standing": changed(ROUND, weaving__width="20 cm"),
    "diagonal": changed(ROUND, weaving__width="12 in"),
    "diagonal a4": changed(ROUND, weaving__width="12 in", paper__size="a4", frame__bar_diameter="12 mm"),
    "tiles": changed(ROUND, frame__outer_width="90 cm", paper__size="letter"),
    "flat": changed(FLAT, weaving__width="18 cm", weaving__start="right", weaving__slant="face straight"),
    "notched": changed(NOTCHED, weaving__width="15 cm"),
    "held": changed(NOTCHED, weaving__width="15 cm", frame__notch_density="5 per cm", weaving__near_end="top"),
    "pegged": changed(PEGGED, weaving__width="15 cm"),
    "pegged tiles": changed(PEGGED, frame__outer_width="90 cm", paper__size="letter", frame__peg_diameter="4 mm"),
    "large": changed(FLAT, paper__size="594 x 841 mm"),
    "grid": changed(ROUND, weft__beads={"number": 23, "over": "5 cm"}, paper__size="letter"),
}
FILES = [(kind, "kit.pdf") for kind in SHEETS] + [("grid", "weaving-grid.pdf")]


def planned(name: str) -> Plan:
    """The plan of one of the kits above."""
    return plan(read_kit(SHEETS[name], metrics()))


def stroked(page: Any) -> list[Point]:
    """Every corner of every stroked path of a page, in mm, as pdfium reads them; of a curve where it ends."""
    points = []
    for thing in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
        fill, stroke = ctypes.c_int(), ctypes.c_int()
        pdfium.FPDFPath_GetDrawMode(thing.raw, fill, stroke)
        assert tuple(thing.get_matrix().get()) == (1, 0, 0, 1, 0, 0)
        curved = 0  # how many points of a curve were met: the third of each is where it ends
        for k in range(pdfium.FPDFPath_CountSegments(thing.raw) if stroke.value else 0):
            x, y = ctypes.c_float(), ctypes.c_float()
            segment = pdfium.FPDFPath_GetPathSegment(thing.raw, k)
            pdfium.FPDFPathSegment_GetPoint(segment, x, y)
            curved += pdfium.FPDFPathSegment_GetType(segment) == pdfium.FPDF_SEGMENT_BEZIERTO
            if curved % 3 == 0:
                points.append(Point(x.value * PT, y.value * PT))
    return points


def corners(sheet: Sheet) -> list[Point]:
    """The same points as the sheet says they should be; pdfium ends a closed path with its first point, once."""
    paths = [shape for shape in sheet.shapes if isinstance(shape, Curve)]
    back = [path.closed and math.dist(path.points()[-1], path.start) > 1e-9 for path in paths]
    return [
        p for path, more in zip(paths, back, strict=True) for p in (*path.points(), *([path.start] if more else []))
    ]


@pytest.mark.parametrize(("kind", "file"), FILES)
def test_pdfium_finds_every_line_where_it_should_be(kind: str, file: str) -> None:
    """Page sizes, and every corner of every line of every sheet, agree with what pdfium reads from the file."""
    outputs = Outputs(planned(kind), metrics())
    wanted = outputs.output(file)
    document = pypdfium2.PdfDocument(write(wanted))
    assert len(document) == len(wanted.sheets)
    for page, sheet in zip(document, wanted.sheets, strict=True):
        assert page.get_size() == pytest.approx((sheet.width / PT, sheet.height / PT), abs=1e-4)
        found, asked = stroked(page), corners(sheet)
        assert len(found) == len(asked) > 30
        off = max(max(abs(a.x - b.x), abs(a.y - b.y)) for a, b in zip(found, asked, strict=True))
        assert off < FLOAT32
    document.close()


@pytest.mark.parametrize(("kind", "file"), [*((kind, "strip-near.pdf") for kind in SHEETS), FILES[-1]])
def test_pdfium_finds_every_word_where_it_should_be(kind: str, file: str) -> None:
    """Words, in order, and where each begins, agree with what pdfium reads from the file."""
    wanted = Outputs(planned(kind), metrics()).output(file)
    document = pypdfium2.PdfDocument(write(wanted))
    for page, sheet in zip(document, wanted.sheets, strict=True):
        texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
        words = page.get_textpage()
        found = page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_TEXT], textpage=words)
        lines: list[tuple[str, Point]] = []
        for thing in found:
            matrix = thing.get_matrix()
            at = Point(matrix.e * PT, matrix.f * PT)
            lines.append((thing.extract(), at))
        assert "".join(text for text, _ in lines).replace(" ", "") == "".join(t.words for t in texts).replace(" ", "")
        starts = {(round(at.x, 3), round(at.y, 3)) for _, at in lines}
        for text in texts:
            assert any(abs(text.at.x - x) < 0.002 and abs(text.at.y - y) < 0.002 for x, y in starts), text.words
    document.close()


@pytest.mark.parametrize("kind", ["straight", "tiles", "flat"])
@pytest.mark.parametrize("file", ["strip-near.svg", "strip-far.svg"])
def test_resvg_shows_every_mark_where_it_should_be(kind: str, file: str) -> None:
    """Rasterised at ten pixels to the millimetre, each winding mark's ink lies within a pixel of its place."""
    wanted = Outputs(planned(kind), metrics()).output(file)
    (sheet,) = wanted.sheets
    pixels = svg_pixels(write(wanted))
    assert pixels.shape == pytest.approx((sheet.height * 10, sheet.width * 10), abs=1)
    marks = [s for s in sheet.shapes if isinstance(s, Curve) and s.pen in (Pen.MARK, Pen.TEN)]
    assert len(marks) > 20
    for mark in marks:
        start, end = sorted(mark.points(), key=lambda point: point.y)
        middle = (start.y + end.y) / 2 + 0.3  # off the outermost line, which crosses the marks
        x, _ = inked(pixels, start.x - 0.4, start.x + 0.4, middle, middle + 0.4)
        assert x == pytest.approx(start.x, abs=0.1)


def test_resvg_shows_every_line_of_the_grid_where_it_should_be() -> None:
    """Rasterised at ten pixels to the millimetre, each column line's ink lies within a pixel of its place."""
    wanted = Outputs(planned("grid"), metrics()).output("weaving-grid.svg")
    (sheet,) = wanted.sheets
    pixels = svg_pixels(write(wanted))
    assert pixels.shape == pytest.approx((sheet.height * 10, sheet.width * 10), abs=1)
    lines = [s for s in sheet.shapes if isinstance(s, Curve) and s.pen in (Pen.GRID, Pen.GRID_TEN)]
    columns = [line.start for line in lines if line.start.x == line.steps[0].end.x]
    assert len(columns) > 40
    for at in columns:
        low = at.y + 0.6  # between the bold limit and the first row's line, on white paper or on a tint
        x, _ = inked(pixels, at.x - 0.4, at.x + 0.4, low, low + 0.6)
        assert x == pytest.approx(at.x, abs=0.1)


@pytest.mark.parametrize(
    ("kind", "file"), [("diagonal a4", "kit.pdf"), ("pegged tiles", "strips.pdf"), ("flat", "strips.pdf")]
)
def test_pdfium_reads_what_comes_out_true_of_a_printer(kind: str, file: str) -> None:
    """Distances that pdfium reads, times what a printer makes of 1 mm, are those of the sheet for no printer.

    A printer draws (x a + skew b, y b) for a point (a, b): an affine map, as in any textbook of geometry.
    """
    scale = Scale(0.9942, 1.0057, -0.0031)
    printer = Printer("Office", scale, Scale(0.0001, 0.0001, 0.0001), "a4", "2026-03-01")
    numbers = planned(kind)
    plain = pypdfium2.PdfDocument(write(Outputs(numbers, metrics()).output(file)))
    drawn = pypdfium2.PdfDocument(write(Outputs(with_printer(numbers, printer), metrics()).output(file)))
    assert len(plain) == len(drawn)
    for page, other in zip(plain, drawn, strict=True):
        (first, *wanted), (start, *found) = lines_of(page), lines_of(other)
        assert len(found) == len(wanted) > 30
        for at, asked in zip(found, wanted, strict=True):
            across, up = at.x - start.x, at.y - start.y
            out = Point(scale.x * across + scale.skew * up, scale.y * up)
            assert math.dist(out, (asked.x - first.x, asked.y - first.y)) < 0.001
            assert math.hypot(*out) == pytest.approx(math.dist(asked, first), abs=0.001)
    plain.close()
    drawn.close()


def lines_of(page: Any) -> list[Point]:
    """Every corner of every path of a page that has straight sides only, in mm, as pdfium reads them."""
    points = []
    for thing in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
        parts = [pdfium.FPDFPath_GetPathSegment(thing.raw, k) for k in range(pdfium.FPDFPath_CountSegments(thing.raw))]
        if any(pdfium.FPDFPathSegment_GetType(part) == pdfium.FPDF_SEGMENT_BEZIERTO for part in parts):
            continue
        for part in parts:
            x, y = ctypes.c_float(), ctypes.c_float()
            pdfium.FPDFPathSegment_GetPoint(part, x, y)
            points.append(Point(x.value * PT, y.value * PT))
    return points
