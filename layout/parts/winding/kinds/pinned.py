"""What pictures of warps round pins have in common: round nails, and round pegs."""

from __future__ import annotations

from abc import abstractmethod
from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, arc, circle
from layout.parts.winding.kinds.picture_kind import PictureKind
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, SAME, View
from layout.warps.warp import End


class PinnedPicture(PictureKind):
    """Boards with pins on the face, each turning the thread; between them nothing runs behind."""

    @abstractmethod
    def radius(self, view: View) -> float:
        """Of a pin, as thick against the pitch as on the frame."""

    def turn(self, view: View, one: ShownPass, other: ShownPass) -> list[Shape]:
        """The way round a pin."""
        end: End = "far" if one.up else "near"
        begin, then = self.meets(view, one, end), self.meets(view, other, end)
        centre = Point((begin.x + then.x) / 2, begin.y)
        from_angle = 180.0 if begin.x < centre.x else 0.0
        over = view.outward(end) * (-180 if begin.x < centre.x else 180)
        return [Curve(begin, arc(centre, self._turning(view), from_angle, from_angle + over), Pen.THREAD)]

    def fittings(self, view: View) -> list[Shape]:
        """Every pin that a drawn pass touches."""
        toward, centres = view.plan.warp.toward, list[Point]()
        for leg in view.way.legs:
            for end, side in zip(ENDS, (-1, 1) if leg.up else (1, -1), strict=True):
                at = self.meets(view, leg, end)
                centre = Point(at.x + side * toward * self._turning(view), at.y)
                centres += [] if any(dist(centre, other) < SAME for other in centres) else [centre]
        return [circle(centre, self.radius(view), Pen.HELP) for centre in centres]

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """On the side of its pin."""
        return self.meets(view, leg, end)

    def _turning(self, view: View) -> float:
        """How far from the centre of its pin the thread's middle line turns: half a pin and half a thread."""
        return self.radius(view) + float(view.plan.warp.thickness or 0) / 2 * view.way.scale
