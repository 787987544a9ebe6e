"""What the job sheets of one board show: its picture, the words on it, and the rows of its lists."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from layout.cutting.stock.stock import Stock
from layout.drawing.shapes import Box, Point
from templates_gen.verify.cut_parts.job_picture import Picture, read_picture
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.said import Word

_FAR = 1e5  # mm
_ROW = 0.6  # words and numbers in rings whose baselines are closer than this, in mm, stand in one row


@dataclass
class BoardSheets:
    """What the sheets of one board show: the one with its picture, and those that go on with its lists."""

    seen: list[FoundPart]
    stock: Stock

    @cached_property
    def picture(self) -> Picture:
        """What the first of them shows."""
        return read_picture(self.stock, self.seen[0])

    @cached_property
    def on_board(self) -> list[Word]:
        """The words inside the outline of the board, or between it and rings round it."""
        return [word for word in self.seen[0].words() if _inside(word[0], self.picture.board)]

    @cached_property
    def in_lists(self) -> list[Word]:
        """All other words, those of each further sheet as far below the ones before as no sheet is high."""
        found = list[Word]()
        for k, seen in enumerate(self.seen):
            words = (word for word in seen.words() if k or word not in self.on_board)
            found += [(Point(at.x, at.y - k * _FAR), said) for at, said in words]
        return found

    @cached_property
    def rows(self) -> list[list[Word]]:
        """All other words, row by row, downward, each from left to right."""
        rows: list[list[Word]] = []
        for seen in self.seen:
            first = len(rows)
            words = [word for word in seen.words() if not (seen is self.seen[0] and word in self.on_board)]
            for word in sorted(words, key=lambda each: -each[0].y):
                if len(rows) == first or rows[-1][0][0].y - word[0].y > _ROW:
                    rows.append([])
                rows[-1].append(word)
        return [sorted(row, key=lambda word: word[0].x) for row in rows]


def _inside(at: Point, box: Box) -> bool:
    return box[0] < at.x < box[2] and box[1] < at.y < box[3]
