"""How long drawing a strip takes, as ratios to a plain reportlab script measured in the same run.

    python tests/bench/drawing.py [--quick]

The plain script draws the same lines and numbers with one call each, and knows no runs, no reading back, no proof: same
embedded font, sheet size and compression, font loaded before. All contenders take turns, and each counts by its
fastest turn, in processor time, so that what else the machine does matters little.
"""

from __future__ import annotations

import gc
import sys
import time
from collections.abc import Callable, Mapping, Sequence
from functools import partial
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from plain_font import plain_font
from reportlab import rl_config
from reportlab.pdfgen.canvas import Canvas

from layout.drawing.pens import Face, Pen
from layout.drawing.shapes import Point, Shape, Text, line
from layout.drawing.sheet import PT, Sheet, painted
from templates_gen.files.formats import FORMATS, About
from templates_gen.verify.compare import compare

ABOUT = About("Benchmark", "{}")
WIDTH, HEIGHT = 842, 595
DRAWING_AIM, PROOF_AIM, FLAT_AIM = 1.25, 3.0, 0.20
COUNTS = (100, 1000, 5000)
MOST = max(COUNTS)
Name = tuple[str, int]

rl_config.useA85 = 0  # the plain script packs its pages as ours are packed: compressed, without text armour


def rows(count: int) -> tuple[list[tuple[float, float, float, Pen]], list[tuple[float, float, str]]]:
    """Marks (x, bottom, top, pen) and numbers (x, y, words) of strips one above the other, in mm."""
    marks, numbers = [], []
    for k in range(count):
        x, y = 10 + k % 500 * 0.55, 10 + k // 500 * 18.0
        if k % 8 == 0:
            marks.append((x, y, y + 7, Pen.UNIT))
            numbers.append((x, y + 8, str(k)))
        else:
            marks.append((x, y, y + (5 if k % 10 == 0 else 3), Pen.TEN if k % 10 == 0 else Pen.MARK))
    return marks, numbers


def sheet(count: int) -> Sheet:
    """The strips as a sheet of ours."""
    marks, numbers = rows(count)
    shapes: list[Shape] = [line(Point(x, bottom), Point(x, top), pen) for x, bottom, top, pen in marks]
    shapes += [Text(Point(x, y), 3, words) for x, y, words in numbers]
    return Sheet("strip", WIDTH * PT, HEIGHT * PT, painted(shapes))


def plain(count: int) -> bytes:
    """The same strips by a plain script."""
    marks, numbers = rows(count)
    mm = 72 / 25.4
    canvas = Canvas("", (WIDTH, HEIGHT), pageCompression=1, invariant=1, initialFontName=plain_font(Face.REGULAR))
    for pen in (Pen.MARK, Pen.TEN, Pen.UNIT):
        canvas.setLineWidth(pen.ink.width * mm)
        for x, bottom, top, of in marks:
            if of is pen:
                canvas.line(x * mm, bottom * mm, x * mm, top * mm)
    canvas.setFont(plain_font(Face.REGULAR), 3 * mm)
    for x, y, words in numbers:
        canvas.drawString(x * mm, y * mm, words)
    canvas.showPage()
    return canvas.getpdfdata()


def in_turns(contenders: Mapping[Name, Callable[[], object]], turns: int) -> dict[Name, float]:
    """The fastest of each contender's turns, in milliseconds of processor time."""
    best = dict.fromkeys(contenders, float("inf"))
    for _ in range(turns):
        for name, run in contenders.items():
            gc.collect()
            begun = time.process_time()
            run()
            best[name] = min(best[name], (time.process_time() - begun) * 1000)
    return best


def drawn(sheets: Sequence[Sheet]) -> bytes:
    """Written only."""
    return FORMATS["pdf"].write(sheets, ABOUT)


def proven(sheets: Sequence[Sheet]) -> None:
    """Written, read back and compared."""
    assert compare(sheets, FORMATS["pdf"].read(drawn(sheets)).sheets).sound


def ratios(turns: int) -> None:
    """Print what one sheet costs against the plain script."""
    contenders: dict[Name, Callable[[], object]] = {}
    for count in COUNTS:
        contenders["plain", count] = partial(plain, count)
        contenders["drawn", count] = partial(drawn, [sheet(count)])
        contenders["proven", count] = partial(proven, [sheet(count)])
    best = in_turns(contenders, turns)
    print("marks     plain      drawn             drawn, read back, compared")
    for count in COUNTS:
        script, ours, whole = (best[name, count] for name in ("plain", "drawn", "proven"))
        ratio, whole_ratio = ours / script, whole / script
        print(f"{count:5} {script:6.1f} ms  {ours:6.1f} ms {ratio:5.2f}x  {whole:6.1f} ms {whole_ratio:5.2f}x")
    print(f"aims: at most {DRAWING_AIM}x and {PROOF_AIM}x")


def flatness(turns: int) -> None:
    """Print what a mark costs on sheets of each size.

    Each file holds as many sheets as make 5,000 marks; what that many sheets of one mark cost is taken off.
    """
    contenders: dict[Name, Callable[[], object]] = {}
    for count in COUNTS:
        for work in (drawn, proven):
            contenders[work.__name__, count] = partial(work, [sheet(count)] * (MOST // count))
            contenders[work.__name__, -count] = partial(work, [sheet(1)] * (MOST // count))
    best = in_turns(contenders, turns)
    for name in ("drawn", "proven"):
        each = [1000 * (best[name, count] - best[name, -count]) / (MOST - MOST // count) for count in COUNTS]
        spread = max(each) / min(each) - 1
        print(f"{name}: {', '.join(f'{one:.1f}' for one in each)} microseconds a mark, {spread:.0%} apart")
    print(f"aim: at most {FLAT_AIM:.0%} apart")


def main(turns: int) -> None:
    """Print all. A missed aim is for a person to judge: other work on the machine moves these numbers."""
    proven([sheet(100)])  # loads the font and every library
    ratios(turns)
    flatness(turns)


if __name__ == "__main__":
    main(3 if "--quick" in sys.argv else 15)
