"""The picture of a warp between nails."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, line
from layout.drawing.symbols import block
from layout.frames.kinds.nails import NailEnd
from layout.parts.winding.kinds.picture_kind import BOARD, Section, wood
from layout.parts.winding.kinds.pinned import PinnedPicture
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, View
from layout.warps.warp import End

_NAIL, _THICK = 0.7, 0.05  # how long and how thick a nail is seen from the side, against the height of an end
_ROW = 0.5  # where the row stands in the height of an end


class NailedPicture(PinnedPicture):
    """Boards with a row of nails on the face; between them nothing runs behind."""

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At the side of a nail."""
        return Point(leg.near if end == "near" else leg.far, view.inside(end, _ROW))

    def radius(self, view: View) -> float:
        """Of a nail."""
        ends = view.plan.kit.frame.ends
        return float(ends.nail_diameter.mm) / 2 * view.way.scale if isinstance(ends, NailEnd) else 0.0

    def section(self, view: View) -> Section:
        """A nail on the face of both boards with the thread between them."""
        x, scale = view.side_x, view.scale
        half, long, thick = BOARD * scale.bar / 2, _NAIL * scale.bar, _THICK * scale.bar
        near, far = (view.inside(end, _ROW) for end in ENDS)
        nails = [
            shape for y in (near, far) for shape in block(x - half - long, y - thick, x - half, y + thick, Pen.OUTLINE)
        ]
        off = half + long / 2
        thread = line(Point(x - off, near), Point(x - off, far), Pen.THREAD)
        return Section([*wood(view), *nails, thread], off, Point(x - off, near))
