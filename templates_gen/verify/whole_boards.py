"""Which boards a whole kit must have: every part that has a cutter's file of its own lies on one of them, once."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence

JOB = "job.pdf"
"""The job sheet; a paper may not allow it."""

_BOARD = re.compile(r"board-(?P<number>\d+)of(?P<count>\d+)-[\d.]+x[\d.]+mm-(?:no-kerf|kerf-[\d.x]+)\.(?P<form>\w+)")
_SQUARE, _TRIAL = "reference-square", "trial-cut"


def is_of_boards(file: str) -> bool:
    """Whether a file of that name is a board or the job sheet."""
    return file == JOB or _BOARD.fullmatch(file) is not None


def boards_lacking(made: Mapping[str, Sequence[str]], cut: Iterable[str], forms: Sequence[str]) -> Iterator[str]:
    """What is wrong with the boards among `made` (the parts of every file), as sentences.

    `cut` are the files of parts that are cut alone; the trial cut is on no board.
    """
    for form in forms:
        own = Counter(part for file in cut if file.endswith(f".{form}") for part in made[file])
        for part in (_SQUARE, _TRIAL):
            own.pop(part, None)
        boards = {file: found for file in made if (found := _BOARD.fullmatch(file)) and found["form"] == form}
        laid = Counter(part for file in boards for part in made[file])
        squares = laid.pop(_SQUARE, 0)
        if squares != len(boards):
            yield f"{squares} reference squares on {len(boards)} boards as {form}"
        for part in sorted(own.keys() | laid.keys()):
            if own[part] != laid[part]:
                yield f"{part} lies on the boards {laid[part]} times as {form} where {own[part]} was wanted"
        numbers = sorted(int(found["number"]) for found in boards.values())
        if numbers != list(range(1, len(boards) + 1)) or any(
            int(found["count"]) != len(boards) for found in boards.values()
        ):
            yield f"the boards as {form} are not numbered from 1 to {len(boards)}"
