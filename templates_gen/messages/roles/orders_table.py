"""The roles of what is wrong with a table of orders."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Unread(Role):
    """A table of orders that cannot be read at all."""

    SPREADSHEET = "orders_table.unread.spreadsheet"
    ENCODING = "orders_table.unread.encoding"
    QUOTE_OPEN = "orders_table.unread.quote_open"
    QUOTE_BEHIND = "orders_table.unread.quote_behind"
    CELL_LONG = "orders_table.unread.cell_long"
    EMPTY = "orders_table.unread.empty"
    NO_ROWS = "orders_table.unread.no_rows"
    DELIMITER = "orders_table.unread.delimiter"
    TOO_LARGE = "orders_table.unread.too_large"


class Header(Role):
    """The names of its columns."""

    PLACE = "orders_table.header.place"
    LINE = "orders_table.header.line"
    UNKNOWN = "orders_table.header.unknown"
    MEANT = "orders_table.header.meant"
    TWICE = "orders_table.header.twice"
    LIST = "orders_table.header.list"
    TABLE = "orders_table.header.table"
    OF_KIT = "orders_table.header.of_kit"
    OF_RANGE = "orders_table.header.of_range"
    ORDER = "orders_table.header.order"
    KIT = "orders_table.header.kit"


class CellNeed(Role):
    """What stands in a cell of a row."""

    CONTROL = "orders_table.cell.control"
    ONE_LINE = "orders_table.cell.one_line"
    NUMBER = "orders_table.cell.number"
    ONE_WAY = "orders_table.cell.one_way"
    FLAG = "orders_table.cell.flag"
    LIST = "orders_table.cell.list"
    LIST_ALONE = "orders_table.cell.list_alone"
    LIST_LONG = "orders_table.cell.list_long"
    OUTSIDE = "orders_table.cell.outside"
    OF_RANGE = "orders_table.cell.of_range"


class NumberNeed(Role):
    """The number of an order, which is the name of its folder."""

    GIVEN = "orders_table.number.given"
    SHORTER = "orders_table.number.shorter"
    SIGNS = "orders_table.number.signs"
    FIRST = "orders_table.number.first"
    LAST = "orders_table.number.last"
    RESERVED = "orders_table.number.reserved"
    OWN_FILE = "orders_table.number.own_file"
    TWICE = "orders_table.number.twice"
