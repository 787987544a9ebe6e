"""The picture of a warp between notches."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise
from math import inf

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, line
from layout.drawing.symbols import notched_block
from layout.messages.roles import Winding
from layout.parts.winding.kinds.picture_kind import BOARD, OFF, PictureKind, Section, wood
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, SAME, View
from layout.plan import Plan
from layout.warps.warp import End, Warp

_NOTCH = 1.6
_GROUND = 0.3  # of the height of an end
_TWO, _HALF = Fraction(2), Fraction(1, 2)  # ends to a notch


class NotchedPicture(PictureKind):
    """Boards with notches."""

    behind: Winding | None = Winding.BEHIND_TOOTH

    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """At the ground of a notch."""
        return Point(leg.near if end == "near" else leg.far, view.inside(end, _GROUND))

    def source(self, plan: Plan) -> Winding:
        """From templates, or from strips that find the notches of a bar that has them."""
        return Winding.BY_TEMPLATES if plan.kit.frame.ends.notches is None else Winding.BY_STRIPS

    def number(self, warp: Warp, k: int, end: End) -> int:
        """Of its own notch, or of one that two ends share."""
        if warp.sett.to_a_notch != _TWO:
            return k + 1
        return k // 2 + 1 if end == "near" else (k + 1) // 2 + 1

    def board(self, view: View, end: End, left: float, right: float) -> Sequence[Shape]:
        """With the notches of the passes that are drawn, and those between them that stay empty."""
        notches: list[float] = []
        for group in view.way.groups:
            at = sorted(self.meets(view, leg, end).x for leg in group)
            used = [x for before, x in pairwise([-inf, *at]) if x - before > SAME]
            empty = [(one + other) / 2 for one, other in pairwise(used)] if _every_second(view) else []
            notches += sorted([*used, *empty])
        notches.sort()
        edge, inner = view.height(end), view.inside(end, 1.0)
        return notched_block(left, right, edge, inner, notches, _NOTCH, view.inside(end, _GROUND), Pen.OUTLINE)

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
        return Section([*wood(view), way], half, Point(x - half, view.knots_at("near")))


def _every_second(view: View) -> bool:
    """Whether notches stay empty between those that are used."""
    return view.plan.warp.sett.to_a_notch == _HALF
