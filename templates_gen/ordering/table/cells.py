"""The text of one cell to the plain value that a kit file would have there. What it must be is for the kit to judge.

Refused is what cannot even be such a value; each refusal is a FieldError at the dotted key, with an example that works
in a cell.
"""

from __future__ import annotations

import re
from typing import NamedTuple

from layout.kit.input import Input
from layout.messages.catalogue import Message, Role
from layout.values.errors import FieldError, shown
from layout.values.numerals import read_number
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.orders_table import CellNeed
from templates_gen.ordering.table.list_cells import read_list
from templates_gen.readers.csv import unguarded

LISTS = ("tables", "names", "lines")
"""The kinds of input that are written as TOML."""
_NUMBERS = ("whole", "amount", "number")
_NUMBERS_OR_TEXT = ("share", "count", "mass")

_DECIMAL = re.compile(r"[-\u2212]?[0-9]*[.,]?[0-9]+")
_AS_TEXT = re.compile(r'="((?:[^"]|"")*)"')
"""A formula that says a text and nothing else: how a spreadsheet is made to keep zeros (common practice, no source)."""

_UNSEEN = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f]")
_FLAGS = {
    **dict.fromkeys(("true", "wahr", "vrai", "verdadero"), True),
    **dict.fromkeys(("false", "falsch", "faux", "falso"), False),
}
"""How spreadsheets in our languages save what was typed as true or false (from memory)."""


_WORDS = ("name", "text", "link", "choice", "language", "system", "colour")
"""The kinds of input that have no numbers, or none that are read."""
_MAYBE_THOUSANDS = re.compile(r"(?<![0-9.,])[1-9][0-9]{0,2}\.[0-9]{3}(?![0-9.,])")


class Where(NamedTuple):
    """The lines of a row, and whether its table is one of decimal commas: semicolons are between its columns."""

    first: int
    last: int
    commas: bool = False


def bare(cell: str) -> str:
    """A cell without what spreadsheets put round it: spaces, the guard of a text that is no formula, `="..."`."""
    text = cell.strip()
    if said := _AS_TEXT.fullmatch(text):
        return said[1].replace('""', '"').strip()
    return unguarded(text).strip()


def one_line(key: str, text: str, example: str, where: Where) -> None:
    """FieldError for a cell of several lines, or with signs that nobody sees; `where` is its row."""
    if "\n" in text or "\r" in text:
        raise refused(key, CellNeed.ONE_LINE, text, example, first=where.first, last=where.last)
    seen(key, text, example)


def seen(key: str, text: str, example: str) -> None:
    """FieldError for a text with signs that nobody sees."""
    if found := _UNSEEN.search(text):
        raise OptionError(key, CellNeed.CONTROL, f"U+{ord(found[0]):04X}", example)


def value_of(spec: Input, text: str, where: Where) -> object:
    """The plain value that `text`, which is `bare` and not empty, says for `spec`."""
    if spec.kind in LISTS:
        seen(spec.key, text, spec.example)
        return read_list(spec, text)
    one_line(spec.key, text, example_in_cell(spec), where)
    _one_way(spec, text, where)
    if spec.kind == "flag":
        return _flag(spec, text)
    if spec.kind in _NUMBERS or (spec.kind in _NUMBERS_OR_TEXT and _DECIMAL.fullmatch(text)):
        return number(spec, text)
    return text


def _one_way(spec: Input, text: str, where: Where) -> None:
    """FieldError for a point that may stand between thousands, where decimals have a comma."""
    if where.commas and spec.kind not in _WORDS and (found := _MAYBE_THOUSANDS.search(text)):
        said = {"thousands": found[0].replace(".", ""), "decimal": found[0].replace(".", ",", 1)}
        raise refused(spec.key, CellNeed.ONE_WAY, text, example_in_cell(spec), **said)


def number(spec: Input, text: str) -> int | float:
    """A number with a decimal point or comma; what may mean thousands is refused."""
    try:
        found = read_number(text) if _DECIMAL.fullmatch(text) else None
    except FieldError as error:
        raise error.at(spec.key, example_in_cell(spec)) from None
    if found is None:
        raise refused(spec.key, CellNeed.NUMBER, text, example_in_cell(spec))
    return int(found) if found.denominator == 1 else float(found)


def _flag(spec: Input, text: str) -> bool:
    found = _FLAGS.get(text.casefold())
    if found is None:
        raise refused(spec.key, CellNeed.FLAG, text, example_in_cell(spec))
    return found


def example_in_cell(spec: Input) -> str:
    """The example of an input as it may stand in a cell: a text without its quotes."""
    example = spec.example
    return example[1:-1] if example.startswith('"') else example


def refused(key: str, role: Role, text: str, example: Message | str, **values: object) -> FieldError:
    """The refusal of a cell whose text is not what the role says."""
    return OptionError(key, role, shown(text), example, **values)
