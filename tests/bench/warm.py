"""What proven sheets cost in one warm process, from a kit whose text has changed, in processor time.

    python tests/bench/warm.py [--quick | --full]

Each counts by its quickest turn. Milliseconds depend on the machine; so each stands beside its share of the time that
a process takes to import the libraries, and three PDF files beside a plain reportlab script with the same marks.
"""

from __future__ import annotations

import gc
import sys
import tempfile
import time
import tomllib
from collections.abc import Callable
from functools import partial
from importlib import resources
from itertools import count
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from plain_font import plain_font
from reportlab.pdfgen.canvas import Canvas
from whole import LIBRARIES, cost, environment

import templates_gen
from layout.drawing.shapes import Curve, Region, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import Kit, read_kit
from layout.products import PRODUCTS
from templates_gen.files.kept import forget
from templates_gen.files.outputs import Outputs
from templates_gen.lettering.fonts import metrics

SHEET_AIM, SCRIPT_AIM, AGAIN_AIM = 0.16, 3.0, 0.5
"""A sheet: at most 80 ms where the imports take 0.5 s; three PDF files: so many plain scripts; a second make: half."""
THREE = ("strip-near.pdf", "strip-far.pdf", "winding.pdf")
_NUMBERS = count(1)


def changed() -> Kit:
    """The demo kit from a text that no run has met."""
    text = resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8")
    values = tomllib.loads(text)
    return read_kit({**values, "name": f"{values['name']} {next(_NUMBERS)}"}, metrics())


def spent(run: Callable[[], object]) -> float:
    """Milliseconds of the processor in one run."""
    gc.collect()
    begun = time.process_time()
    run()
    return (time.process_time() - begun) * 1000


def best(run: Callable[[], object], turns: int) -> float:
    """The quickest of several runs, after one that loads what it needs."""
    run()
    return min(spent(run) for _ in range(turns))


def proven(*files: str) -> None:
    """These files of a changed kit."""
    kit = changed()
    for file in files:
        templates_gen.sheet(kit, file)


def script(sheets: list[Sheet]) -> None:
    """The same lines, areas and words by a plain script, a file each."""
    mm = 72 / 25.4
    for sheet in sheets:
        canvas = Canvas("", (sheet.width * mm, sheet.height * mm), pageCompression=1, invariant=1)
        for shape in sheet.shapes:
            if isinstance(shape, Curve):
                x, y = shape.start
                for (to_x, to_y), _ in shape.steps:
                    canvas.line(x * mm, y * mm, to_x * mm, to_y * mm)
                    x, y = to_x, to_y
            elif isinstance(shape, Region):
                path = canvas.beginPath()
                for contour in shape.contours:
                    path.moveTo(contour.start.x * mm, contour.start.y * mm)
                    for (to_x, to_y), _ in contour.steps:
                        path.lineTo(to_x * mm, to_y * mm)
                canvas.drawPath(path, stroke=0, fill=1)
            elif isinstance(shape, Text):
                canvas.setFont(plain_font(shape.pen.ink.face), shape.size * mm)
                canvas.drawString(shape.at.x * mm, shape.at.y * mm, shape.words)
        canvas.showPage()
        canvas.getpdfdata()


def makes() -> tuple[float, float]:
    """What a first and a second make of one kit cost."""
    forget()
    kit = changed()
    with tempfile.TemporaryDirectory() as folder:
        return (
            spent(lambda: templates_gen.make(kit, Path(folder, "one"))),
            spent(lambda: templates_gen.make(kit, Path(folder, "two"))),
        )


def main(turns: int) -> None:
    """Prints a line of a table for each."""
    with tempfile.TemporaryDirectory() as cache:
        imports = 1000 * min(cost(LIBRARIES, (), environment(cache)).processor for _ in range(turns + 1))
    drawings = [f"{name}.svg" for name, product in PRODUCTS.items() if "svg" in product.forms]
    print("| one warm process, changed kit, proven | ms | ratio | aim |\n|---|---|---|---|")
    for file in (*drawings, "kit.pdf"):
        took = best(partial(proven, file), turns)
        print(f"| `{file}`, of the imports | {took:.0f} | {took / imports:.2f} | {SHEET_AIM:.2f} |")
    outputs = Outputs(templates_gen.plan(changed()), metrics())
    sheets = [sheet for file in THREE for sheet in outputs.output(file).sheets]
    took, plain = best(partial(proven, *THREE), turns), best(partial(script, sheets), turns)
    print(f"| three PDF files, of a plain script | {took:.0f} | {took / plain:.2f} | {SCRIPT_AIM:.2f} |")
    first, second = makes()
    print(f"| a second `make`, of the first | {second:.0f} | {second / first:.2f} | {AGAIN_AIM:.2f} |")


if __name__ == "__main__":
    main(1 if "--quick" in sys.argv else 9 if "--full" in sys.argv else 5)
