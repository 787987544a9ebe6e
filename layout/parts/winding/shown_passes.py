"""The way of the warp as a picture shows it: its first and its last passes, wide apart, and how many lie between."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from layout.warps.warp import End, Layer, Warp


class ShownPass(NamedTuple):
    """One pass in the picture, from x = `near` at the near end to x = `far` at the far end; if it goes `up`, that way.

    Its `number` counts from 0 in the order of winding.
    """

    number: int
    near: float
    far: float
    layer: Layer
    up: bool
    far_layer: Layer

    def layer_at(self, end: End) -> Layer:
        """The layer in which it lies at a frame end; `layer` at the near one."""
        return self.layer if end == "near" else self.far_layer

    @property
    def crosses(self) -> bool:
        """Whether it goes from one layer to the other."""
        return self.layer != self.far_layer


@dataclass(frozen=True, slots=True)
class ShownPasses:
    """The passes that are drawn, in the order of winding; x in mm from the middle of the picture.

    `groups` are those before and those after the gap, in which `left_out` more would lie, from `gap[0]` to `gap[1]`
    (left to right); where nothing is left out there is one group. `half` is half the width of it all, and `scale` how
    many times as wide as on the frame everything is drawn.
    """

    groups: tuple[tuple[ShownPass, ...], ...]
    left_out: int
    half: float
    gap: tuple[float, float]
    scale: float

    @property
    def legs(self) -> tuple[ShownPass, ...]:
        """Every pass that is drawn."""
        return tuple(leg for group in self.groups for leg in group)


_LEAST = 4  # fewer than these are not worth a gap


def shown_passes(warp: Warp, step: float, shown: int, gap: float) -> ShownPasses:
    """The passes of `warp`, one `step` mm a pitch; of many more than twice `shown` (even) only so many on either side.

    Four at least are left out, an even number; so of an odd number of ends one fewer is drawn after the gap.
    """
    left_out = (warp.ends - 2 * shown + 1) // 2 * 2
    if left_out < _LEAST:
        left_out = 0
    count = shown if left_out else warp.ends
    width = (warp.ends - left_out) * step + (gap if left_out else 0.0)
    toward, scale = warp.toward, Fraction(step) / warp.pitch

    def group(numbers: range, side: int) -> tuple[ShownPass, ...]:
        """Passes as far from one limit of the picture as they lie from that of the weaving, `scale` times."""
        limit = toward * side * warp.width / 2

        def put(x: Fraction) -> float:
            return float(toward * side * Fraction(width) / 2 + (x - limit) * scale)

        passes = ((k, warp.passes[k]) for k in numbers)
        return tuple(
            ShownPass(k, put(one.near), put(one.far), one.layer, one.direction == "up", one.layer_at("far"))
            for k, one in passes
        )

    begin = toward * (count * step - width / 2)
    left, right = sorted((begin, begin + toward * gap))
    groups = [group(range(count), -1)]
    if left_out:
        groups.append(group(range(count + left_out, warp.ends), 1))
    return ShownPasses(tuple(groups), left_out, width / 2, (left, right), float(scale))
