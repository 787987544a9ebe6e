"""Pictures for looking at: every page of some PDF files side by side, and a drawing alone."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from itertools import islice
from pathlib import Path

import pypdfium2
import resvg_py
from PIL import Image, ImageDraw

PAGE_DPI, DRAWING_DPI = 39, 75
GREYS = 8  # few pack well, and lines still look smooth
GROUND = round(255 * 6 / (GREYS - 1))
"""The grey between pages, one of the few."""
COLUMNS = 6
GAP, CAPTION = 8, 14  # pixels


def pages_of(pdf: Path, most: int | None = None) -> list[tuple[str, Image.Image]]:
    """Each page of `pdf` in grey, with a caption: the file's name, and the page's number where there are several.

    Not more than `most` of them.
    """
    document = pypdfium2.PdfDocument(pdf)
    names = [pdf.name] if len(document) == 1 else [f"{pdf.name} {k + 1}" for k in range(len(document))]
    images = [page.render(scale=PAGE_DPI / 72, grayscale=True).to_pil() for page in islice(document, most)]
    document.close()
    return list(zip(names, images, strict=False))


def contact_sheet(pdfs: Sequence[Path], most: int | None = None) -> Image.Image:
    """Every page of `pdfs` in rows on grey ground, each under its caption; of each file not more than `most`."""
    pages = [page for pdf in pdfs for page in pages_of(pdf, most)]
    width = max(image.width for _, image in pages) + GAP
    height = max(image.height for _, image in pages) + GAP + CAPTION
    rows = -(-len(pages) // COLUMNS)
    sheet = Image.new("L", (min(len(pages), COLUMNS) * width + GAP, rows * height + GAP), GROUND)
    draw = ImageDraw.Draw(sheet)
    for k, (name, image) in enumerate(pages):
        x, y = GAP + k % COLUMNS * width, GAP + k // COLUMNS * height
        draw.text((x, y), name, fill=0)
        sheet.paste(image, (x, y + CAPTION))
    return sheet


def save_small(image: Image.Image, to: Path) -> None:
    """`image` as a PNG of a few greys, four bits to a pixel."""
    levels = [round(255 * level / (GREYS - 1)) for level in range(GREYS)]
    nearest = image.convert("L").point(lambda grey: round(grey * (GREYS - 1) / 255))
    few = Image.frombytes("P", image.size, nearest.tobytes())
    few.putpalette([level for level in levels for _ in range(3)])
    few.save(to, optimize=True)


def drawing(svg: Path) -> Image.Image:
    """A drawing as it stands in a page of text."""
    png = resvg_py.svg_to_bytes(
        svg_string=svg.read_text("utf-8"), background="white", skip_system_fonts=True, dpi=DRAWING_DPI
    )
    return Image.open(BytesIO(bytes(png)))
