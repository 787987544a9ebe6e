"""What a sheet says about its part: things to do in rings, pictures and lists beside the part, cautions at the foot."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text
from layout.drawing.sheet import Block, Entry, OnScreen, Part
from layout.drawing.signs import RING, ring
from layout.drawing.typeset import LEAD, SMALL, is_tall, leading, wrap

_RING_X, _RING_UP, _WORDS_X = RING, 1.2, 7.0
_NEXT = 6.2  # from the last line of a step to the first of the next one
_FIRST_LINE = 1.0  # the first baseline lies so far under the top of the body
_COLUMNS_FROM, _IN_COLUMNS, _APART = 150.0, 5, 4.0  # so wide, and so many steps, that they stand in two columns
_TITLE_DOWN, _UNDER_TITLE, _BESIDE = 3.0, 3.6, 4.0
_SAMPLE, _ENTRY_X, _ENTRY, _ROW_GAP = 14.0, 16.0, 6.0, 4.0
_KEPT = 64  # words that were set, kept: a sheet is furnished several times until its part lies
_LEAST, _USUAL, _MOST = 4.0, 8.0, 16.0  # white between blocks


class Section(NamedTuple):
    """Shapes that hang down from y = 0, and how far."""

    shapes: tuple[Shape, ...]
    high: float


class Column(NamedTuple):
    """What stands in a column: its shapes, how far down they reach, and the blocks that found no room."""

    shapes: tuple[Shape, ...]
    low: float
    rest: tuple[Block, ...]


def column(part: Part, left: float, right: float, top: float, floor: float, metrics: FontMetrics) -> Column:
    """Steps, notes, blocks and cautions of `part` between `left` and `right`, from `top` down to `floor` at most.

    Blocks that do not fit above the cautions are returned for another sheet. White between blocks grows where there
    is room for it.
    """
    width = right - left
    said = [section for section in (_steps(part.steps, width, metrics), _notes(part.notes, width, metrics)) if section]
    foot = _small(part.cautions, width, metrics)
    free = top - floor - (foot.high + _LEAST if foot else 0.0)
    kept, rest = _fitting([_block(block, width, metrics) for block in part.blocks], said, free)
    sections = [*said, *kept]
    white = _white(sections, free)
    gap = white if part.narrow else min(white, _USUAL)
    shapes: list[Shape] = []
    y = top
    for section in sections:
        y = top if section is sections[0] else y - gap
        shapes += Placing(0, left, y).shapes(section.shapes)
        y -= section.high
    if foot:
        y = floor + foot.high if part.narrow else y - (_LEAST if sections else 0.0)
        shapes += Placing(0, left, y).shapes(foot.shapes)
        y -= foot.high
    return Column(tuple(shapes), y, part.blocks[len(part.blocks) - rest :])


def _fitting(blocks: Sequence[Section], said: Sequence[Section], free: float) -> tuple[list[Section], int]:
    """As many of the blocks, in order, as fit under what is said, and how many do not."""
    kept: list[Section] = []
    used = sum(section.high for section in said) + _LEAST * max(0, len(said) - 1)
    for block in blocks:
        used += block.high + _LEAST
        if used > free:
            break
        kept.append(block)
    return kept, len(blocks) - len(kept)


def _white(sections: Sequence[Section], free: float) -> float:
    """The white between sections, by even millimetres, where all that is free is shared out."""
    if len(sections) < 2:
        return _USUAL
    share = (free - sum(section.high for section in sections)) / (len(sections) - 1)
    return max(_LEAST, min(_MOST, 2 * math.floor(share / 2)))


def _steps(steps: Sequence[str], width: float, metrics: FontMetrics) -> Section | None:
    """Each step with its number in a ring; many of them in two columns where the field is wide."""
    if not steps:
        return None
    if width < _COLUMNS_FROM or len(steps) < _IN_COLUMNS:
        return _listed(steps, 1, width, metrics)
    half, wide = math.ceil(len(steps) / 2), (width - _APART) / 2
    one, other = _listed(steps[:half], 1, wide, metrics), _listed(steps[half:], half + 1, wide, metrics)
    beside = Placing(0, wide + _APART, 0).shapes(other.shapes)
    return Section((*one.shapes, *beside), max(one.high, other.high))


@lru_cache(_KEPT)
def _listed(steps: Sequence[str], first: int, width: float, metrics: FontMetrics) -> Section:
    shapes: list[Shape] = []
    y = -_FIRST_LINE
    for number, step in enumerate(steps, first):
        lines = wrap(step, LEAD, width - _WORDS_X, metrics)
        shapes += ring(Point(_RING_X, y + _RING_UP), str(number), metrics)
        *ys, y = _baselines(lines, LEAD, y)
        shapes += [Text(Point(_WORDS_X, at), LEAD, line) for line, at in zip(lines, [*ys, y], strict=True)]
        y -= _NEXT
    return Section(tuple(shapes), -(y + _NEXT) - metrics.descent * LEAD)


def _baselines(lines: Sequence[str], size: float, first: float) -> list[float]:
    """Where the lines of a paragraph stand: further apart where an accent stands on a capital."""
    ys = [first]
    for line in lines[1:]:
        ys.append(ys[-1] - leading(size, tall=is_tall(line)))
    return ys


def _notes(notes: Sequence[str], width: float, metrics: FontMetrics) -> Section | None:
    return _small(tuple(note for note in notes if not isinstance(note, OnScreen)), width, metrics)


@lru_cache(_KEPT)
def _small(sentences: Sequence[str], width: float, metrics: FontMetrics) -> Section | None:
    """Sentences in small letters, each on lines of its own."""
    lines = [line for sentence in sentences for line in wrap(sentence, SMALL, width, metrics)]
    if not lines:
        return None
    ys = _baselines(lines, SMALL, -metrics.ascent * SMALL)
    shapes = tuple(Text(Point(0, y), SMALL, line) for line, y in zip(lines, ys, strict=True))
    return Section(shapes, -ys[-1] - metrics.descent * SMALL)


@lru_cache(_KEPT)
def _block(block: Block, width: float, metrics: FontMetrics) -> Section:
    """Its title, its picture, its entries."""
    shapes: list[Shape] = []
    y = 0.0
    if block.title:
        y -= _TITLE_DOWN
        shapes.append(Text(Point(0, y), LEAD, block.title, pen=Pen.STRONG))
        x = metrics.width(block.title, LEAD, Pen.STRONG) + _BESIDE
        rows = [block.beside] if block.beside else []
        if rows and x + metrics.width(block.beside, SMALL) > width:
            x, y, rows = 0.0, y - leading(SMALL), wrap(block.beside, SMALL, width, metrics)
        shapes += [Text(Point(x, y - k * leading(SMALL)), SMALL, row) for k, row in enumerate(rows)]
        y -= max(0, len(rows) - 1) * leading(SMALL)
        y -= _UNDER_TITLE
    if block.shapes:
        shapes += Placing(0, 0, y).shapes(block.shapes)
        y -= block.high
    entries = _in_a_row if block.in_a_row else _one_under_another
    listed = entries(block.entries, width, metrics)
    shapes += Placing(0, 0, y).shapes(listed.shapes)
    return Section(tuple(shapes), listed.high - y)


def _one_under_another(entries: Sequence[Entry], width: float, metrics: FontMetrics) -> Section:
    shapes: list[Shape] = []
    y = 0.0
    for entry in entries:
        y -= _ENTRY / 2
        lines = wrap(entry.words, LEAD, width - _ENTRY_X, metrics)
        ys = _baselines(lines, LEAD, y - metrics.cap * LEAD / 2)
        shapes += Placing(0, _SAMPLE / 2, y).shapes(entry.sample)
        shapes += [Text(Point(_ENTRY_X, at), LEAD, line) for line, at in zip(lines, ys, strict=True)]
        y = min(y, ys[-1] + metrics.cap * LEAD / 2) - _ENTRY / 2
    return Section(tuple(shapes), -y)


def _in_a_row(entries: Sequence[Entry], width: float, metrics: FontMetrics) -> Section:
    """Entries that follow each other; one that has no room any more begins another line."""
    shapes: list[Shape] = []
    x, y = 0.0, -_ENTRY / 2
    for entry, wide in _with_widths(entries, metrics):
        if x and x + wide > width:
            x, y = 0.0, y - _ENTRY
        shapes += Placing(0, x + _SAMPLE / 2, y).shapes(entry.sample)
        shapes.append(Text(Point(x + _ENTRY_X, y - metrics.cap * LEAD / 2), LEAD, entry.words))
        x += wide + _ROW_GAP
    return Section(tuple(shapes), _ENTRY / 2 - y if entries else 0.0)


def _with_widths(entries: Sequence[Entry], metrics: FontMetrics) -> Iterator[tuple[Entry, float]]:
    for entry in entries:
        yield entry, _ENTRY_X + metrics.width(entry.words, LEAD)
