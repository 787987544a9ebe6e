"""From many orders to files of a few sheets each: pieces of many orders placed together, each naming its own.

Orders come one by one and in their order; no more of them are held than the sheets of a few files show.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain, islice
from pathlib import Path
from typing import TYPE_CHECKING

from layout.values.errors import shown, shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.flushed import flush_file, flush_folder
from templates_gen.disk.plain import kind_at
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.print_runs import PrintRunNeed
from templates_gen.ordering.hidden import entered, staging
from templates_gen.ordering.job import USUAL, Job
from templates_gen.ordering.order import Order
from templates_gen.ordering.plans import plan_of, stock_of
from templates_gen.ordering.result import OrderFile
from templates_gen.ordering.stage import StagedFolder

if TYPE_CHECKING:
    from layout.drawing.metrics import FontMetrics
    from layout.kit.paper_size import PaperSize
    from layout.run.filling import Filling
    from templates_gen.files.print_run import Printable, PrintRun

OPTION = "--print-run"
"""How the number of sheets is asked for."""
MOST_SHEETS = 999
"""More sheets in one file find no room in their heads."""

_OPEN = 4
"""So many papers are filled at once; of more the one that was begun first is closed."""


class _Stack:
    """Orders on one paper that will be one file: what each prints, and how many boxes."""

    def __init__(self, first: Printable, sheets: int) -> None:
        from layout.run.bed import run_bed
        from layout.run.filling import Filling

        self._filling: Filling = Filling(run_bed(first.plan.kit.paper), sheets)
        self.prints: list[Printable] = []
        self.copies: list[int] = []

    def takes(self, each: Printable) -> bool:
        """Whether there was room for one box more."""
        if not self._filling.takes(each.box):
            return False
        if self.prints and self.prints[-1] is each:
            self.copies[-1] += 1
        else:
            self.prints.append(each)
            self.copies.append(1)
        return True


def print_runs(
    orders: Iterable[Order], job: Job, sheets: int, folder: Path, metrics: FontMetrics
) -> Iterator[OrderFile]:
    """Writes `print-run-1.pdf` and so on into `folder`, each of at most so many sheets of one paper, printed once.

    Each file is read back and proven before it is there; those of an earlier run are taken away first, since the same
    order must not lie in two. `orders` are those to be printed, which can be made; each is printed as often as its
    `copies` say. Raises OptionError where one box takes more sheets, or where the number can be none; FaultError from
    the disk; ProofError for a file that is not what it must be.
    """
    checked_sheets(sheets)
    with entered(folder) as hidden, staging(hidden) as stage:
        stacks = _stacks(orders, job, sheets, metrics)
        first = list(islice(stacks, 1))  # where this is refused, the earlier files stay
        _remove_earlier(folder)
        staged = StagedFolder(stage / "print-runs", folder)
        for number, stack in enumerate(chain(first, stacks), 1):
            yield _made(_run(number, stack, job, metrics), staged, folder)


def checked_sheets(sheets: object) -> int:
    """How many sheets a print run may have; OptionError for what is no such number."""
    if isinstance(sheets, int) and not isinstance(sheets, bool) and 1 <= sheets <= MOST_SHEETS:
        return sheets
    raise OptionError(OPTION, PrintRunNeed.SHEETS, shown(sheets), f"{OPTION} 50", least=1, most=MOST_SHEETS)


def _stacks(orders: Iterable[Order], job: Job, sheets: int, metrics: FontMetrics) -> Iterator[_Stack]:
    """Full stacks as they are closed, then those that are left, paper by paper."""
    from templates_gen.files.kept import with_stock
    from templates_gen.files.print_run import printable

    stacks: dict[PaperSize, _Stack] = {}
    for order in orders:
        plan = with_stock(plan_of(job, order), stock_of(job), metrics)
        each, paper = printable(plan, job.only or USUAL, metrics), plan.kit.paper.size
        if not each.parts and not each.pages:
            raise OptionError("--only", PrintRunNeed.NO_PAPER, shown(", ".join(job.only)), "--only strips")
        for _ in range(order.copies):
            if paper in stacks and stacks[paper].takes(each):
                continue
            if paper in stacks or len(stacks) == _OPEN:
                yield stacks.pop(paper if paper in stacks else next(iter(stacks)))
            stacks[paper] = _begun(each, sheets, order)
    yield from stacks.values()


def _begun(each: Printable, sheets: int, order: Order) -> _Stack:
    """A new stack with one box on it."""
    stack = _Stack(each, sheets)
    if stack.takes(each):
        return stack
    least = _alone(each)
    got, example = str(sheets), f"{OPTION} {least}"
    raise OptionError(OPTION, PrintRunNeed.MORE, got, example, least=least, order=shown(order.number))


def _alone(each: Printable) -> int:
    """How many sheets one box takes."""
    from layout.run.bed import run_bed
    from layout.run.filling import filled

    return each.count + sum(found.papers for found in filled([each.box], run_bed(each.plan.kit.paper)))


def _run(number: int, stack: _Stack, job: Job, metrics: FontMetrics) -> PrintRun:
    from templates_gen.files.print_run import PrintRun

    return PrintRun(number, tuple(job.only or USUAL), tuple(stack.prints), tuple(stack.copies), metrics)


def _made(run: PrintRun, staged: StagedFolder, folder: Path) -> OrderFile:
    """One file written, read back from disk, proven, flushed and moved into its place."""
    from templates_gen.files.print_run_proof import print_run_findings
    from templates_gen.files.proof import write
    from templates_gen.files.proven import judged

    output = run.output()
    data = staged.write(run.file, write(output))
    made = judged(output, data, lambda found: print_run_findings(run, output, found))
    place = folder / run.file
    try:
        flush_file(staged.folder / run.file)
        (staged.folder / run.file).replace(place)
        flush_folder(folder)
    except OSError as error:
        raise fault(Fault.REPLACE, place, error) from error
    return OrderFile(made.file, made.sha256, made.sheets, made.marks, made.deviation)


def _remove_earlier(folder: Path) -> None:
    """Takes away the print runs that lie there; FaultError where something else has such a name."""
    from templates_gen.files.print_run import is_print_run

    for place in sorted(place for place in folder.iterdir() if is_print_run(place.name)):
        if kind_at(place) != "file":
            raise FaultError(message(PrintRunNeed.NO_FILE, path=shown_path(place)))
        try:
            place.unlink()
        except OSError as error:
            raise fault(Fault.REPLACE, place, error) from error
