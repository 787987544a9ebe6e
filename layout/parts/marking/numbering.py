"""Which marks of a strip have a number, and where it stands: beside its own mark, on whose right there is room."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL

HEAVY = 5
"""Every fifth mark is heavy."""

_BESIDE = 1.0  # from a mark to its number, and from a number to the edge of the paper
_FIGURE, _APART, _ALONE = (
    3.2,
    3.0,
    6.0,
)
# In mm: room for each figure of the last number, more for all of them, and for number 1.
_MOST = 30  # with more numbers than that fewer winds have one

Span = tuple[float, float]


class Number(NamedTuple):
    """A number and its mark at x = `mark`; its words reach from `left` to `right`."""

    number: int
    mark: float
    left: float
    right: float


def step_of(last: int, pitch: float) -> int:
    """Every so many marks there is a number: so that none meets another, and there are not too many."""
    steps = chain.from_iterable((5 * ten, 10 * ten) for ten in (1, 10, 100, 1000))
    room = _FIGURE * len(str(last)) + _APART
    return next((step for step in steps if step * pitch >= room and last <= _MOST * step), 10000)


def said_of(every: Sequence[int], pitch: float) -> list[int]:
    """Which of `every` number in a row stands on the paper, where the marks are a `pitch` apart."""
    first, last = every[0], every[-1]
    step = step_of(last, pitch)
    next_to_one = pitch if first == 0 else (step - 1) * pitch
    return [n for n in every if n % step == 0 or (n == 1 and next_to_one >= _ALONE)]


def numbers(marks: Sequence[float], first: int, ends: Span, metrics: FontMetrics) -> list[Number]:
    """The numbers of `marks`, which count from `first`, on paper between both `ends`; 1 where it has room too."""
    pitch = abs(marks[1] - marks[0]) if len(marks) > 1 else ends[1] - ends[0]
    said = said_of(range(first, first + len(marks)), pitch)
    return [_beside(n, marks[n - first], ends[1], metrics) for n in said]


def _beside(number: int, mark: float, end: float, metrics: FontMetrics) -> Number:
    """To the right of its mark, else to the left."""
    width = metrics.width(str(number), SMALL, Pen.STRONG)
    right_hand = mark + _BESIDE + width <= end - _BESIDE
    left = mark + _BESIDE if right_hand else mark - _BESIDE - width
    return Number(number, mark, left, left + width)
