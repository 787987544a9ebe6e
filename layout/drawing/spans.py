"""The spans of a printer check, and what a printer does to them: from what a rule shows to a scale, and how sure it is.

A printer makes (x a + s b, y b) of a place (a, b). So the four spans come out

    across, A to B, drawn (a, 0)          x a
    up, C to D, drawn (0, b)              b hypot(s, y)
    up to the right, E to F, drawn (w, h)  hypot(x w + s h, y h)
    down to the right, G to H, (w, -h)     hypot(x w - s h, y h)

The shares x, y and s are those that leave the least sum of squared differences, each in units of how far its reading
may be off (least squares after Gauss and Newton; with three spans they leave none). How sure they are follows from the
same units by the inverse of J' J, J the changes of the four lengths (any handbook of adjustment of observations).
"""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot, sqrt
from typing import NamedTuple

from layout.drawing.correction import Scale

_ROUND = 5.0  # mm: spans across and up are so many whole steps long
_SIDES, _ENDS = 18.0, 28.0  # what the margins, the ink of the marks and a little white take of the sheet
_CORNER = 30.0, 30.8  # the same of the diagonals, whose marks stand inside the targets of the corners
_ROUNDS = 30
_STILL = 1e-15


class Spans(NamedTuple):
    """The spans of a sheet in mm: `across` from A to B, `up` from C to D, and two diagonals.

    The diagonals, E to F and G to H, are `wide` across and `high` up; they are `diagonal` long, in whole mm.
    """

    across: float
    up: float
    wide: float
    high: float

    @property
    def diagonal(self) -> float:
        """How long a diagonal is."""
        return hypot(self.wide, self.high)

    def made(self, scale: Scale) -> tuple[float, float, float, float]:
        """How long the four spans come out: A to B, C to D, E to F, G to H."""
        x, y, s = scale
        w, h = self.wide, self.high
        return x * self.across, self.up * hypot(s, y), hypot(x * w + s * h, y * h), hypot(x * w - s * h, y * h)


class Reading(NamedTuple):
    """What a rule shows of a span in mm, and how far off that may be at 95 %."""

    mm: float
    within: float


class Fit(NamedTuple):
    """The scale of a printer, its 95 %, and how far the readings contradict each other, 1 being as much as they may.

    `rests` are the readings less what the scale makes of their spans, in mm.
    """

    scale: Scale
    within: Scale
    contradiction: float
    rests: tuple[float | None, ...]


def spans_of(width: float, height: float) -> Spans:
    """The longest spans that a sheet of `width` x `height` mm allows inside its margins, clear of its targets."""
    across, up = (_ROUND * ((side - free) // _ROUND) for side, free in ((width, _SIDES), (height, _ENDS)))
    wide, high = width - _CORNER[0], height - _CORNER[1]
    share = (hypot(wide, high) // 1) / hypot(wide, high)
    return Spans(across, up, wide * share, high * share)


def fit(spans: Spans, readings: Sequence[Reading | None]) -> Fit:
    """The scale that readings of the four spans show, in the order of `Spans.made`; None where one was not measured.

    At least A to B, C to D and one diagonal are needed, each longer than nothing.
    """
    x, y = (found.mm / drawn for found, drawn in zip(readings[:2], spans[:2], strict=True) if found)
    scale = Scale(x, y, 0.0)
    taken = [k for k, found in enumerate(readings) if found]
    found = [each for each in readings if each]
    for _ in range(_ROUNDS):
        lengths, changes = spans.made(scale), _changes(spans, scale)
        rows = [[share / each.within for share in changes[k]] for k, each in zip(taken, found, strict=True)]
        rests = [(each.mm - lengths[k]) / each.within for k, each in zip(taken, found, strict=True)]
        step = _solved(rows, rests)
        scale = Scale(*(share + more for share, more in zip(scale, step, strict=True)))
        if max(map(abs, step)) < _STILL:
            break
    lengths = spans.made(scale)
    left = tuple(each.mm - long if each else None for each, long in zip(readings, lengths, strict=True))
    worst = sqrt(sum((rest / each.within) ** 2 for rest, each in zip(left, readings, strict=True) if each and rest))
    return Fit(scale, Scale(*map(sqrt, _variances(rows))), worst, left)


def after(first: Scale, then: Scale) -> Scale:
    """What comes out of 1 mm where one scale follows the other: the product of their matrices, `then` on the left."""
    return Scale(then.x * first.x, then.y * first.y, then.x * first.skew + then.skew * first.y)


def within_after(first: Scale, then: Scale) -> Scale:
    """How sure that product is, where `first` is known exactly and `then` is known within so much."""
    return Scale(then.x * first.x, then.y * first.y, hypot(then.x * first.skew, then.skew * first.y))


def _changes(spans: Spans, scale: Scale) -> list[list[float]]:
    """By how much each length changes with x, y and s."""
    x, y, s = scale
    w, h = spans.wide, spans.high
    _, up, rising, falling = spans.made(scale)
    right, left = x * w + s * h, x * w - s * h
    return [
        [spans.across, 0.0, 0.0],
        [0.0, spans.up**2 * y / up, spans.up**2 * s / up],
        [right * w / rising, y * h * h / rising, right * h / rising],
        [left * w / falling, y * h * h / falling, -left * h / falling],
    ]


def _normal(rows: Sequence[Sequence[float]]) -> list[list[float]]:
    return [[sum(row[i] * row[j] for row in rows) for j in range(3)] for i in range(3)]


def _variances(rows: Sequence[Sequence[float]]) -> list[float]:
    """The diagonal of the inverse of J' J."""
    return [_solved_normal(_normal(rows), [float(k == i) for k in range(3)])[i] for i in range(3)]


def _solved(rows: Sequence[Sequence[float]], rests: Sequence[float]) -> list[float]:
    """The three unknowns of more equations, by least squares."""
    right = [sum(row[i] * rest for row, rest in zip(rows, rests, strict=True)) for i in range(3)]
    return _solved_normal(_normal(rows), right)


def _solved_normal(left: Sequence[Sequence[float]], right: Sequence[float]) -> list[float]:
    """Three equations of three unknowns, by Cramer's rule."""
    whole = _determinant(left)
    columns = range(3)
    return [
        _determinant([[right[i] if j == k else left[i][j] for j in columns] for i in columns]) / whole for k in columns
    ]


def _determinant(rows: Sequence[Sequence[float]]) -> float:
    (a, b, c), (d, e, f), (g, h, i) = rows
    return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
