"""The warp on its frame: where it meets both frame ends, and the way of the thread from one to the other.

Exact lengths in mm; x from the centre of the weaving, left negative. N ends at pitch p make a weaving W = N p wide, and
the ends are wanted at (k + 1/2) p - W/2, k = 0..N-1. How the thread gets there is said in the modules beside this one.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor
from typing import Literal, NamedTuple

from layout.kit.kit import Winding
from layout.sett.sett import SettTaken
from layout.values.units import Length

End = Literal["near", "far"]
Layer = Literal["face", "back"]


class Pass(NamedTuple):
    """One end as it is laid: from x = `near` at the near end to x = `far` at the far end, on the face or behind.

    Its `direction` is "up" from the near end to the far end and "down" on the way back. It lies in its `layer` at the
    near end and in the `far_layer` at the far end; None where it stays in one layer.
    """

    near: Fraction
    far: Fraction
    layer: Layer
    direction: Literal["up", "down"]
    far_layer: Layer | None = None

    def layer_at(self, end: End) -> Layer:
        """The layer in which it lies at a frame end."""
        return self.layer if end == "near" else self.far_layer or self.layer


@dataclass(frozen=True, slots=True)
class Warp:
    """A warp on both frame ends, wound as `winding` says. `near`, `far` and `passes` are in the order of winding.

    `near` and `far` are the marks of the frame ends: where a wound warp crosses them (`near[0]` the tie-on), the
    middles of the notches in which ends lie, the centres of the pegs. From one mark to the next lie `spacing` mm. An
    odd number of `ends` is tied off at the far end. `toward` is +1 where the winding goes on to the right and -1 to the
    left. `threads` says for every end, from left to right, of how many threads it is; `thickness` in mm, None where it
    is not known, how thick an end is. A loose `rod` is so thick, if the kit says it.
    """

    kind: str
    sett: SettTaken
    ends: int
    near: tuple[Fraction, ...]
    far: tuple[Fraction, ...]
    passes: tuple[Pass, ...]
    spacing: Fraction
    toward: int
    threads: tuple[int, ...]
    notes: tuple[str, ...]
    warnings: tuple[str, ...] = ()
    thickness: Fraction | None = None
    winding: Winding = "round"
    rod: Length | None = None

    @property
    def winds(self) -> int | None:
        """How many whole winds there are, two ends to each; None between notches and pegs, where there are none."""
        return self.ends // 2 if self.kind == "wound" else None

    @property
    def pulling(self) -> int:
        """How many threads pull at a frame end: of a warp from a loose rod, those on the face and those behind."""
        return sum(self.threads) * (2 if self.kind == "rod" else 1)

    @property
    def pitch(self) -> Fraction:
        """From one end to the next, in mm."""
        return 1 / self.sett.per_mm

    @property
    def winding_pitch(self) -> Fraction | None:
        """From one wind to the next on a frame end, in mm; None where there are no winds."""
        return self.spacing if self.kind == "wound" else None

    @property
    def width(self) -> Fraction:
        """From limit to limit, in mm."""
        return self.ends * self.pitch

    @property
    def end_positions(self) -> tuple[Fraction, ...]:
        """Where every end is wanted, from left to right."""
        return _positions(self.ends, self.pitch)

    @property
    def layers(self) -> tuple[Layer, ...]:
        """The layer of every end at the near end, from left to right."""
        return self.layers_at("near")

    def layers_at(self, end: End) -> tuple[Layer, ...]:
        """The layer of every end where it comes to a frame end, from left to right."""
        return tuple(each.layer_at(end) for each in self.passes[:: self.toward])

    def marks(self, end: End) -> tuple[Fraction, ...]:
        """The marks of one frame end, in the order of winding."""
        return self.near if end == "near" else self.far

    def unit_lines(self, end: End) -> list[tuple[Fraction, int]]:
        """Every marking-unit line past the starting limit, with how many marks of `end` lie between the two.

        Half-open: a mark on a line is the first of the next unit, so that a unit never counts one too many.
        """
        unit, start = self.sett.unit.mm, -self.width / 2
        lead = self.toward * self.marks(end)[0] - start
        distances = [k * unit for k in range(1, floor(self.width / unit) + 1)]
        outside = ceil(-lead / self.spacing)
        return [(self.toward * (start + d), ceil((d - lead) / self.spacing) - outside) for d in distances]


@lru_cache(maxsize=4)
def _positions(ends: int, pitch: Fraction) -> tuple[Fraction, ...]:
    """So many points a pitch apart, about zero; kept, since thousands of exact fractions take their time."""
    first = (1 - ends) * pitch / 2
    return tuple(first + k * pitch for k in range(ends))
