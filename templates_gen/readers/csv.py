"""Bytes of a table back to its cells, sign by sign (RFC 4180); refused is what our files never hold.

Numbers are read as the text that they are. Of a text that was guarded, so that no program for tables takes it for a
formula, the guard is taken off again; a formula is refused.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import BinaryIO

from layout.values.errors import shown
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Table

_MOST = 4_000_000  # bytes; ours have some ten thousand
_SIGNS = frozenset("=+-@\t\r\uff1d\uff0b\uff0d\uff20")
_DIGITS = frozenset("0123456789")


def read(data: bytes) -> tuple[tuple[str, ...], ...]:
    """Every row of the table, the names of its columns first; ReadError where it is none of ours."""
    if len(data) > _MOST:
        raise ReadError(message(Table.LARGE, most=_MOST))
    rows = tuple(map(_bared, _rows(_text(data))))
    if not rows:
        raise ReadError(message(Table.EMPTY))
    for number, row in enumerate(rows, 1):
        _check_wide(row, number, len(rows[0]))
    return rows


def read_rows(file: BinaryIO) -> Iterator[tuple[str, ...]]:
    """The same row by row, of a file however long; ReadError at the row that is none of ours."""
    wide = place = 0
    for number, line in enumerate(_lines(file), 1):
        (row,) = map(_bared, _rows(_text(line, place)))
        wide, place = wide or len(row), place + len(line)
        _check_wide(row, number, wide)
        yield row
    if not wide:
        raise ReadError(message(Table.EMPTY))


def _lines(file: BinaryIO) -> Iterator[bytes]:
    """Each row with its end, which does not stand within quotes; what is left without one comes last."""
    held: list[bytes] = []
    size = quotes = 0
    while part := file.readline(_MOST):
        held.append(part)
        size, quotes = size + len(part), quotes + part.count(b'"')
        if size > _MOST:
            raise ReadError(message(Table.LARGE, most=_MOST))
        if part.endswith(b"\r\n") and quotes % 2 == 0:
            yield b"".join(held)
            held, size, quotes = [], 0, 0
    if held:
        yield b"".join(held)


def _text(data: bytes, place: int = 0) -> str:
    try:
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise ReadError(message(Table.UTF8, place=place + error.start)) from error


def _check_wide(row: Sequence[str], number: int, wide: int) -> None:
    if len(row) != wide:
        raise ReadError(message(Table.LENGTH, row=number, cells=len(row), wanted=wide))


def _bared(row: Sequence[str]) -> tuple[str, ...]:
    return tuple(map(_bare, row))


def _rows(text: str) -> Iterator[list[str]]:
    """The cells of each row as they stand in the file, quotes undone."""
    row: list[str] = []
    at = 0
    while at < len(text):
        cell, at = _quoted(text, at + 1) if text[at] == '"' else _plain(text, at)
        row.append(cell)
        if text.startswith("\r\n", at):
            yield row
            row, at = [], at + 2
        elif text.startswith(",", at):
            at += 1
            if at == len(text) or text.startswith("\r\n", at):
                row.append("")
                if text.startswith("\r\n", at):
                    yield row
                    row, at = [], at + 2
        elif at < len(text):
            raise ReadError(message(Table.SIGN, sign=shown(text[at]), place=at))
    if row:
        raise ReadError(message(Table.END))


def _plain(text: str, at: int) -> tuple[str, int]:
    """A cell without quotes from there on, and where it ends."""
    end = at
    while end < len(text) and text[end] not in ',"\r\n':
        end += 1
    return text[at:end], end


def _quoted(text: str, at: int) -> tuple[str, int]:
    """A cell whose first sign behind its opening quote stands there, and where its closing one ends it."""
    found: list[str] = []
    while True:
        end = text.find('"', at)
        if end < 0:
            raise ReadError(message(Table.QUOTE))
        found.append(text[at:end])
        if not text.startswith('""', end):
            return "".join(found), end + 1
        found.append('"')
        at = end + 2


def unguarded(cell: str) -> str:
    """A cell without its guard; as it is where it has none."""
    return cell[1:] if cell.startswith("'") and _begins_formula(cell.lstrip("'")) else cell


def _bare(cell: str) -> str:
    """A cell without its guard; ReadError where it should have had one."""
    bare = unguarded(cell)
    if bare == cell and _begins_formula(cell) and not _is_number(cell):
        raise ReadError(message(Table.FORMULA, cell=shown(cell)))
    return bare


def _begins_formula(text: str) -> bool:
    rest = text.lstrip()
    blank = text[: len(text) - len(rest)]
    return rest[:1] in _SIGNS if rest and not _SIGNS & set(blank) else bool(_SIGNS & set(blank))


def _is_number(text: str) -> bool:
    whole, _, decimals = text.removeprefix("-").partition(".")
    return bool(whole) and set(whole + decimals) <= _DIGITS and not text.endswith(".")
