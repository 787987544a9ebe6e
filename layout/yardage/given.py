"""What a kit may say about the yarns it takes and the room it leaves. All of it may be left out.

The fields are called as the keys of the kit file; None, nothing and an empty list mean that it was left out.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction

from layout.values.units import Length
from layout.yarns.label import StrandGiven, Thread, Wrap


@dataclass(frozen=True, slots=True)
class WarpGiven(Thread):
    """The warp yarn; `stretch` under tension and `spare` as shares, thread for a `knot` and for the starting `tail`."""

    stretch: Fraction | None = None
    spare: Fraction | None = None
    knot: Length | None = None
    tail: Length | None = None


@dataclass(frozen=True, slots=True)
class CountedRows:
    """So many picks, or beads, counted over a height."""

    number: int
    over: Length


@dataclass(frozen=True, slots=True)
class DrawnPick:
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
class ColourGiven:
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
class WeftGiven:
    """The weft bundle: its `strands`, its own `wrap`, what a sample showed, its colours by area, a `spare` share."""

    strands: tuple[StrandGiven, ...] = ()
    wrap: Wrap | None = None
    picks: CountedRows | None = None
    beads: CountedRows | None = None
    beat: Fraction | None = None
    pick: DrawnPick | None = None
    tail: Length | None = None
    colours: tuple[ColourGiven, ...] = ()
    sample: Sample | None = None
    spare: Fraction | None = None


HALF_HITCHES = "half hitches"
"""A heading that is no rows: an edge of half hitches, one on every end."""

WORKED = BY_HAND, WITH_A_NEEDLE = "by hand", "with a needle"
"""How the shed is opened and the weft passed."""


@dataclass(frozen=True, slots=True)
class RoomGiven:
    """What the weaving cannot use, and the sticks and leashes; `heading` is a length or HALF_HITCHES."""

    heading: Length | str | None = None
    heading_rows: int | None = None
    worked: str | None = None
    hand: Length | None = None
    slope: Fraction | None = None
    stick_past: Length | None = None
    leash_reach: Length | None = None
    leash_knot: Length | None = None


@dataclass(frozen=True, slots=True)
class AmountsGiven:
    """All of it together; `draw_in` of the width is a share, as is `shrinkage`, unless a sample was `washed`.

    `hem` is waste or hem woven with the weft at each end of the piece.
    """

    warp: WarpGiven = field(default_factory=WarpGiven)
    weft: WeftGiven = field(default_factory=WeftGiven)
    room: RoomGiven = field(default_factory=RoomGiven)
    draw_in: Fraction | None = None
    shrinkage: Fraction | None = None
    washed: Washed | None = None
    hem: Length | None = None
