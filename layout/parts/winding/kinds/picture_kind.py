"""What there is to draw for one kind of frame end."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.shapes import Point, Shape
from layout.drawing.symbols import block
from layout.messages.roles import Winding
from layout.parts.winding.shown_passes import ShownPass
from layout.parts.winding.view import ENDS, View
from layout.warps.warp import End

BOARD = 0.7
"""The thickness of a board against the height of a frame end."""
OFF = 0.6
"""The middle of the thread lies so far off the wood, in mm."""


class Section(NamedTuple):
    """What is seen from the right, and how far off its middle the passes run, in mm.

    Where they cross, with a `slope` from upright, they are so far off a quarter of the height from either end.
    The name of a loose rod begins at `rod`.
    """

    shapes: list[Shape]
    half: float
    slope: float = 0.0
    rod: Point | None = None


class PictureKind(ABC):
    """One kind of frame end in the picture: the `note` at its sheet's head, and what runs `behind`, if anything."""

    note: Winding
    behind: Winding | None = None

    @abstractmethod
    def meets(self, view: View, leg: ShownPass, end: End) -> Point:
        """Where a pass comes to a frame end."""

    def board(self, view: View, end: End, left: float, right: float) -> Sequence[Shape]:
        """A frame end from `left` to `right`."""
        edge, inner = view.height(end), view.inside(end, 1.0)
        return block(left, min(edge, inner), right, max(edge, inner))

    def turn(self, view: View, one: ShownPass, other: ShownPass) -> list[Shape]:
        """What leads from a pass to the next beside what the passes show."""
        return []

    def fittings(self, view: View) -> list[Shape]:
        """What stands on the frame ends."""
        return []

    def knot(self, view: View, leg: ShownPass, end: End) -> Point:
        """Where a thread is tied: on the face of a frame end, where the pass lies or comes round."""
        return Point(self.meets(view, leg, end).x, view.inside(end, 0.6))

    @abstractmethod
    def section(self, view: View) -> Section:
        """Both ends cut through, with the thread round them and the tie-on."""


def wood(view: View) -> list[Shape]:
    """The sections of both boards."""
    half, x = BOARD * view.scale.bar / 2, view.side_x
    spans = (sorted((view.height(end), view.inside(end, 1.0))) for end in ENDS)
    return [shape for low, high in spans for shape in block(x - half, low, x + half, high)]
