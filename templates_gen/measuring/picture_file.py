"""The picture of deviations as a file: PDF by our own writer, or PNG of the same pages one under the other."""

from __future__ import annotations

import io
import json
from pathlib import Path

from templates_gen.disk.exchange import Exchange
from templates_gen.document import About
from templates_gen.files.formats import FORMATS
from templates_gen.lettering.fonts import metrics
from templates_gen.measuring.deviations import deviations
from templates_gen.measuring.outcome import Outcome
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import Shown

_DPI = 150
_MOST_PAGES = 12  # of a PNG: more is a PDF's work


def draw(outcome: Outcome, path: Path) -> None:
    """Writes the picture to `path`, over one that is there. FaultError where it cannot be written."""
    pages = deviations(outcome.sheets, metrics())
    about = About(message(Shown.DOCUMENT), json.dumps({"file": path.name}))
    data = FORMATS["pdf"].write(pages, about)
    if path.suffix.lower() == ".png":
        data = _png(data)
    with Exchange(path.parent, path.name) as exchange:
        exchange.write(path.name, data)
        exchange.settle()


def _png(pdf: bytes) -> bytes:
    """All pages, one under the other."""
    import pypdfium2
    from PIL import Image

    with pypdfium2.PdfDocument(pdf) as document:
        count = min(len(document), _MOST_PAGES)
        pages = [document[k].render(scale=_DPI / 72, grayscale=True).to_pil().convert("L") for k in range(count)]
    whole = Image.new("L", (max(page.width for page in pages), sum(page.height for page in pages)), 255)
    top = 0
    for page in pages:
        whole.paste(page, (0, top))
        top += page.height
    found = io.BytesIO()
    whole.save(found, "PNG", dpi=(_DPI, _DPI))
    return found.getvalue()
