"""The pictures of boards on the job sheet: the board's form, and its parts as they are listed."""

from __future__ import annotations

import math
import re
from itertools import combinations

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point
from layout.plan import Plan
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_cut import Board
from templates_gen.verify.finding import Findings, finding, said
from templates_gen.verify.found_parts import FoundPart

_TENTH = 0.1
_NEAR = 1.5  # mm between a number and the line that leads to its part
_SIZE = 7.5 * 25.4 / 72  # of numbers, in mm: 7.5 points, stated again on purpose


def prove_picture(_: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """The board keeps its proportion; the parts listed are those drawn, inside it and off each other."""
    paths = [shape for shape in seen.shapes() if isinstance(shape, Curve)]
    edges = [_box(path) for path in paths if path.pen is Pen.REGISTER and path.closed]
    if len(edges) != 1:
        return Findings(0.0, (finding(Board.BOARDS, boards=len(edges)),))
    ((left, low, right, high),) = edges
    scale = (right - left) / stock.width
    boxes = [_box(path) for path in paths if path.pen is Pen.HELP]
    outer = [box for box in boxes if not any(_inside(box, other) for other in boxes if other != box)]
    wrong = []
    if abs((high - low) - stock.height * scale) > 1e-3:
        wrong.append(finding(Board.FORM))
    if not all(_inside(box, edges[0]) for box in outer) or any(_meet(*pair) for pair in combinations(outer, 2)):
        wrong.append(finding(Board.OVERLAP))
    if not _same([(box[2] - box[0], box[3] - box[1]) for box in outer], scale, seen):
        wrong.append(finding(Board.PARTS))
    elif not _numbered(outer, paths, scale, seen):
        wrong.append(finding(Board.NUMBER))
    return Findings(0.0, tuple(each.at(said(Board.PICTURE)) for each in wrong))


def _numbered(boxes: list[Box], paths: list[Curve], scale: float, seen: FoundPart) -> bool:
    """Whether the number of every entry of the list stands in a part of its size, or at a line that ends in one."""
    spots = {words: at for at, words in seen.words() if words.isdecimal()}
    ends = [path.points() for path in paths if path.pen is Pen.REGISTER and not path.closed]
    of: dict[str, Box] = {label: box for label, at in spots.items() for box in boxes if _in(at, box)}
    beside = {label: at for label, at in spots.items() if label not in of}
    for one, other in ends:
        for start, end in ((one, other), (other, one)):
            found = [box for box in boxes if _in(end, box)]
            near = min(beside, key=lambda label: _off(start, label, beside[label]), default="")
            if found and near and _off(start, near, beside[near]) < _NEAR:
                of[near] = found[0]
    listed = [(words.partition("  ")[0], size) for words, size in _entries(seen)]
    return len(set(of.values())) == len(boxes) == len(listed) and all(
        label in of and _alike((of[label][2] - of[label][0], of[label][3] - of[label][1]), size, scale)
        for label, size in listed
    )


def _off(point: Point, label: str, at: Point) -> float:
    """How far a point lies off the rectangle of a number that begins at `at`."""
    wide, tall = metrics().width(label, _SIZE), metrics().cap * _SIZE
    across = max(at.x - point.x, point.x - at.x - wide, 0.0)
    return math.hypot(across, max(at.y - point.y, point.y - at.y - tall, 0.0))


def _in(point: Point, box: Box) -> bool:
    return box[0] < point.x < box[2] and box[1] < point.y < box[3]


def _alike(drawn: tuple[float, float], size: tuple[float, float], scale: float) -> bool:
    """Whether a part is drawn in the size that is listed, as it lies or turned."""
    wanted = size[0] * scale, size[1] * scale
    return min(math.dist(drawn, wanted), math.dist(drawn, wanted[::-1])) <= _TENTH * scale


def _same(drawn: list[tuple[float, float]], scale: float, seen: FoundPart) -> bool:
    """Whether every part of the list, whose sizes are said to a tenth, is drawn once, and no other."""
    left = list(drawn)
    for width, height in _listed(seen):
        near = [size for size in left if _alike(size, (width, height), scale)]
        if not near:
            return False
        left.remove(near[0])
    return not left


def _box(path: Curve) -> Box:
    xs, ys = zip(*path.points(), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def _inside(one: Box, other: Box) -> bool:
    return other[0] < one[0] and other[1] < one[1] and one[2] < other[2] and one[3] < other[3]


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def _listed(seen: FoundPart) -> list[tuple[float, float]]:
    """The size of every part in the list."""
    return [size for _, size in _entries(seen)]


def _entries(seen: FoundPart) -> list[tuple[str, tuple[float, float]]]:
    """Every entry of the list with the size that it says."""
    found = ((words, re.fullmatch(r"\d+  .*, ([\d.]+) x ([\d.]+) mm", words)) for _, words in seen.words())
    return [(words, (float(size[1]), float(size[2]))) for words, size in found if size]
