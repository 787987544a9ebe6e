"""The picture of a warp between nails."""

from __future__ import annotations

from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, arc, circle, line
from layout.drawing.symbols import block, knot
from layout.frames.kinds.nails import NailEnd
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, PictureKind, Section, wood
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, SAME, View
from layout.warps.warp import End

_NAIL, _THICK = 0.9, 0.05  # how long and how thick a nail is seen from the side, against the height of an end
_ROW = 0.5  # where the row stands in the height of an end


class NailedPicture(PictureKind):
    """Boards with a row of nails on the face; between them nothing runs behind."""

    note = Winding.NOTE_NAILED

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At the side of a nail."""
        return Point(leg.near if end == "near" else leg.far, view.inside(end, _ROW))

    def turn(self, view: View, one: ShownPass, other: ShownPass) -> list[Shape]:
        """The way round a nail."""
        end: End = "far" if one.up else "near"
        begin, then = self.meets(view, one, end), self.meets(view, other, end)
        centre = Point((begin.x + then.x) / 2, begin.y)
        from_angle = 180.0 if begin.x < centre.x else 0.0
        over = view.outward(end) * (-180 if begin.x < centre.x else 180)
        return [Curve(begin, arc(centre, _turn_radius(view), from_angle, from_angle + over), Pen.THREAD)]

    def fittings(self, view: View) -> list[Shape]:
        """Every nail that a drawn pass touches."""
        toward, centres = view.plan.warp.toward, list[Point]()
        for leg in view.way.legs:
            for end, side in zip(ENDS, (-1, 1) if leg.up else (1, -1), strict=True):
                at = self.meets(view, leg, end)
                centre = Point(at.x + side * toward * _turn_radius(view), at.y)
                centres += [] if any(dist(centre, other) < SAME for other in centres) else [centre]
        return [circle(centre, _nail_radius(view), Pen.HELP) for centre in centres]

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """On the side of its nail."""
        return self.meets(view, leg, end)

    def section(self, view: View) -> Section:
        """A nail on the face of both boards with the thread between them."""
        x, scale = view.side_x, view.scale
        half, long, thick = BOARD * scale.bar / 2, _NAIL * scale.bar, _THICK * scale.bar
        near, far = (view.inside(end, _ROW) for end in ENDS)
        nails = [shape for y in (near, far) for shape in block(x - half - long, y - thick, x - half, y + thick)]
        off = half + long / 2
        thread = line(Point(x - off, near), Point(x - off, far), Pen.THREAD)
        return Section([*wood(view), *nails, thread, knot(Point(x - off, near))], off)


def _nail_radius(view: View) -> float:
    """As thick against the pitch as on the frame."""
    ends = view.plan.kit.frame.ends
    return float(ends.nail_diameter.mm) / 2 * view.way.scale if isinstance(ends, NailEnd) else 0.0


def _turn_radius(view: View) -> float:
    """How far from the centre of its nail the thread's middle line turns: half a nail and half a thread."""
    return _nail_radius(view) + float(view.plan.warp.thickness or 0) / 2 * view.way.scale
