"""What a finished sheet has taken: boxes round all its ink and round its parts, for words that are put on it later."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import ceil, dist, radians, sin
from math import cos as cosine

from layout.drawing.boxes import box_around
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import MOST
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Piece

SLACK = 1 + 1.2 * MOST
"""Words are not corrected with what stands round them: they need so many times their length."""

_WHITE = 0.5  # round all ink, in mm
_STRETCH = 3.0  # mm of a slanted line to a box


def taken_by(shapes: Sequence[Shape], pieces: Sequence[Piece], metrics: FontMetrics) -> Iterator[Box]:
    """Boxes round all that is drawn, with some white, and round every piece, which is cut out or looked at alone."""
    for shape in shapes:
        if isinstance(shape, Text):
            yield from _of_words(shape, metrics)
        else:
            for path in shape.contours if isinstance(shape, Region) else (shape,):
                yield from _of_path(path, whole=isinstance(shape, Region))
    for piece in pieces:
        yield from _of_piece(piece)


def _of_words(text: Text, metrics: FontMetrics) -> Iterator[Box]:
    long, turn = metrics.width(text.words, text.size, text.pen) * SLACK, radians(text.angle)
    along, up = (cosine(turn), sin(turn)), (-sin(turn), cosine(turn))
    count = 1 if text.angle % 90 == 0 else ceil(long / _STRETCH)
    for k in range(count):
        ends = [long * (k + more) / count for more in (0, 1)]
        heights = [metrics.descent * text.size, metrics.ascent * text.size]
        yield box_around(
            [
                Point(text.at.x + a * along[0] + h * up[0], text.at.y + a * along[1] + h * up[1])
                for a in ends
                for h in heights
            ],
            _WHITE,
        )


def _of_path(path: Curve, *, whole: bool) -> Iterator[Box]:
    ink = _WHITE + path.pen.ink.width / 2
    if all(through is not None for _, through in path.steps) and path.closed:
        yield box_around([*path.points(), *(step.through for step in path.steps if step.through)], ink)
        return
    points = [*path.points(), *([path.start] if path.closed else [])]
    if whole and _is_upright(points):
        yield box_around(points, ink)
        return
    for step_from, (end, through) in zip(points, path.steps, strict=False):
        yield from _of_step(step_from, through or end, ink)
        if through:
            yield from _of_step(through, end, ink)
    if path.closed:
        yield from _of_step(points[-2], points[-1], ink)


def _of_step(one: Point, other: Point, ink: float) -> Iterator[Box]:
    count = 1 if min(abs(one.x - other.x), abs(one.y - other.y)) < _WHITE else ceil(dist(one, other) / _STRETCH)
    along = [
        Point(one.x + (other.x - one.x) * k / count, one.y + (other.y - one.y) * k / count) for k in range(count + 1)
    ]
    for ends in pairwise(along):
        yield box_around(ends, ink)


def _is_upright(points: Sequence[Point]) -> bool:
    pairs = pairwise(points)
    return all(min(abs(one.x - other.x), abs(one.y - other.y)) < _WHITE for one, other in pairs)


def _of_piece(piece: Piece) -> Iterator[Box]:
    left, low, right, high = piece.part.box
    count = 1 if piece.placing.degrees % 90 == 0 else ceil((right - left) / _STRETCH)
    for k in range(count):
        xs = [left + (right - left) * (k + more) / count for more in (0, 1)]
        yield box_around(piece.placing.points([Point(x, y) for x in xs for y in (low, high)]), 2 * _WHITE)
