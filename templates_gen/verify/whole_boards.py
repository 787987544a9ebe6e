"""Which boards a whole kit must have: every part that has a cutter's file of its own lies on one of them.

A part that is needed more than once lies there so often, as kit and stock alone tell.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from itertools import count

from layout.cutting.stock.stock import Stock
from layout.kit.kit import Kit
from templates_gen.messages.roles.proof import Whole
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.kinds.truths import truth_of

JOB = "job.pdf"
"""The job sheet; a paper may not allow it."""

_BOARD = re.compile(
    r"board-(?P<number>\d+)of(?P<count>\d+)-(?:(?P<times>[1-9]\d*)x-)?[\d.]+x[\d.]+mm-(?:no-kerf|kerf-[\d.x]+)(?:-corrected)?\.(?P<form>\w+)"
)
_SQUARE, _TRIALS = "reference-square", ("trial-cut", "square-check")


def is_of_boards(file: str) -> bool:
    """Whether a file of that name is a board or the job sheet."""
    return file == JOB or _BOARD.fullmatch(file) is not None


def times_in(file: str) -> int:
    """How often a board is cut, by the name of its file; 0 where that is none."""
    found = _BOARD.fullmatch(file)
    return int(found["times"] or 1) if found else 0


def boards_missing(files: Iterable[str], forms: Sequence[str]) -> Iterator[str]:
    """The numbers and forms of boards that are not among the files of a run, by how many boards these say there are."""
    found = [each for file in files if (each := _BOARD.fullmatch(file))]
    most = max((int(each["count"]) for each in found), default=0)
    there = {(int(each["number"]), each["form"]) for each in found}
    for number in range(1, most + 1):
        yield from (f"board-{number}of{most} ({form})" for form in forms if (number, form) not in there)


def copies(kit: Kit, stock: Stock) -> Mapping[str, int]:
    """How many of a part are needed, of those that are needed more than once.

    Bars for notched ends are glued of as many layers of the stock as reach the thickness that the kit has.
    """
    thick = truth_of(kit).layers_of(kit.frame.ends)
    if thick is None:
        return {}
    sheet = Fraction(stock.thickness).limit_denominator(10**9)
    layers = next(number for number in count(1) if number * sheet >= thick)
    return dict.fromkeys(("end-bar-near", "end-bar-far"), layers)


def boards_lacking(
    made: Mapping[str, Sequence[str]], cut: Iterable[str], forms: Sequence[str], needed: Mapping[str, int]
) -> Iterator[Finding]:
    """What is wrong with the boards among `made` (the parts of every file), as sentences.

    `cut` are the files of parts that are cut alone; the trial cut is on no board. `needed` is how many of a part there
    must be, if not one.
    """
    for form in forms:
        own = Counter(part for file in cut if file.endswith(f".{form}") for part in made[file])
        for part in (_SQUARE, *_TRIALS):
            own.pop(part, None)
        boards = {file: found for file in made if (found := _BOARD.fullmatch(file)) and found["form"] == form}
        laid = Counter(part for file in boards for part in made[file])
        squares = laid.pop(_SQUARE, 0)
        if squares != len(boards):
            yield finding(Whole.SQUARES, squares=squares, boards=len(boards), form=form)
        for part in sorted(own.keys() | laid.keys()):
            if laid[part] != (wanted := own[part] * needed.get(part, 1)):
                yield finding(Whole.ON_BOARDS, part=part, found=laid[part], form=form, wanted=wanted)
        numbers = sorted(int(found["number"]) for found in boards.values())
        counts = {int(found["count"]) for found in boards.values()}
        if numbers != list(range(1, len(boards) + 1)) or counts - {len(boards)}:
            yield finding(Whole.NUMBERS, form=form, boards=len(boards))
