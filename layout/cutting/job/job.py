"""Boards as a job for a cutter: which kinds of parts lie on which board, what is to be done, how long it takes.

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

_SHARE = 3  # decimals of a per cent that are said


class Kind(NamedTuple):
    """Parts that are alike: their number on the sheets, one of them, what it is called, and how many are cut in all."""

    number: int
    part: Part
    title: str
    copies: int


class Label(NamedTuple):
    """What a part on a board is: the number of its kind, which it is of how many; None where that cannot be said."""

    number: int
    which: int | None
    copies: int


Key = tuple[int, str]
"""A kind of part: the kit that it is of, and its name."""


@dataclass(frozen=True, slots=True)
class Job:
    """The boards, the work on each, the name of each one's files without suffix, and why some parts are not here.

    `names` are those of the kits where there are several.
    """

    boards: Boards
    works: tuple[Work, ...]
    files: tuple[str, ...]
    left_out: tuple[str, ...] = ()
    names: tuple[str, ...] = ()

    @property
    def work(self) -> Work:
        """All of it, boards that are cut several times so often."""
        return sum((work.times(often) for work, often in zip(self.works, self.boards.times, strict=True)), Work())

    def keys(self, board: int) -> list[Key]:
        """The kind of every part on a board, from 1 on, in the order in which they lie there."""
        pieces, kits = self.boards.sheets[board - 1][:-1], self.boards.kits[board - 1]
        return [(kit, piece.part.name) for piece, kit in zip(pieces, kits, strict=True)]

    def kinds(self, words: Catalogue) -> Mapping[Key, Kind]:
        """Numbered as they lie: board by board, from above and from the left."""
        counts, first = Counter[Key](), dict[Key, Part]()
        for board, often in enumerate(self.boards.times, 1):
            for key, piece in zip(self.keys(board), self.boards.sheets[board - 1], strict=False):
                counts[key] += often
                first.setdefault(key, piece.part)
        every = enumerate(counts.items(), 1)
        return {key: Kind(k, first[key], self._title(key, first[key], words), count) for k, (key, count) in every}

    def _title(self, key: Key, part: Part, words: Catalogue) -> str:
        return words.say(JobSheet.OF_KIT, part=part.title, kit=self.names[key[0]]) if self.names else part.title

    def labels(self, board: int, words: Catalogue) -> list[Label]:
        """For every part on a board, in the order in which they lie there; no copy is one of many where boards are."""
        kinds, met, found = self.kinds(words), Counter[Key](), list[Label]()
        alike = any(often > 1 for often in self.boards.times)
        for number in range(1, board + 1):
            for key in self.keys(number):
                met[key] += 1
                if number == board:
                    kind = kinds[key]
                    found.append(Label(kind.number, None if alike else met[key], kind.copies))
        return found


def kerf_words(stock: Stock, words: Catalogue) -> str:
    """The kerf, whether it is drawn in, and what that asks of the machine."""
    up, across = say_number(stock.kerf_x), say_number(stock.kerf_y)
    kerf = Message(JobSheet.KERF_ONE, {"kerf": up}) if up == across else _two(up, across)
    return words.say(JobSheet.STEP_KERF_DRAWN if stock.kerf_drawn else JobSheet.STEP_KERF_LEFT, kerf=kerf)


def scale_words(stock: Stock, words: Catalogue) -> str:
    """The scale that the files are drawn against, how sure it is, and what that asks of who opens them."""
    x, y, skew = stock.scale.x - 1, stock.scale.y - 1, stock.scale.skew
    said = {key: say_number(100 * share, _SHARE) for key, share in (("x", x), ("y", y), ("skew", skew))}
    if stock.scale_uncertainty is None:
        return words.say(JobSheet.STEP_SCALE, **said)
    return words.say(JobSheet.STEP_SCALE_WITHIN, **said, within=say_number(100 * stock.scale_uncertainty, _SHARE))


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
