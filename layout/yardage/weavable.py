"""What height of a frame can be woven, what hangs over as fringe, and the sticks and leashes that open the sheds."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed, YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import ROUNDING, Number, exactly, plain
from layout.values.numerals import say_number
from layout.values.quantity import Quantity, assumed, computed
from layout.values.units import in_unit

SLOPE = assumed(0.25, ENGLISH.say(Assumed.SLOPE))
HAND = assumed(80.0, ENGLISH.say(Assumed.HAND))
NEEDLE = assumed(40.0, ENGLISH.say(Assumed.NEEDLE))  # our choice
OVERHANG = assumed(40.0, ENGLISH.say(Assumed.OVERHANG))
REACH = assumed(90.0, ENGLISH.say(Assumed.REACH))
LEASH_KNOT = assumed(60.0, ENGLISH.say(Assumed.LEASH_KNOT))


def apart_zone(thickness_mm: Number, slope: Quantity = SLOPE) -> Quantity:
    """How far from a frame end (mm) the layers, one on each face of its thickness, can be woven as one plane.

    Each layer comes in by half the thickness at the slope: T / (2 slope).
    """
    thick = exactly(thickness_mm)
    steep = exactly(slope.value)
    return computed(float(thick / (2 * steep)), ENGLISH.say(Computed.APART, thick=plain(thick)), slope)


@dataclass(frozen=True, slots=True)
class RoomTaken:
    """What the weaving cannot use, in mm: `heading` and `apart` at each end, `hand` once, at the end woven last."""

    apart: Quantity
    heading: Quantity
    hand: Quantity = HAND


def weavable_height(inner_mm: Number, room: RoomTaken) -> Quantity:
    """The greatest height in mm that can be woven between two frame ends `inner_mm` apart."""
    inner = exactly(inner_mm)
    parts = (room.heading, room.apart, room.hand)
    taken = 2 * room.heading.value + 2 * room.apart.value + room.hand.value
    left = float(inner) - taken
    return computed(left, ENGLISH.say(Computed.HEIGHT, inner=plain(inner)), *parts)


def check_height(wanted_mm: Number, weavable: Quantity, field: str = "weaving.height") -> float:
    """`wanted_mm`, if it can be woven; else FieldError that names the greatest height."""
    wanted = float(wanted_mm)
    if wanted > weavable.value * (1 + ROUNDING):
        most = in_unit(plain(weavable.value), "mm")
        raise FieldError(field, YardageNeed.HEIGHT, in_unit(plain(wanted), "mm"), most, most=most)
    return wanted


def fringes(inner_mm: Number, woven_mm: Number, near_mm: Number, half_turn_mm: Number) -> tuple[Quantity, Quantity]:
    """The warp left in mm at the near and at the far end when it is cut along the outside of the frame ends.

    `near_mm` of warp lies between the near end and the weaving; `half_turn_mm` is the way round an end from face to
    back, of which each side keeps a half.
    """
    inner = exactly(inner_mm)
    woven = exactly(woven_mm)
    near = exactly(near_mm)
    turn = exactly(half_turn_mm)
    far = max(inner - woven - near, Fraction(0))
    one, other = (
        computed(float(left + turn / 2), ENGLISH.say(Computed.FRINGE, open=say_number(left, 1))) for left in (near, far)
    )
    return one, other


def shed_stick(outer_width_mm: Number, overhang: Quantity = OVERHANG) -> Quantity:
    """The length in mm of a shed stick that rests on both sides of the frame."""
    outer = exactly(outer_width_mm)
    over = exactly(overhang.value)
    reason = ENGLISH.say(Computed.STICK, outer=plain(outer), past=plain(over))
    return computed(float(outer + 2 * over), reason, overhang)


LeashEnds = Literal["odd", "even", "every second"]
"""Which ends are tied to leashes: counted from 1 in the order of winding, or either half where all lie in one layer."""


@dataclass(frozen=True, slots=True)
class Leashes:
    """`number` loops of cord, `each` and `together` in mm, that pull these `ends` forward for the second shed."""

    number: int
    each: Quantity
    together: Quantity
    ends: LeashEnds = "every second"


def leashes(ends: Number, first_on_face: bool = True, reach: Quantity = REACH, knot: Quantity = LEASH_KNOT) -> Leashes:
    """One leash to every end of the back layer: half the ends; of an odd number, the layer wound first has one more."""
    count = int(ends)
    number = count // 2 if first_on_face else (count + 1) // 2
    far = exactly(reach.value)
    tied = exactly(knot.value)
    each = computed(float(2 * far + tied), ENGLISH.say(Computed.LEASH, reach=plain(far)), reach, knot)
    return Leashes(number, each, computed(number * each.value, ENGLISH.say(Computed.LEASHES, number=number), each))
