"""What the check of a file found."""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.sheet import cuts_on, marks_on
from templates_gen.document import Document
from templates_gen.files.output import Output


@dataclass(frozen=True, slots=True)
class Count:
    """How much is on the sheets of one file."""

    sheets: int
    size: tuple[float, float]
    marks: int
    cuts: int = 0


@dataclass(frozen=True, slots=True)
class Checked:
    """One file: what was asked, what was found (None where that is unknown), how far off, what is wrong.

    What is `unread` could not be read at all. Of a table, `rows` is what is said of these instead of sheets.
    """

    file: str
    asked: Count | None
    found: Count | None
    deviation: float
    problems: tuple[str, ...]
    unread: bool = False
    rows: str = ""


def counted(source: Output | Document | None) -> Count | None:
    """How much is on the sheets of a file as it was asked for, or as it was read; None where that is unknown."""
    if source is None or not source.sheets:
        return None
    first = source.sheets[0]
    size = (round(first.width, 4), round(first.height, 4))
    return Count(len(source.sheets), size, sum(map(marks_on, source.sheets)), sum(map(cuts_on, source.sheets)))
