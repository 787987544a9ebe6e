"""The winding picture seen from the face: the frame, and the thread over it, behind it and round its ends.

y runs up the paper from the lower outermost line of the frame, x from the middle of the weaving.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, line
from layout.drawing.symbols import arrow_head, block, break_line, knot, stretch
from layout.parts.winding.kinds.picture_kind import PictureKind
from layout.parts.winding.kinds.pictures import picture_of
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPass, shown_passes
from layout.parts.winding.view import ENDS, View
from layout.plan import Plan
from layout.warps.warp import End

_UNDER, _ROW = 0.7, 2.6


class Face(View):
    """The frame and its warp as they are seen from the face."""

    __slots__ = ()

    @classmethod
    def of(cls, plan: Plan, scale: Scale) -> Face:
        """The face of a plan's frame, drawn in that size."""
        kind = plan.warp.kind
        return cls(plan, scale, shown_passes(plan.warp, scale.step(kind), scale.shown, scale.gap))

    @property
    def kind(self) -> PictureKind:
        """What is drawn for these frame ends alone."""
        return picture_of(self.plan.kit.frame.ends, self.plan.warp.winding)

    def meets(self, leg: ShownPass, end: End) -> Point:
        """Where a pass comes to a frame end: the outermost line, the ground of a notch, the side of a peg."""
        return self.kind.meets(self, leg, end)

    def frame(self) -> list[Shape]:
        """Both sides, and both ends, with a break where passes are left out."""
        scale, outer, inner = self.scale, self.scale.outer / 2, self.scale.inner / 2
        low, high = -scale.past, scale.reach + scale.past
        shapes = [*block(-outer, low, -inner, high), *block(inner, low, outer, high)]
        edges = [-inner, *(x for span in pairwise(self.spans) for x in (span[0][1], span[1][0])), inner]
        for end in ENDS:
            for left, right in zip(edges[::2], edges[1::2], strict=True):
                shapes += self.kind.board(self, end, left, right)
        shapes += [break_line(x, low, high) for x in edges[1:-1]]
        return shapes

    def threads(self) -> list[Shape]:
        """Every pass with its arrow, and every turn between two that are drawn."""
        shapes = [shape for leg in self.way.legs for shape in self.leg(leg)]
        for group in self.way.groups:
            for one, other in pairwise(group):
                shapes += self.kind.turn(self, one, other)
        return shapes

    def leg(self, leg: ShownPass) -> list[Shape]:
        """One pass, whole over both ends on the face and hidden by them behind, and its arrow."""
        begin, end = (self.meets(leg, at) for at in (ENDS if leg.up else ENDS[::-1]))
        ahead = Point(end.x - begin.x, end.y - begin.y)
        share = _share(leg)
        arrow = arrow_head(Point(begin.x + share * ahead.x, begin.y + share * ahead.y), ahead)
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
            shapes.append(knot(at))
            if leg.layer_at(end) == "back":
                shapes.append(line(Point(at.x, self.height(end)), at, Pen.THREAD))
        return shapes

    def heading(self) -> list[Shape]:
        """Two rows across all ends beside the near end, each hidden where it runs under."""
        shapes: list[Shape] = []
        for row in (0, 1):
            off = self.scale.bar + (row + 1) * _ROW
            y = self.height("near") - self.outward("near") * off
            under = [leg for leg in self.way.legs if self.under(leg, row)]
            hidden = sorted(leg.near + (leg.far - leg.near) * off / self.scale.reach for leg in under)
            for left, right in self.spans:
                shapes += _broken(left, right, y, [x for x in hidden if left < x < right])
        return shapes

    def under(self, leg: ShownPass, row: int) -> bool:
        """Whether a row runs under a pass: the first under the face and the second under the back, or turn by turn."""
        first = leg.layer == "face" if self.plan.warp.kind == "wound" else leg.number % 2 == 0
        return first == (row == 0)


def _share(leg: ShownPass) -> float:
    """How far along a pass its arrow lies: beside the middle, by turns; where it crosses, on the half on the face."""
    odd = leg.number % 2 == 1
    if not leg.crosses:
        return 0.62 if odd else 0.55
    off = 0.06 if odd else 0.1
    return 0.5 - off if leg.layer_at("near" if leg.up else "far") == "face" else 0.5 + off


def _broken(left: float, right: float, y: float, hidden: Sequence[float]) -> list[Curve]:
    """A row from `left` to `right` that is hidden where other thread lies over it."""
    edges = [left, *(edge for x in hidden for edge in (x - _UNDER, x + _UNDER)), right]
    return [line(Point(a, y), Point(b, y), Pen.THREAD) for a, b in zip(edges[::2], edges[1::2], strict=True) if b > a]
