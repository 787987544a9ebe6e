"""How high everything stands on a marking strip.

v runs across the strip, 0 on the outermost line of the frame end, positive toward the face and the weaving; mm.
"""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.pens import Pen

FLAP = 6.0
"""How wide the flap is that is glued on behind."""

LANE = 3.8
"""The numbers have their middle so far from the weaving edge."""

_WORDS = 2.15  # the words of the flap have their middle so far from its fold
_LEAST_TURN = 12.0  # half a turn, below which numbers find no room on the face side of the outermost line
_LOW_BACK, _LOW_FROM, _LOW_MARK, _LOW_NUMBER, _LOW_NUMBERS, _LOW_WORDS, _LOW_EDGE = 1.5, 0.5, 1.5, 3.8, 2.85, 5.9, 8.0


@dataclass(frozen=True, slots=True)
class Levels:
    """From the weaving `edge` marks run to the `back` line; the paper goes on from there to its `free` edge.

    `lines` are folds and the outermost line; `numbers` and `words` have their middle there. In the `low` form there is
    no flap: plain marks end at `plain`, and those with a number, at `numbered`.
    """

    edge: float
    back: float
    free: float
    lines: tuple[tuple[float, Pen], ...]
    numbers: float
    words: float
    plain: float
    numbered: float
    low: bool = False


def round_bar(half_turn: float) -> Levels | None:
    """From the face over the outermost line to the back, and a flap; None where the bar is too thin for that."""
    quarter = half_turn / 2
    if half_turn < _LEAST_TURN:
        return None
    lines = ((0.0, Pen.REGISTER), (-quarter, Pen.FOLD))
    return _folded(quarter, -quarter, lines)


def flat_end(half_turn: float) -> Levels:
    """A strip on the face, the edge of the board between two folds, and a flap on the back."""
    fold = half_turn / 2
    lines = ((fold, Pen.FOLD), (0.0, Pen.REGISTER), (-fold, Pen.FOLD))
    return _folded(fold + FLAP, -fold, lines)


def on_the_line() -> Levels:
    """The low form, 9.5 mm high: the outermost line, numbers above it, and words above these."""
    return Levels(
        _LOW_EDGE,
        -_LOW_FROM,
        -_LOW_BACK,
        ((0.0, Pen.REGISTER),),
        _LOW_NUMBERS,
        _LOW_WORDS,
        _LOW_MARK,
        _LOW_NUMBER,
        low=True,
    )


def _folded(edge: float, back: float, lines: tuple[tuple[float, Pen], ...]) -> Levels:
    return Levels(edge, back, back - FLAP, lines, edge - LANE, back - _WORDS, edge, edge)
