"""What a kit says of how strong its frame ends are, and of how hard the warp pulls at them."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from layout.values.forces import Force
from layout.values.units import Length


@dataclass(frozen=True, slots=True)
class Dip:
    """A weight of `load` hung at the middle of one thread, free over `length`, which it pulls aside by `depth`."""

    load: Force
    length: Length
    depth: Length


@dataclass(frozen=True, slots=True)
class Pluck:
    """The pitch in `hertz` of one plucked thread that is free over `length`."""

    hertz: Fraction
    length: Length


@dataclass(frozen=True, slots=True)
class Strength:
    """None where the kit says nothing.

    `tension` is the pull of one thread, and `dip` and `pluck` are ways to measure it; `tensioner` is what tightens the
    warp once it is wound. `material` is what the ends are made of, `modulus` its modulus of elasticity in N/mm2; a
    round bar may have a `bar_bore`, a board has an `end_width`, measured the way the warp pulls. `left_warped` says how
    long the frame stays under tension.
    """

    tension: Force | None = None
    tensioner: Literal["none", "rods", "wedges"] = "none"
    dip: Dip | None = None
    pluck: Pluck | None = None
    material: str | None = None
    modulus: Fraction | None = None
    bar_bore: Length | None = None
    end_width: Length | None = None
    left_warped: Literal["days", "months"] = "days"
