"""The job sheet as its file shows it: material, kerf and operations from the stock, amounts by a comparison.

Which parts there are, and how large, is asked of the builders: each of their parts is proven in a file of its own. So
what is said of parts, waste, lengths and time is compared with these parts, measured another way; it is no second
way to the parts themselves.
"""

from __future__ import annotations

import math
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
from templates_gen.verify.cut_parts.job_words import number_in, rows_of, said_of, several_in, values_in
from templates_gen.verify.finding import Finding, Findings, finding
from templates_gen.verify.finding import said as place
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.whole_boards import copies

_OPERATIONS = ("engrave", "score", "cut", "reference")
_SCAN = 0.1  # mm between the lines that engrave an area, stated again on purpose
_RULES = (
    JobSheet.RULE_SHOP,
    JobSheet.RULE_WATCH,
    JobSheet.RULE_AIR,
    JobSheet.RULE_EYES,
    JobSheet.RULE_MATERIAL,
    JobSheet.RULE_PARTS,
)
_PARTS = (JobSheet.PARTS_ONCE, JobSheet.PARTS_SOME, JobSheet.PARTS_MANY)
_WASTE_WITHIN, _MINUTES_WITHIN = 0.051, 0.051
_WITHIN = {"engrave": 0.51, "score": 0.000_51, "cut": 0.000_51}
"""By how much a number that is written short may differ: half of its last figure, and a little for floats."""


def prove_facts(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """Material, thickness, sheets, parts, waste, kerf, operations with colour and amount, and the time."""
    rows, parts = rows_of(seen), _parts(plan, stock)
    work = _work(parts)
    wrong = [
        *_plain(rows, stock),
        *_sheets(rows, stock, parts),
        *_amounts(rows, stock, work),
        *_time(said_of(rows, JobSheet.TIME), stock, work),
    ]
    return Findings(0.0, tuple(each.at(place(Job.SHEET)) for each in wrong))


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


def _plain(rows: Mapping[str, str], stock: Stock) -> Iterator[Finding]:
    material = ENGLISH.say(JobSheet.MATERIAL_IS, material=stock.material, stock=stock.name)
    wanted = {
        JobSheet.MATERIAL: material,
        JobSheet.THICKNESS: ENGLISH.say(JobSheet.THICKNESS_IS, thick=f"{stock.thickness:g}"),
    }
    for label, words in wanted.items():
        if said_of(rows, label).replace(" ", "") != words.replace(" ", ""):  # a long name is broken anywhere
            yield finding(Job.STOCK, label=label, found=said_of(rows, label), wanted=words)
    kerf = place(JobSheet.KERF_ONE, kerf=f"{stock.kerf_x:g}")
    if stock.kerf_x != stock.kerf_y:
        kerf = place(JobSheet.KERF_TWO, up=f"{stock.kerf_x:g}", across=f"{stock.kerf_y:g}")
    drawn = JobSheet.KERF_DRAWN if stock.kerf_drawn else JobSheet.KERF_LEFT
    if said_of(rows, JobSheet.KERF) != ENGLISH.say(drawn, kerf=kerf):
        yield finding(Job.KERF, words=said_of(rows, JobSheet.KERF))
    grain = place(JobSheet.GRAIN_ALONG, grain=stock.grain) if stock.grain != "none" else place(JobSheet.GRAIN_NONE)
    if said_of(rows, JobSheet.GRAIN) != ENGLISH.words_of(grain):
        yield finding(Job.GRAIN, words=said_of(rows, JobSheet.GRAIN))


def _sheets(rows: Mapping[str, str], stock: Stock, parts: list[Part]) -> Iterator[Finding]:
    titles = Counter(part.title for part in parts)
    many = {title: count for title, count in titles.items() if count > 1}
    found = said_of(rows, JobSheet.PARTS)
    sheets = values_in(said_of(rows, JobSheet.SHEETS), JobSheet.SHEETS_ARE)
    role, said = next(((each, said) for each in _PARTS if (said := values_in(found, each))), (None, None))
    if sheets is None or said is None:
        yield finding(Job.NO_COUNTS)
        return
    count, width, height, least = (number_in(sheets[name]) for name in ("count", "width", "height", "least"))
    area = sum(part.length * part.height for part in parts)
    bound = math.ceil(area / (stock.width * stock.height) - 1e-9)
    if (width, height) != (stock.width, stock.height) or not bound <= least <= count:
        size = said_of(rows, JobSheet.SHEETS)
        yield finding(Job.SHEETS, found=size, width=stock.width, height=stock.height, bound=bound)
    waste = 100 * (1 - area / (count * stock.width * stock.height)) if count > 0 else math.nan
    if number_in(said["count"]) != len(parts) or not abs(number_in(said["waste"]) - waste) <= _WASTE_WITHIN:
        yield finding(Job.PARTS, found=found, parts=len(parts), waste=waste)
    often = {title: number_in(times) for times, title in several_in(said.get("many", ""))}
    if often != many or role != _PARTS[0 if not many else 1 if len(many) < len(titles) else 2]:
        yield finding(Job.COPIES, found=found, wanted=dict(titles))


def _amounts(rows: Mapping[str, str], stock: Stock, work: Mapping[str, float]) -> Iterator[Finding]:
    order = {}
    for label in rows:
        numbered = values_in(label, JobSheet.NUMBERED)
        name = numbered["what"] if numbered else label
        if name in _OPERATIONS:
            order[name] = rows[label]
    if tuple(order) != _OPERATIONS:
        yield finding(Job.OPERATIONS, found=", ".join(order))
        return
    for name, words in order.items():
        role = JobSheet.REFERENCE_IS if name == "reference" else JobSheet.OPERATION_IS
        said = values_in(words, role) or {}
        if said.get("code") != stock.operations[name].colour:
            yield finding(Job.COLOUR, found=words, name=name, colour=stock.operations[name].colour)
        if name in work and not abs(_amount(name, said.get("amount", "")) - work[name]) <= _WITHIN[name]:
            yield finding(Job.AMOUNT, found=said.get("amount"), name=name, wanted=work[name])


def _amount(name: str, words: str) -> float:
    """The area or the length that the words say; not a number where they say none."""
    role, value = (JobSheet.AREA, "area") if name == "engrave" else (JobSheet.LENGTH, "length")
    found = values_in(words, role)
    return number_in(found[value]) if found else math.nan


def _time(words: str, stock: Stock, work: Mapping[str, float]) -> Iterator[Finding]:
    travels = {"cut": work["cut"] * 1000, "score": work["score"] * 1000, "engrave": work["engrave"] / _SCAN}
    if any(travel and name not in stock.speeds for name, travel in travels.items()):
        missing = [name for name in ("engrave", "score", "cut") if travels[name] and name not in stock.speeds]
        if words != ENGLISH.say(JobSheet.TIME_UNKNOWN, operations=ENGLISH.all_of(missing)):
            yield finding(Job.TIME, words=words)
        return
    minutes = sum(travel / stock.speeds[name] for name, travel in travels.items() if travel) / 60
    said = values_in(words, JobSheet.TIME_IS)
    if said is None or not abs(number_in(said["minutes"]) - minutes) <= _MINUTES_WITHIN:
        yield finding(Job.MINUTES, found=words, wanted=minutes)


def prove_safety(_: Plan, __: Stock, seen: FoundPart) -> Findings:
    """Every rule stands there, word for word."""
    found = set(rows_of(seen).values())
    return Findings(0.0, tuple(finding(Job.RULE, rule=rule) for rule in _RULES if ENGLISH.say(rule) not in found))
