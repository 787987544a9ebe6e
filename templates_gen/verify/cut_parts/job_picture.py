"""The picture of a board on a job sheet: the board's form, its parts filled and numbered, the square and the origin."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import combinations
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region
from templates_gen.messages.roles.proof_cut import Board
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart

_TENTH = 0.1
_SAME = 1e-3
_RING = 2.4  # mm, the radius of a ring on a picture, stated again on purpose
_SQUARE = 50.0


class Shown(NamedTuple):
    """A part in a picture: the number of its ring, and its size on the board in mm, the longer side first."""

    number: int
    long: float
    short: float


class Picture(NamedTuple):
    """The parts in a picture, where the board lies on the part of the sheet, what is wrong, what parts take in mm."""

    shown: tuple[Shown, ...]
    board: Box
    wrong: tuple[Finding, ...]
    taken: tuple[Box, ...] = ()


def read_picture(stock: Stock, seen: FoundPart) -> Picture:
    """What a picture shows; without a board nothing more."""
    paths = [shape for shape in seen.shapes() if isinstance(shape, Curve)]
    edges = [box_of(path) for path in paths if path.pen is Pen.LIMIT and path.closed]
    if len(edges) != 1:
        return Picture((), (0.0, 0.0, 0.0, 0.0), (finding(Board.BOARDS, boards=len(edges)),))
    (board,) = edges
    scale = (board[2] - board[0]) / stock.width
    closed = [path for path in paths if path.pen is Pen.HELP and path.closed]
    boxes = [box_of(path) for path in closed]
    outer = [(path, box) for path, box in zip(closed, boxes, strict=True) if not _in_another(box, boxes)]
    wrong = [*_form(stock, board, scale), *_apart([box for _, box in outer], board), *_signs(seen, board, scale)]
    fills = [shape for shape in seen.shapes() if isinstance(shape, Region) and shape.pen is Pen.TINT]
    if not _filled([path for path, _ in outer], fills):
        wrong.append(finding(Board.FILLED))
    numbers = [_number(box, seen, paths) for _, box in outer]
    if None in numbers or sum(1 for _ in _rings(seen)) != len(outer):
        wrong.append(finding(Board.NUMBER))
    sizes = [sorted(((box[2] - box[0]) / scale, (box[3] - box[1]) / scale)) for _, box in outer]
    shown = [Shown(number or 0, long, short) for number, (short, long) in zip(numbers, sizes, strict=True)]
    taken = tuple(_in_mm(box, board, scale) for _, box in outer)
    return Picture(tuple(shown), board, tuple(wrong), taken)


def _in_mm(box: Box, board: Box, scale: float) -> Box:
    """A box of the picture in mm of the board."""
    left, low, right, high = box
    xs, ys = ((x - board[0]) / scale for x in (left, right)), ((y - board[1]) / scale for y in (low, high))
    (left, right), (low, high) = xs, ys
    return left, low, right, high


def alike(shown: Shown, sizes: tuple[float, float]) -> bool:
    """Whether a part is drawn in a size that is said to a tenth."""
    short, long = sorted(sizes)
    return abs(shown.long - long) <= _TENTH and abs(shown.short - short) <= _TENTH


def _form(stock: Stock, board: Box, scale: float) -> Iterator[Finding]:
    if abs((board[3] - board[1]) - stock.height * scale) > _SAME:
        yield finding(Board.FORM)


def _apart(boxes: Sequence[Box], board: Box) -> Iterator[Finding]:
    left, low, right, high = board
    around = left - _SAME, low - _SAME, right + _SAME, high + _SAME  # a part may lie at the very edge
    if not all(_inside(box, around) for box in boxes) or any(_meet(*pair) for pair in combinations(boxes, 2)):
        yield finding(Board.OVERLAP)


def _signs(seen: FoundPart, board: Box, scale: float) -> Iterator[Finding]:
    """A square of 50 mm on the board, and a dot on the corner that the machine counts from."""
    squares = [box_of(path) for path in seen.paths(Pen.OUTLINE) if path.closed and len(path.steps) == 3]
    sides = [side for box in squares for side in (box[2] - box[0], box[3] - box[1])]
    if (
        len(squares) != 1
        or any(abs(side - _SQUARE * scale) > _SAME for side in sides)
        or not _inside(squares[0], board)
    ):
        yield finding(Board.SQUARE)
    solids = [s for s in seen.shapes() if isinstance(s, Region) and s.pen is Pen.SOLID and len(s.contours) == 1]
    round_ones = [s.contours[0] for s in solids if all(step.through for step in s.contours[0].steps)]
    if not any(math.dist(_centre(path), board[:2]) < _SAME for path in round_ones):
        yield finding(Board.ORIGIN)


def _centre(path: Curve) -> Point:
    left, low, right, high = box_of(path)
    return Point((left + right) / 2, (low + high) / 2)


def _filled(outlines: Sequence[Curve], fills: Sequence[Region]) -> bool:
    """Whether each outline has a fill of its own that begins with it."""
    firsts = [fill.contours[0].points() for fill in fills]
    return len(firsts) == len(outlines) and all(
        any(_same(path.points(), first) for first in firsts) for path in outlines
    )


def _same(one: Sequence[Point], other: Sequence[Point]) -> bool:
    return len(one) == len(other) and all(math.dist(a, b) < _SAME for a, b in zip(one, other, strict=True))


def _rings(seen: FoundPart) -> Iterator[tuple[Point, int]]:
    """The middle of every ring of a part and the number in it."""
    figures = [(at, words) for at, words in seen.words() if words.isdecimal()]
    for path in seen.paths(Pen.RING):
        left, low, right, high = box = box_of(path)
        if abs((right - left) / 2 - _RING) < _SAME and seen.part.name == "job-board":
            inside = [int(words) for at, words in figures if _in(at, box)]
            if len(inside) == 1 and _on_board(seen, Point((left + right) / 2, (low + high) / 2)):
                yield Point((left + right) / 2, (low + high) / 2), inside[0]


def _on_board(seen: FoundPart, at: Point) -> bool:
    """Whether a ring belongs to the picture: it stands on the board or close round it, not in a list below."""
    (board,) = [box_of(path) for path in seen.paths(Pen.LIMIT) if path.closed]
    out = 3 * _RING
    return board[0] - out < at.x < board[2] + out and board[1] - out < at.y < board[3] + out


def _number(box: Box, seen: FoundPart, paths: Sequence[Curve]) -> int | None:
    """The number in the one ring inside a part, or in that at whose line's other end a part lies."""
    inside = [number for at, number in _rings(seen) if _in(at, box)]
    leads = [path.points() for path in paths if path.pen is Pen.HELP and len(path.steps) == 1 and not path.closed]
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    for start, end in leads:
        if math.dist(start, middle) < _SAME:
            inside += [number for at, number in _rings(seen) if abs(math.dist(at, end) - _RING) < _SAME]
    return inside[0] if len(inside) == 1 else None


def _in(point: Point, box: Box) -> bool:
    return box[0] < point.x < box[2] and box[1] < point.y < box[3]


def _in_another(box: Box, boxes: Sequence[Box]) -> bool:
    return any(_inside(box, other) for other in boxes if other != box)


def _inside(one: Box, other: Box) -> bool:
    return other[0] < one[0] and other[1] < one[1] and one[2] < other[2] and one[3] < other[3]


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
