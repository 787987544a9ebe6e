"""A kit's boards as a job for a cutter: which kinds of parts lie on which board, what is to be done, how long it takes.

Money stands on no sheet of it: a file says nothing of prices.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple

from layout.cutting.job.boards import Boards
from layout.cutting.job.work import Work, seconds
from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import JobSheet
from layout.values.numerals import say_number


class Kind(NamedTuple):
    """Parts that are alike: their number on the sheets, one of them, and how many all boards hold."""

    number: int
    part: Part
    copies: int


class Label(NamedTuple):
    """What a part on a board is: the number of its kind, and which it is of how many."""

    number: int
    which: int
    copies: int


@dataclass(frozen=True, slots=True)
class Job:
    """The boards, the work on each, the name of each one's files without suffix, and why some parts are not here."""

    boards: Boards
    works: tuple[Work, ...]
    files: tuple[str, ...]
    left_out: tuple[str, ...] = ()

    @property
    def work(self) -> Work:
        """All of it."""
        return sum(self.works, Work())

    def kinds(self) -> Mapping[str, Kind]:
        """By the name of the part, numbered as they lie: board by board, from above and from the left."""
        parts = [piece.part for pieces in self.boards.sheets for piece in pieces[:-1]]
        counts = Counter(part.name for part in parts)
        first = {part.name: part for part in reversed(parts)}
        return {name: Kind(k, first[name], count) for k, (name, count) in enumerate(counts.items(), 1)}

    def labels(self, board: int) -> list[Label]:
        """For every part on a board, from 1 on, in the order in which they lie there."""
        kinds, met, found = self.kinds(), Counter[str](), list[Label]()
        for number, pieces in enumerate(self.boards.sheets[:board], 1):
            for piece in pieces[:-1]:
                kind = kinds[piece.part.name]
                met[piece.part.name] += 1
                if number == board:
                    found.append(Label(kind.number, met[piece.part.name], kind.copies))
        return found


def kerf_words(stock: Stock, words: Catalogue) -> str:
    """The kerf, whether it is drawn in, and what that asks of the machine."""
    up, across = say_number(stock.kerf_x), say_number(stock.kerf_y)
    kerf = Message(JobSheet.KERF_ONE, {"kerf": up}) if up == across else _two(up, across)
    return words.say(JobSheet.STEP_KERF_DRAWN if stock.kerf_drawn else JobSheet.STEP_KERF_LEFT, kerf=kerf)


def _two(up: str, across: str) -> Message:
    return Message(JobSheet.KERF_TWO, {"up": up, "across": across})


def amount(operation: str, work: Work, words: Catalogue) -> str:
    """How much there is of one operation: an area in cm2, or a length in m."""
    if operation == "engrave":
        return words.say(JobSheet.AREA, area=say_number(work.engrave / 100, 1))
    return words.say(JobSheet.LENGTH, length=say_number({"cut": work.cut, "score": work.score}[operation] / 1000, 2))


OPERATION_WORDS: Mapping[str, JobSheet] = {
    "engrave": JobSheet.ENGRAVE,
    "score": JobSheet.SCORE,
    "cut": JobSheet.CUT,
}
"""What the operations are called that a machine runs, in the order of work."""


def time_words(work: Work, stock: Stock, words: Catalogue) -> str:
    """The time that the work takes at the speeds of the stock, said to be an estimate."""
    time = seconds(work, stock.speeds)
    if time is None:
        missing = [each for each in work.travels if each not in stock.speeds]  # as the stock file has them
        return words.say(JobSheet.TIME_UNKNOWN, operations=words.all_of(missing))
    return words.say(JobSheet.TIME_IS, minutes=say_number(time / 60, 1))
