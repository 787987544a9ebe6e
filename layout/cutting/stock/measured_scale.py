"""The scale of a cutter from a square check: spans between flats, and bands that tell what the kerf took from them.

A span and its band lose alike to the beam, so the difference is the scale alone, whatever the kerf. A cutter that makes
M = [[x, k], [0, y]] of what is drawn brings two flats that looked along n, D apart, to D / |M^-T n| (a normal moves by
the inverse transpose); the two diagonals, n = (1, 1) and (1, -1) over the root of two, give k from what they differ in.
"""

from __future__ import annotations

from math import hypot, sqrt
from typing import NamedTuple

from layout.drawing.correction import Scale

SPAN, BAND = 140.0, 10.0
"""From flat to flat of the check, and from the far wall of a window to the flat beside it, in mm."""

_BETWEEN = SPAN - BAND
_ROUNDS = 4  # how a lean of 3 % shortens x settles to a millionth in two


class Size(NamedTuple):
    """What was measured in mm, and how far off it may be at 95 %."""

    mm: float
    within: float


class Spans(NamedTuple):
    """What was measured on a square check: along x and y, the diagonals that rise and fall to the right, the bands."""

    x: Size
    y: Size
    a: Size
    b: Size
    band_x: Size
    band_y: Size


class MeasuredScale(NamedTuple):
    """A scale, and how far each of its shares may be off at 95 %."""

    scale: Scale
    within: Scale

    @property
    def off(self) -> Scale:
        """How much too long along x and y, and how far off square, as shares; nothing where all is right."""
        return Scale(self.scale.x - 1, self.scale.y - 1, self.scale.skew)

    @property
    def known(self) -> bool:
        """Whether any share is further off than it may be by the readings."""
        return any(abs(off) > within for off, within in zip(self.off, self.within, strict=True))

    @property
    def uncertainty(self) -> float:
        """By how much each of the three may be off."""
        return max(self.within)


def scale_of(spans: Spans) -> MeasuredScale:
    """The scale that the spans tell; each span must be longer than its band."""
    along, y = (spans.x.mm - spans.band_x.mm) / _BETWEEN, (spans.y.mm - spans.band_y.mm) / _BETWEEN
    taken = (BAND * along - spans.band_x.mm + BAND * y - spans.band_y.mm) / 2  # by the kerf, more than was drawn for
    rising, falling = spans.a.mm + taken, spans.b.mm + taken
    x, skew = along, 0.0
    for _ in range(_ROUNDS):
        skew = (SPAN / falling - SPAN / rising) * (SPAN / falling + SPAN / rising) * x * y * y / 2
        x = along * hypot(1.0, skew / y)  # leaning flats are nearer to each other
    within = Scale(
        hypot(spans.x.within, spans.band_x.within) / _BETWEEN,
        hypot(spans.y.within, spans.band_y.within) / _BETWEEN,
        hypot(spans.a.within, spans.b.within) / SPAN,
    )
    return MeasuredScale(Scale(x, y, skew), within)


def misfit(spans: Spans) -> Size:
    """By how much A and B together are longer than X and Y together, which they are not on any cutter."""
    four = (spans.x, spans.y, spans.a, spans.b)
    within = sqrt(sum(each.within**2 for each in four))
    return Size(spans.a.mm + spans.b.mm - spans.x.mm - spans.y.mm, within)
