"""The picture of a warp wound in a figure eight: round bars, and boards, in a crossed loop."""

from __future__ import annotations

import math
from collections.abc import Iterator

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, arc
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, Section, wood
from layout.parts.winding.kinds.wound import FlatEndPicture, RoundBarPicture, round_sections
from layout.parts.winding.view import View

_Turn = tuple[Point, float, float]
"""The centre of an arc, and the angles in degrees from which to which it goes."""


class CrossedBarPicture(RoundBarPicture):
    """Round bars."""

    def section(self, view: View) -> Section:
        """Bars in a crossed loop of thread."""
        radius, reach, x = view.scale.bar / 2, view.scale.reach, view.side_x
        low, high, off = Point(x, radius), Point(x, reach - radius), radius + OFF
        lean = math.asin(2 * off / (high.y - low.y))
        angle = math.degrees(lean)
        loop = _loop([(high, -angle, 180 + angle), (low, angle, -180 - angle)], off)
        return _crossing(view, [*round_sections(view), loop], lean)


class CrossedBoardPicture(FlatEndPicture):
    """Boards."""

    def section(self, view: View) -> Section:
        """Boards in a crossed loop of thread round their edges."""
        bar, reach, x = view.scale.bar, view.scale.reach, view.side_x
        half, along = BOARD * bar / 2, reach - 2 * bar
        lean = math.atan2(2 * half, along) + math.asin(2 * OFF / math.hypot(along, 2 * half))
        angle = math.degrees(lean)
        left, right = x - half, x + half
        turns = [
            (Point(right, reach - bar), -angle, 0.0),
            (Point(right, reach), 0.0, 90.0),
            (Point(left, reach), 90.0, 180.0),
            (Point(left, reach - bar), 180.0, 180 + angle),
            (Point(right, bar), angle, 0.0),
            (Point(right, 0.0), 0.0, -90.0),
            (Point(left, 0.0), -90.0, -180.0),
            (Point(left, bar), -180.0, -180 - angle),
        ]
        return _crossing(view, [*wood(view), _loop(turns, OFF)], lean)


def _loop(turns: list[_Turn], off: float) -> Curve:
    """Round each turn in its order, `off` from its centre, straight from one to the next, and back to the start."""

    def at(centre: Point, angle: float) -> Point:
        return Point(centre.x + off * math.cos(math.radians(angle)), centre.y + off * math.sin(math.radians(angle)))

    def steps() -> Iterator[Step]:
        for centre, begin, end in turns:
            yield Step(at(centre, begin))
            yield from arc(centre, off, begin, end)

    centre, _, last = turns[-1]
    return Curve(at(centre, last), tuple(steps()), Pen.THREAD)


def _crossing(view: View, shapes: list[Shape], lean: float) -> Section:
    """A section whose passes cross at half height: a quarter of the height from an end they are so far off."""
    slope, y = math.tan(lean), view.knots_at("near")
    knot = Point(view.side_x - abs(view.scale.reach / 2 - y) * slope, y)
    return Section(shapes, view.scale.reach / 4 * slope, knot, slope)
