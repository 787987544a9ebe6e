"""The outline of the file of all guides, found again from the names that its sheets show."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from layout.drawing.sheet import Sheet
from templates_gen.document import Entry
from templates_gen.messages.roles.proof import Laid
from templates_gen.verify.finding import Finding, finding

_NAME = 22 * 25.4 / 72  # mm to the em: the name of a sheet, and nothing else in these letters
_LOWER = 13 * 25.4 / 72  # those of a name with a word that would be too wide in the large ones
_FIRST, _NEXT = 23.75, 8.0  # mm from the top of the sheet to such a name; to its next row at most
_SAME = 1e-3


def check_outline(sheets: Sequence[Sheet], found: Sequence[Entry]) -> tuple[Finding, ...]:
    """Whether an entry leads to each sheet whose name is not that of the sheet before, by this name, and no other."""
    names = ["", *map(name_of, sheets)]
    wanted = [Entry(name, number) for number, name in enumerate(names) if number and name != names[number - 1]]
    return () if list(found) == wanted else (finding(Laid.OUTLINE),)


def name_of(sheet: Sheet) -> str:
    """The name in the head of a sheet, its lines together."""
    strong = [shape for shape in sheet.shapes if isinstance(shape, Text) and shape.pen is Pen.STRONG]
    rows = [shape for shape in strong if abs(shape.size - _NAME) < _SAME]
    if not rows:
        lower = [shape for shape in strong if abs(shape.size - _LOWER) < _SAME]
        rows = _from(sheet.height - _FIRST, lower)
    return " ".join(row.words for row in sorted(rows, key=lambda row: -row.at.y))


def _from(base: float, found: Sequence[Text]) -> list[Text]:
    """The row on that baseline, and those that go on under it."""
    rows: list[Text] = []
    for each in sorted(found, key=lambda row: -row.at.y):
        if (not rows and abs(each.at.y - base) < _SAME) or (rows and 0 < rows[-1].at.y - each.at.y < _NEXT):
            rows.append(each)
    return rows
