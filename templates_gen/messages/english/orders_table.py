"""English: what is wrong with a table of orders."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.orders_table import CellNeed, Header, NumberNeed, Unread

_COLUMN = "the name of a column (order, kit, copies, buyer, language, or a key of a kit file)"
_NUMBER = "an order number of 1 to {most} characters"

MESSAGES: dict[Role, str | Plural] = {
    Unread.SPREADSHEET: "{file} is a spreadsheet, which cannot be read; save it as CSV",
    Unread.ENCODING: "{file} is not text that can be read (line {line}); save it as CSV in UTF-8",
    Unread.QUOTE_OPEN: "{file}: a quote in the row of line {line} is never closed; close it, or delete it",
    Unread.QUOTE_BEHIND: (
        '{file}: in the row of line {line}, a cell goes on after its closing quote; write a quote in a cell as ""'
    ),
    Unread.CELL_LONG: (
        "{file}: a cell in the row of line {line} has more than {most} characters; shorten it, or close its quote"
    ),
    Unread.EMPTY: "{file} is empty; its first line has the names of the columns, such as order,kit,copies",
    Unread.NO_ROWS: "{file} has no order below the names of its columns",
    Unread.DELIMITER: '{file}: line {line} needs a comma, a semicolon or a tab after "sep="',
    Unread.TOO_LARGE: "{file} is larger than {size} MB; share the orders out over several files",
    Header.PLACE: "{file}, line {line}, column {number}",
    Header.LINE: "{file}, line {line}",
    Header.UNKNOWN: needs(f"{_COLUMN}, or to be deleted"),
    Header.MEANT: needs("a known column (did you mean {meant}?), or to be deleted"),
    Header.TWICE: needs("each column once (column {first} is the same)"),
    Header.LIST: needs("the whole list in one column, as TOML"),
    Header.TABLE: needs("one of the keys of this table"),
    Header.OF_KIT: needs("to come from the range (kit says which kit an order is for)"),
    Header.OF_RANGE: needs("to stand in the range, once for all orders"),
    Header.ORDER: needs("a column order, with the number of each order"),
    Header.KIT: needs("a column kit, since the range has {kits} kits"),
    CellNeed.CONTROL: needs("letters, figures and signs that can be seen"),
    CellNeed.ONE_LINE: needs("one line (a quote that was left open in line {first} takes in all up to line {last})"),
    CellNeed.NUMBER: needs("a number, with nothing between thousands"),
    CellNeed.ONE_WAY: needs(
        "a number that can be read in one way only (a point before three digits may mean {thousands} or {decimal})"
    ),
    CellNeed.FLAG: needs("true or false"),
    CellNeed.LIST: needs("a list as TOML has it ({what})"),
    CellNeed.LIST_ALONE: needs("a list as TOML has it, and nothing else"),
    CellNeed.LIST_LONG: needs("a list of at most {most} characters and {points} points"),
    CellNeed.OUTSIDE: (
        "column {number} has no name in the first line, but {got} stands in it; give it a name, or put quotes round "
        "a cell that has a comma or semicolon in it"
    ),
    CellNeed.OF_RANGE: "{sentence} (the value comes from the range, not from this row)",
    NumberNeed.GIVEN: needs(_NUMBER),
    NumberNeed.SHORTER: "needs an order number of 1 to {most} characters, got {got} ({count}); for example {example}",
    NumberNeed.SIGNS: needs("letters, figures, spaces and - _ . # + alone, since it names a folder"),
    NumberNeed.FIRST: needs("a letter, a figure or # at its beginning, since it names a folder"),
    NumberNeed.LAST: needs("no point at its end, since it names a folder"),
    NumberNeed.RESERVED: needs('another number: Windows keeps "{reserved}" for itself'),
    NumberNeed.OWN_FILE: needs("another ending, since files beside the folders of the orders end in {ending}"),
    NumberNeed.TWICE: needs("a number of its own (line {line} has it; capitals do not count, since it names a folder)"),
}
