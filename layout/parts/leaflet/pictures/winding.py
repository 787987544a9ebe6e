"""Steps 3 to 5: the knot of the tie-on, the first passes of this warp, and its slack pulled along to the tie-off."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text, line
from layout.drawing.signs import small_arrow
from layout.drawing.symbols import knot
from layout.drawing.typeset import SMALL
from layout.parts.leaflet.pictures.ground import HIGH, WIDE, Ground, bent, mirrored
from layout.parts.leaflet.winds import mark_of, tied_off
from layout.parts.winding.face import Face
from layout.parts.winding.knots import BAR, HITCHES, tied
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPass, ShownPasses
from layout.parts.winding.view import ENDS
from layout.plan import Plan

LEAFLET = Scale(
    steps=(3.6, 4.4),
    shown=(8, 6),
    gap=0.0,
    reach=HIGH,
    inner=WIDE,
    side=0.0,
    bar=5.0,
    past=0.0,
    inset=2.2,
    aside=0.0,
    beside=0.0,
    ring=0.0,
    right=WIDE / 2,
    knots=False,
)
"""The size in which the first passes are drawn."""

_KNOT_LEFT, _NUMBER, _KNOT = 7.0, 1.6, 1.3
_UPRIGHTS, _FROM, _SLACK, _BAR, _INSET = 5, 4.0, 4.6, 5.0, 2.2
_ROD = 0.9
_PAST = 0.8  # so far its ink may reach past a picture, above and below


def tie_on(plan: Plan, metrics: FontMetrics) -> list[Shape]:
    """Two half hitches on the near bar, or the rod, and the number of the mark at its outer side."""
    shapes = tied(HITCHES, Point(_KNOT_LEFT, BAR))
    left = plan.warp.toward > 0
    if not left:
        shapes = mirrored(shapes, WIDE / 2)
    if plan.warp.kind == "rod":
        return shapes
    said = str(mark_of(plan, 0, "near"))
    wide = metrics.width(said, SMALL, Pen.STRONG)
    x = _KNOT_LEFT - _NUMBER - wide if left else WIDE - _KNOT_LEFT + _NUMBER
    return [*shapes, Text(Point(x, BAR / 2 - metrics.cap * SMALL / 2), SMALL, said, pen=Pen.STRONG)]


def first_passes(plan: Plan, _: FontMetrics) -> list[Shape]:
    """The first passes of this very warp, as far apart as the eye needs, with their arrows and the tie-on.

    Round thick pegs the thread reaches past the bars; then these lie nearer to each other.
    """
    shapes = _passes(plan, LEAFLET)
    ys = [y for shape in shapes if isinstance(shape, Curve) for _, y in shape.points()]
    over = max(0.0, -min(ys) - _PAST, max(ys) - HIGH - _PAST)
    return Placing(0, WIDE / 2, over).shapes(_passes(plan, replace(LEAFLET, reach=HIGH - 2 * over)) if over else shapes)


def _passes(plan: Plan, scale: Scale) -> list[Shape]:
    face = Face(plan, scale, _shown(plan))
    half = WIDE / 2
    shapes = [shape for end in ENDS for shape in face.kind.board(face, end, -half, half)]
    shapes += [*face.kind.fittings(face), *face.threads()]
    first = face.way.legs[0]
    at = face.knot(first, "near")
    shapes.append(knot(at, _KNOT))
    if first.layer_at("near") == "back":
        shapes.append(line(Point(at.x, face.height("near")), at, Pen.THREAD))
    return shapes


def _shown(plan: Plan) -> ShownPasses:
    """So many of the first passes as have room, about the middle of the picture."""
    warp = plan.warp
    alone = warp.spacing == warp.pitch
    step, count = LEAFLET.steps[alone], min(LEAFLET.shown[alone], warp.ends)
    scale = Fraction(step) / warp.pitch
    passes = warp.passes[:count]
    outer = [x for each in passes for x in (each.near, each.far)]
    middle = (min(outer) + max(outer)) / 2

    def put(x: Fraction) -> float:
        return float((x - middle) * scale)

    group = tuple(
        ShownPass(k, put(one.near), put(one.far), one.layer, one.direction == "up", one.layer_at("far"))
        for k, one in enumerate(passes)
    )
    return ShownPasses((group,), 0, float((max(outer) - min(outer)) * scale) / 2, (0.0, 0.0), float(scale))


def tension(plan: Plan, _: FontMetrics) -> list[Shape]:
    """Five ends of which the second is slack, the way in which the slack is pulled, and the knot of the tie-off."""
    ground, toward = Ground(plan), plan.warp.toward
    step = (WIDE - 2 * _FROM) / (_UPRIGHTS - 1)
    xs = [WIDE / 2 + toward * step * (k - (_UPRIGHTS - 1) / 2) for k in range(_UPRIGHTS)]
    on_rod = plan.warp.kind == "rod"
    shapes = [*ground.wood(0, 0, WIDE, _BAR), *ground.wood(0, HIGH - _BAR, WIDE, HIGH)]
    if on_rod:
        shapes += ground.white(0, _TIED_ROD - _ROD, WIDE, _TIED_ROD + _ROD)
    shapes += [ground.up(x, 0, HIGH) for k, x in enumerate(xs) if k != 1]
    slack, out = xs[1], xs[1] + toward * _SLACK
    low, high = ground.y(_BAR), ground.y(HIGH - _BAR)
    third = (high - low) / 3
    shapes += [ground.up(slack, 0, _BAR), ground.up(slack, HIGH - _BAR, HIGH)]
    shapes.append(bent(((slack, low), (out, low + third), (out, high - third), (slack, high)), Pen.THREAD))
    shapes += small_arrow(Point(xs[3] - toward * 1.2, HIGH / 2), Point(toward, 0))
    if on_rod:
        return [*shapes, knot(Point(xs[-1], ground.y(_TIED_ROD)), _KNOT)]
    away = _BAR + _INSET if tied_off(plan) == "near" else HIGH - _BAR - _INSET
    return [*shapes, knot(Point(xs[-1], ground.y(away)), _KNOT)]


_TIED_ROD = 18.2
