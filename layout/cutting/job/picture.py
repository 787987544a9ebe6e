"""The picture of a board for the job sheet: smaller than it is, its parts filled and numbered. Not to scale.

x runs along the lower edge of the board from its lower left corner, y up, in mm of the sheet.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product

from layout.cutting.job.boards import box_of
from layout.cutting.job.job import Job, Label
from layout.cutting.job.leaders import ROUND, leaders
from layout.cutting.job.spots import Outline, spot_in
from layout.cutting.parts.outline import area, turned_back
from layout.cutting.parts.reference_square import SIDE
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Step, Text, circle, rectangle
from layout.drawing.sheet import Piece
from layout.drawing.signs import RING, ring, triangle
from layout.drawing.symbols import beside, centred
from layout.drawing.typeset import FIGURE, SMALL, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import JobSheet

_ORIGIN, _ARROW, _ARROW_SHARE, _WHITE = 1.5, 14.0, 0.6, 1.2
_LINE = 3.6  # mm from baseline to baseline of small words
_IN_SQUARE = 9.0  # mm: a smaller square holds no figure
_FREE, _STEPS = 10.0, 24


def board_shapes(
    job: Job, number: int, width: float, height: float, words: Catalogue, metrics: FontMetrics
) -> tuple[list[Shape], Box]:
    """The `number`th board (from 1 on) in at most `width` x `height` mm, and the box of the board itself.

    Where a part is too small for its ring, the rings of such parts stand beside it, or round the board.
    """
    shapes, box, clear = _drawn(job, number, (width, height), 0.0, words, metrics)
    return (shapes, box) if clear else _drawn(job, number, (width, height), ROUND, words, metrics)[:2]


def _drawn(
    job: Job, number: int, room: tuple[float, float], around: float, words: Catalogue, metrics: FontMetrics
) -> tuple[list[Shape], Box, bool]:
    """The picture with so much free `around` the board, its box, and whether every ring found a free place."""
    stock = job.boards.stock
    *pieces, square = job.boards.sheets[number - 1]
    scale = min((room[0] - 2 * around) / stock.width, (room[1] - 2 * around) / stock.height)
    board = (around, around, around + stock.width * scale, around + stock.height * scale)
    boxes = [_scaled_box(piece, board, scale) for piece in pieces]
    shapes: list[Shape] = [
        rectangle(*board, Pen.LIMIT),
        *_origin(Point(*board[:2]), _ARROW_SHARE * stock.height * scale),
    ]
    small: list[tuple[str, Box]] = []
    square_box = _scaled_box(square, board, scale)
    across = rectangle(*square_box, Pen.OUTLINE)
    for piece, label, box in zip(pieces, job.labels(number, words), boxes, strict=True):
        outlines = list(_outlines(piece, board, scale))
        shapes += [_filled(outlines), *outlines]
        lines = [*outlines, across] if _meet(square_box, box) else outlines
        if marks := _label(Outline.of(outlines, lines, box), label, words, metrics):
            shapes += marks
        else:
            small.append((str(label.number), box))
    lead = leaders(small, boxes, board, around, metrics)
    drawn, own = _square(square_box, board, [*boxes, *lead.boxes], words, metrics)
    shapes += [*lead.shapes, *drawn, *_free_words(board, [*boxes, *lead.boxes, own], words, metrics)]
    return shapes, board, lead.clear


def _origin(at: Point, most: float) -> list[Shape]:
    """A dot on the corner that the machine counts from, and an arrow head on both edges that begin there."""
    far = min(_ARROW, most)
    right, up = Point(at.x + far, at.y), Point(at.x, at.y + far)
    dot = Region((circle(at, _ORIGIN, Pen.SOLID),), Pen.SOLID)
    return [dot, triangle(right, Point(1, 0), 3.0, 2.2), triangle(up, Point(0, 1), 3.0, 2.2)]


def _scaled_box(piece: Piece, board: Box, scale: float) -> Box:
    low_x, low_y, high_x, high_y = (side * scale for side in box_of(piece))
    return board[0] + low_x, board[1] + low_y, board[0] + high_x, board[1] + high_y


def _outlines(piece: Piece, board: Box, scale: float) -> Iterator[Curve]:
    """What is cut of a piece, its outer edge last."""
    for shape in piece.placing.shapes(piece.part.shapes):
        if isinstance(shape, Curve) and shape.pen is Pen.THROUGH:
            yield _scaled(shape, board, scale)


def _scaled(path: Curve, board: Box, scale: float) -> Curve:
    def put(point: Point) -> Point:
        return Point(board[0] + point.x * scale, board[1] + point.y * scale)

    steps = tuple(Step(put(end), through and put(through)) for end, through in path.steps)
    return Curve(put(path.start), steps, Pen.HELP, path.closed)


def _filled(outlines: Sequence[Curve]) -> Region:
    """The part without its holes, which turn back."""
    *holes, outer = (path._replace(pen=Pen.TINT) for path in outlines)
    way = area(outer) > 0
    return Region((outer, *(turned_back(hole) if (area(hole) > 0) == way else hole for hole in holes)), Pen.TINT)


def _label(outline: Outline, label: Label, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """A ring with the number of the part, with how many or which of many beside or under it where that finds room."""
    across = 2 * RING
    if label.which is None and label.copies > 1:
        at = spot_in(outline, across, across)
        return ring(Point(at.x + RING, at.y + RING), str(label.number), metrics) if at else []
    said = (
        words.say(JobSheet.TIMES, count=1)
        if label.copies == 1
        else words.say(JobSheet.WHICH, which=label.which, count=label.copies)
    )
    wide, tall = metrics.width(said, SMALL), metrics.cap * SMALL
    if at := spot_in(outline, across + _WHITE + wide, across):
        middle = at.y + RING
        text = beside(said, Point(at.x + across + _WHITE, middle), metrics, 1)
        return [*ring(Point(at.x + RING, middle), str(label.number), metrics), text]
    if at := spot_in(outline, max(across, wide), across + _WHITE + tall):
        middle = at.x + max(across, wide) / 2
        over = Point(middle, at.y + tall + _WHITE + RING)
        return [*ring(over, str(label.number), metrics), centred(said, Point(middle, at.y + tall / 2), metrics)]
    if at := spot_in(outline, across, across):
        return ring(Point(at.x + RING, at.y + RING), str(label.number), metrics)
    return []


def _square(
    box: Box, board: Box, taken: Sequence[Box], words: Catalogue, metrics: FontMetrics
) -> tuple[list[Shape], Box]:
    """The reference square, its size in it, and what it is for beside it, where nothing stands there."""
    shapes: list[Shape] = [rectangle(*box, Pen.OUTLINE)]
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    if any(_meet(box, each) for each in taken):
        return shapes, box
    if box[2] - box[0] >= _IN_SQUARE:
        x = middle.x - metrics.width(f"{SIDE:g}", FIGURE, Pen.STRONG) / 2
        at = Point(x, middle.y - metrics.cap * FIGURE / 2)
        shapes.append(Text(at, FIGURE, f"{SIDE:g}", pen=Pen.STRONG))
    said = words.say(JobSheet.SQUARE)
    for wide in (44.0, 60.0, 80.0):
        rows = wrap(said, SMALL, wide, metrics)
        reach = max(metrics.width(row, SMALL) for row in rows)
        high = (len(rows) - 1) * _LINE + metrics.cap * SMALL
        left = box[2] + 2.0
        y = max(middle.y, board[1] + high / 2 + 2.6)
        own = (left - 1, y - high / 2 - 1.5, left + reach + 1, y + high / 2 + 1.5)
        if _inside(own, board) and not any(_meet(own, each) for each in taken):
            first = y + high / 2 - metrics.cap * SMALL
            shapes += [Text(Point(left, first - k * _LINE), SMALL, row) for k, row in enumerate(rows)]
            return shapes, (box[0], min(box[1], own[1]), own[2], max(box[3], own[3]))
    return shapes, box


def _free_words(board: Box, taken: Sequence[Box], words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """Where a wide place of the board is free: that it is."""
    said = words.say(JobSheet.FREE)
    wide, tall = metrics.width(said, SMALL) / 2, metrics.cap * SMALL / 2
    best, at = _FREE, None
    for a, b in product(range(1, _STEPS), repeat=2):
        x = board[0] + (board[2] - board[0]) * a / _STEPS
        y = board[1] + (board[3] - board[1]) * b / _STEPS
        own = (x - wide, y - tall, x + wide, y + tall)
        room = min(own[0] - board[0], own[1] - board[1], board[2] - own[2], board[3] - own[3])
        room = min([room, *(_apart(own, each) for each in taken)])
        if room > best:
            best, at = room, Point(x, y)
    return [centred(said, at, metrics)] if at else []


def _apart(one: Box, other: Box) -> float:
    """The white between two boxes along the wider way; negative where they meet."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def _inside(one: Box, board: Box) -> bool:
    return board[0] + 1 < one[0] and board[1] + 1 < one[1] and one[2] < board[2] - 1 and one[3] < board[3] - 1


def _meet(one: Box, other: Box) -> bool:
    return _apart(one, other) < 0
