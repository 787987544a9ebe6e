"""The columns of the table of a wrap gauge: as many units as the words over them leave room for.

Over the two columns of a unit their heads stand side by side or, where that is too wide, in two rows. Where even so a
word is wider than its place, the table holds fewer units, the kit's own always.
"""

from __future__ import annotations

from itertools import accumulate, pairwise
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL, longest_word, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Gauge
from layout.parts.gauge_table import GaugeTable, fewer

_FREE, _APART = 1.0, 1.2  # beside the words over a column, and between two heads that stand side by side
_ASIDE, _IN_ROWS = 0.28, 0.25  # where columns stand: of what their heads leave free, or of the whole width
_EDGE, _ROUNDED = 0.3, 0.01


class Head(NamedTuple):
    """The lines over a column, where their middle stands, how many lines over the rule the last is, and their pen."""

    lines: list[str]
    middle: float
    up: int
    pen: Pen


class Columns(NamedTuple):
    """The `table` that there is room for; from where to where the counts and each of its units reach.

    `middles` is where the fields of a row stand, one after the other.
    """

    table: GaugeTable
    counts: tuple[float, float]
    units: tuple[tuple[float, float], ...]
    middles: tuple[float, ...]
    heads: tuple[Head, ...]


def columns_of(
    left: float, right: float, counts: float | None, table: GaugeTable, words: Catalogue, metrics: FontMetrics
) -> Columns:
    """The columns of a table that reaches from `left` to `right`; `counts` is the width of the first, as the others."""
    ways = [(fewer(table, count), in_rows) for count in range(len(table.units), 0, -1) for in_rows in (False, True)]
    for shown, in_rows in ways:
        needs = _Needs(shown, words, metrics, in_rows=in_rows)
        first = counts or (right - left) / (len(shown.units) + 1)
        if needs.counts > first or needs.unit > (right - left - first) / len(shown.units):
            first = max(needs.counts, counts or 0.0)
        if needs.unit <= (right - left - first) / len(shown.units):
            break
    each = (right - left - first) / len(shown.units)
    starts = accumulate([left, first, *[each] * len(shown.units)])
    own, *units = pairwise(starts)
    middles = (sum(own) / 2, *(x for unit in units for x in needs.middles(*unit)))
    return Columns(shown, own, tuple(units), middles, tuple(needs.heads(own, units, middles)))


class _Needs:
    """How wide columns must be for the words over them, and where these stand."""

    def __init__(self, table: GaugeTable, words: Catalogue, metrics: FontMetrics, *, in_rows: bool) -> None:
        self.table, self.metrics, self.in_rows = table, metrics, in_rows
        self.over = words.say(Gauge.PAIRS, window=table.over)
        self.said = [words.say(Gauge.TO_UNIT, unit=unit) for unit in table.units]
        self.wide = tuple(metrics.width(head, SMALL) for head in table.heads)

    @property
    def counts(self) -> float:
        """The least width of the first column."""
        return longest_word(self.over, SMALL, self.metrics) + _FREE + _ROUNDED

    @property
    def unit(self) -> float:
        """The least width of a unit."""
        over = max(longest_word(said, SMALL, self.metrics, Pen.STRONG) for said in self.said) + _FREE + _ROUNDED
        return max(over, (max(self.wide) if self.in_rows else sum(self.wide) + _APART) + 2 * _EDGE)

    def middles(self, left: float, right: float) -> tuple[float, float]:
        """Where the sett and the winds of a unit stand: as far apart as their heads ask for."""
        if self.in_rows:
            aside = (right - left) * _IN_ROWS
            return left + aside, right - aside
        one, other = self.wide
        side = max(0.0, right - left - one - other) * _ASIDE
        return left + side + one / 2, right - side - other / 2

    def heads(
        self, counts: tuple[float, float], units: list[tuple[float, float]], middles: tuple[float, ...]
    ) -> list[Head]:
        """Those of the counts, of each unit, and of the columns of each, within their unit."""
        wrapped = [wrap(self.over, SMALL, counts[1] - counts[0] - _FREE, self.metrics)]
        heads = [Head(wrapped[0], middles[0], 0, Pen.TEXT)]
        for k, (said, (left, right)) in enumerate(zip(self.said, units, strict=True)):
            pen = Pen.STRONG if k == self.table.own else Pen.TEXT
            lines = wrap(said, SMALL, right - left - _FREE, self.metrics, pen)
            heads.append(Head(lines, (left + right) / 2, 2 if self.in_rows else 1, pen))
        for k, x in enumerate(middles[1:]):
            (left, right), half = units[k // 2], self.wide[k % 2] / 2 + _EDGE
            up = 1 if self.in_rows and k % 2 == 0 else 0
            heads.append(Head([self.table.heads[k % 2]], min(max(x, left + half), right - half), up, Pen.TEXT))
        return heads
