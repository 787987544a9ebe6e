"""The picture of a warp between pegs."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, line
from layout.drawing.symbols import block
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.parts.winding.kinds.picture_kind import BOARD, Section, wood
from layout.parts.winding.kinds.pinned import PinnedPicture
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, View
from layout.warps.pegged import in_outer_row
from layout.warps.warp import End

_PEG = 0.7  # the length of a peg against the height of an end
_OUTER, _INNER = 0.3, 0.7  # where the rows stand in the height of an end


class PeggedPicture(PinnedPicture):
    """Boards with pegs on the face; between them nothing runs behind."""

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At the side of a peg."""
        x, number = (leg.near, (leg.number + 1) // 2) if end == "near" else (leg.far, leg.number // 2)
        return Point(x, _row(view, number, end))

    def radius(self, view: View) -> float:
        """Of a peg."""
        ends = view.plan.kit.frame.ends
        return float(ends.peg_diameter.mm) / 2 * view.way.scale if isinstance(ends, PeggedEnd) else 0.0

    def section(self, view: View) -> Section:
        """Pegs on the face in two rows with the thread between them."""
        x, scale = view.side_x, view.scale
        half, long, thick = BOARD * scale.bar / 2, _PEG * scale.bar, 0.09 * scale.bar
        shapes = wood(view)
        for end in ENDS:
            for share in (_OUTER, _INNER):
                y = view.inside(end, share)
                shapes += block(x - half - long, y - thick, x - half, y + thick, Pen.OUTLINE)
        off = half + long / 2
        near, far = (_row(view, 0, end) for end in ENDS)
        thread = line(Point(x - off, near), Point(x - off, far), Pen.THREAD)
        return Section([*shapes, thread], off, Point(x - off, near))


def _row(view: View, number: int, end: End) -> float:
    """The y of the row in which a peg stands."""
    return view.inside(end, _OUTER if in_outer_row(number) else _INNER)
