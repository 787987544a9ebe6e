"""Making a run: every kit of a range in a folder of its own, and what is of all of them beside these folders."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.plan import Plan
from layout.values.errors import FieldError, shown
from templates_gen.disk.exchange import Exchange
from templates_gen.disk.together import Together
from templates_gen.document import Document, ReadError
from templates_gen.files.changes import Changes, changes, former_manifest
from templates_gen.files.for_printer import with_printer
from templates_gen.files.generate import Report, prepared
from templates_gen.files.kept import with_stock
from templates_gen.files.manifest import MANIFEST, Entry, Manifest
from templates_gen.files.proof import write
from templates_gen.files.proven import Made, ProofError, judged
from templates_gen.files.run_outputs import Planned, RunFile, RunOutputs, RunTable
from templates_gen.files.run_plans import named, plans_of
from templates_gen.inputs.families import OF_BOARDS, products_of
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left, Refused
from templates_gen.messages.roles.inputs import Only
from templates_gen.readers.csv import read
from templates_gen.verify.finding import Findings
from templates_gen.verify.run.money import prove_no_money
from templates_gen.writers import csv


@dataclass(frozen=True, slots=True)
class KitMade:
    """What was made of one kit of a run, in the `folder` of that name."""

    kit: RangeKit
    plan: Plan
    report: Report

    @property
    def folder(self) -> str:
        """The name of its folder."""
        return self.kit.folder


@dataclass(frozen=True, slots=True)
class RunReport:
    """What `make_run` did: each kit; files and `tables` that are of all of them, these as the manifest lists them.

    `others` are folders of an earlier run that this one has no part in; they stay as they are. `left_out` says why
    files of the run are not made: the paper of the first kit cannot hold them.
    """

    kits: tuple[KitMade, ...]
    made: tuple[Made, ...]
    tables: tuple[Entry, ...]
    changes: Changes
    outputs: RunOutputs
    others: tuple[str, ...] = ()
    left_out: tuple[str, ...] = ()

    @property
    def every(self) -> tuple[Made, ...]:
        """All files that hold sheets."""
        return (*(made for each in self.kits for made in each.report.made), *self.made)

    @property
    def files(self) -> int:
        """How many files were made and proven, tables too."""
        return len(self.every) + len(self.tables)

    @property
    def marks(self) -> int:
        """How many measured marks were proven."""
        return sum(made.marks for made in self.every)

    @property
    def cuts(self) -> int:
        """How many outlines that are cut were proven."""
        return sum(made.cuts for made in self.every)

    @property
    def deviation(self) -> float:
        """The largest deviation in mm."""
        return max((made.deviation for made in self.every), default=0.0)


Progress = Callable[[int, int, str], None]


def make_run(
    found: Range,
    folder: Path,
    metrics: FontMetrics,
    only: Sequence[str] = (),
    progress: Progress = lambda *_: None,
    stock: Stock | None = None,
    tell: Callable[[str], None] = lambda _: None,
    printer: Printer | None = None,
) -> RunReport:
    """Writes every file of every kit, or those that `only` names, and the files of the run, into `folder`.

    All are proven before any is moved into place; the folders of the kits change first, `folder` itself last. What is
    of all kits is made where nothing is named, and printed sheets are corrected for a `printer`. Errors as
    `generate.make`; refusals say which kit they are of.
    """
    plans = [with_stock(with_printer(plan, printer), stock, metrics) for plan in plans_of(found)]
    outputs = RunOutputs(found, plans, metrics, stock)
    if not only:
        _ = outputs.singly  # what is refused of any kit is said of all, before anything is made
    names = {each.folder: products for each, products in zip(outputs.kits, _asked(plans, only), strict=True)}
    with Together(folder, list(names), MANIFEST, tell) as together:
        together.begin()
        made: list[KitMade] = []
        digests: dict[str, str] = {}
        for each, step in zip(outputs.kits, _steps(progress, outputs.kits), strict=True):
            exchange = together.inside[each.folder]
            with named(found, each.plan.kit.name):
                ready = prepared(each.plan, exchange, metrics, names[each.folder], step, stock, boxed=True)
            made.append(KitMade(each.kit, each.plan, ready.report))
            digests[each.folder] = ready.manifest
        former = former_manifest(folder)
        tables = () if only else tuple(_made_table(table, together.root) for table in outputs.tables)
        currency = found.shop.currency
        tried = [] if only else [_made_file(file, together.root, currency) for file in outputs.files]
        sheets = tuple(each for each in tried if isinstance(each, Made))
        entries = former.entries if only else (*(each.values for each in sheets), *tables)
        new = Manifest(entries, not only, tuple(_folder_entry(each, digests) for each in outputs.kits))
        changed = changes(folder, former, new, {each["file"]: each["sha256"] for each in entries if not only})
        together.root.write(MANIFEST, new.text())
        together.settle({each.folder: each.report.changes.removed for each in made}, changed.removed)
    others = tuple(str(entry["folder"]) for entry in former.folders if entry["folder"] not in names)
    left_out = tuple(each for each in tried if isinstance(each, str))
    return RunReport(tuple(made), sheets, tables, changed, outputs, others, left_out)


def _asked(plans: Sequence[Plan], only: Sequence[str]) -> Iterator[tuple[str, ...] | None]:
    """The products of each kit that `only` names; OptionError where it names boards, or what no kit has."""
    for name in only:
        if name.strip().lower().partition(".")[0] in OF_BOARDS:
            raise OptionError("--only", Only.OF_RUN, shown(name), "--only comb")
    refused: dict[str, list[OptionError]] = {name: [] for name in only}
    known = []
    for plan in plans:
        own: list[str] = []
        for name in only:
            try:
                own += products_of(plan, [name]) or ()
            except OptionError as error:
                refused[name].append(error)
        known.append(tuple(own))
    for errors in refused.values():
        if len(errors) == len(plans):
            raise errors[0]
    return iter(known if only else [None] * len(plans))


def _steps(progress: Progress, kits: Sequence[Planned]) -> Iterator[Progress]:
    """For each kit what hears of its files, with the kit's folder before their names."""

    def inside(folder: str) -> Progress:
        return lambda done, total, name: progress(done, total, f"{folder}/{name}")

    return (inside(each.folder) for each in kits)


