"""The roles of what is said of a run of orders as a whole."""

from __future__ import annotations

from layout.messages.catalogue import Role


class OrdersLine(Role):
    """Lines of the command, and of its tables that could not be written."""

    MADE = "orders.line.made"
    PROVEN = "orders.line.proven"
    TABLES = "orders.line.tables"
    PRINT = "orders.line.print"
    READ = "orders.line.read"
    AT = "orders.line.at"
    AT_COLUMN = "orders.line.at_column"
    MORE = "orders.line.more"
    MORE_READ = "orders.line.more_read"
    CHANGED = "orders.line.changed"
    EARLIER = "orders.line.earlier"
    STOPPED = "orders.line.stopped"
    PROGRESS = "orders.line.progress"
    UNIT = "orders.line.unit"
    STAYS = "orders.line.stays"


class OrdersOption(Role):
    """What an option of the command needs."""

    NUMBER = "orders.option.number"
    NO_DASK = "orders.option.no_dask"
    NO_SCHEDULER = "orders.option.no_scheduler"
