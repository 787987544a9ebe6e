"""Packing short phrases into rows so that none meets another, a centre line or a joint."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Literal, NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.typeset import SMALL, wrap

Arrow = Literal["", "left", "right", "up", "down"]
ARROW = 2.2
"""Length of an arrow head, in mm."""

_ARROW_GAP, _GAP, _CENTRE_GAP = 0.8, 4.0, 0.8
Span = tuple[float, float]


class Phrase(NamedTuple):
    """`words` that stand at the `left` or `right` end, beside the `centre` line, or anywhere, with an arrow head.

    An `optional` phrase is left out where it would need a row of its own. One that may stand anywhere keeps `between`
    two x if these are given.
    """

    words: str
    stand: Literal["left", "right", "centre", "anywhere"] = "anywhere"
    arrow: Arrow = ""
    optional: bool = False
    pen: Pen = Pen.TEXT
    between: Span | None = None

    def width(self, metrics: FontMetrics) -> float:
        """The room it takes, arrow head and all."""
        head = ARROW + _ARROW_GAP if self.arrow else 0.0
        return metrics.width(self.words, SMALL, self.pen) + head

    def words_from(self) -> float:
        """How far behind its start its words begin: an arrow to the right stands behind them."""
        return 0.0 if self.arrow in ("", "right") else ARROW + _ARROW_GAP


class PlacedPhrase(NamedTuple):
    """A phrase that has found its place: row number (0 nearest the numbers) and the x where it starts."""

    row: int
    start: float
    phrase: Phrase


@dataclass(slots=True)
class _Row:
    taken: list[Span]
    fixed: list[tuple[float, Phrase]] = field(default_factory=list)
    loose: dict[Span, list[Phrase]] = field(default_factory=dict)


class Packer:
    """Fills rows between `left` and `right`, each clear of the `walls`, from one x to another.

    `height_of` a row is that on the paper.
    """

    def __init__(
        self,
        left: float,
        right: float,
        walls: Sequence[Span],
        metrics: FontMetrics,
        height_of: Callable[[int], float] = float,
    ) -> None:
        self.left, self.right, self.metrics, self.height_of = left, right, metrics, height_of
        self.walls = list(walls)
        self.rows: list[_Row] = []

    def pack(self, phrases: Sequence[Phrase]) -> list[PlacedPhrase]:
        """Where every phrase stands. Phrases with a place of their own go first; one too long for a row is broken."""
        most = max(self._slack(gap, ()) - _GAP for gap in self._gaps(_Row(list(self.walls))))
        for phrase in sorted(phrases, key=lambda each: each.stand == "anywhere"):
            if phrase.width(self.metrics) > most:
                self._break(phrase, most)
                continue
            rows = range(len(self.rows) + (not phrase.optional))
            if not any(self._place(self._row(row), phrase) for row in rows):
                self._break(phrase, most)
        return [placed for row in range(len(self.rows)) for placed in self._set(row)]

    def _break(self, phrase: Phrase, most: float) -> None:
        """Sets the lines of a long phrase in rows of their own, one under the other in the widest gap."""
        if phrase.optional:
            return
        first, *others = wrap(phrase.words, SMALL, most - ARROW - _ARROW_GAP, self.metrics, phrase.pen)
        lines = [phrase._replace(words=first), *(Phrase(words, pen=phrase.pen) for words in others)]
        fresh = range(len(self.rows), len(self.rows) + len(lines))
        for number, line in zip(sorted(fresh, key=self.height_of, reverse=True), lines, strict=True):
            row = self._row(number)
            gaps = [gap for gap in self._gaps(row) if _holds(phrase.between, gap)]
            low, high = gap = max(gaps, key=lambda gap: gap[1] - gap[0])
            row.fixed.append(((low + high - line.width(self.metrics)) / 2, line))
            row.taken.append(gap)

    def _row(self, number: int) -> _Row:
        while number >= len(self.rows):
            self.rows.append(_Row(list(self.walls)))
        return self.rows[number]

    def _place(self, row: _Row, phrase: Phrase) -> bool:
        """Whether `phrase` found room in `row`, where it has been noted then."""
        if phrase.stand == "anywhere":
            return self._spread(row, phrase)
        width = phrase.width(self.metrics)
        if phrase.stand == "centre":
            return self._fix(row, phrase, _CENTRE_GAP, width) or self._fix(row, phrase, -_CENTRE_GAP - width, width)
        return self._fix(row, phrase, self.left if phrase.stand == "left" else self.right - width, width)

    def _fix(self, row: _Row, phrase: Phrase, start: float, width: float) -> bool:
        span = (min(start, 0.0), max(start + width, 0.0)) if phrase.stand == "centre" else (start, start + width)
        walled = any(low < start + width and start < high for low, high in self.walls)
        others = [taken for taken in row.taken if taken not in self.walls]
        if walled or any(low < span[1] + _GAP and span[0] - _GAP < high for low, high in others):
            return False
        row.taken.append(span)
        row.fixed.append((start, phrase))
        return True

    def _spread(self, row: _Row, phrase: Phrase) -> bool:
        for gap in self._gaps(row):
            there = [*row.loose.get(gap, []), phrase]
            if _holds(phrase.between, gap) and self._slack(gap, there) >= 0:
                row.loose[gap] = there
                return True
        return False

    def _gaps(self, row: _Row) -> list[Span]:
        edges = sorted(row.taken)
        lows = [self.left - _GAP, *(high for _, high in edges)]
        highs = [*(low for low, _ in edges), self.right + _GAP]
        return list(zip(lows, highs, strict=True))

    def _slack(self, gap: Span, phrases: Sequence[Phrase]) -> float:
        widths = sum(phrase.width(self.metrics) for phrase in phrases)
        return gap[1] - gap[0] - widths - _GAP * (len(phrases) + 1)

    def _set(self, number: int) -> list[PlacedPhrase]:
        row = self.rows[number]
        placed = [PlacedPhrase(number, start, phrase) for start, phrase in row.fixed]
        for gap, phrases in row.loose.items():
            space = _GAP + self._slack(gap, phrases) / (len(phrases) + 1)
            x = gap[0] + space
            for phrase in phrases:
                placed.append(PlacedPhrase(number, x, phrase))
                x += phrase.width(self.metrics) + space
        return placed


def _holds(between: Span | None, gap: Span) -> bool:
    """Whether the middle of a gap lies between two x."""
    return between is None or between[0] <= (gap[0] + gap[1]) / 2 <= between[1]
