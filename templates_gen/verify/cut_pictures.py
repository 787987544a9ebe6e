"""The pictures of boards on the job sheet: the board's form, and its parts as they are listed."""

from __future__ import annotations

import math
import re
from itertools import combinations

from layout.cutting.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Path
from layout.plan import Plan
from templates_gen.verify.compare import Findings
from templates_gen.verify.seen import Seen

_TENTH = 0.1


def prove_picture(_: Plan, stock: Stock, seen: Seen) -> Findings:
    """The board keeps its proportion; the parts listed are those drawn, inside it and off each other."""
    paths = [shape for shape in seen.shapes() if isinstance(shape, Path)]
    edges = [_box(path) for path in paths if path.pen is Pen.REGISTER and path.closed]
    if len(edges) != 1:
        return Findings(0.0, (f"{len(edges)} boards in a picture",))
    ((left, low, right, high),) = edges
    scale = (right - left) / stock.width
    boxes = [_box(path) for path in paths if path.pen is Pen.HELP]
    outer = [box for box in boxes if not any(_inside(box, other) for other in boxes if other != box)]
    wrong = []
    if abs((high - low) - stock.height * scale) > 1e-3:
        wrong.append("a board of another form than the stock")
    if not all(_inside(box, edges[0]) for box in outer) or any(_meet(*pair) for pair in combinations(outer, 2)):
        wrong.append("parts that overlap, or lie outside the board")
    if not _same([(box[2] - box[0], box[3] - box[1]) for box in outer], scale, seen):
        wrong.append("other parts than its list")
    return Findings(0.0, tuple(f"the picture of a board shows {each}" for each in wrong))


def _same(drawn: list[tuple[float, float]], scale: float, seen: Seen) -> bool:
    """Whether every part of the list, whose sizes are said to a tenth, is drawn once, and no other."""
    left = list(drawn)
    for width, height in _listed(seen):
        near = [size for size in left if math.dist(size, (width * scale, height * scale)) <= _TENTH * scale]
        if not near:
            return False
        left.remove(near[0])
    return not left


Box = tuple[float, float, float, float]


def _box(path: Path) -> Box:
    xs, ys = zip(*path.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _inside(one: Box, other: Box) -> bool:
    return other[0] < one[0] and other[1] < one[1] and one[2] < other[2] and one[3] < other[3]


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _listed(seen: Seen) -> list[tuple[float, float]]:
    """The size of every part in the list."""
    sizes = (re.fullmatch(r"\d+  .*, ([\d.]+) x ([\d.]+) mm", words) for _, words in seen.words())
    return [(float(size[1]), float(size[2])) for size in sizes if size]
