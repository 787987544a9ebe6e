"""Steps 6 to 9: shed stick, heading rows, spacing, leashes."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, circle, filled, line, rectangle
from layout.drawing.symbols import notched_block
from layout.drawing.typeset import SMALL
from layout.parts.held import is_held
from layout.parts.leaflet.in_box import COMB, GUIDES
from layout.parts.leaflet.pictures.ground import HIGH, WIDE, Ground, bent, broken, spread
from layout.plan import Plan
from layout.yardage.heading import heading_of

_SIDE, _SIDES_AT = 4.0, 2.5
_STICK, _STICK_HIGH = 14.6, 3.6
_BAR, _ROW, _MOST_ROWS, _ENDS = 4.0, 2.8, 3, 7
_EDGE, _GUIDE_LOW, _GUIDES = 13.0, 4.0, 6
_ROD, _ROD_HIGH, _LOOP, _HALF_LOOP = 18.9, 2.2, 9.6, 0.9


def stick(plan: Plan, _: FontMetrics) -> list[Shape]:
    """The far end between both side pieces, and the stick on these, under the ends that it lifts."""
    ground, lifted = Ground(plan), Ground(plan).lifted()
    left, right = _SIDES_AT + _SIDE, WIDE - _SIDES_AT - _SIDE
    shapes = ground.wood(left, HIGH - 5.2, right, HIGH - 0.6)
    for low, high in ((_SIDES_AT, left), (right, WIDE - _SIDES_AT)):
        shapes += ground.wood(low, 0, high, HIGH)
    shapes += ground.white(0, _STICK, WIDE, _STICK + _STICK_HIGH)
    for x, over in zip(spread(len(lifted), left + 2.2, right - 2.2), lifted, strict=True):
        if over:
            shapes.append(ground.up(x, 0, HIGH - 0.6))
        elif ground.layered:
            shapes += [ground.up(x, 0, _STICK, Pen.THREAD_BACK)]
            shapes += [ground.up(x, _STICK + _STICK_HIGH, HIGH - 5.2, Pen.THREAD_BACK)]
        else:
            shapes += [ground.up(x, 0, _STICK - 0.4), ground.up(x, _STICK + _STICK_HIGH + 0.4, HIGH - 0.6)]
    for x in (_SIDES_AT + 1.1, _SIDES_AT + 2.9, WIDE - _SIDES_AT - 2.9, WIDE - _SIDES_AT - 1.1):
        shapes.append(ground.up(x, _STICK - 0.8, _STICK + _STICK_HIGH + 0.8))
    return shapes


def rows(plan: Plan, _: FontMetrics) -> list[Shape]:
    """Ends between both bars, and the rows that pass over and under them, or a hitch round each."""
    ground, asked = Ground(plan), heading_of(plan.kit.amounts.room)
    both = plan.warp.kind != "rod"
    xs = spread(_ENDS, 5.0, WIDE - 5.0)
    shapes = [*ground.wood(0, 0, WIDE, _BAR), *ground.wood(0, HIGH - _BAR, WIDE, HIGH)]
    count = 1 if asked.hitched else min(asked.rows, _MOST_ROWS)
    far = [HIGH - _BAR - 2.2 - _ROW * k for k in range(count)]
    near = [_BAR + 2.2 + _ROW * k for k in range(count)] if both else []
    heights = [(away, k) for each in (near, far) for k, away in enumerate(each)]
    for number, x in enumerate(xs):
        over = [] if asked.hitched else [away for away, k in heights if (number + k) % 2 == 0]
        shapes += [ground.up(x, low, high) for low, high in broken(_BAR, HIGH - _BAR, over)]
    for away, k in heights:
        if asked.hitched:
            shapes += _hitches(ground, away, xs)
            continue
        under = [x for number, x in enumerate(xs) if (number + k) % 2]
        shapes += [ground.across(away, one, other, Pen.PICK) for one, other in broken(1.6, WIDE - 1.6, under)]
    return shapes


def _hitches(ground: Ground, away: float, xs: list[float]) -> Iterator[Shape]:
    """A thread along the heading, and its turn round every end."""
    yield ground.across(away, 1.6, WIDE - 1.6, Pen.PICK)
    for x in xs:
        yield circle(Point(x, ground.y(away + 1.1)), 1.1, Pen.OUTLINE)


def space(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """An end to each mark of a guide, or in each slot of a comb, or by eye; full or broken as its layer is."""
    warp = plan.warp
    layers = [each.layer_at("near") for each in warp.passes[:_GUIDES]]
    xs = spread(len(layers), 4.5, WIDE - 4.5)[:: warp.toward]
    shapes: list[Shape] = []
    if is_held(plan, *GUIDES):
        shapes += _guide(xs, [layer == "back" for layer in layers], metrics)
    elif is_held(plan, COMB):
        shapes += notched_block(0, WIDE, _EDGE, _GUIDE_LOW, sorted(xs), 1.6, _EDGE - 5, Pen.OUTLINE)
    for k, (x, layer) in enumerate(zip(xs, layers, strict=True)):
        off = x + warp.toward * (0.9 if k % 2 == 0 else -0.9)
        shapes.append(bent(((off, HIGH), (off, _EDGE + 7), (x, _EDGE + 7), (x, _EDGE)), Pen.THREAD))
        shapes.append(line(Point(x, _GUIDE_LOW), Point(x, 0), Pen.THREAD_BACK if layer == "back" else Pen.THREAD))
    return shapes


def _guide(xs: list[float], behind: list[bool], metrics: FontMetrics) -> list[Shape]:
    """Its thick edge, a mark for each end, full or broken, and the first three numbers."""
    outline = rectangle(0, _GUIDE_LOW, WIDE, _EDGE, Pen.OUTLINE)
    band = rectangle(0, _EDGE - 0.9, WIDE, _EDGE, Pen.SOLID)
    shapes: list[Shape] = [outline, filled(band.points(), Pen.SOLID)]
    for k, (x, back) in enumerate(zip(xs, behind, strict=True)):
        shapes.append(line(Point(x, _EDGE - 0.9), Point(x, _EDGE - 3.6), Pen.END_MARK_BACK if back else Pen.END_MARK))
        if k < _NUMBERED:
            said = str(k + 1)
            at = Point(x - metrics.width(said, SMALL, Pen.STRONG) / 2, _GUIDE_LOW + 1.6)
            shapes.append(Text(at, SMALL, said, pen=Pen.STRONG))
    return shapes


_NUMBERED = 3


def leashes(plan: Plan, _: FontMetrics) -> list[Shape]:
    """A rod across the warp, and a loop from it round every end that the stick does not lift."""
    ground, lifted = Ground(plan), Ground(plan).lifted()
    shapes = ground.white(0, _ROD, WIDE, _ROD + _ROD_HIGH)
    for x, over in zip(spread(len(lifted), 3.8, WIDE - 3.8), lifted, strict=True):
        pen = Pen.THREAD_BACK if ground.layered and not over else Pen.THREAD
        shapes += [ground.up(x, 0, _ROD - 0.4, pen), ground.up(x, _ROD + _ROD_HIGH + 0.4, HIGH, pen)]
        if not over:
            shapes.append(ground.box(x - _HALF_LOOP, _LOOP, x + _HALF_LOOP, _ROD, Pen.OUTLINE))
    return shapes
