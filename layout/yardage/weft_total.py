"""How much weft a weaving takes: length and weight, whole or by colour, computed or scaled from a weighed sample."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from layout.messages.catalogue import Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Computed, YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, computed, measured

TAIL_MM = 25
"""A yarn tail at both ends of every length of weft, about an inch (G. Christie, Embroidery and Tapestry Weaving)."""

HEAVIEST_G_PER_M2 = 2441.0
"""A heavy weft-faced rug: half a pound to the square foot (attributed to P. Collingwood); more is a mistake."""


def drawn_in(width_mm: Number, draw_in: Number) -> float:
    """A width, or a pitch, after the weaving has drawn in by a share: width x (1 - share)."""
    width = exactly(width_mm)
    return float(width * (1 - exactly(draw_in)))


def weft_length(width_mm: Number, height_mm: Number, picks: Quantity, take_up: Quantity) -> Quantity:
    """The weft in mm for a woven width and height: width x (1 + take-up) x picks per mm x height, without tails."""
    width = exactly(width_mm)
    height = exactly(height_mm)
    each = exactly(picks.value)
    more = exactly(take_up.value)
    total = float(width * height * each * (1 + more))
    values = {"picks": plain(round(each * height, 1)), "take_up": plain(round(100 * more, 1))}
    return computed(total, ENGLISH.say(Computed.WEFT, width=plain(width), **values), picks, take_up)


def tails(lengths: Number, tail_mm: Number = TAIL_MM) -> Quantity:
    """The weft in mm that stands at the back as tails: two for every length of yarn put in."""
    count = int(lengths)
    tail = exactly(tail_mm)
    role = Computed.TAILS_USUAL if tail == TAIL_MM else Computed.TAILS
    return computed(float(2 * count * tail), ENGLISH.say(role, tail=plain(tail), lengths=count))


def colour_shares(shares: Mapping[str, Number], field: str = "weft.colours") -> dict[str, Fraction]:
    """The share of each colour, exactly, in the order given; they must add up to 1 or to 100 (per cent)."""
    example = "red = 60, grey = 40"
    parts = {name: exactly(value) for name, value in shares.items()}
    total = sum(parts.values())
    if total not in (1, 100):
        got = Message(YardageNeed.SUM, {"sum": f"{float(total):.12g}"})
        raise FieldError(field, YardageNeed.SHARES, got, example)
    return {name: part / total for name, part in parts.items()}


@dataclass(frozen=True, slots=True)
class ColourPart:
    """One colour of a weaving: its `share` of the area, and how many `lengths` of weft are put in."""

    name: str
    share: Number
    lengths: int = 0


def by_colour(weft: Quantity, parts: Sequence[ColourPart], tail_mm: Number = TAIL_MM) -> dict[str, Quantity]:
    """`weft` (mm, without tails) split by the colours' shares, each with its own tails, in mm as woven."""
    shares = colour_shares({part.name: part.share for part in parts})
    return {part.name: _laid(weft, part, shares[part.name], tail_mm) for part in parts}


def _laid(weft: Quantity, part: ColourPart, of_all: Fraction, tail_mm: Number) -> Quantity:
    ends = tails(part.lengths, tail_mm)
    said = ENGLISH.say(Computed.COLOUR, share=plain(100 * of_all))
    return computed(weft.value * float(of_all) + ends.value, said, weft, ends)


def scaled_from_sample(
    sample_grams: Number, sample_mm: tuple[Number, Number], weaving_mm: tuple[Number, Number]
) -> Quantity:
    """The weft in g for a weaving (width, height) as a woven sample of the same sett, yarn and beat took it.

    `sample_grams` is weft alone: the ball weighed before and after.
    """
    grams = exactly(sample_grams)
    area = _area(sample_mm)
    ratio = _area(weaving_mm) / area
    reason = ENGLISH.say(Computed.SAMPLE, grams=plain(grams), area=plain(area / 100), ratio=plain(ratio))
    return computed(float(grams * ratio), reason, measured(float(grams), ENGLISH.say(Computed.WEIGHED)))


def _area(sides: tuple[Number, Number]) -> Fraction:
    width = exactly(sides[0])
    return width * exactly(sides[1])


def weight_warnings(grams: Number, width_mm: Number, height_mm: Number) -> tuple[str, ...]:
    """One sentence if the weft weighs more by area than a heavy rug does; else nothing."""
    weight = float(grams)
    per_m2 = weight / float(_area((width_mm, height_mm))) * 1e6
    if per_m2 <= HEAVIEST_G_PER_M2:
        return ()
    return (ENGLISH.say(YardageNeed.TOO_HEAVY, weight=plain(round(per_m2)), most=plain(HEAVIEST_G_PER_M2)),)
