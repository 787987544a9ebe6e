"""The job sheet as its file shows it: material, kerf and operations from the stock, amounts by a comparison.

Which parts there are, and how large, is asked of the builders: each of their parts is proven in a file of its own. So
what is said of parts, waste, lengths and time is compared with these parts, measured another way; it is no second
way to the parts themselves.
"""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Iterator, Mapping
from itertools import pairwise

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Part
from layout.messages.english import ENGLISH
from layout.messages.roles import JobSheet
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.lettering.fonts import metrics
from templates_gen.lettering.outlines import contours_of
from templates_gen.messages.roles.proof_cut import Job
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.finding import said as place
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.whole_boards import copies

_OPERATIONS = ("engrave", "score", "cut", "reference")
_SCAN = 0.1  # mm between the lines that engrave an area, stated again on purpose
_NUMBER = re.compile(r"\d+(?:\.\d+)?")
_QUANTITIES = re.compile(r"(\d+): (.*); ([\d.]+) % of the sheets is waste, gaps included")
_COPIES = re.compile(r"(\d+) x ([^;]+)")
_DANGERS = (
    "own rules", "trained", "never left alone", "extinguisher", "Extraction", "interlocks", "eyes", "PVC or vinyl",
    "hydrogen chloride", "no plastic", "children",
)  # fmt: skip


