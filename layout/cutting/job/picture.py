"""The picture of a board for the job sheet: smaller than it is, its parts numbered and listed. Not to scale."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise, product

from layout.cutting.job.boards import box_of
from layout.cutting.job.job import Job, amount, crossed, time_words
from layout.cutting.job.leaders import RING, leaders
from layout.cutting.stock.stock import OPERATIONS, Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Shape, Step, Text, rectangle
from layout.drawing.sheet import Part, Piece
from layout.drawing.typeset import LEAD, LEADING, SMALL, left, wrap
from layout.messages.english import ENGLISH
from layout.messages.roles import JobSheet

_IN, _CLEAR, _STEP, _SPOTS = 3.0, 0.5, 0.4, 24
_LEAST = 30.0  # mm: a picture lower than this shows nothing


def picture(job: Job, number: int, width: float, height: float, metrics: FontMetrics) -> Part:
    """The `number`th board (from 1 on) in at most `width` x `height` mm, its words included."""
    pieces = job.boards.sheets[number - 1][:-1]
    words = _words(job, number, width - 2 * _IN, metrics)
    below = [ENGLISH.say(JobSheet.NUMBERED, number=k, what=_named(piece)) for k, piece in enumerate(pieces, 1)]
    listed = _columns(below, width - 2 * _IN, metrics)
    text = (LEADING * (LEAD + SMALL * (len(words) - 1 + len(listed) + 2))) + 2 * _IN
    room = max(height - text, _LEAST)
    shapes: list[Shape] = []
    y = -_IN - metrics.ascent * LEAD
    for line, size in zip(words, (LEAD, *(SMALL for _ in words[1:])), strict=True):
        shapes.append(left(line, size, Point(_IN, y)))
        y -= LEADING * SMALL
    foot, drawn = _board(pieces, job.boards.stock, (y, width - 2 * _IN, room), 0.0, metrics)
    shapes += drawn
    y = foot - LEADING * SMALL * 1.5
    for row in listed:
        shapes += [left(entry, SMALL, Point(_IN + x, y)) for x, entry in row]
        y -= LEADING * SMALL
    return crossed(
        "job-board",
        ENGLISH.say(JobSheet.TITLE),
        shapes,
        (0.0, y + (LEADING + metrics.descent) * SMALL - _IN, width, 0.0),
    )


def _words(job: Job, number: int, width: float, metrics: FontMetrics) -> list[str]:
    stock, work = job.boards.stock, job.works[number - 1]
    values = {"width": f"{stock.width:g}", "height": f"{stock.height:g}", "time": time_words(work, stock)}
    values |= {each: amount(each, work) for each in OPERATIONS[:-1]}
    said = ENGLISH.say(JobSheet.BOARD_IS, **values)
    heading = ENGLISH.say(JobSheet.BOARD, number=number, total=len(job.works))
    return [heading, *wrap(said, SMALL, width, metrics)]


def _named(piece: Piece) -> str:
    size = {"length": f"{piece.part.length:.1f}", "height": f"{piece.part.height:.1f}"}
    return ENGLISH.say(JobSheet.PART, title=piece.part.title, **size)


def _columns(entries: Sequence[str], width: float, metrics: FontMetrics) -> list[list[tuple[float, str]]]:
    """The entries in rows of as many equal columns as fit."""
    widest = max(metrics.width(entry, SMALL) for entry in entries) + 6.0
    count = max(1, int((width + 6.0) / widest))
    return [
        [(k * widest, entry) for k, entry in enumerate(entries[first : first + count])]
        for first in range(0, len(entries), count)
    ]


def _board(
    pieces: Sequence[Piece], stock: Stock, frame: tuple[float, float, float], ring: float, metrics: FontMetrics
) -> tuple[float, list[Shape]]:
    """Where the picture ends below, and its shapes, in a frame from its top, so wide and so high.

    Where a part is too small for its number, a `ring` is kept free round the board.
    """
    top, wide, high = frame
    scale = min((wide - 2 * ring) / stock.width, (high - 2 * ring) / stock.height)
    origin = Point(_IN + ring, top - ring - stock.height * scale)
    board = (origin.x, origin.y, origin.x + stock.width * scale, top - ring)
    shapes: list[Shape] = [rectangle(*board, Pen.REGISTER)]
    boxes = [_box_on(piece, origin, scale) for piece in pieces]
    small: dict[str, Box] = {}
    for label, (piece, box) in enumerate(zip(pieces, boxes, strict=True), 1):
        drawn = list(_drawn(piece, str(label), origin, scale, metrics))
        shapes += drawn
        if not any(isinstance(shape, Text) for shape in drawn):
            small[str(label)] = box
    if small and not ring:
        return _board(pieces, stock, frame, RING, metrics)
    numbers = [shape for shape in shapes if isinstance(shape, Text)]
    return origin.y - ring, [*shapes, *leaders(small, boxes, numbers, board, metrics)]


def _box_on(piece: Piece, origin: Point, scale: float) -> Box:
    low_x, low_y, high_x, high_y = (side * scale for side in box_of(piece))
    return origin.x + low_x, origin.y + low_y, origin.x + high_x, origin.y + high_y


def _drawn(piece: Piece, label: str, origin: Point, scale: float, metrics: FontMetrics) -> Iterator[Shape]:
    """What is cut of a piece, and its number inside, where that finds room."""
    paths = [
        _scaled(shape, origin, scale)
        for shape in piece.placing.shapes(piece.part.shapes)
        if isinstance(shape, Curve) and shape.pen is Pen.THROUGH
    ]
    yield from paths
    box = _box_on(piece, origin, scale)
    if spot := _spot(paths, box, metrics.width(label, SMALL), metrics.cap * SMALL):
        yield Text(spot, SMALL, label)


def _scaled(path: Curve, origin: Point, scale: float) -> Curve:
    def put(point: Point) -> Point:
        return Point(origin.x + point.x * scale, origin.y + point.y * scale)

    steps = tuple(Step(put(end), through and put(through)) for end, through in path.steps)
    return Curve(put(path.start), steps, Pen.HELP, path.closed)


def _spot(paths: Sequence[Curve], box: Box, width: float, height: float) -> Point | None:
    """Where words of that size lie inside what is cut and clear of its lines: the middle-most of a grid of places."""
    outlines = [_corners(path) for path in paths]
    near = [
        point for corners in outlines for one, other in pairwise([*corners, corners[0]]) for point in _along(one, other)
    ]
    low_x, low_y, high_x, high_y = box
    middle = Point((low_x + high_x) / 2, (low_y + high_y) / 2)
    grid = product(range(1, _SPOTS), repeat=2)
    places = [Point(low_x + (high_x - low_x) * a / _SPOTS, low_y + (high_y - low_y) * b / _SPOTS) for a, b in grid]
    for place in sorted(places, key=lambda p: (p.x - middle.x) ** 2 + (p.y - middle.y) ** 2):
        wide, high = width / 2 + _CLEAR, height / 2 + _CLEAR
        if any(abs(x - place.x) < wide and abs(y - place.y) < high for x, y in near):
            continue
        if sum(_crossings(corners, place) for corners in outlines) % 2:
            return Point(place.x - width / 2, place.y - height / 2)
    return None


def _corners(path: Curve) -> list[Point]:
    points = [path.start]
    for end, through in path.steps:
        points += [end] if through is None else [through, end]
    return points


def _along(one: Point, other: Point) -> Iterator[Point]:
    """Points from one to the other, close enough to each other that no word slips between them."""
    count = max(1, int(max(abs(other.x - one.x), abs(other.y - one.y)) / _STEP) + 1)
    for k in range(count):
        yield Point(one.x + (other.x - one.x) * k / count, one.y + (other.y - one.y) * k / count)


def _crossings(corners: Sequence[Point], place: Point) -> int:
    """How often a ray from `place` to the right crosses a closed line."""
    return sum(
        (one.y > place.y) != (other.y > place.y)
        and place.x < one.x + (place.y - one.y) / (other.y - one.y) * (other.x - one.x)
        for one, other in pairwise([*corners, corners[0]])
    )
