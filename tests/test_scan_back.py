"""Codes and targets read back by others: zxing-cpp reads the codes of rendered pages, numpy finds the targets.

The pages are rendered by pdfium, sharp, and as a printer and a scanner would show them (`scans`).
"""

from __future__ import annotations

from pathlib import Path

import numpy
import pypdfium2
import pytest
from PIL import Image
from rasters import pdf_pixels
from scans import Scan, centre_of, codes_at_last, printed, rendered, scanned

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet
from layout.plan import Plan, plan
from templates_gen.codes.digest import digest_of
from templates_gen.files.output import Output
from templates_gen.files.outputs import KIT_FILE, Outputs
from templates_gen.files.proof import write
from templates_gen.inputs import kit_file, stock_file
from templates_gen.lettering.fonts import metrics

KITS = {path.stem: path for path in sorted(Path(__file__).with_name("sample_kits").glob("*.toml"))}
MM = 25.4 / 72  # of one unit of a PDF
FOOT = 45.0  # mm: the lowest part of a page, with the code


def codes_of(page: pypdfium2.PdfPage, dpi: int, foot: float | None = None) -> list[str]:
    """What zxing-cpp reads of a page, or of its lowest `foot` mm."""
    scale = dpi / 72
    top = 0 if foot is None else max(0, page.get_height() - foot / MM)
    picture = page.render(scale=scale, crop=(0, 0, 0, top), grayscale=True).to_pil().convert("L")
    return codes_at_last(Scan(numpy.asarray(picture), numpy.eye(2), numpy.zeros(2)))


def expected(output: Output) -> list[str]:
    """How the code of each sheet of a file must begin: its kind, the file's digest, its number, and how many."""
    digits = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"
    total = len(output.sheets)
    count = f"{digits[total // 36]}{digits[total % 36]}"
    digest = digest_of(output.about.inputs)
    return [f"TG1{digest}{digits[k // 36]}{digits[k % 36]}{count}" for k in range(1, total + 1)]


def paper_files(planned: Plan, *, cut: bool) -> list[Output]:
    """The files on paper of a plan."""
    outputs = Outputs(planned, metrics(), stock=stock_file.built_in() if cut else None)
    drawn = [outputs.output(file) for file in outputs.files if file.endswith(".pdf")]
    assert all(output.on_paper for output in drawn)
    return drawn


@pytest.mark.parametrize(("dpi", "foot"), [(150, None), (200, FOOT), (300, FOOT)])
def test_every_page_of_the_demo_kit_is_known_by_its_code(
    dpi: int, foot: float | None, demo_folder: Path, demo_plan: Plan
) -> None:
    """All files, job and drawings too, whole pages and their feet; no two sheets of different files say the same."""
    seen: list[str] = []
    for output in paper_files(demo_plan, cut=True):
        document = pypdfium2.PdfDocument((demo_folder / output.file).read_bytes())
        read = [codes_of(page, dpi, foot) for page in document]
        assert [[text[:16] for text in texts] for texts in read] == [[begin] for begin in expected(output)]
        seen += [text for texts in read for text in texts]
    assert len(set(seen)) == len(seen)
    # 190.5 mm between the targets across and 249 mm up: the sheet is 209.9 x 278.7 mm, 9.7, 14.7 and 15 mm are off
    assert {(int(text[16:20], 36), int(text[20:], 36)) for text in seen} == {(19050, 24899)}


@pytest.mark.parametrize("name", KITS)
def test_every_page_of_the_sample_kits_is_known_by_its_code(name: str) -> None:
    """Every sheet of the one file of all guides, for every kind of frame, at 200 dpi."""
    output = Outputs(plan(kit_file.load(KITS[name])), metrics()).output(KIT_FILE)
    document = pypdfium2.PdfDocument(write(output))
    assert [[text[:16] for text in codes_of(page, 200, FOOT)] for page in document] == [
        [one] for one in expected(output)
    ]


@pytest.mark.slow
@pytest.mark.parametrize("name", KITS)
def test_every_page_of_every_file_is_known_by_its_code(name: str) -> None:
    """The same of all other files on paper of every sample kit, at 200 and 300 dpi."""
    for output in paper_files(plan(kit_file.load(KITS[name])), cut=True):
        document = pypdfium2.PdfDocument(write(output))
        for dpi in (200, 300):
            read = [[text[:16] for text in codes_of(page, dpi, FOOT)] for page in document]
            assert read == [[begin] for begin in expected(output)], output.file


