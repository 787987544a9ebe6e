"""Steps 10 to 12: the first rows, both sheds from the side, and the end."""

from __future__ import annotations

from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, arc, circle, filled, line, rectangle
from layout.drawing.signs import scissors, small_arrow
from layout.drawing.symbols import arrow_head
from layout.parts.leaflet.pictures.ground import HIGH, WIDE, Ground, bent, broken, spread
from layout.plan import Plan

_WOVEN, _PICK_HIGH, _PICKS = 4.4, 1.7, 4
_ARC = ((2.0, 10.6), (8.0, 19.0), (22.0, 20.5), (34.0, 16.6))
_UPRIGHTS = 8
_BOW = 3.4


def first_rows(plan: Plan, _: FontMetrics) -> list[Shape]:
    """The near end, the rows that are beaten up, and a weft in an arc: under the lifted ends, over the others."""
    ground, lifted = Ground(plan), Ground(plan).lifted()
    top = _WOVEN + _PICK_HIGH * (_PICKS - 1) + 0.9
    shapes = ground.wood(0, 0, WIDE, 3)
    shapes += [ground.across(_WOVEN + _PICK_HIGH * k, 2, WIDE - 2, Pen.WEFT) for k in range(_PICKS)]
    arc = bent([(x, ground.y(away)) for x, away in _ARC], Pen.WEFT)
    xs = spread(len(lifted), 4.0, WIDE - 4.0)
    pieces = arc.points()
    for x, over in zip(xs, lifted, strict=True):
        away = ground.y(_height(pieces, x))
        gaps = [] if over else [away]
        shapes += [ground.up(x, low, high) for low, high in broken(top, HIGH, gaps, 1.05)]
    under = [x for x, over in zip(xs, lifted, strict=True) if over]
    for begin, end in broken(_ARC[0][0], _ARC[-1][0], under):
        seen = [Point(begin, _height(pieces, begin)), *(p for p in pieces if begin < p.x < end)]
        seen.append(Point(end, _height(pieces, end)))
        shapes.append(ground.way([(p.x, ground.y(p.y)) for p in seen], Pen.WEFT))
    down = Point(0, -1 if ground.near_below else 1)
    for k in (1, 3, 5) if len(xs) > 6 else (0,):
        x = (xs[k] + xs[k + 1]) / 2 if k + 1 < len(xs) else xs[0] + 2.2
        shapes += small_arrow(Point(x, ground.y(top + 0.6)), down)
    return shapes


def _height(points: list[Point], x: float) -> float:
    for one, other in pairwise(points):
        if one.x <= x <= other.x:
            return one.y + (other.y - one.y) * (x - one.x) / (other.x - one.x)
    return points[0].y if x < points[0].x else points[-1].y


def sheds(plan: Plan, _: FontMetrics) -> list[Shape]:
    """From the side: above, the stick on edge lifts half of the ends; below, it lies flat, and leashes lift the rest.

    The near end lies to the left.
    """
    upper = Placing(0, 0, 18.4).shapes(_section(plan, leashed=False))
    return [*upper, *Placing(0, 0, 1.6 + 2.6).shapes(_section(plan, leashed=True))]


_NEAR, _FAR, _RADIUS = 3.7, 30.3, 2.7
_HEADINGS, _STICK_AT, _LEASH_AT = (9.6, 24.6), 19.6, 14.1
_LIFT, _PULLED, _FLAT_LIFT = 6.2, 5.2, 2.4
_Places = list[tuple[float, float]]


def _section(plan: Plan, *, leashed: bool) -> list[Shape]:
    """The near end to the left, the far end to the right, the face up, about the height of the ends at y = 0."""
    layered = len(set(plan.warp.layers_at("far"))) > 1
    pen = Pen.THREAD_BACK if layered else Pen.THREAD
    shapes: list[Shape] = [rectangle(0, -1.5, WIDE, 1.5, Pen.HELP)]
    for x in (_NEAR, _FAR):
        if plan.kit.frame.ends.name == "round bars":
            outline = circle(Point(x, 0), _RADIUS, Pen.TINT)
            shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.OUTLINE)]
        else:
            board = rectangle(x - _RADIUS, -1.9, x + _RADIUS, 1.9, Pen.OUTLINE)
            shapes += [filled(board.points(), Pen.TINT), board]
    near, far = _HEADINGS
    if leashed:
        shapes += _stick(_STICK_AT - 2.3, 0.4, _STICK_AT + 2.3, 1.4)
        lifted = [(near, 0.0), (_STICK_AT - 2.3, _FLAT_LIFT), (_STICK_AT + 2.3, _FLAT_LIFT), (far, 0.0)]
        pulled = [(near, 0.0), (_LEASH_AT, _PULLED), (_STICK_AT - 2.3, 0.0), (far, 0.0)]
        loop = rectangle(_LEASH_AT - 0.7, _PULLED - 0.7, _LEASH_AT + 0.7, _PULLED + 2.6, Pen.OUTLINE)
        shapes += [loop, circle(Point(_LEASH_AT, _PULLED + 3.6), 1.0, Pen.OUTLINE)]
    else:
        shapes += _stick(_STICK_AT - 0.9, 1.5, _STICK_AT + 0.9, _LIFT - 0.5)
        lifted = [(near, 0.0), (_STICK_AT, _LIFT), (far, 0.0)]
        pulled = [(near, 0.0), (far, 0.0)]
    return [*shapes, *_threads(plan, lifted, pulled, pen)]


