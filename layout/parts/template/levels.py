"""How high everything stands on a template, and what it opens in the wood.

v runs across the template, 0 on the outer edge of the frame end (or on the ground of notches that are there), positive
toward the face and the weaving; mm.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, circle, filled, line, rectangle

PAST_HOLE = 1.6
"""The cross of a hole reaches so far past it."""

_TO_NUMBER = 1.7  # from a notch to the middle of its number
_TO_WORDS = 2.9  # from the middle of numbers to that of words
_TO_DOTS, _DOTS_IN = 2.6, 1.4  # from the middle of words to that of dots, and from there to the edge of the paper
_WORDS_IN = 2.1  # from the middle of words to the edge of the paper, where no dots stand between
_LEAST_FOR_DOTS = 2.4  # between the outer edge and the crosses
_EDGE_PART = 12.0  # a template goes so far over the edge at most
_BEHIND = 0.8  # the paper goes on so far behind crosses
_HELD_HIGH, _HELD_BACK = 2.5, 1.5


class Opening(NamedTuple):
    """A notch or a hole: its `number`, its middle, how wide and how high it is; `used` where an end lies in it."""

    number: int
    x: float
    v: float
    wide: float
    high: float
    is_round: bool = False
    used: bool = True

    def box(self, more: float = 0.0) -> Box:
        """What it takes, a cross and all, and so much `more` on every side."""
        more += PAST_HOLE if self.is_round else 0.0
        return (
            self.x - self.wide / 2 - more,
            self.v - self.high / 2 - more,
            self.x + self.wide / 2 + more,
            self.v + self.high / 2 + more,
        )

    def drawn(self, up: int) -> list[Shape]:
        """Filled and outlined, a hole with the upright of its cross; `up` is +1 where the weaving lies above."""
        at = Point(self.x, up * self.v)
        if self.is_round:
            radius = self.wide / 2
            reach = radius + PAST_HOLE
            hair = line(Point(at.x, at.y - reach), Point(at.x, at.y + reach), Pen.HELP)
            return [Region((circle(at, radius, Pen.TINT),), Pen.TINT), circle(at, radius, Pen.HOLE), hair]
        outline = self._outline(at)
        return [filled(outline.points(), Pen.TINT), outline] if self.used else [outline]

    def _outline(self, at: Point) -> Curve:
        half, up = self.wide / 2, self.high / 2
        return rectangle(at.x - half, at.y - up, at.x + half, at.y + up, Pen.HELP)


@dataclass(frozen=True, slots=True)
class Levels:
    """The paper reaches from its `free` edge to the weaving `edge`, with these `lines` along all of it.

    `words` and `dots` have their middle there; the middle of a number lies `to_number` from that of its opening.
    Crosses of joints find room at the `joint_rows`, the first one nearer to the weaving.
    """

    edge: float
    free: float
    lines: tuple[tuple[float, Pen], ...]
    words: float
    dots: float
    to_number: float
    joint_rows: tuple[float, float]


def edge_part(thickness: float) -> tuple[float, float]:
    """How far a folded template goes over the edge of a board, and how far its notches do there."""
    part = min(thickness, _EDGE_PART)
    return part, part - min(2.0, part / 3)


def notches(depth: float, thickness: float | None) -> Levels:
    """On the face from the edge past the ground of the notches; folded over the edge if a `thickness` is given."""
    numbers = depth + _TO_NUMBER
    if thickness is None:
        words = numbers + _TO_WORDS + 0.25
        dots = words + _TO_DOTS
        return Levels(dots + _DOTS_IN, 0.0, (), words, dots, depth / 2 + _TO_NUMBER, (dots, words))
    part, inside = edge_part(thickness)
    words = depth + 6.85
    dots, edge = depth + 9.9, depth + 11.6
    to_number = numbers - (depth - inside) / 2
    return Levels(edge, -part, ((0.0, Pen.FOLD),), words, dots, to_number, (dots, depth + 3.95))


def rows(depths: tuple[float, ...], radius: float, *, from_edge: bool) -> Levels:
    """Past all rows of holes, from the outer edge of the board or from beyond the outermost row."""
    outer, inner = min(depths), max(depths)
    behind = outer - radius - PAST_HOLE
    free = min(0.0, behind - _BEHIND) if from_edge else behind - _BEHIND
    to_number = radius + PAST_HOLE + 1.3
    words = inner + to_number + _TO_WORDS
    lines = tuple((depth, Pen.HELP) for depth in sorted(set(depths)))
    if from_edge and behind >= _LEAST_FOR_DOTS:
        return Levels(words + _WORDS_IN, free, lines, words, _DOTS_IN, to_number, (words, _DOTS_IN))
    dots = words + _TO_DOTS
    return Levels(dots + _DOTS_IN, free, lines, words, dots, to_number, (dots, words))


def held() -> Levels:
    """Along the ground of notches that are there."""
    to_number = _HELD_HIGH / 2 + _TO_NUMBER
    words = _HELD_HIGH + _TO_NUMBER + _TO_WORDS + 0.25
    dots = words + _TO_DOTS
    lines = ((0.0, Pen.REGISTER),)
    return Levels(dots + _DOTS_IN, -_HELD_BACK, lines, words, dots, to_number, (dots, words))


def held_box(number: int, x: float, wide: float, *, used: bool) -> Opening:
    """The place of a notch that is there: a box that stands on its ground."""
    return Opening(number, x, _HELD_HIGH / 2, wide, _HELD_HIGH, used=used)
