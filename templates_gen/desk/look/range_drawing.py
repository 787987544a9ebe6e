"""A range as a line with a grey stretch, what is taken of it, and as many numbers as find room."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from html import escape
from itertools import pairwise
from typing import NamedTuple

from templates_gen.lettering.fonts import metrics

WIDE, HIGH = 460.0, 48.0
_LETTERS, _LEFT, _RIGHT, _APART = 12.0, 24.0, 24.0, 6.0
_LINE, _TOP, _NUMBERS, _ZONE = 24.0, 6.0, 42.0, 19.0


class Tick(NamedTuple):
    """A number on the line and how it is said; one that is `taken` is heavy."""

    value: float
    said: str
    taken: bool = False


def range_drawing(low: float, high: float, ticks: Sequence[Tick], zone: str, about: str) -> str:
    """An inline SVG: grey from `low` to `high`, with the word `zone` in it where that has room, and the `ticks`.

    `about` says the same for who cannot see it. Of ticks whose words would meet, the earlier ones stay.
    """
    every = [low, high, *(tick.value for tick in ticks)]
    least, most = min(every), max(every)
    span = (most - least) or abs(most) or 1.0
    if least and span < most:  # a line that does not begin at nothing goes on a little at both ends
        least, span = least - span / 8, span * 1.25

    def x(value: float) -> float:
        return _LEFT + (value - least) / span * (WIDE - _LEFT - _RIGHT)

    left, right = x(low), max(x(high), x(low) + 2)
    lines = "".join(f"M{x(tick.value):.1f} 20V28" for tick in ticks if not tick.taken)
    heavy = "".join(f"M{x(tick.value):.1f} 4V26" for tick in ticks if tick.taken)
    words = "".join(_words(ticks, x))
    words += _in_zone(zone, left, right, [x(tick.value) for tick in ticks if tick.taken])
    return (
        f'<svg class="range" viewBox="0 0 {WIDE:g} {HIGH:g}" role="img" aria-label="{escape(about)}">'
        f'<rect class="ok" x="{left:.1f}" y="{_TOP:g}" width="{right - left:.1f}" height="{_LINE - _TOP:g}"/>'
        f'<path class="ax" d="M0 {_LINE:g}H{WIDE:g}{lines}"/><path class="taken" d="{heavy}"/>'
        f'<g text-anchor="middle" font-size="{_LETTERS:g}">{words}</g></svg>'
    )


def _in_zone(zone: str, left: float, right: float, taken: Sequence[float]) -> str:
    """The word in the widest stretch of the grey that no heavy line crosses, where it has room."""
    edges = [left, *sorted(at for at in taken if left < at < right), right]
    wide, start = max((end - begin, begin) for begin, end in pairwise(edges))
    if not zone or metrics().width(zone, _LETTERS) + 2 * _APART > wide:
        return ""
    return f'<text x="{start + wide / 2:.1f}" y="{_ZONE:g}">{escape(zone)}</text>'


def _words(ticks: Sequence[Tick], x: Callable[[float], float]) -> Iterator[str]:
    taken: list[tuple[float, float]] = []
    for tick in ticks:
        half = metrics().width(tick.said, _LETTERS) / 2 * (1.08 if tick.taken else 1)
        middle = min(max(x(tick.value), half), WIDE - half)
        if any(middle - half < right + _APART and middle + half > left - _APART for left, right in taken):
            continue
        taken.append((middle - half, middle + half))
        weight = ' font-weight="600"' if tick.taken else ""
        yield f'<text x="{middle:.1f}" y="{_NUMBERS:g}"{weight}>{escape(tick.said)}</text>'
