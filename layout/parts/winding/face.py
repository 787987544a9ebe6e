"""The winding picture seen from the face: the frame, and the thread over it, behind it and round its ends.

y runs up the paper from the lower outermost line of the frame, x from the middle of the weaving.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, circle, line
from layout.drawing.symbols import arrow_head, block, knot, stretch
from layout.parts.winding.kinds.picture_kind import KNOT, PictureKind
from layout.parts.winding.kinds.pictures import picture_of
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPass, shown_passes
from layout.parts.winding.view import ENDS, View
from layout.plan import Plan
from layout.warps.warp import End

_DOT, _DOTS_APART, DOTS_AT = 0.45, 3.0, 0.51
_ARROW = (2.8, 1.9)


class Face(View):
    """The frame and its warp as they are seen from the face."""

    __slots__ = ()

    @classmethod
    def of(cls, plan: Plan, scale: Scale) -> Face:
        """The face of a plan's frame, drawn in that size."""
        alone = plan.warp.spacing == plan.warp.pitch
        return cls(plan, scale, shown_passes(plan.warp, scale.steps[alone], scale.shown[alone], scale.gap))

    @property
    def kind(self) -> PictureKind:
        """What is drawn for these frame ends alone."""
        return picture_of(self.plan.kit.frame.ends, self.plan.warp.winding)

    def meets(self, leg: ShownPass, end: End) -> Point:
        """Where a pass comes to a frame end: the outermost line, the ground of a notch, the side of a peg."""
        return self.kind.meets(self, leg, end)

    def along(self, leg: ShownPass, y: float) -> Point:
        """The place of a pass at that height."""
        near, far = (self.meets(leg, end) for end in ENDS)
        return Point(near.x + (far.x - near.x) * (y - near.y) / (far.y - near.y), y)

    def frame(self) -> list[Shape]:
        """Both ends and both sides."""
        outer, inner = self.scale.outer / 2, self.scale.inner / 2
        low, high = -self.scale.past, self.scale.reach + self.scale.past
        shapes = [shape for end in ENDS for shape in self.kind.board(self, end, -inner, inner)]
        for left, right in ((-outer, -inner), (inner, outer)):
            shapes += block(left, low, right, high, Pen.OUTLINE)
        return shapes

    def threads(self) -> list[Shape]:
        """Every pass with its arrow, every turn between two that are drawn, and the beginning of what is left out."""
        shapes = [shape for leg in self.way.legs for shape in self.leg(leg)]
        for group in self.way.groups:
            for one, other in pairwise(group):
                shapes += self.kind.turn(self, one, other)
        return [*shapes, *self.gap()]

    def leg(self, leg: ShownPass) -> list[Shape]:
        """One pass, whole over both ends on the face and hidden by them behind, and its arrow."""
        begin, end = (self.meets(leg, at) for at in (ENDS if leg.up else ENDS[::-1]))
        ahead = Point(end.x - begin.x, end.y - begin.y)
        share = _share(leg)
        arrow = arrow_head(Point(begin.x + share * ahead.x, begin.y + share * ahead.y), ahead, *_ARROW)
        if leg.crosses:
            return [*self.halves(leg), arrow]
        if leg.layer == "face":
            return [line(begin, end, Pen.THREAD), arrow]
        return [stretch(begin, end, self.scale.bar, self.scale.reach - self.scale.bar, Pen.THREAD_BACK), arrow]

    def halves(self, leg: ShownPass) -> Iterator[Shape]:
        """A pass that crosses at half height: whole over the end where it is on the face, hidden by the other."""
        near, far = (self.meets(leg, at) for at in ENDS)
        middle = Point((near.x + far.x) / 2, (near.y + far.y) / 2)
        for at, layer in ((near, leg.layer), (far, leg.far_layer)):
            if layer == "face":
                yield line(at, middle, Pen.THREAD)
            else:
                low, high = sorted((self.scale.reach / 2, abs(at.y - self.scale.bar)))
                yield stretch(at, middle, low, high, Pen.THREAD_BACK)

    def gap(self) -> list[Shape]:
        """Three dots for what is left out, and where the thread goes there and comes from there over an end."""
        if not self.way.left_out:
            return []
        middle, y = sum(self.way.gap) / 2, self.up(DOTS_AT)
        places = (Point(middle + k * _DOTS_APART, y) for k in (-1, 0, 1))
        dots: list[Shape] = [Region((circle(at, _DOT, Pen.SOLID),), Pen.SOLID) for at in places]
        return [*dots, *self.kind.stubs(self)]

    def knots(self) -> list[tuple[Point, End]]:
        """Where the tie-on and the tie-off are, and at which end."""
        first, last = self.way.legs[0], self.way.legs[-1]
        off: End = "far" if last.up and self.plan.warp.kind != "rod" else "near"
        return [(self.knot(first, "near"), "near"), (self.knot(last, off), off)]

    def knot(self, leg: ShownPass, end: End) -> Point:
        """Where a pass is tied at a frame end."""
        return self.kind.knot(self, leg, end)

    def tied(self) -> list[Shape]:
        """Both knots, each with the thread that comes round the outermost line to it."""
        legs = (self.way.legs[0], self.way.legs[-1])
        shapes: list[Shape] = []
        for leg, (at, end) in zip(legs, self.knots(), strict=True):
            shapes.append(knot(at, KNOT))
            if leg.layer_at(end) == "back":
                shapes.append(line(Point(at.x, self.height(end)), at, Pen.THREAD))
        return shapes


def _share(leg: ShownPass) -> float:
    """How far along a pass its arrow lies: beside the middle, by turns; where it crosses, on the half on the face."""
    odd = leg.number % 2 == 1
    if not leg.crosses:
        return 0.48 if odd else 0.6
    off = 0.06 if odd else 0.1
    return 0.5 - off if leg.layer_at("near" if leg.up else "far") == "face" else 0.5 + off
