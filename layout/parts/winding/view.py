"""Where things stand in the winding picture, on any kind of frame.

y runs up the paper from the lower outermost line of the frame, x from the middle of the weaving.
"""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.shapes import Point
from layout.parts.winding.scale import Scale
from layout.parts.winding.shown_passes import ShownPasses
from layout.plan import Plan
from layout.warps.warp import End

ENDS: tuple[End, End] = ("near", "far")
SAME = 1e-6
"""mm: no two notches or pegs lie so close."""


@dataclass(frozen=True, slots=True)
class View:
    """What every piece of the picture goes by: the plan, the size, and the passes that are drawn."""

    plan: Plan
    scale: Scale
    way: ShownPasses

    def height(self, end: End) -> float:
        """The y of the outermost line of a frame end."""
        return 0.0 if self.outward(end) < 0 else self.scale.reach

    def outward(self, end: End) -> int:
        """+1 where a frame end is the upper one, -1 where it is the lower one."""
        return -1 if (end == "near") == (self.plan.kit.weaving.near_end == "bottom") else 1

    def inside(self, end: End, share: float) -> float:
        """The y of a line along a frame end, `share` of its height within the outermost line."""
        return self.height(end) - self.outward(end) * share * self.scale.bar

    def knots_at(self, end: End) -> float:
        """The y of knots: just inside a frame end."""
        return self.inside(end, 1.0) - self.outward(end) * self.scale.inset

    def up(self, share: float) -> float:
        """The y at a share of the way from the near end's outermost line to the far end's."""
        return self.height("near") + self.outward("far") * share * self.scale.reach

    def on(self, toward: float, share: float) -> Point:
        """A place so far from the middle the way the winding goes, at a share of the height."""
        return Point(self.plan.warp.toward * toward, self.up(share))

    @property
    def side_x(self) -> float:
        """The x of the middle of the view from the right."""
        return self.scale.aside
