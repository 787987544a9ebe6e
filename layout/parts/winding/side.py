"""The winding picture seen from the right, cut through the frame: how the thread goes round or into both ends."""

from __future__ import annotations

import math
from collections.abc import Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, arc, circle, line
from layout.drawing.symbols import arrow_head, block, centred, knot
from layout.frames.frame import FlatEnd, RoundBar
from layout.messages.english import ENGLISH
from layout.messages.roles import Winding
from layout.parts.winding.face import ENDS, Face

_OFF = 0.6  # the middle of the thread lies so far off the wood
_BOARD, _PEG, _APART = 0.7, 0.9, 3.4  # thickness of a board and length of a peg, against the height of an end


def side_view(face: Face, metrics: FontMetrics) -> list[Shape]:
    """Sections of both ends, the first two passes with their numbers, the tie-on, and which side is which."""
    scale = face.scale
    x = scale.outer / 2 + scale.apart + scale.beside / 2
    ends = face.plan.kit.frame.ends
    if isinstance(ends, RoundBar):
        shapes, half = _bars(face, x), scale.bar / 2 + _OFF
    elif isinstance(ends, FlatEnd):
        shapes, half = _boards(face, x), _BOARD * scale.bar / 2 + _OFF
    else:
        shapes, half = (_notches if ends.kind == "notched" else _pegs)(face, x)
    return [*shapes, *_passes(face, x, half, metrics), *_names(face, x, metrics)]


def _bars(face: Face, x: float) -> list[Shape]:
    """Round bars in a loop of thread, and the tie-on on the face of the near one."""
    radius, reach = face.scale.bar / 2, face.scale.reach
    low, high = Point(x, radius), Point(x, reach - radius)
    shapes: list[Shape] = []
    for centre in (low, high):
        outline = circle(centre, radius, Pen.TINT)
        shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.HELP)]
    round_it = radius + _OFF
    over, under = arc(high, round_it, 180, 0), arc(low, round_it, 0, -180)
    start = Point(x - round_it, low.y)
    steps = (Step(Point(start.x, high.y)), *over, Step(Point(x + round_it, low.y)), *under)
    near = low if face.outward("near") < 0 else high
    return [*shapes, Curve(start, steps, Pen.THREAD), knot(Point(start.x, near.y))]


def _boards(face: Face, x: float) -> list[Shape]:
    """Boards in a loop of thread that goes round their edges, and the tie-on on the face of the near one."""
    half, reach = _BOARD * face.scale.bar / 2, face.scale.reach
    corners = ((x - half, reach, 180), (x + half, reach, 90), (x + half, 0.0, 0), (x - half, 0.0, -90))
    steps: list[Step] = []
    for at_x, at_y, angle in corners:
        turn = arc(Point(at_x, at_y), _OFF, angle, angle - 90)
        begin = math.radians(angle)
        steps += [Step(Point(at_x + _OFF * math.cos(begin), at_y + _OFF * math.sin(begin))), *turn]
    left = x - half - _OFF
    loop = Curve(Point(left, 0.0), tuple(steps), Pen.THREAD)
    return [*_wood(face, x), loop, knot(Point(left, face.inside("near", 0.6)))]


def _wood(face: Face, x: float) -> list[Shape]:
    """The sections of both boards."""
    half = _BOARD * face.scale.bar / 2
    spans = (sorted((face.height(end), face.inside(end, 1.0))) for end in ENDS)
    return [shape for low, high in spans for shape in block(x - half, low, x + half, high)]


def _notches(face: Face, x: float) -> tuple[list[Shape], float]:
    """The thread on the face, through a notch at both ends to behind the tooth; and how far off x it runs."""
    half = _BOARD * face.scale.bar / 2 + _OFF
    near, far = (face.inside(end, 0.3) for end in ENDS)
    ways = (Point(x + half, near), Point(x - half, near), Point(x - half, far), Point(x + half, far))
    way = Curve(ways[0], tuple(map(Step, ways[1:])), Pen.THREAD)
    return [*_wood(face, x), way, knot(Point(x - half, face.inside("near", 0.6)))], half


def _pegs(face: Face, x: float) -> tuple[list[Shape], float]:
    """Pegs on the face in two rows with the thread between them; and how far off x it runs."""
    scale = face.scale
    half, long, thick = _BOARD * scale.bar / 2, _PEG * scale.bar, 0.09 * scale.bar
    shapes = _wood(face, x)
    for end in ENDS:
        for share in (0.3, 0.7):
            y = face.inside(end, share)
            shapes += block(x - half - long, y - thick, x - half, y + thick)
    off = half + long / 2
    near, far = (face.peg_row(0, end) for end in ENDS)
    return [*shapes, line(Point(x - off, near), Point(x - off, far), Pen.THREAD), knot(Point(x - off, near))], off


def _passes(face: Face, x: float, half: float, metrics: FontMetrics) -> list[Shape]:
    """An arrow and a number on each of the first two passes; the face lies to the left."""
    legs, reach = face.way.legs[:2], face.scale.reach
    alone = all(leg.layer == "face" for leg in legs)
    shapes: list[Shape] = []
    for leg in legs:
        side = -1 if leg.layer == "face" else 1
        way = (1 if leg.up else -1) * face.outward("far")
        y = reach / 2 + (_APART * way if alone else 0)
        shapes.append(arrow_head(Point(x + side * half, y), Point(0, way)))
        shapes.append(centred(str(leg.number + 1), Point(x + side * (half + _APART), y), metrics))
    return shapes


def _names(face: Face, x: float, metrics: FontMetrics) -> Sequence[Shape]:
    scale = face.scale
    up, down = scale.reach + scale.past + 0.5 * scale.row, -scale.past - 0.5 * scale.row
    face_name, behind, from_right = map(ENGLISH.say, (Winding.SIDE_FACE, Winding.SIDE_BEHIND, Winding.FROM_RIGHT))
    apart = metrics.width(behind, 1.0) * 1.5 + 1.0
    return (
        centred(face_name, Point(x - apart - 1.5, up), metrics),
        centred(behind, Point(x + apart, up), metrics),
        centred(from_right, Point(x, down), metrics),
    )
