"""How much warp thread a frame takes: the path, knots, the two heading rows, spare, and what tension stretches."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.figure import Figure, assumed, computed
from layout.limits import Number, above_zero, plain, share, whole, zero_or_more
from layout.yarns.yarn import Yarn
from layout.yarns.yarn_counts import OUNCE_G, YARD_M

KNOT = assumed(100.0, "100 mm of thread for a knot.")
TAIL = assumed(150.0, "A tail of 150 mm at the start of the heading rows (common practice).")
SPARE = assumed(0.1, "10 % of warp thread to spare.")
_THREE_WIDTHS = assumed(3, "Three outer widths of thread for the heading rows (common practice, no source).")
STRETCH = assumed(0.0, "No stretch of the warp under tension.")


@dataclass(frozen=True, slots=True)
class Supply:
    """Thread to be had: `length` in mm and `weight` in g."""

    length: Figure
    weight: Figure

    @property
    def metres(self) -> float:
        """The length in metres."""
        return self.length.value / 1000

    @property
    def yards(self) -> float:
        """The length in yards of exactly 0.9144 m."""
        return self.metres / float(YARD_M)

    @property
    def grams(self) -> float:
        """The weight in grams."""
        return self.weight.value

    @property
    def ounces(self) -> float:
        """The weight in ounces, sixteen to the pound of 453.59237 g."""
        return self.grams / float(OUNCE_G)


def supply(length: Figure, tex: Fraction) -> Supply:
    """The length (mm) with its weight at `tex` grams in a kilometre."""
    weight = length.value / 1e6 * float(tex)
    return Supply(length, computed(weight, f"{plain(length.value / 1000)} m of {plain(tex)} tex.", length))


@dataclass(frozen=True, slots=True)
class Side:
    """A side piece of the frame, round which the heading thread turns: `width` x `thickness`, and the `gap` to it."""

    width: Number
    thickness: Number
    gap: Number


def heading_thread(
    outer_width_mm: Number,
    woven_width_mm: Number,
    side: Side,
    take_up: Figure,
    tail: Figure = TAIL,
    knot: Figure = KNOT,
) -> Figure:
    """Warp thread in mm for the two heading rows: the larger of the rule of thumb and the computed length.

    The rule is three outer widths and the tail (common practice; short on narrow weavings); computed is
    2 W (1 + a) + 4 g + 6 (b + T) + tail + knot, with take-up a, gap g and a side of b x T.
    """
    outer = float(above_zero(outer_width_mm, "frame.outer_width", "the outer width in mm", "outer_width = 320"))
    woven = float(above_zero(woven_width_mm, "weaving.width", "the width in mm", "width = 240"))
    gap = float(zero_or_more(side.gap, "frame.margin", "the gap beside the weaving in mm", "margin = 15"))
    around = float(above_zero(side.width, "frame.side_width", "the width of a side in mm", "side_width = 20"))
    around += float(above_zero(side.thickness, "frame.thickness", "the thickness of a side in mm", "thickness = 18"))
    zero_or_more(take_up.value, "heading.take_up", "the take-up of a heading row", "take_up = 0.1")
    rule = 3 * outer + tail.value
    reckoned = 2 * woven * (1 + take_up.value) + 4 * gap + 6 * around + tail.value + knot.value
    if rule >= reckoned:
        reason = f"Three outer widths and a tail; reckoned row by row {plain(reckoned)} mm would do."
        return computed(rule, reason, _THREE_WIDTHS, tail)
    reason = f"Reckoned row by row; three outer widths and a tail would give {plain(rule)} mm only."
    return computed(reckoned, reason, take_up, tail, knot)


def warp_thread(
    path: Figure,
    heading: Figure,
    knots: Number = 2,
    knot: Figure = KNOT,
    stretch: Figure = STRETCH,
    spare: Figure = SPARE,
) -> Figure:
    """All the warp thread in mm as it leaves the ball, not under tension.

    The path is covered by stretched thread, so it takes path / (1 + stretch); knots and heading rows are added, then
    the spare share. Doubled ends are counted in the path by whoever reckons it.
    """
    way = above_zero(path.value, "warp.path", "the way of the warp in mm", "path = 24000")
    rows = zero_or_more(heading.value, "warp.heading", "the heading thread in mm", "heading = 1100")
    count = whole(knots, "warp.knots", "the number of knots", "knots = 2", least=0, most=10_000)
    each = zero_or_more(knot.value, "warp.knot", "the thread for a knot in mm", "knot = 100")
    longer = share(stretch.value, "warp.stretch", "the stretch under tension", "0.02")
    extra = share(spare.value, "warp.spare", "the spare", "0.1")
    total = (way / (1 + longer) + rows + count * each) * (1 + extra)
    reason = f"Path / (1 + {plain(longer)}), heading rows and {count} knots, and {plain(100 * extra)} % spare."
    return computed(float(total), reason, path, heading, *((knot,) if count else ()), stretch, spare)


def warp_supply(thread: Figure, yarn: Yarn) -> Supply:
    """The warp thread (mm) of one frame with its weight."""
    return supply(thread, yarn.tex)


def loose_warp(ends: Number, length_m: Number, yarn: Yarn) -> Supply:
    """Ends of one length each, cut and not wound: ends x length."""
    count = whole(ends, "ends", "the number of ends", "ends = 60")
    length = above_zero(length_m, "warp.length", "the length of an end in m", "length = 1.2")
    total = float(count * length * 1000)
    return supply(computed(total, f"{count} ends of {plain(length)} m."), yarn.tex)
