"""From an order, and what a worker says of it, to its result."""

from __future__ import annotations

from templates_gen.messages.language import message
from templates_gen.messages.roles.engine import Failed
from templates_gen.ordering.engine import MOST_DEATHS, Answer
from templates_gen.ordering.fingerprint import version
from templates_gen.ordering.order import Order, Problem, Unreadable
from templates_gen.ordering.result import Result, State
from templates_gen.ordering.work import Done


def unreadable(row: Unreadable) -> Result:
    """Of a row that asks for nothing that can be made."""
    return Result(row.line, row.number, "", row.kit, 0, "failed", problems=row.problems)


def failed(order: Order, *problems: Problem) -> Result:
    """Of an order that cannot be made."""
    return Result(order.line, order.number, order.folder, order.kit, order.copies, "failed", problems=problems)


def came(order: Order, done: Done, state: State, notes: tuple[str, ...] = ()) -> Result:
    """Of an order that was made or read; `notes` are those of its place."""
    about = order.line, order.number, order.folder, order.kit, order.copies, state
    return Result(*about, done.files, notes=(*done.notes, *notes), amounts=done.amounts, ends=done.ends)


def answered(answer: Answer) -> Result:
    """Of an order that was not made: it failed, or was to be read alone."""
    order, done = answer.asked.order, answer.done
    if done is None:
        why = message(Failed.WHY, error=answer.why) if answer.why else ""
        said = message(Failed.WORKER, times=MOST_DEATHS, why=why, version=version())
        return failed(order, Problem("", said))
    return failed(order, *done.problems) if done.problems else came(order, done, "readable")
