"""How far ends lie off their places at a heading, from the kit alone, by following each end on the frame.

Nothing here calls the layout's warps, and no formula of the layout is repeated: the layers are followed to where their
lines cross, a thread is turned about two pegs until it touches both, and the height from which no end needs help is
found by halving.
"""

from __future__ import annotations

import math
from typing import Literal

from layout.kit.kit import Kit
from templates_gen.verify.kinds.truth import Course
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import Expected
from templates_gen.verify.printed.height import heading_mm, together_mm
from templates_gen.verify.search import root
from templates_gen.verify.tight import as_woven

_TENTH = 0.1 * (1 + 1e-9)
_FIGURES = 12

End = Literal["near", "far"]


class Followed:
    """Every end of `kit`, woven `woven` mm high, from the near marks on; heights in mm above the near outer edge."""

    def __init__(self, kit: Kit, woven: float, marks: Expected, ends: int) -> None:
        self.woven, self.pitch = woven, float(marks.limits[1] - marks.limits[0]) / ends
        kit = self.kit = as_woven(kit)
        self.high = float(kit.frame.outer_height.mm)
        turn = 1 if kit.weaving.start == "left" else -1
        near, far = ([turn * float(x) for x in side] for side in (marks.near, marks.far))
        left = -self.pitch * ends / 2
        own = truth_of(kit).courses(kit.frame.ends, kit, near, far)
        courses = self._unrolled(near, far, ends) if own is None else own[:ends]
        wanted = [left + (k + 0.5) * self.pitch for k in range(ends)]
        self.offs = {
            (round(low - x, _FIGURES), round(high - x, _FIGURES))
            for x, (low, high) in zip(wanted, courses, strict=True)
        }

    @property
    def leaves_thickness_out(self) -> bool:
        """Whether the fan depends on a thickness that the kit does not say."""
        return truth_of(self.kit).leaves_thickness_out(self.kit)

    def heading(self, end: End) -> float:
        """The height of a heading's outer side: where the lines of both layers cross; on one layer, inside its end."""
        near, heading = together_mm(self.kit), heading_mm(self.kit)
        if end == "far" and truth_of(self.kit).on_rod:
            return self.high - near
        return near if end == "near" else math.fsum([near, heading, self.woven, heading])

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
        half, way = self.high / 2, truth_of(self.kit).way_mm(self.kit.frame.ends, self.high)
        return [
            (low + (high - low) * (0.5 - half / way), low + (high - low) * (0.5 + half / way))
            for low, high in truth_of(self.kit).touched(near, far, ends)
        ]
