"""The printer check: made on every paper in every language, proven, read by outside readers, refused where wrong."""

from __future__ import annotations

import ctypes
import json
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from itertools import pairwise
from math import dist, hypot
from pathlib import Path

import pypdf
import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from commands import refused, run
from ink import corners, meetings
from kits import font_metrics
from languages import made_up
from wrong_printer_checks import CHECKS

import templates_gen.files.printer_check as made_module
from layout.drawing.correction import Scale
from layout.drawing.pens import Pen
from layout.drawing.printer import Printer
from layout.drawing.shapes import Point, Text
from layout.kit.kit import Paper
from layout.kit.languages import LANGUAGES
from layout.kit.paper_size import OWN, PAPERS, PaperSize, named_size
from layout.messages.english import ENGLISH
from layout.paper.printer_check.pages import Asked
from layout.paper.printer_check.sheets import printer_check
from templates_gen.files.printer_check import FILE, CheckAsked, check_output, make_check
from templates_gen.files.proof import write
from templates_gen.files.proven import ProofError
from templates_gen.inputs import printer_store
from templates_gen.languages.catalogues import catalogue_of

PT = 25.4 / 72  # ISO 32000: 1/72 in
OWN_SIZES = (
    (420, 595),
    (595, 420),
    (510, 709),
    (652, 680),
    (1191, 842),
    (1701, 9921),
)
SPANS = {  # by hand: 8 and 13 mm of margin, then whole steps of 5 mm; diagonals whole mm
    "common": (190, 250, 306),
    "a4": (190, 265, 321),
    "letter": (195, 250, 310),
    "a3": (275, 390, 472),
    "11x17": (260, 400, 472),
}


def made(size: PaperSize, folder: Path, language: str = "en") -> Path:
    """The check in a folder, proven."""
    paper = Paper(size, language=language)  # type: ignore[arg-type]
    make_check(CheckAsked(paper), folder, font_metrics())
    return folder / FILE


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("paper", ["common", "a3"])
def test_it_is_made_and_proven_in_every_language(paper: str, language: str, tmp_path: Path) -> None:
    """On one sheet each, which says which language it is in."""
    reader = pypdf.PdfReader(made(named_size(paper), tmp_path, language))
    assert len(reader.pages) == 1
    assert str(reader.root_object["/Lang"])[:2] == language


@pytest.mark.parametrize("sides", OWN_SIZES)
def test_it_is_made_on_any_paper(sides: tuple[int, int], tmp_path: Path) -> None:
    """From the smallest to the longest, upright and lying: words that find no room go on more sheets."""
    made(PaperSize(OWN, *sides), tmp_path)


