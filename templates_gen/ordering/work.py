"""What a worker does: orders read, planned, drawn, written, read back, proven and flushed, each apart from the others.

Whatever is wrong with one order is said of that order. What is wrong with the disk stops the run.
"""

from __future__ import annotations

import errno
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from layout.values.errors import FieldError, FieldErrors, LayoutError, ascii_safe
from templates_gen.disk.faults import FaultError, fault
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Failed, Stopped
from templates_gen.ordering.job import USUAL, Job
from templates_gen.ordering.order import Order, Problem
from templates_gen.ordering.plans import plan_of, stock_of
from templates_gen.ordering.problems import read_problems
from templates_gen.ordering.result import Amount, OrderFile
from templates_gen.ordering.stage import Stage, StagedFolder

if TYPE_CHECKING:
    from layout.plan import Plan

_STOPPING = frozenset({errno.ENOSPC, errno.EDQUOT, errno.EROFS, errno.EIO})


class Done(NamedTuple):
    """What became of one order: where its proven files lie (`staged`), the sha256 of their manifest; or its problems.

    Where there is a `fault`, the run must stop, for that reason; orders after this one were not begun.
    """

    staged: str = ""
    manifest: str = ""
    files: tuple[OrderFile, ...] = ()
    amounts: tuple[Amount, ...] = ()
    ends: int = 0
    notes: tuple[str, ...] = ()
    problems: tuple[Problem, ...] = ()
    fault: str = ""

    @property
    def digests(self) -> dict[str, str]:
        """The sha256 of each file, by its name."""
        return {file.file: file.sha256 for file in self.files}


def work(job: Job, orders: tuple[Order, ...]) -> tuple[Done, ...]:
    """What becomes of each order, in order; fewer, with a fault in the last, where the disk takes no more.

    May run in any process or thread, on any machine that has the job's folder, and twice for the same orders, even at
    once: each call writes into a folder of its own.
    """
    if job.check:
        return tuple(_apart(job, order, None) for order in orders)
    done: list[Done] = []
    try:
        stage = _stage(job)
        for order in orders:
            done.append(_apart(job, order, stage))
            if done[-1].fault:
                break
        stage.flush()
    except FaultError as error:  # nothing of this call is sure to stay
        return (Done(fault=str(error)),)
    return tuple(done)


def _stage(job: Job) -> Stage:
    try:
        return Stage(Path(job.stage), Path(job.folder))
    except OSError as error:
        raise fault(Fault.WRITE_INTO, Path(job.folder), error, after=message(Stopped.MADE_STAYS)) from error


def _apart(job: Job, order: Order, stage: Stage | None) -> Done:
    """One order; its refusals and accidents are its own."""
    try:
        return _read(job, order) if stage is None else _staged(job, order, stage)
    except LayoutError as error:
        if isinstance(error, FaultError) and stops(error.__cause__):
            return Done(fault=str(error))
        return Done(problems=_problems(order, error))
    except OSError as error:
        said = fault(Fault.WRITE_INTO, Path(job.folder, order.folder), error, after=message(Stopped.MADE_STAYS))
        return Done(fault=str(said)) if stops(error) else Done(problems=(Problem("", str(said)),))
    except Exception as error:  # an accident with one order must not cost the others
        return Done(problems=(Problem("", message(Failed.ACCIDENT, error=said_of(error), advice=what_to_do())),))


def stops(error: BaseException | None) -> bool:
    """Whether a system says that no order can be written any more."""
    return isinstance(error, OSError) and error.errno in _STOPPING


def said_of(error: BaseException) -> str:
    """An unexpected error in a few words, as a programmer knows it."""
    return ascii_safe(f"{type(error).__name__}: {error}".rstrip(": "))[:200]


def _problems(order: Order, error: LayoutError) -> tuple[Problem, ...]:
    if isinstance(error, FieldError | FieldErrors):
        return read_problems(order, error)
    return (Problem("", str(error)),)


def what_to_do() -> str:
    """How a mistake of the program is reported."""
    from templates_gen.files.proven import report_advice

    return report_advice()


def _staged(job: Job, order: Order, stage: Stage) -> Done:
    folder = stage.folder(order.folder)
    try:
        return _made(job, order, folder)
    except BaseException:
        stage.drop(folder)
        raise


def _read(job: Job, order: Order) -> Done:
    return _known(plan_of(job, order))


def _made(job: Job, order: Order, folder: StagedFolder) -> Done:
    """The files of an order, each read back from disk and proven, and what is to be known of them."""
    from templates_gen.files.generate import prepared
    from templates_gen.lettering.fonts import metrics

    plan = plan_of(job, order)
    ready = prepared(plan, folder, metrics(), _names(plan, job), stock=stock_of(job))
    report = ready.report
    files = tuple(OrderFile(each.file, each.sha256, each.sheets, each.marks, each.deviation) for each in report.made)
    known = _known(plan)
    notes = (*known.notes, *map(str, report.notes))
    return known._replace(staged=str(folder.folder), manifest=ready.manifest, files=files, notes=notes)


def _known(plan: Plan) -> Done:
    """What one box takes, the ends of its warp, and what asks for care."""
    from layout.box.needs import needs
    from templates_gen.ordering.amounts import amounts_of

    return Done(amounts=amounts_of(needs(plan)), ends=plan.warp.ends, notes=tuple(map(str, plan.warnings)))


def _names(plan: Plan, job: Job) -> tuple[str, ...] | None:
    """What is made: the usual files, of which "strips" is the one file of both strips, or what the job asks for."""
    from templates_gen.inputs.families import products_of

    return products_of(plan, job.only) if job.only else tuple(f"{name}.pdf" for name in USUAL)
