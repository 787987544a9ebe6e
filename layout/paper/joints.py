"""A part in several pieces: every position stays where it was, and each joint shows the same three crosses twice."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from math import cos, radians

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet
from layout.paper.clipping import clipped

OVERLAP = 14.0
"""Each piece goes on this far past its joints, in mm."""

MOST_PIECES, LEAST_PIECE = 60, 40.0
"""A part is not cut into more pieces than this, nor into shorter ones, in mm."""

_OFF, _ARM, _THIRD = 5.0, 4.0, 9.5
_WHOLE = 8.0  # and further, at most so far, where a running total would be cut from its line
_LABEL_AT, _CLEAR = 8.0, 0.3

Build = Callable[[bool, Sequence[float]], Part]
"""Makes a part: in its low form or not, with words clear of these joints."""


def frame_of(part: Part, count: int) -> Part:
    """An empty piece as large as each of `count` pieces of `part` would be."""
    _, low, _, high = part.box
    length = part.length / count + 2 * (OVERLAP + _WHOLE)
    return replace(part, shapes=(), box=(0.0, low - _OFF - _ARM, length, high + _OFF + _ARM))


def joints_of(part: Part, count: int) -> list[float]:
    """Where the joints of `count` equal pieces lie."""
    return [part.box[0] + part.length * k / count for k in range(1, count)]


def pieces(part: Part, joints: Sequence[float], metrics: FontMetrics) -> list[Part]:
    """`part` cut at `joints`, each piece with the crosses of its joints and its number written beside it."""
    left, low, right, high = part.box
    edges = [left, *joints, right]
    totals = [*_totals(part.shapes, metrics), *_engraved(part.shapes, metrics)]
    found = []
    for k, (start, end) in enumerate(pairwise(edges)):
        begin = _off(start - OVERLAP, totals, 0) if k else left
        stop = _off(end + OVERLAP, totals, 1) if k < len(joints) else right
        marks = [point for joint in (start, end) if joint in joints for point in _crosses(joint, low, high)]
        kept = [point for point in part.datum if begin <= point.x <= stop]
        hairs = [hair for point in marks for hair in cross(point, _ARM, Pen.REGISTER)]
        said = ENGLISH.say(Sheet.PIECE, number=k + 1, total=len(edges) - 1)
        label = Text(Point(start + _LABEL_AT, high + _OFF - 1), SMALL, said)
        shapes = (*hairs, *_within(part.shapes, begin, stop, metrics), label)
        box = (begin, low - _OFF - _ARM, stop, high + _OFF + _ARM)
        found.append(replace(part, shapes=shapes, datum=(*marks, *kept), box=box))
    return found


def proof_distance(part: Part) -> float:
    """The distance in mm between the crosses at both ends of `part`, over all joints."""
    return max(point.x for point in part.datum) - min(point.x for point in part.datum)


def _crosses(joint: float, low: float, high: float) -> tuple[Point, Point, Point]:
    return Point(joint, high + _OFF), Point(joint, low - _OFF), Point(joint + _THIRD, low - _OFF)


Span = tuple[float, float]


def _totals(shapes: Sequence[Shape], metrics: FontMetrics) -> list[Span]:
    """From where to where each unit line and the total drawn after it reach."""
    spans = []
    for one, other in pairwise(shapes):
        if isinstance(one, Curve) and one.pen is Pen.UNIT and isinstance(other, Text):
            first, last = _span(other, metrics)
            spans.append((min(first, one.start.x) - _CLEAR, max(last, one.start.x) + _CLEAR))
    return spans


def _engraved(shapes: Sequence[Shape], metrics: FontMetrics) -> list[Span]:
    """From where to where the words on a part that is cut reach: they are not broken, so a piece holds them whole."""
    cut = any(isinstance(shape, Curve) and shape.pen is Pen.THROUGH for shape in shapes)
    return [_span(shape, metrics) for shape in shapes if cut and isinstance(shape, Text)]


def _off(edge: float, spans: Sequence[Span], side: int) -> float:
    """`edge`, or the `side` (0 lower, 1 upper) of the span that it would cut."""
    return next((span[side] for span in spans if span[0] < edge < span[1]), edge)


def _span(shape: Text | Region, metrics: FontMetrics) -> Span:
    if isinstance(shape, Text):
        end = shape.at.x + metrics.width(shape.words, shape.size, shape.pen) * cos(radians(shape.angle))
        return min(shape.at.x, end), max(shape.at.x, end)
    xs = [point.x for contour in shape.contours for point in contour.points()]
    return min(xs), max(xs)


def _within(shapes: Sequence[Shape], begin: float, stop: float, metrics: FontMetrics) -> list[Shape]:
    """Lines cut off at `begin` and `stop`; words, with the arrow head drawn after them, only where they are whole."""
    kept: list[Shape] = []
    phrase: list[Text | Region] = []
    for shape in [*shapes, None]:
        if phrase and not isinstance(shape, Region):
            spans = [_span(piece, metrics) for piece in phrase]
            kept += phrase if all(begin <= first and last <= stop for first, last in spans) else []
            phrase = []
        if isinstance(shape, Curve):
            kept += clipped(shape, begin, stop)
        elif shape is not None:
            phrase.append(shape)
    return kept
