"""How far ends lie off their places at a heading, reckoned from the kit alone by following each end.

Nothing here calls the layout's warps: the ends are followed from contact to contact of `expected`, and the height from
which they need no help is found by halving, not by a formula.
"""

from __future__ import annotations

import math
from typing import Literal

from layout.frames.frame import FlatEnd, NotchedEnd, PeggedEnd, RoundBar
from layout.kit.kit import Kit
from templates_gen.verify.expected import Expected

_SLOPE, _HEADING = 0.25, 10.0  # layers come together at 1 in 4, and a heading is 10 mm high, if a kit does not say
_TENTH = 0.1
_HALVINGS = 60

End = Literal["near", "far"]


class Followed:
    """Every end of `kit` from the near marks to the far ones; heights in mm above the outer edge of the near end."""

    def __init__(self, kit: Kit, marks: Expected, ends: int) -> None:
        self.kit, self.pitch = kit, float(marks.limits[1] - marks.limits[0]) / ends
        self.high = float(kit.frame.outer_height.mm)
        turn = 1 if kit.weaving.start == "left" else -1
        near, far = ([turn * float(x) for x in side] for side in (marks.near, marks.far))
        left = -self.pitch * ends / 2
        self.offs = [
            (low - (left + (k + 0.5) * self.pitch), high - (left + (k + 0.5) * self.pitch))
            for k, (low, high) in enumerate(_courses(kit, near, far, ends))
        ]

    def heading(self, end: End) -> float:
        """The height of a heading's outer side: as far from its frame end as the layers stand apart there."""
        ends, room = self.kit.frame.ends, self.kit.amounts.room
        stated = self.kit.strength.end_width
        wide = float((stated or self.kit.frame.side_width).mm)
        apart = 0.0
        if isinstance(ends, RoundBar):
            wide, apart = float(ends.diameter.mm), float(ends.diameter.mm)
        elif isinstance(ends, FlatEnd):
            apart = float(ends.thickness.mm)
        elif isinstance(ends, NotchedEnd):
            wide = max(wide, float(ends.notch_depth.mm))
        else:
            wide = max(wide, float(ends.edge_distance.mm + ends.row_distance.mm + ends.peg_diameter.mm / 2))
        near = wide + apart / 2 / float(room.slope or _SLOPE)
        heading = _HEADING if room.heading is None else float(room.heading.mm)
        return near if end == "near" else near + heading + float(self.kit.weaving.height.mm) + heading

    def off(self, height: float) -> float:
        """The worst of all ends at a height."""
        away, most = self._away(height)
        share = min(1.0, away / most)
        sides = (0.5 - share / 2, 0.5 + share / 2)
        return max(abs(one + (other - one) * t) for one, other in self.offs for t in sides)

    def _away(self, height: float) -> tuple[float, float]:
        """How far from the middle of the frame along the thread a height is, and how far the marks are."""
        ends, half = self.kit.frame.ends, self.high / 2
        away = abs(height - half)
        if isinstance(ends, RoundBar):
            radius = float(ends.diameter.mm) / 2
            return away, half - radius + math.pi * radius / 2
        if isinstance(ends, FlatEnd):
            thick, radius = float(ends.thickness.mm), float(ends.edge_radius.mm)
            return away, half - radius + math.pi * radius / 2 + thick / 2 - radius
        if isinstance(ends, NotchedEnd):
            return away, half - float(ends.notch_depth.mm)
        rows = float(ends.row_distance.mm)
        return away + rows / 2, half - float(ends.edge_distance.mm) - rows

    def settles(self) -> float | None:
        """The distance from either end's outer edge from which on no end is more than a tenth of a pitch off."""
        allowed = self.pitch * _TENTH * (1 + 1e-12)
        if self.off(self.high / 2) > allowed:
            return None
        low, high = 0.0, self.high / 2
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            low, high = (low, middle) if self.off(middle) <= allowed else (middle, high)
        return high


def _courses(kit: Kit, near: list[float], far: list[float], ends: int) -> list[tuple[float, float]]:
    """Where each end meets both frame ends, in the order of winding from left to right."""
    if kit.frame.ends.kind == "wound":
        way = [mark for pair in zip(near, [*far, math.nan], strict=False) for mark in pair]
        steps = [(way[k], way[k + 1]) for k in range(ends)]
        return [step if k % 2 == 0 else step[::-1] for k, step in enumerate(steps)]
    if isinstance(kit.frame.ends, PeggedEnd):
        half = float(kit.frame.ends.peg_diameter.mm) / 2
        sides = (half, -half)
        return [(near[(k + 1) // 2] + sides[k % 2], far[k // 2] - sides[k % 2]) for k in range(ends)]
    if len(near) + len(far) > ends + 1:
        return [(near[k], far[k]) for k in range(ends)]
    return [(near[k // 2], far[(k + 1) // 2]) for k in range(ends)]
