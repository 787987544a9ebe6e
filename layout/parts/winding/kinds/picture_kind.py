"""What there is to draw for one kind of frame end."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape
from layout.drawing.symbols import block
from layout.messages.roles import Winding
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, View
from layout.plan import Plan
from layout.warps.warp import End, Warp

BOARD = 0.7
"""The thickness of a board against the height of a frame end."""
OFF = 0.9
"""The middle of the thread lies so far off the wood, in mm."""
KNOT = 1.5
"""The radius of a knot in mm."""


class Section(NamedTuple):
    """What is seen from the right, and how far off its middle the passes run, in mm.

    Where they cross, with a `slope` from upright, they are so far off a quarter of the height from either end.
    The name of a loose rod begins at `rod`. The warp is tied on at the `knot`.
    """

    shapes: list[Shape]
    half: float
    knot: Point
    slope: float = 0.0
    rod: Point | None = None


class PictureKind(ABC):
    """One kind of frame end in the picture: what runs `behind`, if anything."""

    behind: Winding | None = None

    @abstractmethod
    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """Where a pass comes to a frame end."""

    def source(self, plan: Plan) -> Winding:
        """Where the numbers are from."""
        return Winding.BY_TEMPLATES

    def number(self, warp: Warp, k: int, end: End) -> int:
        """The number of the mark to which the pass `k` (0 the first) comes at a frame end."""
        return k + 1

    def mark(self, view: View, leg: ShownPass, end: End) -> float:
        """The x of that mark."""
        return self.meets(view, leg, end).x

    def board(self, view: View, end: End, left: float, right: float) -> Sequence[Shape]:
        """A frame end from `left` to `right`."""
        edge, inner = view.height(end), view.inside(end, 1.0)
        return block(left, min(edge, inner), right, max(edge, inner), Pen.OUTLINE)

    def turn(self, view: View, one: ShownPass, other: ShownPass) -> list[Shape]:
        """What leads from a pass to the next beside what the passes show."""
        return []

    def stubs(self, view: View) -> list[Shape]:
        """What is seen over the frame ends of the passes that are left out."""
        return []

    def fittings(self, view: View) -> list[Shape]:
        """What stands on the frame ends."""
        return []

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """Where a thread is tied: just inside a frame end, on the pass if it lies on the face there."""
        y = view.knots_at(end)
        at = self.meets(view, leg, end)
        if leg.layer_at(end) == "back":
            return Point(at.x, y)
        near, far = (self.meets(view, leg, each) for each in ENDS)
        return Point(near.x + (far.x - near.x) * (y - near.y) / (far.y - near.y), y)

    @abstractmethod
    def section(self, view: View) -> Section:
        """Both ends cut through, with the thread round them and the tie-on."""


def wood(view: View) -> list[Shape]:
    """The sections of both boards."""
    half, x = BOARD * view.scale.bar / 2, view.side_x
    spans = (sorted((view.height(end), view.inside(end, 1.0))) for end in ENDS)
    return [shape for low, high in spans for shape in block(x - half, low, x + half, high, Pen.OUTLINE)]
