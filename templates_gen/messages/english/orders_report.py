"""English: what is said of a run of orders as a whole."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.orders_report import OrdersLine, OrdersOption

MESSAGES: dict[Role, str | Plural] = {
    OrdersLine.MADE: "Into {folder}: {made} made, {unchanged} unchanged, {failed} failed.",
    OrdersLine.PROVEN: "Proven: {files} files, {marks} marks, largest deviation {deviation}.",
    OrdersLine.TABLES: "report.csv has a line for each order, totals.csv what to print, to-buy.csv what to buy.",
    OrdersLine.PRINT: Plural(
        "files",
        "{first} holds the parts of all orders on {sheets} sheets; print it once.",
        "{files} files from {first} on hold the parts of all orders on {sheets} sheets; print each once.",
    ),
    OrdersLine.READ: "Only read: {readable} can be made, {failed} cannot. Nothing was written.",
    OrdersLine.AT: "line {line}: {sentence}",
    OrdersLine.AT_COLUMN: "line {line}, column {column}: {sentence}",
    OrdersLine.MORE: "{number} more in report.csv",
    OrdersLine.MORE_READ: "{number} more; --json shows all",
    OrdersLine.CHANGED: "{file} was changed while the orders were made; they are as it was before: run the same again",
    OrdersLine.EARLIER: "{file} is of an earlier run; --print-run makes such files anew",
    OrdersLine.STOPPED: "Stopped; what was made stays in {folder}: run the same again to make the others.",
    OrdersLine.PROGRESS: "Making",
    OrdersLine.UNIT: " orders",
    OrdersLine.STAYS: "all orders that were made are in place; run the same again to write it",
    OrdersOption.NUMBER: needs("a number from 1 to {most}"),
    OrdersOption.NO_DASK: needs("Dask, which is not installed"),
    OrdersOption.NO_SCHEDULER: needs("the address of a Dask scheduler that answers ({why})"),
}
