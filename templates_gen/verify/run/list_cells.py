"""The table of a run list as it was read: each row by itself, each cell down its own column."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import inf
from typing import NamedTuple

from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from templates_gen.messages.roles.proof import Words
from templates_gen.messages.roles.proof_run import RunProof
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.said import squeezed

_FILE = "print-"
_COLUMNS, _HOLDS = 5, 3
_SAME = 0.01  # mm
_LEADING = 1.6  # of the size of letters, at most, from one line of a cell to the next
OnSheet = tuple[int, Text]
"""Words on the sheet of that number, from 0."""


class Listed(NamedTuple):
    """A row of the run list: its cells that are not amounts: what the pages hold, for which kits; and its pages."""

    file: str
    times: int
    first: int
    last: int
    holds: tuple[str, ...]
    kits: tuple[str, ...]


class Cells(NamedTuple):
    """What is wrong with the rows, and the words that are what pages hold and for which kits."""

    wrong: tuple[Finding, ...]
    taken: frozenset[OnSheet]


def cells_of(sheets: Sequence[Sheet], rows: Sequence[Listed], words: Catalogue) -> Cells:
    """Every row in its place: the file and the pages beside each other, and what they hold, for which kits, down their
    own columns. One line may be the whole of a cell here and the end of another one there, so cells are not sought.
    """
    every = [(k, shape) for k, sheet in enumerate(sheets) for shape in sheet.shapes if isinstance(shape, Text)]
    texts = [(k, text) for k, text in every if not text.angle]
    files = list(_files(texts))
    wrong = [] if len(files) == len(rows) else [finding(RunProof.SHEETS, words=str(len(rows)))]
    taken: set[OnSheet] = set()
    for number, (row, (sheet, y, file)) in enumerate(zip(rows, files, strict=False)):
        line = sorted((t for k, t in texts if k == sheet and abs(t.at.y - y) < _SAME), key=lambda text: text.at.x)
        if file != row.file or not any(text.words.startswith(str(row.first)) for text in line):
            wrong.append(finding(RunProof.SHEETS, words=row.file))
        low = max((each[1] for each in files[number + 1 :] if each[0] == sheet), default=-inf)
        inside = [text for k, text in texts if k == sheet and low + _SAME < text.at.y]
        for top, cell in zip(line[_HOLDS:], (row.holds, row.kits), strict=False):
            lines = _down(top, inside)
            taken |= {(sheet, text) for text in lines}
            if squeezed("".join(text.words for text in lines)) != squeezed(words.listed(cell)):
                wrong.append(finding(Words.NOWHERE, words=words.listed(cell)))
        if len(line) != _COLUMNS:
            wrong.append(finding(RunProof.SHEETS, words=row.file))
    return Cells(tuple(wrong), frozenset(taken))


def _down(top: Text, inside: Sequence[Text]) -> list[Text]:
    """The lines of a cell from its first: each right below the one before."""
    column = [text for text in inside if abs(text.at.x - top.at.x) < _SAME and text.at.y <= top.at.y + _SAME]
    lines: list[Text] = []
    for text in sorted(column, key=lambda text: -text.at.y):
        if lines and lines[-1].at.y - text.at.y > _LEADING * text.size:
            break
        lines.append(text)
    return lines


def _files(texts: Sequence[tuple[int, Text]]) -> Iterator[tuple[int, float, str]]:
    """The names of the files from above, each with its sheet and height; one that is broken goes on under itself."""
    begins = [(k, text) for k, text in texts if text.words.startswith(_FILE)]
    for k, text in sorted(begins, key=lambda each: (each[0], -each[1].at.y)):
        under = [each for sheet, each in texts if sheet == k and abs(each.at.x - text.at.x) < 0.01]
        name = ""
        for part in sorted((each for each in under if each.at.y <= text.at.y), key=lambda each: -each.at.y):
            name += part.words
            if name.endswith(".pdf"):
                break
        yield k, text.at.y, name
