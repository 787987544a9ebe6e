"""The process that makes files for the desk: it can be stopped at any time, and the page stays quick meanwhile.

It reads what is asked from its input, makes it into the folder that it is given, and says in its output how far it is.
"""

from __future__ import annotations

import os
import pickle
import sys
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING, BinaryIO

from layout.values.errors import LayoutError
from templates_gen.desk.making.asked import Asked
from templates_gen.desk.making.outcome import Proof, Step, refusal

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock

_BEHIND = 5
"""How far it stands behind the page where both want the processor."""
Progress = Callable[[int, int, str], None]


def main() -> None:
    """Reads one job, does it and ends."""
    from templates_gen.beside import allow

    allow()
    if hasattr(os, "nice"):
        os.nice(_BEHIND)
    asked, folder = pickle.load(sys.stdin.buffer)  # noqa: S301 (from the desk that started this process)
    out = sys.stdout.buffer
    sys.stdout = sys.stderr
    try:
        _say(out, made(asked, Path(folder), lambda *step: _say(out, Step(*step))))
    except LayoutError as error:
        _say(out, refusal(error))


def _say(out: BinaryIO, said: object) -> None:
    data = pickle.dumps(said)
    out.write(len(data).to_bytes(4, "big") + data)
    out.flush()


def made(asked: Asked, folder: Path, progress: Progress) -> Proof:
    """Makes and proves what is asked into `folder`; LayoutError where nothing was made."""
    from templates_gen.files.run_plans import plans_of
    from templates_gen.inputs.range_file import range_from
    from templates_gen.lettering.fonts import metrics

    found, stock = range_from(asked.values), _stock(asked)
    if found.alone and not found.copies_said:
        from templates_gen.files.generate import make
        from templates_gen.inputs.families import products_of

        (plan,) = plans_of(found)
        only = products_of(plan, asked.only)
        report = make(plan, folder, metrics(), only, progress, stock)
        notes = (*plan.warnings, *(note for note in report.notes if note not in report.board_notes))
        return Proof(len(report.made), report.marks, report.cuts, report.deviation, _plain(notes))
    from templates_gen.files.run import make_run
    from templates_gen.screen.run_lines import mind_lines

    run = make_run(found, folder, metrics(), asked.only, progress, stock)
    return Proof(run.files, run.marks, run.cuts, run.deviation, _plain((*mind_lines(run), *run.left_out)))


def _plain(notes: Iterable[str]) -> tuple[str, ...]:
    """Sentences that can be carried to another process, once each."""
    return tuple(dict.fromkeys(notes))


def _stock(asked: Asked) -> Stock:
    from layout.cutting.stock.stock_values import read_stock
    from templates_gen.inputs.stock_file import built_in
    from templates_gen.lettering.fonts import metrics

    return built_in() if asked.stock is None else read_stock(asked.stock, metrics())


if __name__ == "__main__":
    main()
