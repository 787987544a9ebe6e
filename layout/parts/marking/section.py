"""The lower bar of the frame, seen from the right, with its strip round it: which line comes where."""

from __future__ import annotations

from collections.abc import Iterator
from math import cos, radians, sin

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, Text, arc, circle, filled, line, rectangle
from layout.drawing.sheet import Block
from layout.drawing.signs import leader, triangle
from layout.drawing.typeset import SMALL, leading, longest_word, wrap
from layout.frames.kinds.flat_ends import FlatEnd
from layout.messages.roles import Marking
from layout.plan import Plan
from layout.values.units import say_length

_X, _Y = 50.0, -28.0  # the middle of the bar, or of the board's rounded edge
_BAR, _STRIP, _THREAD = 16.6, 18.0, 20.0  # radii in mm: bar, strip, thread
_HIGH = 58.0
_FLAP, _FLAT = 44.0, 11.0  # degrees that the flap takes up behind; mm on the flats of a board
_LEFT, _RIGHT, _WIDE = 24.0, 76.0, 97.0  # where words beside the picture end and begin, and the width of the column
_THREAD_TOP, _HEAD = -1.0, -9.0
_LABEL, _INTO = 1.0, 0.95  # from a leader to its words; half the height of capitals


def section(plan: Plan, metrics: FontMetrics, *, low: bool) -> Block:
    """The picture: a round bar or the edge of a board, its strip, the thread, and their names."""
    board = isinstance(plan.kit.frame.ends, FlatEnd)
    title = Marking.SECTION_LOW if low else Marking.SECTION_EDGE if board else Marking.SECTION
    shapes = [*_wood(plan, metrics, board=board), *_thread(plan, metrics), *_strip(low=low, board=board)]
    for thing, end, words in _names(plan, low=low, board=board):
        shapes += _named(thing, end, words, metrics)
    return Block(plan.words.say(title), plan.words.say(Marking.FROM_RIGHT), tuple(shapes), _HIGH)


def _at(radius: float, degrees: float) -> Point:
    """A point about the middle: 180 is the face, 270 the outermost line, 360 the back."""
    return Point(_X + radius * cos(radians(degrees)), _Y + radius * sin(radians(degrees)))


def _wood(plan: Plan, metrics: FontMetrics, *, board: bool) -> list[Shape]:
    """The bar, or the board as far as it is seen, grey with an outline, its name and size inside."""
    ends, say = plan.kit.frame.ends, plan.words.say
    if isinstance(ends, FlatEnd):
        top = _THREAD_TOP - 2
        steps = (Step(_at(_BAR, 180)), *arc(Point(_X, _Y), _BAR, 180, 360), Step(Point(_X + _BAR, top)))
        edge = Curve(Point(_X - _BAR, top), steps, Pen.OUTLINE)
        grey = Region((Curve(edge.start, edge.steps, Pen.TINT, closed=True),), Pen.TINT)
        size = say_length(ends.thickness, plan.words)
    else:
        edge = circle(Point(_X, _Y), _BAR, Pen.OUTLINE)
        grey = Region((edge._replace(pen=Pen.TINT),), Pen.TINT)
        size = say_length(ends.diameter, plan.words)  # type: ignore[attr-defined]
    name = say(Marking.BOARD if board else Marking.BAR)
    rows = ((name, _Y + 0.5), (size, _Y + 0.5 - leading(SMALL)))
    words = [Text(Point(_X - metrics.width(row, SMALL) / 2, y), SMALL, row) for row, y in rows]
    return [grey, edge, *words]


