"""What pictures of warps round pins have in common: round nails, and round pegs."""

from __future__ import annotations

from abc import abstractmethod
from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, arc, circle
from layout.parts.winding.kinds.picture_kind import PictureKind
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, SAME, View
from layout.warps.warp import End, Warp


class PinnedPicture(PictureKind):
    """Boards with pins on the face, each turning the thread; between them nothing runs behind."""

    @abstractmethod
    def radius(self, view: View) -> float:
        """Of a pin, as thick against the pitch as on the frame."""

    def number(self, warp: Warp, k: int, end: End) -> int:
        """The first pin is 0; each turns two ends."""
        return (k + 1) // 2 if end == "near" else k // 2 + 1

    def mark(self, view: View, leg: ShownPass, end: End) -> float:
        """The middle of the pin."""
        return self._centre(view, leg, end).x

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
        centres = list[Point]()
        for leg in view.way.legs:
            for end in ENDS:
                centre = self._centre(view, leg, end)
                centres += [] if any(dist(centre, other) < SAME for other in centres) else [centre]
        return [circle(centre, self.radius(view), Pen.OUTLINE) for centre in centres]

    def _centre(self, view: View, leg: ShownPass, end: End) -> Point:
        """The pin round which a pass comes or goes."""
        side = -1 if leg.up == (end == "near") else 1
        at = self.meets(view, leg, end)
        return Point(at.x + side * view.plan.warp.toward * self._turning(view), at.y)

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """On the side of its pin."""
        return self.meets(view, leg, end)

    def _turning(self, view: View) -> float:
        """How far from the centre of its pin the thread's middle line turns: half a pin and half a thread."""
        return self.radius(view) + float(view.plan.warp.thickness or 0) / 2 * view.way.scale
