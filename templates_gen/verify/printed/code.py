"""The code of a sheet: its modules as they were read, and what it says, computed on its own from what the file carries.

The library that made the code has no part in this: its modules are read by `readers.data_matrix`.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import ceil, dist
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet
from templates_gen.document import Document, ReadError
from templates_gen.messages.roles.proof import Proof
from templates_gen.messages.roles.proof_printed import SheetCode
from templates_gen.readers.data_matrix import SIDE, text_of
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_around, box_of_shape, middle_of, reaches
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said, wrong

_MODULE, _WHITE = 0.6, 0.6  # mm
_EDGE, _FOOT, _SQUARE = 8.0, 18.0, 12.0  # from the side and the lower edge of the sheet; with the white round it
_STRETCH = 2.0  # mm
_ROUNDED = 0.005  # mm: the code has hundredths
_BASE36 = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def prove_codes(found: Document) -> Findings:
    """Every sheet of a file on paper has one code, which says of it what is true."""
    sheets, total = found.sheets, NOTHING
    for number, sheet in enumerate(sheets, 1):
        said_there = prove_code(sheet, found.about.inputs, number, len(sheets))
        total += said_there.at(said(Proof.SHEET, number=number))
    return total


def prove_code(sheet: Sheet, inputs: str, number: int, count: int) -> Findings:
    """The code of sheet `number` of `count`, whose file carries `inputs`.

    It stands at the left; at the right where a part lies across the sheet. Elsewhere a check scale stands there.
    """
    low = _low(sheet)
    left, right = (_square(low, at) for at in (_EDGE, sheet.width - _EDGE - _SQUARE))
    squares = [square for square in (left, right) if square and not square.stray]
    if not squares and left:
        return wrong(SheetCode.STRAY)
    if len(squares) != 1:
        return wrong(SheetCode.COUNT, found=len(squares))
    (square,) = squares
    try:
        text = text_of(square.bits)
    except ReadError as error:
        return wrong(SheetCode.UNREADABLE, why=str(error))
    off = () if square.deviation <= LIMIT else (finding(SheetCode.OFF),)
    return Findings(square.deviation, (*off, *_says(text, sheet, inputs, number, count)))


def _says(text: str, sheet: Sheet, inputs: str, number: int, count: int) -> Iterator[Finding]:
    digest = _digest(inputs)
    if digest is None or not text.startswith(f"TG1{digest}"):
        yield finding(SheetCode.OTHER)
        return
    own, total, wide, high = (int(text[i:j], 36) for i, j in ((12, 14), (14, 16), (16, 20), (20, 24)))
    if (own, total) != (number, count):
        yield finding(SheetCode.NUMBER, found=own, total=total, number=number, count=count)
    if not _framed_by_targets(sheet, wide / 100, high / 100):
        yield finding(SheetCode.RECTANGLE, wide=wide / 100, high=high / 100)


def _digest(inputs: str) -> str | None:
    """The digest once more: SHA-256 of the values, keys sorted, without shop, prices and printer, modulo 36^9.

    None where the inputs are no values.
    """
    try:
        values = json.loads(inputs)
    except (ValueError, RecursionError):
        return None
    if not isinstance(values, dict):
        return None
    for key in ("shop", "printer"):
        values.pop(key, None)
    for table in values.values():
        for key in ("prices", "printer"):
            if isinstance(table, dict):
                table.pop(key, None)
    data = json.dumps(values, sort_keys=True, separators=(",", ":")).encode()
    rest, digits = int(hashlib.sha256(data).hexdigest(), 16), ""
    for _ in range(9):
        digits = _BASE36[rest % 36] + digits
        rest //= 36
    return digits


def _framed_by_targets(sheet: Sheet, wide: float, high: float) -> bool:
    """Whether the rings in the corners are so far apart, in mm, and all others lie on the sides between them."""
    rings = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.TARGET]
    middles = list(map(middle_of, rings))
    if not middles:
        return False
    ways = [(right, up) for up in (0, 1) for right in (0, 1)]
    corners = [min(middles, key=lambda at: dist(at, (right * sheet.width, up * sheet.height))) for right, up in ways]
    left, low = corners[0]
    wanted = [Point(left + right * wide, low + up * high) for right, up in ways]
    if not all(_near(one.x, two.x) and _near(one.y, two.y) for one, two in zip(corners, wanted, strict=True)):
        return False
    ends = corners[0], corners[3]
    return all(any(_near(at.x, end.x) or _near(at.y, end.y) for end in ends) for at in middles)


def _near(one: float, other: float) -> bool:
    return abs(one - other) <= _ROUNDED + LIMIT


class _Square(NamedTuple):
    """Which modules are black, how far the edges of the black lie off the grid, and whether anything else is there."""

    bits: Sequence[Sequence[bool]]
    deviation: float
    stray: bool


class _Low(NamedTuple):
    """Something that reaches as low as a code: its points, its box, and its outline where it is one of a black area."""

    points: Sequence[Point]
    box: Box
    outline: Curve | None


def _low(sheet: Sheet) -> list[_Low]:
    """What reaches into the height at which a code stands, anywhere across the sheet."""
    found = []
    for shape in sheet.shapes:
        if _is_low(box_of_shape(shape)):  # most of a sheet stands higher
            boxes = ((points, box_around(points), outline) for points, outline in _drawn(shape))
            found += [_Low(points, box, outline) for points, box, outline in boxes if _is_low(box)]
    return found


def _is_low(box: Box) -> bool:
    return box[1] < _FOOT + _SQUARE and box[3] > _FOOT


def _square(low: Sequence[_Low], left: float) -> _Square | None:
    """What is black in the square that begins `left` mm from the left side; None where it is empty."""
    begin, top = left + _WHITE, _FOOT + _SQUARE - _WHITE
    counts = [[0] * SIDE for _ in range(SIDE)]
    deviation, stray, empty = 0.0, False, True
    box = left, _FOOT, left + _SQUARE, _FOOT + _SQUARE
    for points, (first, lowest, last, highest), contour in low:
        edges = (first - begin, last - begin, top - highest, top - lowest)
        if edges[1] <= -_WHITE or edges[3] <= -_WHITE or edges[0] >= _SQUARE - _WHITE or edges[2] >= _SQUARE - _WHITE:
            continue
        if contour is None and len(points) > 1 and not reaches(points, box):
            continue  # a slanted part whose box is larger than what it draws
        empty = False
        near = [round(edge / _MODULE) for edge in edges]
        inside = 0 <= near[0] < near[1] <= SIDE and 0 <= near[2] < near[3] <= SIDE
        if contour is None or not _is_rectangle(contour) or not inside:
            stray = True
            continue
        deviation = max(deviation, *[abs(edge - k * _MODULE) for edge, k in zip(edges, near, strict=True)])
        for row in range(near[2], near[3]):
            for column in range(near[0], near[1]):
                counts[row][column] += 1
    if empty:
        return None
    twice = any(count > 1 for row in counts for count in row)
    return _Square([[count == 1 for count in row] for row in counts], deviation, stray or twice)


def _drawn(shape: Shape) -> Iterator[tuple[Sequence[Point], Curve | None]]:
    """The points of every contour of a black area with its outline, and short stretches of all other lines."""
    if isinstance(shape, Text):
        yield (shape.at,), None
    elif isinstance(shape, Region) and shape.pen is Pen.SOLID:
        yield from ((contour.points(), contour) for contour in shape.contours)
    else:
        for path in shape.contours if isinstance(shape, Region) else (shape,):
            yield from ((stretch, None) for stretch in _stretches(path))


def _stretches(path: Curve) -> Iterator[tuple[Point, Point]]:
    """A path in stretches of a few mm: the box of a long line that lies across the sheet holds much of it."""
    points = [*path.points(), *([path.start] if path.closed else [])]
    for one, other in pairwise(points):
        slanted = min(abs(one.x - other.x), abs(one.y - other.y)) > LIMIT
        count = ceil(dist(one, other) / _STRETCH) if slanted else 1
        if count <= 1:
            yield one, other
            continue
        along = [
            Point(one.x + (other.x - one.x) * k / count, one.y + (other.y - one.y) * k / count)
            for k in range(count + 1)
        ]
        yield from pairwise(along)


def _is_rectangle(contour: Curve) -> bool:
    """Whether a path has four corners, and each side lies along the sheet or up it."""
    points = contour.points()
    if points[0] == points[-1]:
        points.pop()
    if len(points) != 4 or any(through for _, through in contour.steps):
        return False
    turns = zip(points, [*points[1:], points[0]], strict=True)
    return all(abs(x - to_x) <= LIMIT or abs(y - to_y) <= LIMIT for (x, y), (to_x, to_y) in turns)