def _thread(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """Up on one side and down on the other, with heads that say so; from a rod it lies on both, there and back."""
    steps = (Step(_at(_THREAD, 180)), *arc(Point(_X, _Y), _THREAD, 180, 360), Step(Point(_X + _THREAD, _THREAD_TOP)))
    shapes: list[Shape] = [Curve(Point(_X - _THREAD, _THREAD_TOP), steps, Pen.THREAD)]
    weaving = plan.kit.weaving
    up = (weaving.near_end == "bottom") == (weaving.first_pass == "face")
    roles = (Marking.UP_FACE, Marking.DOWN_BEHIND) if up else (Marking.DOWN_FACE, Marking.UP_BEHIND)
    if plan.warp.kind == "rod":
        roles = (Marking.ON_FACE, Marking.BEHIND)
    else:
        for side in (-1, 1):
            way = 1 if (side < 0) == up else -1
            shapes.append(triangle(Point(_X + side * _THREAD, _HEAD + way * 1.3), Point(0, way), 2.6, 1.8))
    face, behind = map(plan.words.say, roles)
    shapes += _words(face, Point(_X - _THREAD - 1.6, -5.0), metrics, left=True)
    return [*shapes, *_words(behind, Point(_X + _THREAD + 1.6, -5.0), metrics, left=False)]


def _strip(*, low: bool, board: bool) -> list[Shape]:
    """The paper: from the face over the outermost line to the back, and its flap; of a low strip the middle."""
    first, last = (252, 288) if low else (180, 360)
    paper = Curve(_at(_STRIP, first), arc(Point(_X, _Y), _STRIP, first, last), Pen.PICK)
    if low:
        return [paper]
    if board:
        return _on_board(paper)
    outer, inner = _STRIP + 0.9, _STRIP - 0.9
    there = (*arc(Point(_X, _Y), outer, 360, 360 + _FLAP), Step(_at(inner, 360 + _FLAP)))
    back = arc(Point(_X, _Y), inner, 360 + _FLAP, 360)
    grey = Curve(_at(outer, 360), (*there, *back), Pen.HELD, closed=True)
    flap = Curve(_at(_STRIP, 360), arc(Point(_X, _Y), _STRIP, 360, 360 + _FLAP), Pen.OUTLINE)
    return [Region((grey,), Pen.HELD), flap, paper]


def _on_board(paper: Curve) -> list[Shape]:
    """The same with its edge on the flat of the face, and the flap along the flat of the back."""
    left, right, top = _X - _STRIP, _X + _STRIP, _Y + _FLAT
    paper = Curve(Point(left, top), (Step(paper.start), *paper.steps), paper.pen)
    grey = filled(rectangle(right - 0.9, _Y, right + 0.9, top, Pen.HELD).points(), Pen.HELD)
    return [grey, line(Point(right, _Y), Point(right, top), Pen.OUTLINE), paper]


def _names(plan: Plan, *, low: bool, board: bool) -> Iterator[tuple[Point, Point, str]]:
    """What is named: where it is, where its leader ends, its words."""
    say = plan.words.say
    yield _at(_STRIP, 270), Point(_X, _Y - _THREAD - 4.5), say(Marking.OUTERMOST)
    if low:
        return
    edge = Point(_X - _STRIP, _Y + _FLAT) if board else _at(_STRIP, 180)
    figures = Point(_X - _STRIP, _Y + 2) if board else _at(_STRIP, 208)
    yield edge, Point(_LEFT + _LABEL, edge.y + 4), say(Marking.WEAVING_EDGE)
    yield figures, Point(_LEFT + _LABEL, figures.y - 5), say(Marking.NUMBERS)
    yield _at(_STRIP, 360), Point(_RIGHT - _LABEL, _Y - 8), say(Marking.BACK_LINE)
    flap = Point(_X + _STRIP, _Y + _FLAT / 2) if board else _at(_STRIP, 360 + _FLAP / 2)
    yield flap, Point(_RIGHT - _LABEL, _Y + 6), say(Marking.FLAP)


def _named(thing: Point, end: Point, words: str, metrics: FontMetrics) -> list[Shape]:
    """A leader and the words at its end: under it where it goes down, else beside it."""
    if abs(end.x - _X) < 1:
        below = Point(end.x - metrics.width(words, SMALL) / 2, end.y - 3.0)
        return [*leader(thing, end), Text(below, SMALL, words)]
    left = end.x < _X
    said = _words(words, Point(end.x + (-_LABEL if left else _LABEL), end.y - _INTO), metrics, left=left)
    return [*leader(thing, end), *said] if said else []


def _words(words: str, at: Point, metrics: FontMetrics, *, left: bool) -> list[Shape]:
    """Words in lines that end at `at`, to the `left` of the picture, or begin there; none where they have no room."""
    room = at.x if left else _WIDE - at.x
    if longest_word(words, SMALL, metrics) > room:
        return []
    rows = wrap(words, SMALL, room, metrics)
    found: list[Shape] = []
    for k, row in enumerate(rows):
        x = at.x - metrics.width(row, SMALL) if left else at.x
        found.append(Text(Point(x, at.y - k * leading(SMALL)), SMALL, row))
    return found