@pytest.mark.parametrize("sides", [(595, 790), (420, 595), (595, 420), (567, 595)])
def test_long_words_find_room(sides: tuple[int, int], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A made-up language, half as long again."""
    monkeypatch.setattr(made_module, "catalogue_of", lambda _: made_up(ENGLISH))
    made(PaperSize(OWN, *sides), tmp_path)


def test_the_same_comes_out_twice(tmp_path: Path) -> None:
    """Byte for byte."""
    one, other = (made(named_size("a4"), tmp_path / name).read_bytes() for name in "ab")
    assert one == other


@cache
def pdfium_lines(path: Path) -> tuple[tuple[float, tuple[tuple[float, float], ...]], ...]:
    """The width and the points of every stroked path of the first page in mm, as PDFium has them."""
    page = pypdfium2.PdfDocument(path)[0]
    return tuple(_pdfium_lines(page))


def _pdfium_lines(page: pypdfium2.PdfPage) -> Iterator[tuple[float, tuple[tuple[float, float], ...]]]:
    x, y, wide = ctypes.c_float(), ctypes.c_float(), ctypes.c_float()
    for each in page.get_objects(filter=[pdfium.FPDF_PAGEOBJ_PATH]):
        pdfium.FPDFPageObj_GetStrokeWidth(each.raw, wide)
        points: list[tuple[float, float]] = []
        for k in range(pdfium.FPDFPath_CountSegments(each.raw)):
            segment = pdfium.FPDFPath_GetPathSegment(each.raw, k)
            pdfium.FPDFPathSegment_GetPoint(segment, x, y)
            if pdfium.FPDFPathSegment_GetType(segment) == pdfium.FPDF_SEGMENT_MOVETO and points:
                yield wide.value * PT, tuple(points)
                points = []
            points.append((x.value * PT, y.value * PT))
        yield wide.value * PT, tuple(points)


@pytest.mark.parametrize("paper", PAPERS)
def test_an_outside_reader_finds_the_spans(paper: str, tmp_path: Path) -> None:
    """PDFium, to 1 micrometre (and its own single floats): from the middle of one bold end to that of another."""
    bold = [points for wide, points in pdfium_lines(made(named_size(paper), tmp_path)) if abs(wide - 0.9) < 1e-4]
    ends = [points for points in bold if len(points) == 2]
    assert len(ends) == 16
    marks = {
        (round((a[0] + b[0]) / 2, 6), round((a[1] + b[1]) / 2, 6))
        for one in ends
        for other in ends
        if one < other and dist(one[0], other[0]) < 8
        for a, b in [(one[0], other[0])]
    }
    assert len(marks) == 8
    across, up, diagonal = SPANS[paper]
    flat, upright = (
        [one, other]
        for axis in (1, 0)
        for one in marks
        for other in marks
        if one < other and abs(one[axis] - other[axis]) < 1e-4 and dist(one, other) > 100 and _alone(marks, one, other)
    )
    assert dist(*flat) == pytest.approx(across, abs=0.001)
    assert dist(*upright) == pytest.approx(up, abs=0.001)
    corners = sorted(marks - {*flat, *upright})
    assert [dist(corners[0], corners[3]), dist(corners[1], corners[2])] == pytest.approx([diagonal] * 2, abs=0.001)


def _alone(marks: set[tuple[float, float]], *pair: tuple[float, float]) -> bool:
    """Whether two marks are no side of the diagonals' rectangle: those have fellows straight across or above."""
    return all(
        sum(abs(at[axis] - other[axis]) < 1e-4 for other in marks)
        == 1 + (pair[0][axis] == pytest.approx(pair[1][axis], abs=1e-4))
        for at in pair
        for axis in (0, 1)
    )


def test_an_outside_reader_finds_the_rules(tmp_path: Path) -> None:
    """pypdf's text and PDFium's lines: 0.21 mm wide lines stand 1 mm and 1/16 in apart (25.4 mm, agreement of 1959)."""
    path = made(named_size("common"), tmp_path)
    ticks = [points for wide, points in pdfium_lines(path) if abs(wide - 0.21) < 1e-4]
    upright = sorted(
        {round(a[0], 4) for a, b in ticks if abs(a[0] - b[0]) < 1e-4 and b[1] > a[1] and abs(a[1] - b[1]) < 5}
    )
    assert len(upright) == 151
    assert [b - a for a, b in pairwise(upright)] == pytest.approx([1.0] * 150, abs=0.001)
    inches = sorted({round(a[1], 4) for a, b in ticks if abs(a[1] - b[1]) < 1e-4 and b[0] > a[0] and b[0] - a[0] < 5})
    assert [b - a for a, b in pairwise(inches)] == pytest.approx([25.4 / 16] * 156, abs=0.001)
    words = pypdf.PdfReader(path).pages[0].extract_text()
    assert all(said in words for said in ("A to B: 190 mm", "E to F: 306 mm", "240 mm", "9 in", "--across-2"))


def test_the_card_is_one(tmp_path: Path) -> None:
    """ISO/IEC 7810, ID-1: 85.60 x 53.98 mm, corners of 3.18 mm (from memory); found by its size by PDFium."""
    sizes = []
    for _, points in pdfium_lines(made(named_size("common"), tmp_path)):
        xs, ys = zip(*points, strict=True)
        sizes.append((max(xs) - min(xs), max(ys) - min(ys)))
    assert min(hypot(wide - 85.60, high - 53.98) for wide, high in sizes) < 0.001


@pytest.mark.parametrize("spoilt", CHECKS)
def test_a_wrong_one_is_not_kept(spoilt: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Each fault of the builder stops it, and the folder stays as it was."""
    CHECKS[spoilt](monkeypatch)
    with pytest.raises(ProofError):
        made(named_size("common"), tmp_path / "check")
    assert not (tmp_path / "check").exists()


def test_the_command_makes_it(tmp_path: Path) -> None:
    """In a language, on a paper."""
    result = run("printer-check", "-o", tmp_path / "c", "--paper", "a4", "--language", "French")
    assert result.exit_code == 0
    assert "printer-check.pdf  1 sheet of 209.9 x 297.0 mm" in result.stdout
    assert "Contrôle" in pypdf.PdfReader(tmp_path / "c" / FILE).pages[0].extract_text()


@pytest.mark.parametrize(
    ("options", "said"),
    [(("--paper", "a9"), '--paper: needs "common"'), (("--language", "xx"), '--language: needs "en"')],
)
def test_bad_options_are_refused(options: tuple[str, str], said: str, tmp_path: Path) -> None:
    """In one sentence, which names the option and what works; nothing is written."""
    found = refused("printer-check", "-o", tmp_path / "c", *options)
    assert found.startswith(said)
    assert f"for example {options[0]} " in found
    assert not (tmp_path / "c").exists()


SIZES = (595, 790), (595, 842), (420, 595), (595, 420), (567, 595), (842, 1191), (1701, 9921)
LOOKS = [
    pytest.param(sides, language, marks=[] if sides in SIZES[:3] or language == "made up" else pytest.mark.slow)
    for sides in SIZES
    for language in (*LANGUAGES, "made up")
]


@pytest.mark.parametrize(("sides", "language"), LOOKS)
def test_no_word_meets_anything(sides: tuple[int, int], language: str) -> None:
    """Letters by the font's own outlines keep 0.3 mm off all other ink, and stay inside the margins of 8 and 13 mm."""
    words = made_up(ENGLISH) if language == "made up" else catalogue_of(language)
    paper = Paper(PaperSize(OWN, *sides))
    for sheet in printer_check(Asked(paper, words), font_metrics()):
        assert meetings(sheet, 0.3) == []
        places = [at for shape in sheet.shapes if isinstance(shape, Text) for at in corners(shape)]
        assert all(8 <= at.x <= paper.width - 8 and 13 <= at.y <= paper.height - 13 for at in places)


def test_check_works_from_the_file_alone(tmp_path: Path) -> None:
    """It carries paper and language; another file of the same name, or a spoiled one, is found."""
    path = made(PaperSize(OWN, 420, 595), tmp_path, "es")
    right = run("check", path)
    assert (right.exit_code, right.stdout.split()[0]) == (0, "right")
    assert "19 marks" in right.stdout
    output = check_output(CheckAsked(Paper(named_size("common"))), font_metrics())
    (sheet,) = output.sheets
    lost = next(k for k, shape in enumerate(sheet.shapes) if shape.pen is Pen.EDGE)
    shapes = (*sheet.shapes[:lost], *sheet.shapes[lost + 1 :])
    path.write_bytes(write(replace(output, sheets=(replace(sheet, shapes=shapes),))))
    spoiled = run("check", path)
    assert spoiled.exit_code == 1
    assert spoiled.stdout.startswith("WRONG")


@pytest.mark.parametrize(
    ("sides", "scale"),
    [
        ((595, 790), Scale(0.997, 1.004, 0.002)),
        ((420, 595), Scale(1.03, 0.97, -0.03)),
        ((595, 420), Scale(0.97, 0.97, 0.03)),
    ],
)
def test_made_for_a_printer_its_spans_come_out_right(sides: tuple[int, int], scale: Scale, tmp_path: Path) -> None:
    """Drawn the other way and proven; the ends that PDFium finds, printed by that printer, are the plain sheet's."""
    size = PaperSize(OWN, *sides)
    printer = Printer("office", scale, Scale(0.001, 0.001, 0.001), size.words, "2026-03-01")
    make_check(CheckAsked(Paper(size, language="de"), printer), tmp_path / "for", font_metrics())
    plain, drawn = (
        [points for wide, points in pdfium_lines(path) if abs(wide - 0.9) < 1e-4 and len(points) == 2]
        for path in (made(size, tmp_path / "plain", "de"), tmp_path / "for" / FILE)
    )
    middle = Point(sides[0] * PT / 2, sides[1] * PT / 2)
    printed = [tuple(_printed(scale, Point(*at), middle) for at in points) for points in drawn]
    assert len(plain) == len(printed) == 16
    for one, other in zip(plain, printed, strict=True):
        assert max(dist(a, b) for a, b in zip(one, other, strict=True)) < 0.001
    checked = run("check", tmp_path / "for" / FILE)
    assert (checked.exit_code, checked.stdout.split()[0]) == (0, "right")


def _printed(scale: Scale, at: Point, middle: Point) -> Point:
    """Where a printer puts a place, about the middle of the sheet."""
    made_of = scale.made(Point(at.x - middle.x, at.y - middle.y))
    return Point(made_of.x + middle.x, made_of.y + middle.y)


def test_the_command_makes_it_for_a_printer(tmp_path: Path) -> None:
    """One that is stored; the sheet names it. One that is not stored is refused."""
    printer_store.store(Printer("shop", Scale(0.998, 1.001), Scale(0.001, 0.001, 0.001), "common", "2026-03-01"))
    assert run("printer-check", "-o", tmp_path / "c", "--printer", "shop").exit_code == 0
    other = json.loads(
        run("printer-check", "-o", tmp_path / "a4", "--printer", "shop", "--paper", "a4", "--json").stdout
    )
    assert [each["file"] for each in other["files"]] == [FILE]
    assert "measured on common and these sheets are a4" in other["notes"][0]
    assert "shop" in pypdf.PdfReader(tmp_path / "c" / FILE).pages[0].extract_text()
    assert refused("printer-check", "-o", tmp_path / "d", "--printer", "none").startswith("--printer: needs")


def test_its_folder_is_checked_without_a_list(tmp_path: Path) -> None:
    """Its folder is right where the sheet is, wrong where the sheet is spoilt or lies beside another file."""
    make_check(CheckAsked(Paper(named_size("a4"))), tmp_path, font_metrics())
    assert run("check", tmp_path).exit_code == 0
    file = tmp_path / "printer-check.pdf"
    (tmp_path / "other.pdf").write_bytes(file.read_bytes())
    assert run("check", tmp_path).exit_code == 1
    (tmp_path / "other.pdf").unlink()
    file.write_bytes(file.read_bytes()[:-200])
    assert run("check", tmp_path).exit_code == 1
