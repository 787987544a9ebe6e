"""The fan: how far ends lie off their places on their way from one frame end to the other.

A pass is straight on the unrolled frame: at t (0 at the near marks, 1 at the far ones) its end lies at
near + t (far - near), and it is wanted at (k + 1/2) p - W/2. A height h above the outer edge of the near end, on a
frame H high on which a pass is L long from mark to mark, comes to t = 1/2 + (h - H/2) / L. Between two pegs a pass is
the straight line that touches both, on the sides that face each other.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from layout.frames.frame import Frame
from layout.warps.warp import Warp
from layout.warps.way import Course
from layout.warps.ways import way_of

TOLERANCE = Fraction(1, 10)
"""Of the pitch: an end that lies no further off its place is left alone. Our own choice."""

_ROUNDING = 1e-9  # of the tolerance


@dataclass(frozen=True, slots=True)
class Fan:
    """The fan of ends on these `courses`, at heights in mm above the outer edge of the near end of a frame `high` mm
    from end to end; ends within `tolerance` mm of their places are left alone.
    """

    high: float
    tolerance: float
    courses: frozenset[Course]

    def off(self, height: float) -> float:
        """How far in mm the end that lies worst is off its place at this height."""
        return max(abs(off + (height - self.high / 2) * more) for off, more in self.courses)

    def needs_no_fingers(self) -> tuple[float, float] | None:
        """Between which heights every end lies within the tolerance of its place by itself; None if nowhere."""
        allowed, low, high = self.tolerance * (1 + _ROUNDING), 0.0, self.high
        for off, more in self.courses:
            if more:
                first, last = sorted(((-allowed - off) / more, (allowed - off) / more))
                low, high = max(low, first + self.high / 2), min(high, last + self.high / 2)
            elif abs(off) > allowed:
                return None
        return (low, high) if low <= high else None


def fan_of(frame: Frame, warp: Warp) -> Fan:
    """The fan of `warp` on its frame while it is woven on."""
    tight = frame.tightened
    own = way_of(tight.ends, warp.winding).courses(tight.ends, tight, warp)
    courses = _unrolled(tight, warp) if own is None else own
    return Fan(float(tight.outer_height.mm), float(TOLERANCE * warp.pitch), frozenset(courses))


def way_between(frame: Frame) -> float:
    """How long in mm a pass is from mark to mark."""
    return frame.ends.pass_mm(float(frame.outer_height.mm))


def _unrolled(frame: Frame, warp: Warp) -> set[Course]:
    passes, way = warp.passes[:: warp.toward], way_between(frame)
    places = [place for each, at in zip(passes, warp.end_positions, strict=True) for place in (each.near, each.far, at)]
    unit = math.lcm(*{place.denominator for place in places})
    whole = [place.numerator * (unit // place.denominator) for place in places]  # exact, and quicker than fractions
    exact = {(near - at, far - at) for near, far, at in zip(whole[::3], whole[1::3], whole[2::3], strict=True)}
    return {((near + far) / (2 * unit), (far - near) / unit / way) for near, far in exact}
