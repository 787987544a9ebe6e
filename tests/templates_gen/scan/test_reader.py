"""Whole pages read back: which sheet it is, its scale and turn, and what its targets are off."""

from __future__ import annotations

from pathlib import Path

import pypdfium2
import pytest
from PIL import Image, ImageOps

from templates_gen.files.outputs import KIT_FILE
from templates_gen.scan.reader import measured, read_picture, sheets_on
from templates_gen.scan.seen import ScanError

DPI = 200


@pytest.fixture(scope="module")
def page(demo_folder: Path) -> Image.Image:
    """A sheet as its file draws it, on a larger bed."""
    drawn = pypdfium2.PdfDocument((demo_folder / KIT_FILE).read_bytes())[3]
    shown = drawn.render(scale=DPI / 72, grayscale=True).to_pil().convert("L")
    return ImageOps.expand(shown, 60, 255)


@pytest.mark.parametrize("turn", [0, 3, 90, 178, -94])
def test_a_page_is_read_however_it_lies(turn: float, page: Image.Image, tmp_path: Path) -> None:
    """Its number, its turn and its scale within what is stated; pdfium draws a whole number of pixels a page."""
    page.rotate(turn, Image.Resampling.BICUBIC, expand=True, fillcolor=255).save(tmp_path / "a.png", dpi=(DPI, DPI))
    (picture,) = read_picture(tmp_path / "a.png")
    (sheet,) = sheets_on(picture)
    seen = measured(picture, sheet)
    assert (sheet.label.number, sheet.label.total, sheet.label.rectangle) == (4, 6, (190.5, 248.99))
    wide, tall = ((side - 120) * 25.4 / DPI for side in page.size)
    assert seen.scale.x == pytest.approx(wide / (595 / 72 * 25.4), abs=0.00003)
    assert seen.scale.y == pytest.approx(tall / (790 / 72 * 25.4), abs=0.00003)
    assert seen.scale.skew == pytest.approx(0, abs=0.00003)
    assert seen.turn == pytest.approx(turn, abs=0.01)
    assert len(seen.targets) == 8
    assert seen.dpi == DPI


def test_a_mirror_image_is_refused(page: Image.Image, tmp_path: Path) -> None:
    """Its code is read all the same, its targets do not agree."""
    for number, picture in enumerate(
        (ImageOps.mirror(page), ImageOps.flip(page), page.transpose(Image.Transpose.TRANSPOSE))
    ):
        picture.save(tmp_path / f"{number}.png", dpi=(DPI, DPI))
        (seen,) = read_picture(tmp_path / f"{number}.png")
        with pytest.raises(ScanError, match="mirror image"):
            measured(seen, sheets_on(seen)[0])
