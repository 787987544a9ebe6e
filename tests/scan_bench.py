"""How true a scan is read, simulated: the tables of docs/scan.md.

    PYTHONPATH=. python tests/scan_bench.py [scans] [seed] [file to keep the figures in]

Whole sheets of the demo and sample kits are printed and scanned at random (`sheet_scans`): every kind of sheet, four
papers, 150 to 600 dpi, any way up; half of the scanners run unevenly by up to 0.03 mm in each of three waves. What is
read is compared with the best affine map of the sheet as it truly lies on the bed. 300 scans take some ten minutes.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import atan2, cos, hypot, sin
from pathlib import Path
from time import process_time
from typing import Any

import numpy
import pypdfium2
from numpy.typing import NDArray
from sheet_scans import Box, Print, Scanned, any_bed, print_off, printed, scan, straight_lines

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.drawing.sheet import Sheet
from layout.plan import plan
from templates_gen.files.outputs import Outputs
from templates_gen.files.proof import write
from templates_gen.inputs import kit_file, stock_file
from templates_gen.lettering.fonts import metrics
from templates_gen.scan.frames import Map, best_map
from templates_gen.scan.reader import measured, sheets_on
from templates_gen.scan.seen import Line, ScanError, Seen

KITS = Path(__file__).with_name("sample_kits")
PENS = (Pen.MARK, Pen.TEN, Pen.END_MARK, Pen.END_MARK_BACK, Pen.TEN_BACK)
SHEETS = (
    ("strip", None, "strips.pdf", 0),
    ("guide", None, "spacing-guide.pdf", 0),
    ("grid", None, "weaving-grid.pdf", 0),
    ("gauge", None, "wrap-gauge.pdf", 0),
    ("start", None, "kit.pdf", 0),
    ("strip", "linnet-frame", "strips.pdf", 0),
    ("template", "alder-frame", "strips.pdf", 0),
    ("guide", "rowan-frame", "spacing-guide.pdf", 0),
    ("check", "finch-frame", "frame-check.pdf", 0),
    ("guide", "maple-frame", "spacing-guide.pdf", 0),
    ("strip", "wren-frame", "strips.pdf", 1),
    ("winding", "heron-frame", "winding.pdf", 0),
    ("job", None, "job.pdf", 0),
    ("strip", "rowan-frame", "strips.pdf", 1),
    ("strip", "heron-frame", "strips.pdf", 0),
)
"""Kind of sheet, sample kit (None: the demo kit), file, and page."""

RESOLUTIONS = (150, 150, 150, 200, 200, 200, 300, 300, 300, 300, 300, 300, 400, 600)
EACH = 5  # scans of one print


@dataclass(frozen=True)
class Page:
    """A sheet to print: its kind, its drawing, its page in a PDF, its targets and the lines that are measured."""

    kind: str
    sheet: Sheet
    pdf: bytes
    number: int
    lines: Sequence[Line]

    @property
    def targets(self) -> list[Point]:
        """The middles of its rings."""
        rings = [each.points() for each in self.sheet.shapes if isinstance(each, Curve) and each.pen is Pen.TARGET]
        return [Point(*((min(side) + max(side)) / 2 for side in zip(*ring, strict=True))) for ring in rings]

    @property
    def rectangle(self) -> Box:
        """Of its targets."""
        x, y = zip(*self.targets, strict=True)
        return min(x), min(y), max(x), max(y)

    def printed(self, random: numpy.random.Generator, **how: Any) -> Print:
        """The page on paper, its targets, code and lines exactly."""
        wide = self.sheet.width
        exact = [(x - 2.5, y - 2.5, x + 2.5, y + 2.5) for x, y in self.targets]
        exact += [(7.0, 17.0, 21.0, 31.0), (wide - 21, 17.0, wide - 7, 31.0)]
        for line in self.lines:
            x, y = zip(line.start, line.end, strict=True)
            exact.append((min(x) - 1, min(y) - 1, max(x) + 1, max(y) + 1))
        return printed(pypdfium2.PdfDocument(self.pdf)[self.number], random, exact, **how)


def page_of(kind: str, kit: str | None, file: str, number: int) -> Page:
    """A sheet of a sample kit."""
    planned = plan(kit_file.demo() if kit is None else kit_file.load(KITS / f"{kit}.toml"))
    output = Outputs(planned, metrics(), stock=stock_file.built_in()).output(file)
    sheet = output.sheets[number]
    lines = straight_lines(sheet, (Pen.GRID_TEN,) if kind == "grid" else PENS, 3.0)
    return Page(kind, sheet, write(output), number, lines if kind in ("strip", "guide", "grid") else [])


def any_print(page: Page, random: numpy.random.Generator) -> Print:
    """By a printer of 300, 600 or 1200 dots an inch, whose ink spreads by -0.015 to 0.06 mm."""
    return page.printed(
        random,
        dots=int(random.choice((300, 600, 1200))),
        spread=float(random.uniform(-0.015, 0.06)),
        ragged=float(random.uniform(0.003, 0.012)),
    )


def line_errors(page: Page, seen: Seen, scanned: Scanned) -> list[tuple[float, float, float]]:
    """By how much each line was misread that was read, and what was stated, in all and beside its neighbours, in mm.

    Its true place on the bed, as the printer left it, is laid against the true places of the targets that were used.
    """
    used = numpy.array([target.place for target in seen.targets], float)
    true = best_map(used, scanned.on_bed(used))
    found = []
    for each in seen.lines:
        if each.off is None or each.within is None:
            continue
        moved = print_off(scanned.print, each.line)
        if moved is not None:
            error = each.off - _true_off(each.line, moved, scanned, true)
            found.append((error, hypot(each.within, each.placed), each.within))
    return found


def _true_off(line: Line, moved: float, scanned: Scanned, true: Map) -> float:
    start, end = numpy.array(line.start), numpy.array(line.end)
    direction = atan2(*(end - start)[::-1])
    across = numpy.array([-sin(direction), cos(direction)])
    middle = (start + end) / 2
    at = true.back(scanned.on_bed((middle + moved * across)[None]))[0]
    return float((at - middle) @ across)


def trial(page: Page, sheet: Print, dpi: int, random: numpy.random.Generator) -> dict[str, Any]:
    """One scan: its figures, or why it was refused."""
    wobble = 0.0 if random.random() < 0.5 else float(random.uniform(0, 0.03))
    scanned = scan(sheet, any_bed(random, dpi, wobble=wobble), random)
    given = bool(random.random() < 0.5)
    row: dict[str, Any] = {"kind": page.kind, "dpi": dpi, "wobble": wobble, "given": given}
    begin = process_time()
    try:
        (found,) = sheets_on(scanned.picture)
        seen = measured(scanned.picture, found, page.targets if given else None, page.lines)
    except ScanError as error:
        return row | {"refused": str(error)}
    true, turn = scanned.truth(page.rectangle)
    errors = [*(one - other for one, other in zip(seen.scale, true, strict=True))]
    errors.append(seen.scale.x / seen.scale.y - true.x / true.y)
    offs = line_errors(page, seen, scanned)
    return row | {
        "seconds": process_time() - begin,
        "errors": [float(each) for each in errors],
        "within": [float(each) for each in (*seen.within, seen.ratio_within)],
        "turn": (seen.turn - turn + 180) % 360 - 180,
        "targets": len(seen.targets),
        "expected": len(page.lines),
        "read": sum(each.off is not None for each in seen.lines),
        "lines": [each for each, _, _ in offs],
        "lines within": [each for _, each, _ in offs],
        "lines beside": [each for _, _, each in offs],
    }


def trials(count: int, seed: int) -> Iterator[dict[str, Any]]:
    """So many scans, one print after the other."""
    random = numpy.random.default_rng(seed)
    pages: dict[int, Page] = {}
    for number in range(count):
        at = number // EACH % len(SHEETS)
        if number % EACH == 0:
            page = pages.setdefault(at, page_of(*SHEETS[at])) if at not in pages else pages[at]
            sheet = any_print(page, random)
        yield trial(page, sheet, int(random.choice(RESOLUTIONS)), random)


NAMES = ("sx", "sy", "skew", "ratio")
GROUPS: tuple[tuple[str, Callable[[dict[str, Any]], bool]], ...] = (
    ("150 dpi, even", lambda row: row["dpi"] == 150 and not row["wobble"]),
    ("200 dpi, even", lambda row: row["dpi"] == 200 and not row["wobble"]),
    ("300 dpi, even", lambda row: row["dpi"] == 300 and not row["wobble"]),
    ("400 and 600 dpi, even", lambda row: row["dpi"] >= 400 and not row["wobble"]),
    ("150 and 200 dpi, uneven", lambda row: row["dpi"] <= 200 and bool(row["wobble"])),
    ("300 to 600 dpi, uneven", lambda row: row["dpi"] >= 300 and bool(row["wobble"])),
    ("all, with marks", lambda row: row["expected"] > 0),
    ("all, without marks", lambda row: row["expected"] == 0),
)


def beside_neighbours(errors: Sequence[float]) -> NDArray[numpy.float64]:
    """Errors of marks as they are drawn, each without the median of its own and three to each side."""
    return numpy.array([each - numpy.median(errors[max(0, k - 3) : k + 4]) for k, each in enumerate(errors)])


def spread_of(values: Sequence[float], digits: int) -> str:
    """Median, 95 % and largest of absolute values."""
    off = numpy.abs(values)
    return " / ".join(f"{each:.{digits}f}" for each in (numpy.median(off), numpy.percentile(off, 95), off.max()))


def tables(rows: Sequence[dict[str, Any]]) -> Iterator[str]:
    """What docs/scan.md shows."""
    read = [row for row in rows if "errors" in row]
    yield f"{len(rows)} scans, {len(read)} read, {len(rows) - len(read)} refused."
    yield ""
    yield "| scans | read | sx, % | sy, % | ratio, % | skew, % |"
    yield "|---|---|---|---|---|---|"
    for name, belongs in GROUPS:
        some = [row for row in read if belongs(row)]
        if some:
            cells = [spread_of([100 * row["errors"][k] for row in some], 4) for k in (0, 1, 3, 2)]
            yield f"| {name} | {len(some)} | {' | '.join(cells)} |"
    yield ""
    yield "| scans | stated, median: sx, sy, ratio, skew, % | so many % within it | largest error by what is stated |"
    yield "|---|---|---|---|"
    for name, belongs in (("all", lambda _: True), *GROUPS):
        some = [row for row in read if belongs(row)]
        if some:
            shares = numpy.abs([[row["errors"][k] / row["within"][k] for k in (0, 1, 3, 2)] for row in some])
            stated = numpy.median([[100 * row["within"][k] for k in (0, 1, 3, 2)] for row in some], axis=0)
            yield (
                f"| {name} | {', '.join(f'{each:.3f}' for each in stated)} | "
                f"{', '.join(f'{each:.1f}' for each in 100 * (shares <= 1).mean(0))} | {shares.max():.2f} |"
            )
    yield ""
    yield "| marks | read, % | error, um | worst of a sheet | within it, %: all, beside neighbours |"
    yield "|---|---|---|---|---|"
    for dpi in (150, 200, 300, 400, 600):
        some = [row for row in read if row["dpi"] == dpi and row["expected"]]
        offs = numpy.array([each for row in some for each in row["lines"]])
        if len(offs):
            stated = numpy.array([each for row in some for each in row["lines within"]])
            beside = numpy.array([each for row in some for each in row["lines beside"]])
            share = 100 * sum(row["read"] for row in some) / sum(row["expected"] for row in some)
            alone = numpy.concatenate([beside_neighbours(row["lines"]) for row in some])
            worst = [1000 * float(numpy.abs(row["lines"]).max()) for row in some if row["lines"]]
            yield (
                f"| {len(offs)} at {dpi} dpi | {share:.1f} | {spread_of(1000 * offs, 1)} | {spread_of(worst, 1)} | "
                f"{100 * (numpy.abs(offs) <= stated).mean():.1f}, {100 * (numpy.abs(alone) <= beside).mean():.1f} |"
            )
    false = [row for row in read if any(abs(row["errors"][k]) > 3 * row["within"][k] for k in range(4))]
    yield ""
    yield f"False numbers (an error over three times what is stated): {len(false)}."
    for text in sorted({row["refused"] for row in rows if "refused" in row}):
        yield f"Refused {sum(row.get('refused') == text for row in rows)} times: {text}."
    yield f"Processor time to read a scan: {spread_of([row['seconds'] for row in read], 2)} s."


def main(count: int, seed: int, keep: Path | None) -> None:
    """Prints the tables; keeps the figures of each scan, one a line, where asked."""
    rows = []
    for row in trials(count, seed):
        rows.append(row)
        if keep is not None:
            with keep.open("a", encoding="utf-8") as file:
                file.write(json.dumps(row) + "\n")
    print("\n".join(tables(rows)))


if __name__ == "__main__":
    asked = sys.argv[1:]
    main(
        int(asked[0]) if asked else 300,
        int(asked[1]) if len(asked) > 1 else 1,
        Path(asked[2]) if len(asked) > 2 else None,
    )