def _threads(plan: Plan, lifted: _Places, pulled: _Places, pen: Pen) -> list[Shape]:
    """Both halves of the ends between the headings, and how they come there round the frame ends."""
    high = _RADIUS + 0.4 if plan.kit.frame.ends.name == "round bars" else 2.3
    top, far_top, low, far_low = (_NEAR, high), (_FAR, high), (_NEAR, -high), (_FAR, -high)
    if plan.warp.kind not in ("wound", "rod"):
        return [_way([top, *lifted, far_top], Pen.THREAD), _way(pulled, pen)]
    shapes: list[Shape] = [*_round(plan, high), _way([top, *lifted, far_top], Pen.THREAD)]
    if plan.warp.kind == "rod":
        rod = circle(Point(_ROD_AT, -high), 0.9, Pen.OUTLINE)
        back = [_way([low, (_ROD_AT - 1.2, -high)], Pen.THREAD_BACK)]
        return [*shapes, _way(pulled, pen), *back, _way([(_ROD_AT + 1.2, -high), far_low], Pen.THREAD_BACK), rod]
    if plan.warp.winding == "figure eight":
        return [_way([*lifted, far_top], Pen.THREAD), _way([low, lifted[0]], pen), *_round(plan, high),
                _way([top, pulled[0]], Pen.THREAD), _way([*pulled, far_low], pen)]  # fmt: skip
    return [*shapes, _way([low, *pulled, far_low], pen)]


def _round(plan: Plan, high: float) -> list[Shape]:
    """The thread round the outer side of both frame ends."""
    if plan.kit.frame.ends.name == "round bars":
        ways = ((_NEAR, 90, 270), (_FAR, 90, -90))
        return [Curve(Point(x, high), arc(Point(x, 0), high, begin, end), Pen.THREAD) for x, begin, end in ways]
    out = _RADIUS + 0.4
    return [
        _way([(x, high), (x + side * out, high), (x + side * out, -high), (x, -high)], Pen.THREAD)
        for x, side in ((_NEAR, -1), (_FAR, 1))
    ]


_ROD_AT = 17.0


def _way(points: _Places, pen: Pen) -> Shape:
    start, *others = (Point(x, y) for x, y in points)
    return Curve(start, tuple(map(Step, others)), pen)


def _stick(left: float, low: float, right: float, high: float) -> list[Shape]:
    inside = rectangle(left + 0.17, low + 0.17, right - 0.17, high - 0.17, Pen.PAPER)
    return [filled(inside.points(), Pen.PAPER), rectangle(left, low, right, high, Pen.OUTLINE)]


def finish(plan: Plan, _: FontMetrics) -> list[Shape]:
    """The piece, and its ends cut at the near end two at a time from the middle outward; or the rod drawn out."""
    ground = Ground(plan)
    if plan.warp.kind == "rod":
        return _drawn_out(ground)
    xs = spread(_UPRIGHTS, 4.0, WIDE - 4.0)
    shapes = [*ground.wood(0, 0, WIDE, 4), *_piece(ground, 21.4)]
    for k, x in enumerate(xs):
        if k in _MIDDLE:
            side = -1 if k == _MIDDLE[0] else 1
            shapes.append(ground.way([(x, 20.4), (x, 15.4), (x + side * 0.5, 13.8), (x, 12.4)], Pen.THREAD))
            shapes.append(ground.up(x, 4, 7.4))
        else:
            shapes.append(ground.up(x, 4, 20.4))
    shapes += scissors(Point((xs[3] + xs[4]) / 2 - 2.2, ground.y(9.9)), 0.0)
    for side in (-1, 1):
        shapes += _arrow(WIDE / 2 + side * 9.6, ground.y(2.0), side)
    return shapes


_MIDDLE = (3, 4)


def _piece(ground: Ground, away: float) -> list[Shape]:
    return [ground.across(away + 1.7 * k, 2, WIDE - 2, Pen.WEFT) for k in range(3)]


def _arrow(tip: float, y: float, side: int) -> list[Shape]:
    """A level arrow with its tip there."""
    return [
        line(Point(tip - side * 6.6, y), Point(tip - side * 1.8, y), Pen.OUTLINE),
        arrow_head(Point(tip - side * 1.2, y), Point(side, 0), 2.4, 1.7),
    ]


def _drawn_out(ground: Ground) -> list[Shape]:
    """Loops round a rod that goes to the side: it is half drawn, and the loops that it has left hang free."""
    shapes = _piece(ground, 21.4)
    xs = spread(_UPRIGHTS // 2, 5.0, WIDE - 5.0)
    for x in xs:
        shapes.append(
            ground.way([(x - 1.1, 20.4), (x - 1.1, 9.0), (x, 7.6), (x + 1.1, 9.0), (x + 1.1, 20.4)], Pen.THREAD)
        )
    shapes += ground.white(xs[1] + 2.4, 8.8, WIDE - 7.6, 10.8)
    shapes += _arrow(WIDE, ground.y(9.8), 1)
    return shapes
