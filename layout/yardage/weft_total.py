"""How much weft a weaving takes: length and weight, whole or by colour, computed or scaled from a weighed sample."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from layout.messages.catalogue import Figure, Message
from layout.messages.english import ENGLISH
from layout.messages.roles import Computed, YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, combine, computed, measured

TAIL_MM = 25
"""A yarn tail at both ends of every length of weft, about an inch (G. Christie, Embroidery and Tapestry Weaving)."""

LIGHT_G_PER_M2, HEAVY_G_PER_M2 = 400, 2500
"""Weft-faced pieces weigh more, and less: P. Collingwood's rule for a rug is half a pound to the square foot, 2441."""
_READ_TO_MM = 1.0
"""To how many mm the sides of a sample are measured, or to a tenth of a short one. Our choice."""
_FINEST_GRAMS = 1000


def drawn_in(width_mm: Number, draw_in: Number) -> float:
    """A width, or a pitch, after the weaving has drawn in by a share: width x (1 - share)."""
    width = exactly(width_mm)
    return float(width * (1 - exactly(draw_in)))


def picks_of(bead: Quantity) -> Quantity:
    """Picks per mm from the height of a bead in mm, which is two picks."""
    found = combine(_picks, bead.reason, bead, falling=(0,))
    return Quantity(found.value, bead.origin, bead.reason, bead.assumptions, found.spread, bead.conflicts)


def _picks(height: float) -> float:
    return 2 / height


def weft_length(width: Quantity, height: Quantity, bead: Quantity, take_up: Quantity) -> Quantity:
    """The weft in mm for a woven width and height in mm: width x height x 2 / bead x (1 + take-up), without tails."""
    picks = plain(round(height.value * 2 / bead.value, 1))
    values = {"width": plain(width.value), "take_up": plain(round(100 * take_up.value, 1))}
    said = ENGLISH.say(Computed.WEFT, picks=picks, **values)
    return combine(_length, said, width, height, bead, take_up, falling=(2,))


def _length(width: float, height: float, bead: float, more: float) -> float:
    return width * height * 2 / bead * (1 + more)


def hem_length(hem_mm: float, weft: Quantity, height: Quantity) -> Quantity:
    """The weft in mm of a hem, or waste, at each end of the piece, woven like the rest: a share of `weft`."""
    said = ENGLISH.say(Computed.HEM, hem=plain(hem_mm))
    return combine(lambda way, high: way * 2 * hem_mm / high, said, weft, height, falling=(1,))


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
        got = Message(YardageNeed.SUM, {"sum": Figure(f"{float(total):.12g}")})
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
    return {part.name: _laid(weft, part, float(shares[part.name]), tail_mm) for part in parts}


def _laid(weft: Quantity, part: ColourPart, of_all: float, tail_mm: Number) -> Quantity:
    said = ENGLISH.say(Computed.COLOUR, share=plain(100 * of_all))
    return combine(lambda laid, ends: laid * of_all + ends, said, weft, tails(part.lengths, tail_mm))


def scaled_from_sample(
    sample_grams: Number, sample_mm: tuple[Number, Number], weaving_mm: tuple[Quantity, Quantity]
) -> Quantity:
    """The weft in g for a weaving (width, height) as a woven sample of the same sett, yarn and beat took it.

    `sample_grams` is weft alone, the ball weighed before and after, to the last figure stated; its sides are measured
    to a millimetre.
    """
    grams = exactly(sample_grams)
    sides = [_side(side) for side in sample_mm]
    area = exactly(sample_mm[0]) * exactly(sample_mm[1])
    ratio = plain(weaving_mm[0].value * weaving_mm[1].value / float(area))
    said = ENGLISH.say(Computed.SAMPLE, grams=plain(grams), area=plain(area / 100), ratio=ratio)
    return combine(_as_sample, said, _weighed(grams), *weaving_mm, *sides, falling=(3, 4))


def _as_sample(grams: float, width: float, height: float, sample_width: float, sample_height: float) -> float:
    return grams * width * height / (sample_width * sample_height)


def _weighed(grams: Fraction) -> Quantity:
    """A weight to half of its last figure: 9.2 g are 9.15 to 9.25 g."""
    step = next((step for step in (1, 10, 100) if (grams * step).denominator == 1), _FINEST_GRAMS)
    low, high = grams - Fraction(1, 2 * step), grams + Fraction(1, 2 * step)
    return measured(float(grams), ENGLISH.say(Computed.WEIGHED), float(max(low, grams / 2)), float(high))


def _side(side: Number) -> Quantity:
    length = float(side)
    off = min(_READ_TO_MM, length / 10)
    return measured(length, ENGLISH.say(Computed.SIDE), length - off, length + off)


def by_area(bead: Quantity, take_up: Quantity, tex: float) -> Quantity:
    """The weight in g/m2 of a weft without its tails: two picks a bead, each longer by the take-up."""
    return combine(
        lambda high, more: 2 / high * (1 + more) * tex, ENGLISH.say(Computed.AREA), bead, take_up, falling=(0,)
    )


def area_notes(per_m2: Quantity) -> tuple[str, ...]:
    """A sentence where a weft weighs less, or more, by area than weft-faced pieces do; else nothing."""
    if LIGHT_G_PER_M2 <= per_m2.value <= HEAVY_G_PER_M2:
        return ()
    if per_m2.value < LIGHT_G_PER_M2:
        return (ENGLISH.say(YardageNeed.LIGHT, weight=plain(round(per_m2.value)), least=LIGHT_G_PER_M2),)
    return (ENGLISH.say(YardageNeed.HEAVY, weight=plain(round(per_m2.value)), most=HEAVY_G_PER_M2),)
