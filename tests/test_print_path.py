"""What comes of every kind of sheet on its way to a printer, without a printer: its lines are read again behind it.

Sheets of `common` keep their size on A4 and on Letter, those of `a4` and `letter` on their own paper. What becomes of
all others stands in the table of docs/proof.md, cell by cell.
"""

from __future__ import annotations

import json
import os
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import numpy as np
import pypdfium2
import pypdfium2.raw as pdfium
import pytest
from filelock import FileLock
from pages import ROOT, table_between
from pdf_scale import Came, came_out, points_of
from print_programs import WAYS, ghostscript, pdftopdf
from print_sheets import OWN, SIZES, pages

from layout.kit.kit import Paper
from layout.kit.paper_size import PAPERS, named_size
from layout.paper.targets import centres

PT = 25.4 / 72  # ISO 32000: one unit of a PDF page is 1/72 in
TRUE = 1e-4
TURNED = 1e-5
FOUND, CUT_OFF = 0.999, 0.5  # pdftocairo leaves out a point that lies on the line between its neighbours
ON = ("A4", "Letter", "own paper")
OWN_PAPER = {
    ("pdftopdf", "a4"): "A4",
    ("pdftopdf", "letter"): "Letter",
    ("pdftopdf", "a3"): "A3",
    ("pdftopdf", "11x17"): "Tabloid",
    ("pdftocairo", "a3"): "A3",
}
"""Which paper a program is given for a sheet's own; all others take the page as it is."""
PROMISED = [
    *(("common", way, paper) for way in WAYS for paper in ("A4", "Letter")),
    *((size, way, paper) for size, paper in (("a4", "A4"), ("letter", "Letter")) for way in WAYS),
]


class Sheets:
    """Every kind of sheet on a paper of one size, as a file, and what came of it."""

    def __init__(self, size: str, folder: Path, *, whole: bool) -> None:
        self.size, self.file, names = size, folder / "sheets.pdf", folder / "names.json"
        if not names.exists():
            made, pdf = pages(size, folder, whole=whole)
            self.file.write_bytes(pdf)
            names.write_text(json.dumps(made), encoding="utf-8")
        self.names = json.loads(names.read_text(encoding="utf-8"))
        self.pdf = self.file.read_bytes()
        self.points = points_of(self.pdf)

    def through(self, way: str, on: str) -> list[Came]:
        """Each page behind that program, on that paper."""
        paper = OWN_PAPER.get((way, self.size), "") if on == "own paper" else on
        return came_out(self.points, WAYS[way](self.file, paper))


@cache
def sheets_of(size: str, place: Path) -> Sheets:
    """Those of a size, made once for all workers; of `common` with all kinds of frame and a print run."""
    folder = place / f"sheets-{size.replace(' ', '')}"
    with FileLock(f"{folder}.lock"):
        folder.mkdir(exist_ok=True)
        return Sheets(size, folder, whole=size == "common")


