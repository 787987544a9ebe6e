"""Ruled tables as they were read: what stands between two rules is a row; above a heavy one, the titles of columns.

A table may be parted between columns, the first repeated, and between rows, the titles repeated. Every word of the
small letters must be of a row that is wanted, and every cell stands once.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from templates_gen.messages.roles.run import Overview
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.said import squeezed

_SMALL = 7.5 * 25.4 / 72  # mm: tables stand in letters of 7.5 points, all else in larger ones
_SAME = 0.01  # mm


class Wanted(NamedTuple):
    """A table: the titles of its columns, and the cells of each row."""

    titles: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class _Band(NamedTuple):
    """The words between two rules; whether they are titles."""

    texts: tuple[Text, ...]
    titles: bool

    @property
    def first(self) -> tuple[Text, ...]:
        """The first line, from left to right."""
        top = max((text.at.y for text in self.texts), default=0.0)
        return tuple(sorted((t for t in self.texts if top - t.at.y < _SAME), key=lambda text: text.at.x))


def is_small(text: Text) -> bool:
    """Whether these are the letters of a table."""
    return abs(text.size - _SMALL) < _SAME


def prove_tables(pieces: Sequence[FoundPart], tables: Sequence[Wanted]) -> Iterator[Finding]:
    """Every row that is not where it belongs, and every row that is nowhere."""
    seen: dict[tuple[int, tuple[int, ...]], set[int]] = {}
    now: tuple[int, tuple[int, ...]] | None = None
    for band in (band for piece in pieces for band in _bands(piece)):
        if band.titles:
            now = _columns(band, tables)
            if now is None:
                yield finding(Overview.CELLS, words=_shown(band))
            continue
        row = _row(band, tables[now[0]].rows, now[1], seen.setdefault(now, set())) if now else None
        if now is None or row is None:
            yield finding(Overview.CELLS, words=_shown(band))
        else:
            seen[now].add(row)
    for number, table in enumerate(tables):
        parts = [(columns, rows) for (place, columns), rows in seen.items() if place == number]
        columns = [0, *(column for found, _ in parts for column in found[1:])]
        if columns != list(range(len(table.titles))) or any(len(rows) < len(table.rows) for _, rows in parts):
            yield finding(Overview.TABLE, titles=", ".join(table.titles))


def _row(band: _Band, rows: Sequence[tuple[str, ...]], columns: Sequence[int], seen: set[int]) -> int | None:
    """Which of the rows that were not seen yet stands there."""
    left = (number for number in range(len(rows)) if number not in seen)
    return next((number for number in left if _is_row(band, [rows[number][k] for k in columns])), None)


def _bands(piece: FoundPart) -> Iterator[_Band]:
    """From the top of a sheet to its foot."""
    shapes = piece.shapes()
    rules = [shape for shape in shapes if isinstance(shape, Curve) and shape.pen in (Pen.HELP, Pen.OUTLINE)]
    left = [text for text in shapes if isinstance(text, Text) and is_small(text)]
    for rule in sorted(rules, key=lambda rule: -rule.start.y):
        inside = tuple(text for text in left if text.at.y > rule.start.y)
        left = [text for text in left if text.at.y <= rule.start.y]
        yield _Band(inside, rule.pen is Pen.OUTLINE)
    if left:
        yield _Band(tuple(left), titles=False)


def _columns(band: _Band, tables: Sequence[Wanted]) -> tuple[int, tuple[int, ...]] | None:
    """Which columns of which table have these titles."""
    for number, table in enumerate(tables):
        count = len(table.titles)
        for begin in range(1, count):
            for end in range(begin, count):
                columns = (0, *range(begin, end + 1))
                titles = [table.titles[k] for k in columns]
                if _begins(band, titles) and _letters(band) == Counter(squeezed("".join(titles))):
                    return number, columns
    return None


def _begins(band: _Band, cells: Sequence[str]) -> bool:
    """Whether the first line has a beginning of each of these, from left to right."""
    filled = [cell for cell in cells if cell]
    return len(filled) == len(band.first) and all(
        bool(text.words) and squeezed(cell).startswith(squeezed(text.words))
        for cell, text in zip(filled, band.first, strict=True)
    )


def _letters(band: _Band) -> Counter[str]:
    return Counter(squeezed("".join(text.words for text in band.texts)))


def _is_row(band: _Band, cells: Sequence[str]) -> bool:
    """Whether the words are these cells, each from its first line down its own column."""
    if not _begins(band, cells):
        return False
    left = sorted(band.texts, key=lambda text: -text.at.y)
    for cell, top in zip([cell for cell in cells if cell], band.first, strict=True):
        lines = [text for text in left if abs(text.at.x - top.at.x) < _SAME]
        if squeezed("".join(text.words for text in lines)) != squeezed(cell):
            return False
        left = [text for text in left if text not in lines]
    return not left


def _shown(band: _Band) -> str:
    return ", ".join(text.words for text in sorted(band.texts, key=lambda text: (-text.at.y, text.at.x)))
