"""Known mistakes of printing, by what they make of a millimetre: a ratio that is one of these names its cause.

The figures that are "measured" were found with poppler, Ghostscript, Chromium and cups-filters 1.28 and a sample
printer description; those of paper sizes are ratios of ISO 216 (A4 210 x 297 mm) and ANSI/ASME Y14.1 (Letter 8 1/2 x
11 in).
"""

from __future__ import annotations

from collections.abc import Iterator
from math import sqrt
from typing import NamedTuple

from layout.drawing.correction import Scale
from layout.messages.roles import PrintMistake


class Mistake(NamedTuple):
    """What comes out of 1 mm lies from `least` to `most`, the same across and up."""

    what: PrintMistake
    least: float
    most: float


_A4_ON_LETTER, _LETTER_ON_A4 = 11 * 25.4 / 297, 210 / (8.5 * 25.4)  # 94.07 % and 97.27 %: the narrower ratio counts
_ROOT = sqrt(2)  # from one size of ISO 216 to the next
_DENSITIES = (72, 90, 96)  # pixels to the inch that programs have taken: PDF, older drawing programs, CSS

MISTAKES: tuple[Mistake, ...] = (
    Mistake(PrintMistake.A4_ON_LETTER, _A4_ON_LETTER, _A4_ON_LETTER),
    Mistake(PrintMistake.LETTER_ON_A4, _LETTER_ON_A4, _LETTER_ON_A4),
    Mistake(PrintMistake.A4_QUEUED_LETTER, 0.855, 0.855),  # measured: 200 mm print 171 mm
    Mistake(PrintMistake.LETTER_QUEUED_A4, 0.9135, 0.9135),  # measured: 200 mm print 182.7 mm
    Mistake(PrintMistake.BROWSER_WIDE, 0.904, 0.904),  # measured: 9.6 % too short
    Mistake(PrintMistake.FITTED, 0.91, 0.915),  # measured: 8.5 to 9 % too short
    Mistake(PrintMistake.FITTED, 0.952, 0.985),  # computed: 1.5 to 5 mm free at each side of 210 mm
    Mistake(PrintMistake.TWO_ON_ONE, 1 / _ROOT, 1 / _ROOT),
    Mistake(PrintMistake.TO_LARGER, _ROOT, _ROOT),
    *(Mistake(PrintMistake.PIXELS, a / b, a / b) for a in _DENSITIES for b in _DENSITIES if a != b),
    *(Mistake(PrintMistake.UNIT, each, each) for each in (25.4, 10.0, 2.54, 1 / 2.54, 1 / 10, 1 / 25.4)),
)
"""Every known mistake, those of one exact ratio before those that lie in a range."""

NEAR = 0.002
"""A ratio that is this close, as a share, is taken for that of a mistake, even where it was measured better."""

_MOST_UNSURE = 0.01  # a ratio that is less sure than this fits too many


def likely_mistakes(scale: Scale, within: Scale) -> tuple[Mistake, ...]:
    """The mistakes that make both `scale.x` and `scale.y`, each as sure as `within` says, those of one
    exact ratio first, then the nearest.

    A printer scales both ways alike when a setting is wrong; where the two differ by more than they are sure to, none
    is named.
    """
    if abs(scale.x - scale.y) > NEAR * max(scale.x, scale.y) + within.x + within.y:
        return ()
    return tuple(
        sorted(_fitting(scale, within), key=lambda each: (each.most - each.least, _off(each, (scale.x + scale.y) / 2)))
    )


def _fitting(scale: Scale, within: Scale) -> Iterator[Mistake]:
    named = set()
    for each in MISTAKES:
        sure = [(scale.x, within.x), (scale.y, within.y)]
        near = (_off(each, ratio) <= max(NEAR * ratio, min(unsure, _MOST_UNSURE * ratio)) for ratio, unsure in sure)
        if all(near) and each.what not in named:
            named.add(each.what)
            yield each


def _off(mistake: Mistake, ratio: float) -> float:
    return max(0.0, mistake.least - ratio, ratio - mistake.most)
