"""How far ends lie off their places at a heading, from the kit alone, by following each end on the frame.

Nothing here calls the layout's warps, and no formula of the layout is repeated: the layers are followed to where their
lines cross, a thread is turned about two pegs until it touches both, and the height from which no end needs help is
found by halving.
"""

from __future__ import annotations

import math
from typing import Literal

from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit
from templates_gen.verify.printed.expected import Expected
from templates_gen.verify.printed.pegs import end_thickness, peg_centres, touching
from templates_gen.verify.search import root

_SLOPE, _HEADING = 0.25, 10.0  # layers come together at 1 in 4, and a heading is 10 mm high, if a kit does not say
_TENTH = 0.1 * (1 + 1e-9)
_FIGURES = 12

End = Literal["near", "far"]
Course = tuple[float, float]
"""How far an end is off its place at the outer edge of the near end, and at that of the far end."""


class Followed:
    """Every end of `kit` from the near marks to the far ones; heights in mm above the outer edge of the near end."""

    def __init__(self, kit: Kit, marks: Expected, ends: int) -> None:
        self.kit, self.pitch = kit, float(marks.limits[1] - marks.limits[0]) / ends
        self.high = float(kit.frame.outer_height.mm)
        turn = 1 if kit.weaving.start == "left" else -1
        near, far = ([turn * float(x) for x in side] for side in (marks.near, marks.far))
        left = -self.pitch * ends / 2
        if isinstance(kit.frame.ends, PeggedEnd):
            courses = _round_pegs(kit, kit.frame.ends, near, far)[:ends]
        else:
            courses = self._unrolled(near, far, ends)
        wanted = [left + (k + 0.5) * self.pitch for k in range(ends)]
        self.offs = {
            (round(low - x, _FIGURES), round(high - x, _FIGURES))
            for x, (low, high) in zip(wanted, courses, strict=True)
        }

    @property
    def leaves_thickness_out(self) -> bool:
        """Whether the fan depends on a thickness that the kit does not say."""
        return isinstance(self.kit.frame.ends, PeggedEnd) and end_thickness(self.kit) is None

    def heading(self, end: End) -> float:
        """The height of a heading's outer side: where the lines of both layers cross; on one layer, inside its end."""
        near = self._together()
        heading = _HEADING if self.kit.amounts.room.heading is None else float(self.kit.amounts.room.heading.mm)
        bands = [near, heading, float(self.kit.weaving.height.mm), heading]
        return bands[0] if end == "near" else math.fsum(bands)

    def _together(self) -> float:
        """Above the near end's edge: both layers leave the end apart, and come in at the slope until they meet."""
        ends, stated = self.kit.frame.ends, self.kit.strength.end_width
        inside = float((stated or self.kit.frame.side_width).mm)
        if isinstance(ends, RoundBar | FlatEnd):
            if isinstance(ends, RoundBar):
                inside = apart = float(ends.diameter.mm)
            else:
                apart = float(ends.thickness.mm)
            slope = float(self.kit.amounts.room.slope or _SLOPE)
            return inside + root(lambda way: (apart / 2 - slope * way) - (slope * way - apart / 2), 0.0, apart / slope)
        if isinstance(ends, NotchedEnd):
            return max(inside, float(ends.notch_depth.mm))
        radius = float(ends.peg_diameter.mm) / 2  # type: ignore[attr-defined]
        return max(inside, *(depth + radius for _, depth in peg_centres(ends, [0.0, 1.0])))  # type: ignore[arg-type]

    def off(self, height: float) -> float:
        """The worst of all ends at a height."""
        share = height / self.high
        return max(abs(one + (other - one) * share) for one, other in self.offs)

    def settles(self) -> tuple[float, float] | None:
        """From which height to which no end is more than a tenth of a pitch off, each end walked to its last step."""
        allowed, low, high = self.pitch * _TENTH, 0.0, self.high
        for one, other in self.offs:
            found = self._span(one, other, allowed)
            if found is None:
                return None
            low, high = max(low, found[0]), min(high, found[1])
        return (low, high) if low <= high else None

    def _span(self, one: float, other: float, allowed: float) -> tuple[float, float] | None:
        """Between which heights one end is near enough: found from where it is nearest, by halving."""

        def past(height: float) -> float:
            return abs(one + (other - one) * height / self.high) - allowed

        crosses = one * other < 0
        best = root(lambda height: one + (other - one) * height / self.high, 0.0, self.high) if crosses else None
        best = best if best is not None else (0.0 if abs(one) <= abs(other) else self.high)
        if past(best) > 0:
            return None
        low = root(past, 0.0, best) if past(0.0) > 0 else 0.0
        high = root(past, best, self.high) if past(self.high) > 0 else self.high
        return low, high

    def _unrolled(self, near: list[float], far: list[float], ends: int) -> list[Course]:
        """Straight from mark to mark on the unrolled frame, drawn on to both outer edges of it as it stands."""
        half, way = self.high / 2, self._way()
        return [
            (low + (high - low) * (0.5 - half / way), low + (high - low) * (0.5 + half / way))
            for low, high in _marks_of_passes(self.kit, near, far, ends)
        ]

    def _way(self) -> float:
        """How far the marks are from each other along the thread: from the middle of the frame, twice."""
        ends, half = self.kit.frame.ends, self.high / 2
        if isinstance(ends, RoundBar):
            radius = float(ends.diameter.mm) / 2
            return 2 * (half - radius + math.pi * radius / 2)
        if isinstance(ends, FlatEnd):
            thick, radius = float(ends.thickness.mm), float(ends.edge_radius.mm)
            return 2 * (half - radius + math.pi * radius / 2 + thick / 2 - radius)
        return 2 * (half - float(getattr(ends, "notch_depth").mm))  # noqa: B009 - pegs go another way


def _round_pegs(kit: Kit, frame_end: PeggedEnd, near: list[float], far: list[float]) -> list[Course]:
    """The lines that touch two pegs, drawn on to both outer edges of the frame."""
    high = float(kit.frame.outer_height.mm)
    low_pegs = peg_centres(frame_end, near)
    high_pegs = [(x, high - depth) for x, depth in peg_centres(frame_end, far)]
    across = float(frame_end.peg_diameter.mm) + (end_thickness(kit) or 0.0)
    found = []
    for k in range(len(near) + len(far) - 1):
        line = touching(low_pegs[(k + 1) // 2], high_pegs[k // 2], across / 2, right=k % 2 == 0)
        found.append((line(0.0), line(high)))
    return found


def _marks_of_passes(kit: Kit, near: list[float], far: list[float], ends: int) -> list[tuple[float, float]]:
    """Where each end meets both frame ends, in the order of winding from left to right."""
    if kit.frame.ends.kind == "wound":
        way = [mark for pair in zip(near, [*far, math.nan], strict=False) for mark in pair]
        steps = [(way[k], way[k + 1]) for k in range(ends)]
        return [step if k % 2 == 0 else step[::-1] for k, step in enumerate(steps)]
    if len(near) + len(far) > ends + 1:
        return [(near[k], far[k]) for k in range(ends)]
    return [(near[k // 2], far[(k + 1) // 2]) for k in range(ends)]
