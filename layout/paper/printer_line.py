"""The line that says for which printer a sheet is drawn: it is put where a finished sheet has room, and moves nothing.

So a sheet is laid out the same with it and without it, and a scan of either is measured by the same marks.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import chain
from math import ceil
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.drawing.shapes import Box, Point, Region, Shape, Text
from layout.drawing.sheet import Piece, Sheet, painted
from layout.drawing.typeset import SMALL, leading, longest_word, wrap
from layout.messages.catalogue import Catalogue, Figure
from layout.messages.roles import Sheet as Sheets
from layout.paper.area import SIDE, TOP
from layout.paper.taken import SLACK, taken_by

DECIMALS = 5
_START = 1.0  # mm more white before the first word, where there is room
_FEW, _MANY = 4, 12  # lines: of whole words, and of a name that is too long for a line
_LEAST = 12.0  # mm: no line is shorter
_UP = 0.5  # mm from one height that is tried to the next


def printer_words(printer: Printer, words: Catalogue) -> str:
    """The sentence: the printer's name, what it makes of 1 mm across and up, its skew, within what all are known."""
    unit = 10.0**-DECIMALS
    sure = max(ceil(max(printer.within) / unit - 1e-6) * unit, unit)
    x, y, skew = (Figure(f"{share + 0.0:.{DECIMALS}f}") for share in printer.scale)
    return words.say(
        Sheets.FOR_PRINTER, printer=printer.name, x=x, y=y, skew=skew, within=Figure(f"{sure:.{DECIMALS}f}")
    )


def with_printer_line(sheet: Sheet, pieces: Sequence[Piece], said: str, metrics: FontMetrics) -> Sheet | None:
    """The sheet with that sentence in small letters, off everything that it shows; None where it has no such room.

    First at the foot and at the head, where it may go on beyond a target; then up the gutters; then in any white.
    """
    for lines in chain(_at_edges(sheet, pieces, said, metrics), _anywhere(sheet, pieces, said, metrics)):
        texts = [Text(at, SMALL, line, angle) for at, line, angle in lines]
        return replace(sheet, shapes=painted([*sheet.shapes, *texts]))
    return None


_Line = tuple[Point, str, float]


class _Room(NamedTuple):
    """A sheet as words see it that run along its width, its margins, and the boxes that are taken."""

    width: float
    height: float
    side: float
    top: float
    taken: Sequence[Box]

    def free(self, low: float, high: float) -> list[tuple[float, float]]:
        """From where to where nothing is taken between two heights."""
        spans = sorted((box[0], box[2]) for box in self.taken if box[1] < high and low < box[3])
        found, at = [], self.side
        for begin, end in spans:
            if begin > at:
                found.append((at, begin))
            at = max(at, end)
        return [*found, *([(at, self.width - self.side)] if at < self.width - self.side else [])]


def _at_edges(sheet: Sheet, pieces: Sequence[Piece], said: str, metrics: FontMetrics) -> Iterator[list[_Line]]:
    """In one line at the foot or at the head; most of a sheet need not be looked at for these."""
    near = [shape for shape in sheet.shapes if _reaches(shape, 2 * TOP, sheet.height - 2 * TOP)]
    room = _Room(sheet.width, sheet.height, SIDE, TOP, list(taken_by(near, pieces, metrics)))
    foot, head = TOP - metrics.descent * SMALL, sheet.height - TOP - metrics.ascent * SMALL
    for set_in in (_in_row, _in_rows):
        for base in (foot, head):
            yield from set_in(room, base, said, metrics)


def _anywhere(sheet: Sheet, pieces: Sequence[Piece], said: str, metrics: FontMetrics) -> Iterator[list[_Line]]:
    """In a block of lines that run up the sheet or along it, the fewest first; last with a long name in pieces."""
    taken = list(taken_by(sheet.shapes, pieces, metrics))
    flat = _Room(sheet.width, sheet.height, SIDE, TOP, taken)
    upward = _Room(sheet.height, sheet.width, TOP, SIDE, [_turned(box, sheet.width) for box in taken])
    widest = longest_word(said, SMALL, metrics)
    ways = [
        (least, most, *way)
        for least, most in ((widest, _FEW), (_LEAST, _MANY))
        for way in ((upward, 90.0), (flat, 0.0))
    ]
    for least, most, room, angle in ways:
        for count in range(1, most + 1):
            for lines in _in_block(room, count, least, said, metrics):
                yield [(_back(at, sheet.width) if angle else at, line, angle) for at, line, _ in lines]


def _reaches(shape: Shape, foot: float, head: float) -> bool:
    """Whether a shape reaches under one height or over another; upward words always may."""
    if isinstance(shape, Text):
        return bool(shape.angle) or not foot + shape.size < shape.at.y < head - shape.size
    ys = [at.y for path in (shape.contours if isinstance(shape, Region) else (shape,)) for at in path.points()]
    return min(ys) < foot or max(ys) > head


def _in_row(room: _Room, base: float, said: str, metrics: FontMetrics) -> Iterator[list[_Line]]:
    """In one piece on a base line."""
    wide = metrics.width(said, SMALL) * SLACK
    for begin, end in room.free(*_heights(base, metrics)):
        if end - begin >= wide:
            yield [(Point(min(begin + _START, end - wide), base), said, 0.0)]


def _in_rows(room: _Room, base: float, said: str, metrics: FontMetrics) -> Iterator[list[_Line]]:
    """On a base line, going on beyond what stands in its way."""
    lines: list[_Line] = []
    left = said
    for begin, end in room.free(*_heights(base, metrics)):
        wide = (end - begin) / SLACK
        if left and wide >= longest_word(left, SMALL, metrics):
            line, *others = wrap(left, SMALL, wide, metrics)
            lines.append((Point(begin, base), line, 0.0))
            left = " ".join(others)
    if not left:
        yield lines


def _in_block(room: _Room, count: int, least: float, said: str, metrics: FontMetrics) -> Iterator[list[_Line]]:
    """In so many lines, one under the other, as low as they can."""
    apart = leading(SMALL, tall=True)
    low = room.top - metrics.descent * SMALL
    high = room.height - room.top - metrics.ascent * SMALL - (count - 1) * apart
    for k in range(max(0, int((high - low) / _UP) + 1)):
        base = low + k * _UP
        bottom, _ = _heights(base, metrics)
        _, top = _heights(base + (count - 1) * apart, metrics)
        for begin, end in room.free(bottom, top):
            wide = (end - begin) / SLACK
            if wide * count < metrics.width(said, SMALL) or wide < least:
                continue
            lines = wrap(said, SMALL, wide, metrics)
            if len(lines) <= count:
                yield [(Point(begin, base + (count - 1 - k) * apart), line, 0.0) for k, line in enumerate(lines)]
                return


def _heights(base: float, metrics: FontMetrics) -> tuple[float, float]:
    return base + metrics.descent * SMALL, base + metrics.ascent * SMALL


def _turned(box: Box, width: float) -> Box:
    """A box as words see it that run upward: their x is the sheet's y, their y is the way to the left."""
    left, low, right, high = box
    return low, width - right, high, width - left


def _back(at: Point, width: float) -> Point:
    return Point(width - at.y, at.x)