def _made_file(file: RunFile, exchange: Exchange, currency: str) -> Made | str:
    """A file of the whole run written, read back from disk and proven; or why there is none.

    None but the maker's may hold a sum of money, whatever its own proof passes.
    """
    try:
        output = file.draw()
    except FieldError as error:
        return message(Left.NOT_MADE, name=file.name, why=error)

    def judge(found: Document) -> Findings:
        return file.prove(output, found) + prove_no_money(file.name, found.sheets, found.about.inputs, currency)

    return judged(output, exchange.write(file.name, write(output)), judge)


def _made_table(table: RunTable, exchange: Exchange) -> Entry:
    """A table written, read back from disk and proven: what the manifest says of it."""
    name = table.record.name
    data = exchange.write(name, csv.write(table.record.rows))
    what = message(Refused.NOT_KEPT, file=name)
    try:
        result = table.prove(read(data))
    except ReadError as error:
        raise ProofError(what, [str(error)]) from error
    if not result.sound:
        raise ProofError(what, result.sentences)
    rows = len(table.record.rows)
    return {"file": name, "sha256": hashlib.sha256(data).hexdigest(), "rows": rows, "parts": []}


def _folder_entry(each: Planned, digests: dict[str, str]) -> dict[str, object]:
    """What the manifest says of a kit's folder."""
    name, copies = each.kit.kit.name, each.kit.copies
    return {"folder": each.folder, "name": name, "copies": copies, "sha256": digests[each.folder]}
