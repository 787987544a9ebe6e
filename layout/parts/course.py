"""The way of the warp as a picture shows it: its first and its last passes, wide apart, and how many lie between."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal, NamedTuple

from layout.warps.warp import Warp

Layer = Literal["face", "back"]


class Leg(NamedTuple):
    """One pass in the picture, from x = `near` at the near end to x = `far` at the far end; `up` leads to the far one."""

    number: int
    near: float
    far: float
    layer: Layer
    up: bool

    @property
    def begin(self) -> float:
        """Where it comes from."""
        return self.near if self.up else self.far

    @property
    def end(self) -> float:
        """Where it leads."""
        return self.far if self.up else self.near


@dataclass(frozen=True, slots=True)
class Course:
    """`first` and `last` passes in the order of winding, x in mm from the middle of the picture.

    `left_out` passes lie between the two, in the gap from `gap[0]` to `gap[1]` (left to right); where it is 0 all are
    drawn and `last` is empty. `half` is half the width that the passes take.
    """

    first: tuple[Leg, ...]
    last: tuple[Leg, ...]
    left_out: int
    half: float
    gap: tuple[float, float]

    @property
    def legs(self) -> tuple[Leg, ...]:
        """Every pass that is drawn."""
        return self.first + self.last


def course(warp: Warp, step: float, shown: int, gap: float) -> Course:
    """The passes of `warp`, one `step` mm a pitch; of more than twice `shown` (even) only so many on either side."""
    passes = _passes(warp)
    left_out = max(0, len(passes) - 2 * shown) // 2 * 2
    count = shown if left_out else len(passes)
    width = (len(passes) - left_out) * step + (gap if left_out else 0.0)
    toward, scale = warp.toward, Fraction(step) / warp.pitch

    def placed(numbers: range, side: int) -> tuple[Leg, ...]:
        """Those passes as far from one limit of the picture as they lie from that of the weaving, `scale` times."""

        def put(x: Fraction) -> float:
            return float(toward * side * Fraction(width) / 2 + (x - toward * side * warp.width / 2) * scale)

        return tuple(
            Leg(k, put(near), put(far), layer, up)
            for k, (near, far, layer, up) in zip(numbers, (passes[k] for k in numbers), strict=True)
        )

    break_at = toward * (count * step - width / 2)
    edges = sorted((break_at, break_at + toward * gap))
    first, last = range(count), range(count + left_out, len(passes))
    return Course(placed(first, -1), placed(last, 1), left_out, width / 2, (edges[0], edges[1]))


def _passes(warp: Warp) -> list[tuple[Fraction, Fraction, Layer, bool]]:
    found: list[tuple[Fraction, Fraction, Layer, bool]] = []
    for j in range(warp.winds):
        found.append((warp.near[j], warp.far[j], "face", True))
        found.append((warp.near[j + 1], warp.far[j], "back", False))
    return found
