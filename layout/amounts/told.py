"""What a kit may say about the yarns it takes and the room it leaves. All of it may be left out.

The fields are called as the keys of the kit file; None, nothing and an empty list mean that it was left out.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from layout.units import Length
from layout.yarns.label import StrandTold, Thread, Wrap


@dataclass(frozen=True, slots=True)
class WarpTold(Thread):
    """The warp yarn; `stretch` under tension and `spare` as shares, thread for a `knot` and for the starting `tail`."""

    stretch: Fraction | None = None
    spare: Fraction | None = None
    knot: Length | None = None
    tail: Length | None = None


@dataclass(frozen=True, slots=True)
class Counted:
    """So many picks, or beads, counted over a height."""

    number: int
    over: Length


@dataclass(frozen=True, slots=True)
class Drawn:
    """A pick drawn out of a sample: `straight` as it lies on the table, `woven` as wide as it was in the cloth."""

    straight: Length
    woven: Length


@dataclass(frozen=True, slots=True)
class Sample:
    """A woven sample of the same sett, yarn and beat, and the `grams` of weft it took."""

    grams: Fraction
    width: Length
    height: Length


@dataclass(frozen=True, slots=True)
class ColourTold:
    """A colour's `share` of the woven area (1 or 100 together), and how many `lengths` of it are put in."""

    name: str
    share: Fraction
    lengths: int = 0


@dataclass(frozen=True, slots=True)
class Washed:
    """A sample measured `before` and `after` it was taken off and washed."""

    before: Length
    after: Length


@dataclass(frozen=True, slots=True)
class WeftTold:
    """The weft bundle: its `strands`, how the bundle wraps, what a sample showed, its colours by area."""

    strands: tuple[StrandTold, ...] = ()
    wrap: Wrap | None = None
    picks: Counted | None = None
    beads: Counted | None = None
    beat: Fraction | None = None
    pick: Drawn | None = None
    tail: Length | None = None
    colours: tuple[ColourTold, ...] = ()
    sample: Sample | None = None


@dataclass(frozen=True, slots=True)
class RoomTold:
    """What the weaving cannot use, and the sticks and leashes."""

    heading: Length | None = None
    hand: Length | None = None
    slope: Fraction | None = None
    stick_past: Length | None = None
    leash_reach: Length | None = None
    leash_knot: Length | None = None


@dataclass(frozen=True, slots=True)
class AmountsTold:
    """All of it together; `draw_in` of the width is a share, as is `shrinkage`, unless a sample was `washed`."""

    warp: WarpTold = field(default_factory=WarpTold)
    weft: WeftTold = field(default_factory=WeftTold)
    room: RoomTold = field(default_factory=RoomTold)
    draw_in: Fraction | None = None
    shrinkage: Fraction | None = None
    washed: Washed | None = None
