"""The picture of a warp wound round both ends: round bars, and boards."""

from __future__ import annotations

import math

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, arc, circle
from layout.drawing.symbols import knot
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, PictureKind, Section, wood
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import View
from layout.warps.warp import End


class _Wound(PictureKind):
    note = Winding.NOTE_WOUND
    behind: Winding | None = Winding.BEHIND

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        return Point(leg.near if end == "near" else leg.far, view.height(end))


class RoundBarPicture(_Wound):
    """Round bars."""

    def section(self, view: View) -> Section:
        """Bars in a loop of thread."""
        return Section(_bars(view, view.side_x), view.scale.bar / 2 + OFF)


class FlatEndPicture(_Wound):
    """Boards."""

    def section(self, view: View) -> Section:
        """Boards in a loop of thread."""
        return Section(_boards(view, view.side_x), BOARD * view.scale.bar / 2 + OFF)


def _bars(view: View, x: float) -> list[Shape]:
    """Round bars in a loop of thread, and the tie-on on the face of the near one."""
    radius, reach = view.scale.bar / 2, view.scale.reach
    low, high = Point(x, radius), Point(x, reach - radius)
    shapes = round_sections(view)
    round_it = radius + OFF
    over, under = arc(high, round_it, 180, 0), arc(low, round_it, 0, -180)
    start = Point(x - round_it, low.y)
    steps = (Step(Point(start.x, high.y)), *over, Step(Point(x + round_it, low.y)), *under)
    near = low if view.outward("near") < 0 else high
    return [*shapes, Curve(start, steps, Pen.THREAD), knot(Point(start.x, near.y))]


def round_sections(view: View) -> list[Shape]:
    """The sections of both bars."""
    radius, shapes = view.scale.bar / 2, list[Shape]()
    for y in (radius, view.scale.reach - radius):
        outline = circle(Point(view.side_x, y), radius, Pen.TINT)
        shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.HELP)]
    return shapes


def _boards(view: View, x: float) -> list[Shape]:
    """Boards in a loop of thread that goes round their edges, and the tie-on on the face of the near one."""
    half, reach = BOARD * view.scale.bar / 2, view.scale.reach
    corners = ((x - half, reach, 180), (x + half, reach, 90), (x + half, 0.0, 0), (x - half, 0.0, -90))
    steps: list[Step] = []
    for at_x, at_y, angle in corners:
        turn = arc(Point(at_x, at_y), OFF, angle, angle - 90)
        begin = math.radians(angle)
        steps += [Step(Point(at_x + OFF * math.cos(begin), at_y + OFF * math.sin(begin))), *turn]
    left = x - half - OFF
    loop = Curve(Point(left, 0.0), tuple(steps), Pen.THREAD)
    return [*wood(view), loop, knot(Point(left, view.inside("near", 0.6)))]