def prove_facts(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """Material, thickness, sheets, parts, waste, kerf, operations with colour and amount, and the time."""
    said, parts = _rows(seen), _parts(plan, stock)
    work = _work(parts)
    wrong = [
        *_plain(said, stock),
        *_sheets(said, stock, parts),
        *_amounts(said, stock, work),
        *_time(said.get("Time", ""), stock, work),
    ]
    return Findings(0.0, tuple(each.at(place(Job.SHEET)) for each in wrong))


def _rows(seen: FoundPart) -> Mapping[str, str]:
    """The words behind every label, their lines put together."""
    words = _in_rows(seen)
    label_x = min((at.x for at, _ in words), default=0.0)
    rows: dict[str, str] = {}
    label = ""
    for at, text in words:
        if abs(at.x - label_x) < 1e-3:
            label = text
            rows[label] = ""
        else:
            rows[label] = f"{rows[label]} {text}".strip()
    return rows


def _in_rows(seen: FoundPart) -> list[tuple[Point, str]]:
    """All words from top to bottom, and from left to right among those whose baselines lie within the limit."""
    rows: list[list[tuple[Point, str]]] = []
    for at, text in sorted(seen.words(), key=lambda each: -each[0].y):
        if not rows or rows[-1][-1][0].y - at.y > LIMIT:
            rows.append([])
        rows[-1].append((at, text))
    return [each for row in rows for each in sorted(row, key=lambda each: each[0].x)]


def _parts(plan: Plan, stock: Stock) -> list[Part]:
    """Every part on the boards, with all copies of it."""
    needed = copies(plan.kit, stock)
    found: list[Part] = []
    for name in cut_suiting(plan):
        try:
            built = CUT_PRODUCTS[name].builds(plan, stock, metrics()) if name != "trial-cut" else ()
        except FieldError:  # the stock cannot give it: it is on no board
            continue
        found += [part for part in built for _ in range(needed.get(part.name, 1))]
    return found


def _work(parts: list[Part]) -> dict[str, float]:
    """Metres cut and scored, and mm2 engraved."""
    shapes = [shape for part in parts for shape in part.shapes]
    lines = {
        name: sum(_length(shape) for shape in shapes if isinstance(shape, Curve) and shape.pen is pen) / 1000
        for name, pen in (("cut", Pen.THROUGH), ("score", Pen.SCORE))
    }
    words = [shape for shape in shapes if isinstance(shape, Text) and shape.pen is Pen.ENGRAVE]
    return {**lines, "engrave": abs(sum(_area(contour) for text in words for contour in contours_of(text)))}


def _length(path: Curve) -> float:
    total, start = 0.0, path.start
    for end, through in path.steps:
        total += math.dist(start, end) if through is None else _arc(start, through, end)
        start = end
    return total + (math.dist(start, path.start) if path.closed else 0.0)


def _arc(start: Point, through: Point, end: Point) -> float:
    """By Heron: three sides give the radius a b c / (4 area), each chord its angle 2 asin(chord / 2 r)."""
    a, b, c = math.dist(start, through), math.dist(through, end), math.dist(start, end)
    area = abs((through.x - start.x) * (end.y - start.y) - (end.x - start.x) * (through.y - start.y)) / 2
    radius = a * b * c / (4 * area)
    return 2 * radius * (math.asin(a / (2 * radius)) + math.asin(b / (2 * radius)))


def _area(points: list[Point]) -> float:
    """A fan of triangles from the first corner."""
    x, y = points[0]
    return sum(((b.x - x) * (c.y - y) - (c.x - x) * (b.y - y)) / 2 for b, c in pairwise(points[1:]))


def _plain(said: Mapping[str, str], stock: Stock) -> Iterator[Finding]:
    kerf = said.get("Kerf", "")
    wanted = {"Material": f"{stock.material} ({stock.name})", "Thickness": f"{stock.thickness:g} mm"}
    for label, words in wanted.items():
        if said.get(label, "").replace(" ", "") != words.replace(" ", ""):  # a long name is broken anywhere
            yield finding(Job.STOCK, label=label, found=said.get(label), wanted=words)
    numbers = {float(number) for number in _NUMBER.findall(kerf)}
    if (
        numbers != {stock.kerf_x, stock.kerf_y}
        or ("not drawn in" in kerf) == stock.kerf_drawn
        or "drawn in" not in kerf
    ):
        yield finding(Job.KERF, words=kerf)
    if stock.grain != "none" and not said.get("Grain", "").startswith(f"runs along {stock.grain}"):
        yield finding(Job.GRAIN, words=said.get("Grain"))


def _sheets(said: Mapping[str, str], stock: Stock, parts: list[Part]) -> Iterator[Finding]:
    numbers = [float(number) for number in _NUMBER.findall(said.get("Sheets", ""))]
    quantities = _QUANTITIES.fullmatch(said.get("Parts", ""))
    if len(numbers) != 4 or quantities is None:
        yield finding(Job.NO_COUNTS)
        return
    count, width, height, least = numbers
    area = sum(part.length * part.height for part in parts)
    bound = math.ceil(area / (stock.width * stock.height) - 1e-9)
    if (width, height) != (stock.width, stock.height) or not bound <= least <= count:
        yield finding(Job.SHEETS, found=said["Sheets"], width=stock.width, height=stock.height, bound=bound)
    waste = 100 * (1 - area / (count * stock.width * stock.height))
    if int(quantities[1]) != len(parts) or abs(float(quantities[3]) - waste) > 0.051:
        yield finding(Job.PARTS, found=said["Parts"], parts=len(parts), waste=waste)
    titles = Counter(part.title for part in parts)
    many = {title: int(count) for count, title in _COPIES.findall(quantities[2])}
    if many != {title: count for title, count in titles.items() if count > 1}:
        yield finding(Job.COPIES, found=said["Parts"], wanted=dict(titles))


def _amounts(said: Mapping[str, str], stock: Stock, work: Mapping[str, float]) -> Iterator[Finding]:
    order = [label for label in said if label.split()[-1] in _OPERATIONS]
    if [label.split()[-1] for label in order] != list(_OPERATIONS):
        yield finding(Job.OPERATIONS, found=", ".join(order))
        return
    for label, name in zip(order, _OPERATIONS, strict=True):
        colour, _, amount = said[label].partition("; ")
        if not colour.endswith(stock.operations[name].colour):
            yield finding(Job.COLOUR, found=colour, name=name, colour=stock.operations[name].colour)
        if name in work and not _is(amount, work[name], 0.51 if name == "engrave" else 0.000_51):
            yield finding(Job.AMOUNT, found=amount, name=name, wanted=work[name])


def _time(words: str, stock: Stock, work: Mapping[str, float]) -> Iterator[Finding]:
    travels = {"cut": work["cut"] * 1000, "score": work["score"] * 1000, "engrave": work["engrave"] / _SCAN}
    if any(travel and name not in stock.speeds for name, travel in travels.items()):
        missing = [name for name in ("engrave", "score", "cut") if travels[name] and name not in stock.speeds]
        if words != ENGLISH.say(JobSheet.TIME_UNKNOWN, operations=ENGLISH.all_of(missing)):
            yield finding(Job.TIME, words=words)
        return
    minutes = sum(travel / stock.speeds[name] for name, travel in travels.items() if travel) / 60
    if not _is(words, minutes, 0.051) or "estimate" not in words:
        yield finding(Job.MINUTES, found=words, wanted=minutes)


def _is(words: str, value: float, within: float) -> bool:
    """Whether the first number among the words is `value`."""
    found = _NUMBER.search(words)
    return found is not None and abs(float(found[0]) - value) <= within


def prove_safety(_: Plan, __: Stock, seen: FoundPart) -> Findings:
    """Every danger is named."""
    text = " ".join(_rows(seen).values())
    missing = [danger for danger in _DANGERS if danger not in text]
    return Findings(0.0, (finding(Job.RULES, dangers=", ".join(missing)),) if missing else ())
