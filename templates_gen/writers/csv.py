"""Tables to bytes that programs for tables open: RFC 4180 in UTF-8, with CRLF behind every row.

Decimals have a point, and no sign stands between thousands. A text that such a program would take for a formula has an
apostrophe before it (OWASP, "CSV Injection", from memory), and so has one that begins with such an apostrophe.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from decimal import Decimal

Cell = str | int | Decimal
"""Words, or a number, which is written in full and as exactly as it is."""

_FORMULA = re.compile(r"'*\s*[=+\-@\t\r＝＋－＠]")
_QUOTED = re.compile(r'[",\r\n]')


def write(rows: Sequence[Sequence[Cell]]) -> bytes:
    """The table, its first row the names of its columns.

    AssertionError, a mistake of the program, for a row of another length than the first, or a number that is none.
    """
    return b"".join(lines(rows))


def lines(rows: Iterable[Sequence[Cell]]) -> Iterator[bytes]:
    """The same row by row, for a table that is too long to be held."""
    wide = None
    for row in rows:
        wide = len(row) if wide is None else wide
        if len(row) != wide:
            raise AssertionError(wide, len(row))
        yield (",".join(_cell(cell, wide == 1) for cell in row) + "\r\n").encode("utf-8")


def _cell(cell: Cell, alone: bool) -> str:
    if not isinstance(cell, str):
        return _number(Decimal(cell))
    text = f"'{cell}" if _FORMULA.match(cell) else cell
    if _QUOTED.search(text) or (alone and not text):
        return '"{}"'.format(text.replace('"', '""'))
    return text


def _number(number: Decimal) -> str:
    if not number.is_finite():
        raise AssertionError(number)
    return f"{number:f}"
