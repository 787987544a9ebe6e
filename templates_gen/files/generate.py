"""Making a kit's files: each is written, read back from disk, proven, and only then moved into place."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import NamedTuple, Protocol

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.plan import Plan
from templates_gen.beside import beside
from templates_gen.disk.exchange import Exchange
from templates_gen.files.changes import NOTHING, Changes, changes, former_manifest
from templates_gen.files.kept import proven_files, with_stock
from templates_gen.files.manifest import MANIFEST, Manifest
from templates_gen.files.outputs import Outputs, kept_outputs
from templates_gen.files.proof import write
from templates_gen.files.proven import Made, ProofError, proven
from templates_gen.files.record import FileRecord
from templates_gen.inputs.families import KIT
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Refused
from templates_gen.verify.whole import lacking


@dataclass(frozen=True, slots=True)
class Report:
    """What `make` did: the files, `notes` on what to mind and what was left out, `changes` in the folder.

    Of the notes, `board_notes` say what the boards take.
    """

    made: tuple[Made, ...]
    notes: tuple[str, ...]
    changes: Changes = NOTHING
    board_notes: tuple[str, ...] = ()

    @property
    def marks(self) -> int:
        """How many measured marks were proven."""
        return sum(made.marks for made in self.made)

    @property
    def cuts(self) -> int:
        """How many outlines that are cut were proven."""
        return sum(made.cuts for made in self.made)

    @property
    def deviation(self) -> float:
        """The largest deviation in mm."""
        return max((made.deviation for made in self.made), default=0.0)


def make(
    plan: Plan,
    folder: Path,
    metrics: FontMetrics,
    only: Sequence[str] | None = None,
    progress: Callable[[int, int, str], None] = lambda *_: None,
    stock: Stock | None = None,
    tell: Callable[[str], None] = lambda _: None,
) -> Report:
    """Writes every file of `plan`, or those of the products named in `only`, into `folder`, and its manifest last.

    What is cut, is cut from `stock`; without one, nothing is. Files that the manifest lists and that are no longer
    made are removed where they are as they were made. `tell` hears what was put right after a run that was stopped.

    Raises FieldError where the kit cannot be laid out, ProofError where a file did not come back right, FaultError
    where the folder cannot be written. In each case the folder is as it was.
    """
    with Exchange(folder, MANIFEST, tell) as exchange:
        ready = prepared(plan, exchange, metrics, only, progress, stock)
        exchange.settle(ready.report.changes.removed)
    return ready.report


class Written(Protocol):
    """A folder that files are written into and read back from, as an exchange does it."""

    @property
    def folder(self) -> Path:
        """Where what was made before lies."""

    def write(self, name: str, data: bytes) -> bytes:
        """Writes `data` under that name, and returns what can be read back."""


class Prepared(NamedTuple):
    """What was made and proven of a kit and waits to be moved into place, and the sha256 of its manifest."""

    report: Report
    manifest: str


def prepared(
    plan: Plan,
    exchange: Written,
    metrics: FontMetrics,
    only: Sequence[str] | None = None,
    progress: Callable[[int, int, str], None] = lambda *_: None,
    stock: Stock | None = None,
    *,
    boxed: bool = False,
) -> Prepared:
    """Every file of `plan`, or those of `only`, written into `exchange`, read back and proven, its manifest last.

    Of a kit that is `boxed`, in a run, what lies in its box is among them, and its boards are not.
    """
    plan = with_stock(plan, stock, metrics)
    wanted = kept_outputs(plan, metrics, only, stock, boxed=boxed)
    known: dict[str, _Known] = proven_files(plan, stock, metrics)
    former = former_manifest(exchange.folder)
    made, later = [], _later(wanted, known)
    with beside(partial(_ahead, plan, later), worth=bool(later)) as proven_beside:
        for done, record in enumerate(wanted.records.values()):
            progress(done, len(wanted.records), record.name)
            if later and record is later[0]:
                known |= proven_beside() or {}
            known[record.name] = _made(plan, record, exchange, known.get(record.name))
            made.append(known[record.name].made)
    if wanted.whole:
        _check_whole(wanted, made)
    entries = [each.values for each in made]
    new = Manifest(tuple(entries), True) if only is None else former.merged(entries, wanted.asked)
    new = replace(new, of_run=boxed and new.whole)
    found = changes(exchange.folder, former, new, {each.file: each.sha256 for each in made})
    written = exchange.write(MANIFEST, new.text())
    report = Report(tuple(made), wanted.notes + wanted.absent, found, wanted.board_notes)
    return Prepared(report, hashlib.sha256(written).hexdigest())


class _Known(NamedTuple):
    """Bytes that were proven, and what was found of them."""

    data: bytes
    made: Made


_FEW = 8
"""So few files are made sooner than a process is copied."""


def _later(wanted: Outputs, known: Mapping[str, _Known]) -> Sequence[FileRecord]:
    """The files to be made beside the others: those that are cut, or the second half where none is."""
    records = list(wanted.records.values())
    if len(records) < _FEW or not known.keys().isdisjoint(wanted.records):
        return ()
    cut = next((k for k, record in enumerate(records, 1) if record.product == KIT), 0)
    return records[cut:] if 0 < cut < len(records) else records[len(records) // 2 :]


def _ahead(plan: Plan, records: Sequence[FileRecord]) -> dict[str, _Known]:
    """The bytes of some files, each proven, before they are written to disk."""
    ahead = {}
    for record in records:
        output = record.draw()
        ahead[record.name] = _Known(data := write(output), proven(plan, output, data))
    return ahead


def _made(plan: Plan, record: FileRecord, exchange: Written, known: _Known | None) -> _Known:
    """One file, written, read back from disk and proven.

    Bytes that were proven before, for the same plan and stock, are not proven again if the disk gives back the same.
    """
    if known is None:
        output = record.draw()
        data = exchange.write(record.name, write(output))
    elif (data := exchange.write(record.name, known.data)) == known.data:
        return known
    else:
        output = record.draw()
    return _Known(data, proven(plan, output, data))


def _check_whole(wanted: Outputs, made: Iterable[Made]) -> None:
    """ProofError where the kit would lack a file or a part that it must have."""
    files = {each.file: each.parts for each in made}
    stock = wanted.cut.stock if wanted.cut else None
    if problems := lacking(wanted.plan.kit, files, wanted.without, stock, boxed=wanted.boxed):
        raise ProofError(message(Refused.NOT_WHOLE), list(map(str, problems)))
