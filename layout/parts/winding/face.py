"""The winding picture seen from the face: the frame, and the thread over it, behind it and round its ends.

y runs up the paper from the lower outermost line of the frame, x from the middle of the weaving.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import dist, inf

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, arc, circle, line
from layout.drawing.symbols import arrow_head, block, break_line, knot, notched_block, stretch
from layout.frames.frame import PeggedEnd
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPass, ShownPasses, shown_passes
from layout.plan import Plan
from layout.warps.pegged import in_outer_row
from layout.warps.warp import End

_SAME = 1e-6  # mm: no two notches or pegs lie so close
_NOTCH, _UNDER, _ROW = 1.6, 0.7, 2.6
ENDS: tuple[End, End] = ("near", "far")


@dataclass(frozen=True, slots=True)
class Face:
    """What every piece of the picture goes by: the plan, the size, and the passes that are drawn."""

    plan: Plan
    scale: Scale
    way: ShownPasses

    @classmethod
    def of(cls, plan: Plan, scale: Scale) -> Face:
        """The face of a plan's frame, drawn in that size."""
        kind = plan.warp.kind
        return cls(plan, scale, shown_passes(plan.warp, scale.step(kind), scale.shown, scale.gap))

    def height(self, end: End) -> float:
        """The y of the outermost line of a frame end."""
        return 0.0 if self.outward(end) < 0 else self.scale.reach

    def outward(self, end: End) -> int:
        """+1 where a frame end is the upper one, -1 where it is the lower one."""
        return -1 if (end == "near") == (self.plan.kit.weaving.near_end == "bottom") else 1

    def inside(self, end: End, share: float) -> float:
        """The y of a line along a frame end, `share` of its height within the outermost line."""
        return self.height(end) - self.outward(end) * share * self.scale.bar

    def meets(self, leg: ShownPass, end: End) -> Point:
        """Where a pass comes to a frame end: the outermost line, the ground of a notch, the side of a peg."""
        x, kind = leg.near if end == "near" else leg.far, self.plan.warp.kind
        if kind == "wound":
            return Point(x, self.height(end))
        if kind == "notched":
            return Point(x, self.inside(end, 0.3))
        return Point(x, self.peg_row((leg.number + 1) // 2 if end == "near" else leg.number // 2, end))

    def peg_row(self, number: int, end: End) -> float:
        """The y of the row in which a peg stands."""
        return self.inside(end, 0.3 if in_outer_row(number) else 0.7)

    @property
    def peg_radius(self) -> float:
        """As thick against the pitch as on the frame; 0 where there are no pegs."""
        ends = self.plan.kit.frame.ends
        return float(ends.peg_diameter.mm) / 2 * self.way.scale if isinstance(ends, PeggedEnd) else 0.0

    @property
    def turn_radius(self) -> float:
        """How far from the centre of its peg the thread's middle line turns: half a peg and half a thread."""
        return self.peg_radius + float(self.plan.warp.thickness or 0) / 2 * self.way.scale

    @property
    def spans(self) -> list[tuple[float, float]]:
        """From where to where the weaving is drawn, left to right."""
        half, inset = self.way.half + 2, self.scale.inset
        left, right = self.way.gap
        return [(-half, left + inset), (right - inset, half)] if self.way.left_out else [(-half, half)]

    def frame(self) -> list[Shape]:
        """Both sides, and both ends, with a break where passes are left out."""
        scale, outer, inner = self.scale, self.scale.outer / 2, self.scale.inner / 2
        low, high = -scale.past, scale.reach + scale.past
        shapes = [*block(-outer, low, -inner, high), *block(inner, low, outer, high)]
        edges = [-inner, *(x for span in pairwise(self.spans) for x in (span[0][1], span[1][0])), inner]
        for end in ENDS:
            for left, right in zip(edges[::2], edges[1::2], strict=True):
                shapes += self.board(end, left, right)
        shapes += [break_line(x, low, high) for x in edges[1:-1]]
        return shapes

    def board(self, end: End, left: float, right: float) -> Sequence[Shape]:
        """A frame end from `left` to `right`, with its notches."""
        edge, inner = self.height(end), self.inside(end, 1.0)
        if self.plan.warp.kind != "notched":
            return block(left, min(edge, inner), right, max(edge, inner))
        at = sorted(self.meets(leg, end).x for leg in self.way.legs)
        notches = [x for before, x in pairwise([-inf, *at]) if left < x < right and x - before > _SAME]
        return notched_block(left, right, edge, inner, notches, _NOTCH, self.inside(end, 0.3))

    def threads(self) -> list[Shape]:
        """Every pass with its arrow, and every turn between two that are drawn."""
        shapes = [shape for leg in self.way.legs for shape in self.leg(leg)]
        for group in self.way.groups:
            for one, other in pairwise(group):
                shapes += self.turn(one, other)
        return shapes

    def leg(self, leg: ShownPass) -> list[Shape]:
        """One pass, whole over both ends on the face and hidden by them behind, and its arrow."""
        begin, end = (self.meets(leg, at) for at in (ENDS if leg.up else ENDS[::-1]))
        ahead = Point(end.x - begin.x, end.y - begin.y)
        share = 0.62 if leg.number % 2 else 0.55
        arrow = arrow_head(Point(begin.x + share * ahead.x, begin.y + share * ahead.y), ahead)
        if leg.layer == "face":
            return [line(begin, end, Pen.THREAD), arrow]
        return [stretch(begin, end, self.scale.bar, self.scale.reach - self.scale.bar, Pen.THREAD_BACK), arrow]

    def turn(self, one: ShownPass, other: ShownPass) -> list[Shape]:
        """What leads from a pass to the next: nothing more on a bar, the way behind a tooth, the way round a peg."""
        end: End = "far" if one.up else "near"
        begin, then = self.meets(one, end), self.meets(other, end)
        if self.plan.warp.kind == "notched":
            return [line(begin, then, Pen.THREAD_BACK)] if begin != then else []
        if self.plan.warp.kind == "wound":
            return []
        centre, radius = Point((begin.x + then.x) / 2, begin.y), self.turn_radius
        from_angle = 180.0 if begin.x < centre.x else 0.0
        over = self.outward(end) * (-180 if begin.x < centre.x else 180)
        return [Curve(begin, arc(centre, radius, from_angle, from_angle + over), Pen.THREAD)]

    def pegs(self) -> list[Shape]:
        """Every peg that a drawn pass touches."""
        ends, toward, radius = self.plan.kit.frame.ends, self.plan.warp.toward, self.peg_radius
        if not isinstance(ends, PeggedEnd):
            return []
        centres: list[Point] = []
        for leg in self.way.legs:
            for end, side in zip(ENDS, (-1, 1) if leg.up else (1, -1), strict=True):
                at = self.meets(leg, end)
                centre = Point(at.x + side * toward * self.turn_radius, at.y)
                centres += [] if any(dist(centre, other) < _SAME for other in centres) else [centre]
        return [circle(centre, radius, Pen.HELP) for centre in centres]

    def knots(self) -> list[tuple[Point, End]]:
        """Where the tie-on and the tie-off are, and at which end."""
        first, last = self.way.legs[0], self.way.legs[-1]
        off: End = "far" if last.up else "near"
        return [(self.knot(first, "near"), "near"), (self.knot(last, off), off)]

    def knot(self, leg: ShownPass, end: End) -> Point:
        """On the face of a frame end, where the pass lies or comes round; on the side of its peg."""
        at = self.meets(leg, end)
        return at if self.plan.warp.kind == "pegged" else Point(at.x, self.inside(end, 0.6))

    def tied(self) -> list[Shape]:
        """Both knots, each with the thread that comes round the outermost line to it."""
        legs = (self.way.legs[0], self.way.legs[-1])
        shapes: list[Shape] = []
        for leg, (at, end) in zip(legs, self.knots(), strict=True):
            shapes.append(knot(at))
            if leg.layer == "back":
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


def _broken(left: float, right: float, y: float, hidden: Sequence[float]) -> list[Curve]:
    """A row from `left` to `right` that is hidden where other thread lies over it."""
    edges = [left, *(edge for x in hidden for edge in (x - _UNDER, x + _UNDER)), right]
    return [line(Point(a, y), Point(b, y), Pen.THREAD) for a, b in zip(edges[::2], edges[1::2], strict=True) if b > a]