def targets_of(sheet: Sheet) -> list[tuple[float, float]]:
    """Where the rings of a sheet are drawn."""
    rings = [shape.points() for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    return [tuple((min(each) + max(each)) / 2 for each in zip(*ring, strict=True)) for ring in rings]  # type: ignore[misc]


def kit_file_of(planned: Plan) -> Output:
    """The one file of all guides."""
    return Outputs(planned, metrics()).output(KIT_FILE)


def test_targets_are_where_they_must_be(demo_folder: Path, demo_plan: Plan) -> None:
    """Found in the picture of each page, to 0.05 mm: the corners 9.7 mm from the sides, 14.7 and 15 mm from the ends.

    Those drawn elsewhere, where a part stands in their way, are found too; each sheet has five or more.
    """
    output, data = kit_file_of(demo_plan), (demo_folder / KIT_FILE).read_bytes()
    for number, sheet in enumerate(output.sheets):
        picture = pdf_pixels(data, number)
        tall = picture.shape[0] / 10
        scan = Scan(picture.astype(numpy.uint8), numpy.diag([10.0, -10.0]), numpy.array([-0.5, tall * 10 - 0.5]))
        wide, high = sheet.width, sheet.height
        corners = [(x, y) for x in (9.7, wide - 9.7) for y in (15.0, high - 14.7)]
        drawn = targets_of(sheet)
        assert len(drawn) >= 5
        for x, y in {*corners, *drawn}:
            shown = x * picture.shape[1] / 10 / wide, y * tall / high  # the picture is a whole number of pixels
            left, top = round(shown[0] * 10), round((tall - shown[1]) * 10)
            around = numpy.ascontiguousarray(scan.pixels[max(0, top - 30) : top + 30, max(0, left - 30) : left + 30])
            begin = numpy.array([max(0, left - 30), max(0, top - 30)])
            found = centre_of(Scan(around, scan.matrix, scan.origin - begin), *shown)
            assert numpy.abs(found - shown).max() < 0.05


def test_the_codes_of_a_print_are_read(demo_folder: Path) -> None:
    """60 micrometres of ink past its edges, 600 dots an inch, turned and noisy at 200 dpi: read 6 times of 6."""
    random = numpy.random.default_rng(5)
    page = pypdfium2.PdfDocument((demo_folder / KIT_FILE).read_bytes())[1]
    sheet = printed(rendered(page, (4, 14, 24, 33)), 600, 0.06, random)
    texts = {text for _ in range(6) for text in codes_at_last(scanned(sheet, 200, random)) or ["nothing"]}
    assert len(texts) == 1
    assert "nothing" not in texts


@pytest.mark.parametrize("spread", [0.015, 0.06])
def test_the_targets_of_a_print_are_found(spread: float, demo_folder: Path, demo_plan: Plan) -> None:
    """Whatever the ink spreads, all middles are found to 0.05 mm at 200 dpi, though sought 0.15 mm off."""
    random = numpy.random.default_rng(6)
    page = pypdfium2.PdfDocument((demo_folder / KIT_FILE).read_bytes())[1]
    for x, y in targets_of(kit_file_of(demo_plan).sheets[1]):
        sheet = printed(rendered(page, (x - 4, y - 4, x + 4, y + 4)), 600, spread, random)
        for _ in range(3):
            found = centre_of(scanned(sheet, 200, random), x + 0.15, y - 0.15)
            assert numpy.abs(found - (x, y)).max() < 0.05


def test_a_spoilt_code_is_not_read_as_another(demo_folder: Path) -> None:
    """zxing-cpp mends a few modules and reads nothing where too many are covered: never something else."""
    page = pypdfium2.PdfDocument((demo_folder / KIT_FILE).read_bytes())[1]
    (right,) = codes_of(page, 300, FOOT)
    crop = (0, 0, 0, page.get_height() - FOOT / MM)
    picture = page.render(scale=300 / 72, crop=crop, grayscale=True).to_pil().convert("L")
    for size in range(0, 13, 3):  # mm of a white blot over the middle of the code
        pixels = numpy.array(picture)
        half, x, y = round(size * 300 / 25.4 / 2), round(14 * 300 / 25.4), round(pixels.shape[0] - 24 * 300 / 25.4)
        pixels[y - half : y + half, x - half : x + half] = 255
        assert codes_at_last(Scan(pixels, numpy.eye(2), numpy.zeros(2))) in ([right], [])
    assert codes_at_last(Scan(numpy.asarray(Image.new("L", (200, 200), 255)), numpy.eye(2), numpy.zeros(2))) == []
