"""How well codes and targets read after printing and scanning, simulated: the tables of docs/proof.md.

    PYTHONPATH=. python tests/scan_table.py [scans]

Of the demo kit's sheets as they are made. Each row is so many scans (12 if left out) of each of three prints, at 300,
600 and 1200 dots an inch.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence

import numpy
import pypdfium2
from scans import Inked, centre_of, codes_at_last, codes_in, printed, rendered, scales, scanned

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet
from layout.plan import plan
from templates_gen.files.outputs import KIT_FILE, Outputs
from templates_gen.files.proof import write
from templates_gen.inputs.kit_file import demo
from templates_gen.lettering.fonts import metrics

DOTS = (300, 600, 1200)
SPREADS = (-0.015, 0.0, 0.015, 0.03, 0.045, 0.06)  # mm
PAGE = 1  # of kit.pdf
CODE = (4.0, 12.0, 30.0, 36.0)  # mm: the code, a target and words beside it


def targets_of(sheet: Sheet) -> list[tuple[float, float]]:
    """Where the targets of a sheet are."""
    rings = [shape.points() for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    sides = [[(min(each) + max(each)) / 2 for each in zip(*ring, strict=True)] for ring in rings]
    return [(x, y) for x, y in sides]


def code_rows(page: pypdfium2.PdfPage, count: int) -> None:
    """The share of scans whose code is read, as it is, and with a second try at double size."""
    random, window = numpy.random.default_rng(12), rendered(page, CODE)
    print("| spread of the ink | 150 dpi | 200 dpi | 300 dpi |")
    print("|---|---|---|---|")
    for spread in SPREADS:
        sheets = [printed(window, dots, spread, random) for dots in DOTS]
        cells = []
        for dpi in (150, 200, 300):
            seen = [scanned(sheet, dpi, random) for sheet in sheets for _ in range(count)]
            rates = [100 * sum(len(read(scan)) == 1 for scan in seen) / len(seen) for read in (codes_in, codes_at_last)]
            cells.append(f"{rates[0]:.0f} -> {rates[1]:.0f} %")
        print(f"| {spread * 1000:+.0f} um | {' | '.join(cells)} |", flush=True)


def target_rows(page: pypdfium2.PdfPage, places: Sequence[tuple[float, float]], count: int) -> None:
    """How far off the middles of targets are found, by place, and what scale they give together."""
    random = numpy.random.default_rng(34)
    windows = [rendered(page, (x - 4, y - 4, x + 4, y + 4)) for x, y in places]
    print("| target | 200 dpi: median / 95 % / worst, um | 300 dpi |")
    print("|---|---|---|")
    found: dict[int, list[list[tuple[float, float]]]] = {200: [], 300: []}
    for place, window in zip(places, windows, strict=True):
        sheets: list[Inked] = [printed(window, dots, spread, random) for dots in DOTS for spread in SPREADS[1:]]
        cells = []
        for dpi, all_found in found.items():
            there = []
            for sheet in sheets:
                for _ in range(max(1, count // 4)):
                    begin = numpy.array(place) + random.uniform(-0.15, 0.15, 2)
                    there.append(centre_of(scanned(sheet, dpi, random), *begin))
            all_found.append([tuple(each) for each in there])
            off = numpy.abs(numpy.array(there) - place).ravel() * 1000
            cells.append(f"{numpy.median(off):.1f} / {numpy.percentile(off, 95):.1f} / {off.max():.1f}")
        print(
            f"| x {place[0]:.1f}, y {page.get_height() * 25.4 / 72 - place[1]:.1f} | {' | '.join(cells)} |", flush=True
        )
    for dpi, all_found in found.items():
        both = [scales(places, [numpy.array(each) for each in sheet]) for sheet in zip(*all_found, strict=True)]
        off = numpy.abs(numpy.array(both)) * 100
        print(f"scale from all targets at {dpi} dpi, %: worst {off[:, 0].max():.4f} across, {off[:, 1].max():.4f} up")


def main(count: int) -> None:
    """Prints all tables."""
    outputs = Outputs(plan(demo()), metrics())
    output = outputs.output(KIT_FILE)
    document = pypdfium2.PdfDocument(write(output))
    code_rows(document[PAGE], count)
    target_rows(document[PAGE], targets_of(output.sheets[PAGE]), count)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 12)
