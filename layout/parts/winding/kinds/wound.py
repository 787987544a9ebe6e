"""The picture of a warp wound round both ends: round bars, and boards."""

from __future__ import annotations

import math

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, arc, circle, line
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, PictureKind, Section, wood
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import View
from layout.plan import Plan
from layout.warps.warp import End, Warp


class _Wound(PictureKind):
    behind: Winding | None = Winding.BEHIND

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        return Point(leg.near if end == "near" else leg.far, view.height(end))

    def source(self, plan: Plan) -> Winding:
        """From strips."""
        return Winding.BY_STRIPS

    def number(self, warp: Warp, k: int, end: End) -> int:
        """The tie-on is 0; every wind goes to the next number."""
        return (k + 1) // 2 if end == "near" else k // 2 + 1

    def stubs(self, view: View) -> list[Shape]:
        """Where the last pass before the gap goes on over an end, and the first after it comes from one."""
        before, after = view.way.groups[0][-1], view.way.groups[1][0]
        return [
            shape
            for leg, leaves in ((before, True), (after, False))
            for shape in _over(view, leg, "far" if leg.up == leaves else "near")
        ]


def _over(view: View, leg: ShownPass, end: End) -> list[Shape]:
    """Of the pass that shares its place at `end` with `leg`, what is seen there: all of it that is on the face."""
    if leg.layer_at(end) == "face":
        return []
    other = view.plan.warp.passes[leg.number + (1 if leg.up == (end == "far") else -1)]
    lean = float(other.far - other.near) * view.way.scale * view.scale.bar / view.scale.reach
    x, inner = leg.near if end == "near" else leg.far, view.inside(end, 1.0)
    return [line(Point(x, view.height(end)), Point(x + (lean if end == "near" else -lean), inner), Pen.THREAD)]


class RoundBarPicture(_Wound):
    """Round bars."""

    def section(self, view: View) -> Section:
        """Bars in a loop of thread."""
        off = view.scale.bar / 2 + OFF
        return Section(_bars(view, view.side_x), off, Point(view.side_x - off, view.knots_at("near")))


class FlatEndPicture(_Wound):
    """Boards."""

    def section(self, view: View) -> Section:
        """Boards in a loop of thread."""
        off = BOARD * view.scale.bar / 2 + OFF
        return Section(_boards(view, view.side_x), off, Point(view.side_x - off, view.knots_at("near")))


def _bars(view: View, x: float) -> list[Shape]:
    """Round bars in a loop of thread."""
    radius, reach = view.scale.bar / 2, view.scale.reach
    low, high = Point(x, radius), Point(x, reach - radius)
    round_it = radius + OFF
    over, under = arc(high, round_it, 180, 0), arc(low, round_it, 0, -180)
    start = Point(x - round_it, low.y)
    steps = (Step(Point(start.x, high.y)), *over, Step(Point(x + round_it, low.y)), *under)
    return [*round_sections(view), Curve(start, steps, Pen.THREAD)]


def round_sections(view: View) -> list[Shape]:
    """The sections of both bars."""
    radius, shapes = view.scale.bar / 2, list[Shape]()
    for y in (radius, view.scale.reach - radius):
        outline = circle(Point(view.side_x, y), radius, Pen.TINT)
        shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.OUTLINE)]
    return shapes


def _boards(view: View, x: float) -> list[Shape]:
    """Boards in a loop of thread that goes round their edges."""
    half, reach = BOARD * view.scale.bar / 2, view.scale.reach
    corners = ((x - half, reach, 180), (x + half, reach, 90), (x + half, 0.0, 0), (x - half, 0.0, -90))
    steps: list[Step] = []
    for at_x, at_y, angle in corners:
        turn = arc(Point(at_x, at_y), OFF, angle, angle - 90)
        begin = math.radians(angle)
        steps += [Step(Point(at_x + OFF * math.cos(begin), at_y + OFF * math.sin(begin))), *turn]
    return [*wood(view), Curve(Point(x - half - OFF, 0.0), tuple(steps), Pen.THREAD)]
