"""Sheets on the screen in a real browser: each letter lies where it lies on paper, each line too."""

from __future__ import annotations

import shutil
from itertools import accumulate, groupby
from pathlib import Path
from typing import Any

import pytest
from browser import browser
from kits import NAILS, font_metrics, plan_of, sheets_of

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Sheet
from templates_gen.lettering.fonts import font_path
from templates_gen.writers.screen import write

PX = 25.4 / 96  # CSS Values 3, 6.2: one px is 1/96 in
NEAR = 0.02  # mm: a browser draws on whole pixels
MOVED = 0.05  # mm: a letter within its words, whose places a browser rounds at the size that they are shown
STRETCHED = 0.002  # by so small a share are words stretched to be as long as on paper
STYLES = Path(__file__).parents[1] / "templates_gen" / "desk" / "page" / "static"
WEIGHTS = {Face.REGULAR: 400, Face.STRONG: 600}
MEASURE = """
const letters = text => Array.from({length: text.getNumberOfChars()}, (_, k) => text.getStartPositionOfChar(k).x);
const natural = text => {
  const long = text.getAttribute("textLength");
  text.removeAttribute("textLength");
  const found = text.getComputedTextLength();
  if (long) text.setAttribute("textLength", long);
  return found;
};
return document.fonts.ready.then(() => [...document.querySelectorAll("svg")].map(svg => ({
  fonts: [...document.fonts].map(font => font.status),
  size: [svg.width.baseVal.value, svg.height.baseVal.value],
  texts: [...svg.querySelectorAll("text")].map(text => [letters(text), natural(text), getComputedStyle(text).fill]),
  runs: [...svg.querySelectorAll("g[data-pen]")].map(g => {
    const box = g.getBBox();
    return [g.dataset.pen, box.x, box.y, box.x + box.width, box.y + box.height];
  }),
})));
"""


@pytest.fixture(scope="module")
def shown(tmp_path_factory: pytest.TempPathFactory) -> list[tuple[Sheet, dict[str, Any]]]:
    """Every printed sheet of two kits in one page, with font and styles of the desk, and what the browser says."""
    folder = tmp_path_factory.mktemp("screen")
    faces = ""
    for face, weight in WEIGHTS.items():
        shutil.copy(font_path(face), folder / f"{face.value}.ttf")
        faces += f'@font-face {{font-family: "Sheet"; font-weight: {weight}; src: url({face.value}.ttf)}}'
    sheets = [printed.sheet for changes in ({}, NAILS) for printed in sheets_of(plan_of(changes))]
    page = Path(folder, "page.html")
    drawings = "".join(f'<div class="glass">{write(sheet)}</div>' for sheet in sheets)
    styles = "".join((STYLES / name).read_text(encoding="utf-8") for name in ("base.css", "sheet.css"))
    page.write_text(f'<!doctype html><meta charset="utf-8"><style>{styles}{faces}</style>{drawings}', encoding="utf-8")
    with browser() as opened:
        return list(zip(sheets, opened.opened(page, MEASURE), strict=True))


def test_sheets_are_as_large_as_on_paper(shown: list[tuple[Sheet, dict[str, Any]]]) -> None:
    """In the font of the print, whose two cuts are loaded."""
    assert len(shown) > 8
    for sheet, seen in shown:
        assert seen["fonts"].count("loaded") == 2
        assert [px * PX for px in seen["size"]] == pytest.approx([sheet.width, sheet.height], abs=NEAR)


def test_letters_lie_where_they_are_printed(shown: list[tuple[Sheet, dict[str, Any]]]) -> None:
    """Each letter of all words, in the ink of its pen: white on the black tiles, whatever the page is like."""
    count = 0
    for sheet, seen in shown:
        texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
        assert len(texts) == len(seen["texts"])
        for text, (starts, natural, fill) in zip(texts, seen["texts"], strict=True):
            begin = 0.0 if text.angle else text.at.x
            widths = [font_metrics().width(letter, text.size, text.pen) for letter in text.words]
            wanted = [begin, *(begin + along for along in accumulate(widths))]
            assert [um / 1000 for um in starts] == pytest.approx(wanted[:-1], abs=MOVED), text.words
            assert natural / 1000 == pytest.approx(sum(widths), rel=STRETCHED, abs=NEAR), text.words
            level = round(255 * text.pen.ink.grey)
            assert fill == f"rgb({level}, {level}, {level})"
            count += len(starts)
    assert count > 2000


def test_lines_lie_where_they_are_printed(shown: list[tuple[Sheet, dict[str, Any]]]) -> None:
    """Every run of straight lines reaches as far as on paper, to 20 micrometres."""
    count = 0
    for sheet, seen in shown:
        runs = [(pen, list(run)) for pen, run in groupby(sheet.shapes, _look)]
        assert [pen.value for (pen, _), _ in runs] == [run[0] for run in seen["runs"]]
        for (_, shapes), (_, *box) in zip(runs, seen["runs"], strict=True):
            curves = [shape for shape in shapes if isinstance(shape, Curve)]
            if len(curves) < len(shapes) or any(step.through for curve in curves for step in curve.steps):
                continue
            points = [at for curve in curves for at in curve.points()]
            xs, ys = [at.x for at in points], [sheet.height - at.y for at in points]
            assert [um / 1000 for um in box] == pytest.approx([min(xs), min(ys), max(xs), max(ys)], abs=NEAR)
            count += len(curves)
    assert count > 500


def _look(shape: Any) -> tuple[Pen, float]:
    """What shapes of one group have in common."""
    return shape.pen, shape.size if isinstance(shape, Text) else 0.0
