"""The picture of a warp from a loose rod: round bars, and boards, with the rod behind them."""

from __future__ import annotations

import math
from collections.abc import Iterator

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Step, arc, circle
from layout.drawing.symbols import block
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, Section, wood
from layout.parts.winding.kinds.wound import FlatEndPicture, RoundBarPicture, round_sections
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import View
from layout.warps.warp import End, Warp

_HEIGHT, _LOWER = 0.75, 0.68  # of the frame's height, from the near end: clear of the heading rows and of all arrows
_SEEN, _CUT = 0.1, 0.16  # the rod's radius against the height of a frame end, from the face and cut through

_PAST = 2.0  # mm: so far the rod reaches past the weaving
_TO_NAME = 1.0  # mm from the loops to the rod's name

_Turn = tuple[Point, float, float, float]
"""The centre and radius of an arc, and the angles in degrees from which to which it goes."""


def rod_height(view: View) -> float:
    """The y of the rod's middle."""
    return view.height("near") + view.outward("far") * (_HEIGHT if view.scale.knots else _LOWER) * view.scale.reach


class _FromRod:
    """What the rod adds to either picture."""

    behind: Winding | None = Winding.BEHIND

    def fittings(self, view: View) -> list[Shape]:
        """The rod, behind all passes."""
        y, radius, half = rod_height(view), _SEEN * view.scale.bar, view.way.half + _PAST
        return list(block(-half, y - radius, half, y + radius, Pen.OUTLINE))

    def number(self, warp: Warp, k: int, end: End) -> int:
        """Every end has its own mark."""
        return k + 1

    def stubs(self, view: View) -> list[Shape]:
        """Every end is drawn from the rod to the rod."""
        return []

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """On the rod."""
        return Point(leg.near, rod_height(view))


class BarRodPicture(_FromRod, RoundBarPicture):
    """Round bars."""

    def section(self, view: View) -> Section:
        """Bars in a loop of thread that the rod closes behind."""
        radius, reach, x = view.scale.bar / 2, view.scale.reach, view.side_x
        off = radius + OFF
        turns = [(Point(x, reach - radius), off, 0.0, 180.0), (Point(x, radius), off, 180.0, 360.0)]
        return _section(view, round_sections(view), turns, off)


class BoardRodPicture(_FromRod, FlatEndPicture):
    """Boards."""

    def section(self, view: View) -> Section:
        """Boards in a loop of thread that the rod closes behind."""
        half, reach, x = BOARD * view.scale.bar / 2, view.scale.reach, view.side_x
        corners = ((x + half, reach, 0.0), (x - half, reach, 90.0), (x - half, 0.0, 180.0), (x + half, 0.0, 270.0))
        turns = [(Point(at_x, at_y), OFF, angle, angle + 90) for at_x, at_y, angle in corners]
        return _section(view, wood(view), turns, half + OFF)


def _section(view: View, frame: list[Shape], turns: list[_Turn], off: float) -> Section:
    """The frame, the thread from the rod round it and back, its loops round the rod, and a knot on it."""
    rod = Point(view.side_x + off, rod_height(view))
    radius = _CUT * view.scale.bar
    loops = radius + OFF
    way = Curve(Point(rod.x, rod.y + loops), (*_steps(turns), Step(Point(rod.x, rod.y - loops))), Pen.THREAD)
    outline = circle(rod, radius, Pen.TINT)
    seen: list[Shape] = [
        Region((outline,), Pen.TINT),
        outline._replace(pen=Pen.OUTLINE),
        circle(rod, loops, Pen.THREAD),
    ]
    tied = Point(rod.x, rod.y - view.outward("far") * loops)
    return Section([*frame, way, *seen], off, tied, rod=Point(rod.x + loops + _TO_NAME, rod.y))


def _steps(turns: list[_Turn]) -> Iterator[Step]:
    """Straight to each turn, and round it."""
    for centre, radius, begin, end in turns:
        angle = math.radians(begin)
        yield Step(Point(centre.x + radius * math.cos(angle), centre.y + radius * math.sin(angle)))
        yield from arc(centre, radius, begin, end)
