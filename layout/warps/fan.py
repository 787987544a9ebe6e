"""The fan: how far ends lie off their places on their way from one frame end to the other.

A pass is straight on the unrolled frame: at t (0 at the near marks, 1 at the far ones) its end lies at
near + t (far - near), and it is wanted at (k + 1/2) p - W/2. A height h above the outer edge of the near end, on a
frame H high on which a pass is L long from mark to mark, comes to t = 1/2 + (h - H/2) / L.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.frames.frame import FlatEnd, Frame, PeggedEnd, RoundBar
from layout.warps.warp import Warp

TOLERANCE = Fraction(1, 10)
"""Of the pitch: an end that lies no further off its place is left alone. Our own choice."""


def _courses(warp: Warp) -> set[tuple[Fraction, Fraction]]:
    """How far off its place an end is at the near marks, and at the far ones: each kind of course once."""
    passes = warp.passes[:: warp.toward]
    return {(each.near - at, each.far - at) for each, at in zip(passes, warp.end_positions, strict=True)}


def astray(warp: Warp, t: Fraction) -> Fraction:
    """How far in mm the end that lies worst is off its place at `t`."""
    return max(abs(near + t * (far - near)) for near, far in _courses(warp))


def settled(warp: Warp, tolerance: Fraction) -> tuple[Fraction, Fraction] | None:
    """From which t to which every end lies within `tolerance` mm of its place; None if nowhere."""
    low, high = Fraction(0), Fraction(1)
    for near, far in _courses(warp):
        run = far - near
        if run:
            first, last = sorted(((-tolerance - near) / run, (tolerance - near) / run))
            low, high = max(low, first), min(high, last)
        elif abs(near) > tolerance:
            return None
    return (low, high) if low <= high else None


@dataclass(frozen=True, slots=True)
class Fan:
    """The fan at heights in mm above the outer edge of the near end of a frame `high` mm from end to end.

    `way` is how long a pass is from mark to mark. Where the marks of a frame end lie in several rows they differ by
    `rows` mm, and what is said holds for the worst of them.
    """

    warp: Warp
    high: float
    way: float
    rows: float = 0.0

    def off(self, height: float) -> float:
        """How far in mm the end that lies worst is off its place at this height."""
        away = min(0.5, (abs(height - self.high / 2) + self.rows / 2) / self.way)
        return float(max(astray(self.warp, Fraction(0.5 + side * away)) for side in (-1, 1)))

    def needs_no_fingers(self) -> tuple[float, float] | None:
        """Between which heights every end lies within `TOLERANCE` of its place by itself; None if nowhere."""
        found = settled(self.warp, TOLERANCE * self.warp.pitch)
        if found is None:
            return None
        middle, inner = self.high / 2, self.rows / 2
        low, high = ((float(t) - 0.5) * self.way for t in found)
        below = middle + low + inner if found[0] > 0 else 0.0
        above = middle + high - inner if found[1] < 1 else self.high
        return (below, above) if below <= above else None


def fan_of(frame: Frame, warp: Warp) -> Fan:
    """The fan of `warp` on its frame.

    Round a bar of diameter D a pass goes from outermost line to outermost line, L = H - D + pi D / 2; over a flat end
    of thickness T, edges rounded with r, L = H - 2r + (T - 2r + pi r); between notches and pegs from inset to inset.
    """
    high, ends = float(frame.outer_height.mm), frame.ends
    if isinstance(ends, RoundBar):
        return Fan(warp, high, high - float(ends.diameter.mm) + ends.half_turn_mm)
    if isinstance(ends, FlatEnd):
        return Fan(warp, high, high - 2 * float(ends.edge_radius.mm) + ends.half_turn_mm)
    if isinstance(ends, PeggedEnd):
        rows = float(ends.row_distance.mm)
        return Fan(warp, high, high - 2 * float(ends.edge_distance.mm) - 2 * rows, rows)
    return Fan(warp, high, high - 2 * float(ends.inset_mm))
