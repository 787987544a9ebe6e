"""A part in several pieces: every position stays where it was, and each joint shows the same three crosses twice."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from math import cos, radians

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, cross, rectangle
from layout.drawing.sheet import JOINT_THIRD, Part
from layout.drawing.typeset import SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Sheet
from layout.paper.clipping import clipped

OVERLAP = 14.0
"""Each piece goes on this far past its joints, in mm."""

SEAM = 16.0
"""The same where crosses stand within the part; less by up to a number that would be cut."""

OFF_CENTRE = 10.0
"""A joint whose crosses stand within the part keeps so far from the centre, in mm."""

MOST_PIECES, LEAST_PIECE = 60, 40.0
"""A part is not cut into more pieces than this, nor into shorter ones, in mm."""

_OFF, _ARM, _SMALL_ARM, _THIRD = 5.0, 4.0, 1.0, 9.5
_WHOLE = 8.0  # and further, at most so far, where a number would be cut from its mark
_LABEL_AT, _BESIDE, _TOGETHER = 8.0, 1.4, 6.0

_WHOLE_OR_NOT = (Pen.HELP, Pen.HOLE, Pen.UNIT)

Build = Callable[[bool, Sequence[float]], Part]
"""Makes a part: in its low form or not, with words clear of these joints."""


def frame_of(part: Part, count: int) -> Part:
    """An empty piece as large as each of `count` pieces of `part` would be."""
    _, low, _, high = part.box
    past, beside = (SEAM, 0.0) if part.joint_rows else (OVERLAP + _WHOLE, _OFF + _ARM)
    return replace(part, shapes=(), box=(0.0, low - beside, part.length / count + 2 * past, high + beside))


def joints_of(part: Part, count: int) -> list[float]:
    """Where the joints of `count` equal pieces lie; one that would be in the centre lies beside it."""
    equal = [part.box[0] + part.length * k / count for k in range(1, count)]
    return [beside_centre(x) for x in equal] if part.joint_rows else equal


def beside_centre(x: float) -> float:
    """A joint at `x`, or at the left of the centre where that is too close."""
    return -OFF_CENTRE if abs(x) < OFF_CENTRE else x


def pieces(part: Part, joints: Sequence[float], metrics: FontMetrics, words: Catalogue) -> list[Part]:
    """`part` cut at `joints`, each piece with the crosses of its joints.

    Where these stand beside the part, so does the number of the piece, in `words`; else the part itself shows it.
    """
    left, low, right, high = part.box
    edges = [left, *joints, right]
    figures = [*_figures(part.shapes, metrics), *_engraved(part.shapes, metrics)]
    within = part.joint_rows is not None
    past, arm, beside = (SEAM, _SMALL_ARM, 0.0) if within else (OVERLAP, _ARM, _OFF + _ARM)
    found = []
    for k, (start, end) in enumerate(pairwise(edges)):
        begin = _off(start - past, figures, within) if k else left
        stop = _off(end + past, figures, not within) if k < len(joints) else right
        marks = [point for joint in (start, end) if joint in joints for point in crosses_of(joint, part)]
        kept = [point for point in part.datum if begin <= point.x <= stop]
        hairs = [hair for point in marks for hair in cross(point, arm, Pen.REGISTER)]
        label = [] if within else [_label(Point(start + _LABEL_AT, high + _OFF - 1), k + 1, len(edges) - 1, words)]
        shapes = (*hairs, *_within(part.shapes, begin, stop, metrics), *label)
        found.append(
            replace(part, shapes=shapes, datum=(*marks, *kept), box=(begin, low - beside, stop, high + beside))
        )
    return found


def _label(at: Point, number: int, total: int, words: Catalogue) -> Text:
    return Text(at, SMALL, words.say(Sheet.PIECE, number=number, total=total))


def crosses_of(joint: float, part: Part) -> tuple[Point, Point, Point]:
    """Where the three crosses of a joint of `part` stand."""
    _, low, _, high = part.box
    if part.joint_rows:
        first, second = part.joint_rows
        return Point(joint, second), Point(joint, first), Point(joint + JOINT_THIRD, first)
    return Point(joint, high + _OFF), Point(joint, low - _OFF), Point(joint + _THIRD, low - _OFF)


Span = tuple[float, float]


def _figures(shapes: Sequence[Shape], metrics: FontMetrics) -> list[Span]:
    """From where to where each number and the mark beside it reach, with their white."""
    spans = (_span(shape, metrics) for shape in shapes if isinstance(shape, Text) and shape.words.isdigit())
    return [(first - _BESIDE, last + _BESIDE) for first, last in spans]


def _engraved(shapes: Sequence[Shape], metrics: FontMetrics) -> list[Span]:
    """From where to where the words on a part that is cut reach: they are not broken, so a piece holds them whole."""
    cut = any(isinstance(shape, Curve) and shape.pen is Pen.THROUGH for shape in shapes)
    return [_span(shape, metrics) for shape in shapes if cut and isinstance(shape, Text)]


def _off(edge: float, spans: Sequence[Span], side: int) -> float:
    """`edge`, or the `side` (0 lower, 1 upper) of the span that it would cut."""
    return next((span[side] for span in spans if span[0] < edge < span[1]), edge)


def _span(shape: Shape, metrics: FontMetrics) -> Span:
    if isinstance(shape, Text):
        end = shape.at.x + metrics.width(shape.words, shape.size, shape.pen) * cos(radians(shape.angle))
        return min(shape.at.x, end), max(shape.at.x, end)
    ends = [_ends(path) for path in (shape.contours if isinstance(shape, Region) else (shape,))]
    return min(low for low, _ in ends), max(high for _, high in ends)


def _within(shapes: Sequence[Shape], begin: float, stop: float, metrics: FontMetrics) -> list[Shape]:
    """Lines and grey areas cut off at `begin` and `stop`; words and signs only where they are whole."""
    kept: list[Shape] = []
    sign: list[Shape] = []
    for shape in [*shapes, None]:
        if sign and not (shape is not None and _goes_on(sign, shape, metrics)):
            spans = [_span(each, metrics) for each in sign]
            kept += sign if all(begin <= first and last <= stop for first, last in spans) else []
            sign = []
        if shape is not None and _is_whole_or_not(shape, stop - begin):
            low, high = _span(shape, metrics)
            kept += [shape] if begin <= low and high <= stop else []
        elif isinstance(shape, Region) and shape.pen is Pen.TINT:
            kept += _cut_off(shape, begin, stop)
        elif isinstance(shape, Curve) and shape.pen is not Pen.OUTLINE:
            kept += clipped(shape, begin, stop)
        elif shape is not None:
            sign.append(shape)
    return kept


def _is_whole_or_not(shape: Shape, long: float) -> bool:
    """Whether `shape` is a notch, a hole or a dot, which no joint cuts: what is drawn all along a part is longer."""
    if isinstance(shape, Region):
        return shape.pen is Pen.TINT and _length(shape.contours[0]) < long
    return isinstance(shape, Curve) and shape.closed and shape.pen in _WHOLE_OR_NOT


def _length(path: Curve) -> float:
    low, high = _ends(path)
    return high - low


def _goes_on(sign: Sequence[Shape], shape: Shape, metrics: FontMetrics) -> bool:
    """Whether `shape` belongs to a sign or to words that have begun: an arrow, scissors, words and their arrow head."""
    if isinstance(sign[-1], Text):
        return isinstance(shape, Region) and shape.pen is Pen.SOLID
    if isinstance(sign[0], Text) or isinstance(shape, Text) or shape.pen not in (Pen.OUTLINE, Pen.SOLID):
        return False
    ends = [end for each in (*sign, shape) for end in _span(each, metrics)]
    return max(ends) - min(ends) < _TOGETHER


def _cut_off(area: Region, begin: float, stop: float) -> list[Region]:
    """What is left of an upright rectangle."""
    left, right = _ends(area.contours[0])
    low, high = max(left, begin), min(right, stop)
    if low >= high:
        return []
    ys = [point.y for point in area.contours[0].points()]
    return [Region((rectangle(low, min(ys), high, max(ys), area.pen),), area.pen)]


def _ends(path: Curve) -> Span:
    xs = [point.x for point in path.points()]
    return min(xs), max(xs)
