"""The picture of a warp between notches."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from math import inf

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, line
from layout.drawing.symbols import knot, notched_block
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, PictureKind, Section, wood
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, SAME, View
from layout.warps.warp import End

_NOTCH = 1.6
_GROUND = 0.3  # of the height of an end


class NotchedPicture(PictureKind):
    """Boards with notches."""

    note = Winding.NOTE_NOTCHED
    behind: Winding | None = Winding.BEHIND_TOOTH

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At the ground of a notch."""
        return Point(leg.near if end == "near" else leg.far, view.inside(end, _GROUND))

    def board(self, view: View, end: End, left: float, right: float) -> Sequence[Shape]:
        """With the notches of the passes that are drawn."""
        at = sorted(self.meets(view, leg, end).x for leg in view.way.legs)
        notches = [x for before, x in pairwise([-inf, *at]) if left < x < right and x - before > SAME]
        edge, inner = view.height(end), view.inside(end, 1.0)
        return notched_block(left, right, edge, inner, notches, _NOTCH, view.inside(end, _GROUND))

    def turn(self, view: View, one: ShownPass, other: ShownPass) -> list[Shape]:
        """The way behind a tooth."""
        end: End = "far" if one.up else "near"
        begin, then = self.meets(view, one, end), self.meets(view, other, end)
        return [line(begin, then, Pen.THREAD_BACK)] if begin != then else []

    def section(self, view: View) -> Section:
        """The thread on the face, through a notch at both ends to behind the tooth."""
        x, half = view.side_x, BOARD * view.scale.bar / 2 + OFF
        near, far = (view.inside(end, _GROUND) for end in ENDS)
        ways = (Point(x + half, near), Point(x - half, near), Point(x - half, far), Point(x + half, far))
        way = Curve(ways[0], tuple(map(Step, ways[1:])), Pen.THREAD)
        return Section([*wood(view), way, knot(Point(x - half, view.inside("near", 0.6)))], half)
