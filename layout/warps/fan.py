"""The fan: how far ends lie off their places on their way from one frame end to the other.

A pass is straight on the unrolled frame: at t (0 at the near marks, 1 at the far ones) its end lies at
near + t (far - near), and it is wanted at (k + 1/2) p - W/2. A height h above the outer edge of the near end, on a
frame H high on which a pass is L long from mark to mark, comes to t = 1/2 + (h - H/2) / L. Between two pegs a pass is
the straight line that touches both, on the sides that face each other.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction

from layout.frames.frame import FlatEnd, Frame, PeggedEnd, RoundBar
from layout.warps.pegged import peg_depth
from layout.warps.warp import Warp

TOLERANCE = Fraction(1, 10)
"""Of the pitch: an end that lies no further off its place is left alone. Our own choice."""

_ROUNDING = 1e-9  # of the tolerance
_PERIOD = 4  # after so many passes staggered pegs stand as they stood before

Course = tuple[float, float]
"""How far in mm an end is off its place at half the height of the frame, and how much more with every mm upward."""


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
    """The fan of `warp` on its frame."""
    courses = _between_pegs(frame, frame.ends, warp) if isinstance(frame.ends, PeggedEnd) else _unrolled(frame, warp)
    return Fan(float(frame.outer_height.mm), float(TOLERANCE * warp.pitch), frozenset(courses))


def way_between(frame: Frame) -> float:
    """How long in mm a pass is from mark to mark of a frame H high, on round bars, flat ends or notched ends.

    Round a bar of diameter D it goes from outermost line to outermost line, L = H - D + pi D / 2; over a flat end of
    thickness T, edges rounded with r, L = H - 2r + (T - 2r + pi r); between notches from ground to ground.
    """
    high, ends = float(frame.outer_height.mm), frame.ends
    if isinstance(ends, RoundBar):
        return high - float(ends.diameter.mm) + ends.half_turn_mm
    if isinstance(ends, FlatEnd):
        return high - 2 * float(ends.edge_radius.mm) + ends.half_turn_mm
    return high - 2 * float(ends.inset_mm)


def _unrolled(frame: Frame, warp: Warp) -> set[Course]:
    passes, way = warp.passes[:: warp.toward], way_between(frame)
    exact = {(each.near - at, each.far - at) for each, at in zip(passes, warp.end_positions, strict=True)}
    return {(float((near + far) / 2), float(far - near) / way) for near, far in exact}


def _between_pegs(frame: Frame, ends: PeggedEnd, warp: Warp) -> Iterator[Course]:
    """Of the first passes, as wound from left to right: all later ones repeat them.

    The tangent from the right side of a peg to the left side of one that stands dx further on and dy higher leans by
    atan2(dx, dy) - asin(D / c) from upright, with c from centre to centre, and leaves its peg D / (2 cos lean) beside
    the centre. On the way back all is mirrored.
    """
    high, across = frame.outer_height.mm, float(ends.peg_diameter.mm + (warp.thickness or 0))
    for k in range(min(warp.ends, _PERIOD)):
        low, up, side = (k + 1) // 2, k // 2, -1 if k % 2 else 1
        bottom = float(peg_depth(ends, low))
        rise = float(high - peg_depth(ends, up)) - bottom
        from_peg, to_peg = (warp.toward * float(x) for x in (warp.near[low], warp.far[up]))
        along = side * (to_peg - from_peg)
        lean = math.atan2(along, rise) - math.asin(across / math.hypot(along, rise))
        at_half = from_peg + side * (across / 2 / math.cos(lean) + (float(high) / 2 - bottom) * math.tan(lean))
        wanted = float((k + Fraction(1, 2)) * warp.pitch - warp.width / 2)
        yield at_half - wanted, side * math.tan(lean)
