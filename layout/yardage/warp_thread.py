"""How much warp thread a frame takes: the path, knots, the two heading rows, spare, and what tension stretches."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.messages.english import ENGLISH
from layout.messages.roles import Assumed, Computed
from layout.values.limits import Number, exactly, plain
from layout.values.quantity import Quantity, assumed, computed

KNOT = assumed(100.0, ENGLISH.say(Assumed.KNOT))
TAIL = assumed(150.0, ENGLISH.say(Assumed.TAIL))
SPARE = assumed(0.1, ENGLISH.say(Assumed.SPARE))
_THREE_WIDTHS = assumed(3, ENGLISH.say(Assumed.THREE_WIDTHS))
STRETCH = assumed(0.0, ENGLISH.say(Assumed.STRETCH))


def weight(length: Quantity, tex: Fraction) -> Quantity:
    """The weight in g of a length in mm at `tex` grams in a kilometre."""
    values = {"metres": plain(round(length.value / 1000, 2)), "tex": plain(round(float(tex), 1))}
    said = ENGLISH.say(Computed.WEIGHT, **values)
    return computed(length.value / 1e6 * float(tex), said, length)


@dataclass(frozen=True, slots=True)
class SidePiece:
    """A side piece of the frame, round which the heading thread turns: `width` x `thickness`, and the `gap` to it."""

    width: Number
    thickness: Number
    gap: Number


def heading_thread(
    outer_width_mm: Number,
    woven_width_mm: Number,
    side: SidePiece,
    take_up: Quantity,
    tail: Quantity = TAIL,
    knot: Quantity = KNOT,
) -> Quantity:
    """Warp thread in mm for the two heading rows: the larger of the rule of thumb and the computed length.

    The rule is three outer widths and the tail (common practice; short on narrow weavings); computed is
    2 W (1 + a) + 4 g + 6 (b + T) + tail + knot, with take-up a, gap g and a side of b x T.
    """
    outer = float(outer_width_mm)
    woven = float(woven_width_mm)
    gap = float(side.gap)
    around = float(side.width)
    around += float(side.thickness)
    rule = 3 * outer + tail.value
    by_row = 2 * woven * (1 + take_up.value) + 4 * gap + 6 * around + tail.value + knot.value
    if rule >= by_row:
        reason = ENGLISH.say(Computed.WIDTHS_AND_TAIL, by_row=plain(by_row))
        return computed(rule, reason, _THREE_WIDTHS, tail)
    reason = ENGLISH.say(Computed.ROW_BY_ROW, rule=plain(rule))
    return computed(by_row, reason, take_up, tail, knot)


def warp_thread(
    path: Quantity,
    heading: Quantity,
    knots: Number = 2,
    knot: Quantity = KNOT,
    stretch: Quantity = STRETCH,
    spare: Quantity = SPARE,
) -> Quantity:
    """All the warp thread in mm as it leaves the ball, not under tension.

    The path is covered by stretched thread, so it takes path / (1 + stretch); knots and heading rows are added, then
    the spare share. Doubled ends are counted in the path by the caller.
    """
    way = exactly(path.value)
    rows = exactly(heading.value)
    count = int(knots)
    each = exactly(knot.value)
    longer = exactly(stretch.value)
    extra = exactly(spare.value)
    total = (way / (1 + longer) + rows + count * each) * (1 + extra)
    reason = ENGLISH.say(Computed.WARP, stretch=plain(longer), knots=count, spare=plain(100 * extra))
    return computed(float(total), reason, path, heading, *((knot,) if count else ()), stretch, spare)