@pytest.fixture
def sheets(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Sheets:
    """The sheets of the size that is asked for."""
    shared = tmp_path_factory.getbasetemp()
    return sheets_of(request.param, shared.parent if "PYTEST_XDIST_WORKER" in os.environ else shared)


def table() -> dict[tuple[str, str, str], str]:
    """The table of docs/proof.md: what it says by sheet, program and paper."""
    text = table_between((ROOT / "docs" / "proof.md").read_text(encoding="utf-8"), "print path")[2]
    rows = [[cell.strip() for cell in row.strip("|").split("|")] for row in text.splitlines()[2:]]
    return {(sheet, way, on): cell for sheet, way, *cells in rows for on, cell in zip(ON, cells, strict=True)}


def cell(came: list[Came]) -> str:
    """What the table says of pages that came out so."""
    found = min(page.found for page in came)
    if found < CUT_OFF:
        return "cut off"
    (scale,) = {f"{side:.4f}" for page in came for side in (page.x, page.y)}
    return scale if found >= FOUND else f"{scale}, cut off"


def _cells() -> Iterator[object]:
    """The cells that no other test measures; of the promised papers the other way round, of the rest when thorough."""
    for sheet, way, on in [(size, way, on) for size in SIZES for way in WAYS for on in ON]:
        own = {"a4": "A4", "letter": "Letter"}.get(sheet)
        if (sheet, way, on) in PROMISED or (way == "pdftopdf" and on == "own paper" and sheet in ("common", OWN)):
            continue
        usual = way == "pdftopdf" and own and on not in (own, "own paper")
        yield pytest.param(sheet, way, on, marks=() if usual else pytest.mark.slow, id=f"{sheet}-{way}-{on}")


@pytest.mark.parametrize(("sheets", "way", "on"), PROMISED, indirect=["sheets"])
def test_every_sheet_keeps_its_size(sheets: Sheets, way: str, on: str) -> None:
    """Within 0.01 % along and up, neither skewed nor turned, and nothing of it off the paper."""
    came = sheets.through(way, on)
    for name, page in zip(sheets.names, came, strict=True):
        assert abs(page.x - 1) < TRUE, name
        assert abs(page.y - 1) < TRUE, name
        assert page.skew < TURNED, name
        assert page.found >= FOUND, name
    assert table()[sheets.size, way, on] == "1.0000" == cell(came)


@pytest.mark.parametrize(("sheets", "way", "on"), list(_cells()), indirect=["sheets"])
def test_what_becomes_of_other_papers_is_written(sheets: Sheets, way: str, on: str) -> None:
    """The documentation says what these versions of the programs do, whether that is good or not."""
    assert table()[sheets.size, way, on] == cell(sheets.through(way, on))


@pytest.mark.slow
@pytest.mark.parametrize("size", [size for size in PAPERS if size != "common"])
def test_all_kinds_of_frame_on_every_paper(size: str, tmp_path: Path) -> None:
    """Runs, other frames and strips in pieces keep their size on their own paper as well."""
    found = Sheets(size, tmp_path, whole=True)
    for page in (*found.through("pdftopdf", "own paper"), *found.through("Ghostscript", "own paper")):
        assert max(abs(page.x - 1), abs(page.y - 1)) < TRUE


@pytest.mark.slow
@pytest.mark.parametrize("sheets", ["common"], indirect=True)
@pytest.mark.parametrize("option", ["print-scaling=none", "print-scaling=auto", "scaling=100"])
def test_usual_options_change_nothing(sheets: Sheets, option: str, tmp_path: Path) -> None:
    """What print dialogues pass on for "actual size" leaves sheets of `common` as they are, on A4 and on Letter."""
    for paper in ("A4", "Letter"):
        for page in came_out(sheets.points, pdftopdf(sheets.file, paper, option)):
            assert max(abs(page.x - 1), abs(page.y - 1)) < TRUE


@pytest.mark.parametrize("sheets", ["common"], indirect=True)
def test_the_alarm_rings(sheets: Sheets) -> None:
    """A sheet that was fitted to its paper is seen to be: the same measuring says 6 % and 9 %."""
    for paper, scale in (("A4", (595 - 36) / 595), ("Letter", (792 - 72) / 790)):
        for page in came_out(sheets.points, pdftopdf(sheets.file, paper, "fit-to-page"), (0, 1)):
            assert (page.x, page.y) == pytest.approx((scale, scale), abs=TRUE)


@pytest.mark.parametrize("sheets", ["common", "a4", "letter"], indirect=True)
def test_pdfium_is_asked_for_no_scaling(sheets: Sheets) -> None:
    """The engine of Chromium's print preview sees the preference that ISO 32000 calls PrintScaling None."""
    document = pypdfium2.PdfDocument(sheets.pdf)
    assert not pdfium.FPDF_VIEWERREF_GetPrintScaling(document.raw)


DOTS = 300


@pytest.mark.parametrize("sheets", ["common"], indirect=True)
@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_targets_on_a_printer_s_dots(sheets: Sheets, paper: str, tmp_path: Path) -> None:
    """Through CUPS and then Ghostscript to dots: the corner targets are as far apart as the layout says, to 0.01 %."""
    number = sheets.names.index("kit: frame-check")
    sent = tmp_path / "sent.pdf"
    sent.write_bytes(pdftopdf(sheets.file, paper))
    only = [f"-dFirstPage={number + 1}", f"-dLastPage={number + 1}", f"-r{DOTS}"]
    dots = _grey(ghostscript(sent, paper, *only, "-dGraphicsAlphaBits=4", device="pgmraw"))
    (came,) = came_out(sheets.points, sent.read_bytes(), (number,))
    shift = np.array(came.origin) * PT
    nominal = [np.array(at) for at in centres(Paper(size=named_size("common")))[:4]]
    found = [_middle(dots, at + shift) for at in nominal]
    for one, other in ((0, 1), (0, 2), (0, 3), (1, 2)):
        apart = np.linalg.norm(found[one] - found[other])
        assert apart == pytest.approx(np.linalg.norm(nominal[one] - nominal[other]), rel=TRUE)


def _grey(pgm: bytes) -> np.ndarray[tuple[int, int], np.dtype[np.uint8]]:
    """How dark each dot is."""
    head = re.match(rb"P5\s+(?:#.*\s+)*(\d+)\s+(\d+)\s+255\s", pgm)
    assert head
    wide, high = int(head[1]), int(head[2])
    return 255 - np.frombuffer(pgm[head.end() :], np.uint8).reshape(high, wide)


def _middle(
    dots: np.ndarray[tuple[int, int], np.dtype[np.uint8]], at: np.ndarray[tuple[int], np.dtype[np.float64]]
) -> np.ndarray[tuple[int], np.dtype[np.float64]]:
    """Where the middle of the ink about a place is, in mm from the lower left."""
    dot, high = 25.4 / DOTS, len(dots)
    x, y = at / dot
    left, low = int(x - 1.8 / dot), int(high - y - 1.8 / dot)
    side = int(3.6 / dot) + 1
    window = dots[low : low + side, left : left + side].astype(float)
    rows, columns = np.mgrid[0:side, 0:side] + 0.5
    middle = np.array([(columns * window).sum() + 0.0, (rows * window).sum()]) / window.sum()
    return np.array([left + middle[0], high - low - middle[1]]) * dot
