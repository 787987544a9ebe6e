"""Reading back the folder of a run: its tables, and whether the folders of its kits are those that it lists."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.values.errors import LayoutError, shown_path, shown_sentences
from templates_gen.disk.faults import fault
from templates_gen.disk.plain import kind_at, read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import digest
from templates_gen.document import Document, ReadError
from templates_gen.files.against import Against
from templates_gen.files.checked import Checked, counted
from templates_gen.files.embedded import embedded_run
from templates_gen.files.folder_contents import form_of, is_there
from templates_gen.files.formats import TABLE
from templates_gen.files.kept import kept_reading, with_stock
from templates_gen.files.manifest import MANIFEST, Manifest
from templates_gen.files.output import Output
from templates_gen.files.overview_table import OVERVIEW
from templates_gen.files.print_run import PrintRun
from templates_gen.files.print_run_proof import carried_print_run, print_run_findings
from templates_gen.files.run_about import MAKERS
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.files.tables import TO_BUY
from templates_gen.inputs.range_file import Range
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Check, Refused
from templates_gen.messages.roles.proof import Compared
from templates_gen.messages.roles.run import RunCheck
from templates_gen.readers.csv import read
from templates_gen.verify.whole_boards import boards_missing
from templates_gen.verify.whole_cut import FOR_CUTTERS


def lacking_files(manifest: Manifest, outputs: RunOutputs | None) -> tuple[str, ...]:
    """What the folder of a whole run must list beside its kits and does not; its boards by the range, if that is known.

    Without it by what the boards say of how many they are.
    """
    listed = manifest.digests
    if not manifest.whole:
        return ()
    boards = outputs.boards.board_names if outputs and outputs.boards else ()
    lacking = [name for name in (OVERVIEW, TO_BUY, *boards) if name not in listed]
    lacking += [] if boards else boards_missing(listed, FOR_CUTTERS)
    return tuple(message(RunCheck.FILE_MISSING, file=name) for name in lacking)


def outputs_of(folder: Path, manifest: Manifest, against: Against, metrics: FontMetrics) -> RunOutputs | None:
    """What a run must hold beside its kits, from the range that is given, for the kits and copies that it lists.

    None without a range, or where that has other kits.
    """
    if against.found is None:
        return None
    copies = {entry["name"]: entry["copies"] for entry in manifest.folders}
    return _asked(against.found, copies, against.stock or _carried(folder, manifest, metrics), metrics)


def _asked(every: Range, copies: Mapping[str, int], stock: Stock | None, metrics: FontMetrics) -> RunOutputs | None:
    """The run of a range with so many boxes of each of these kits; None where it has other kits."""
    kits = tuple(replace(kit, copies=copies[kit.kit.name]) for kit in every.kits if kit.kit.name in copies)
    if len(kits) < len(copies):
        return None
    try:
        plans = dict(zip((kit.number for kit in every.kits), plans_of(every), strict=True))
    except LayoutError:
        return None  # it is said of the kits themselves
    judged = [with_stock(plans[kit.number], stock, metrics) for kit in kits]
    return RunOutputs(replace(every, kits=kits), judged, metrics, stock)


def alone_of_run(path: Path, data: bytes, against: Against, metrics: FontMetrics) -> Checked | None:
    """A file that is of a whole run, without its folder: against the range given, else what it carries; else None.

    A table carries nothing: whether it can be read is all that is found out of it.
    """
    if path.suffix == TABLE:
        return _table(path, data, None)
    try:
        form = form_of(path)
        run = embedded_run(form.read(data).about.inputs, metrics) if form else None
    except LayoutError:
        return None
    if run is None:
        return None
    outputs = None
    if against.found:
        copies = {kit.kit.name: kit.copies for kit in run.kits}
        outputs = _asked(against.found, copies, against.stock or run.stock, metrics)
        if outputs is None:
            return Checked(shown_path(path), None, None, 0.0, (message(Compared.OTHER_KIT),))
    return _sheets(path, data, outputs, metrics, run.file)


def _carried(folder: Path, manifest: Manifest, metrics: FontMetrics) -> Stock | None:
    """The stock that a file of the run carries, with its prices where the maker's do; None where none can be read."""
    for name in sorted(manifest.digests, key=lambda name: not name.startswith(MAKERS)):
        path = folder / name
        try:
            form = form_of(path)
            found = embedded_run(form.read(read_plain(path, LARGEST_FILE)).about.inputs, metrics) if form else None
        except (OSError, ValueError):
            continue
        if found and found.stock:
            return found.stock
    return None


def checked_in_run(path: Path, sha256: str, outputs: RunOutputs | None, metrics: FontMetrics) -> Checked:
    """One file that is of a whole run: against the range in `outputs`, else against what it carries itself."""
    said = shown_path(path)
    if not is_there(path):
        return Checked(said, None, None, 0.0, (message(Check.MISSING, manifest=MANIFEST),))
    try:
        data = read_plain(path, LARGEST_FILE)
    except (OSError, ValueError) as error:
        return Checked(said, None, None, 0.0, (str(fault(Fault.READ, path, error, after="")),), unread=True)
    found = _table(path, data, outputs) if path.suffix == TABLE else _sheets(path, data, outputs, metrics, path.name)
    if hashlib.sha256(data).hexdigest() == sha256:
        return found
    return replace(found, problems=(*found.problems, message(Check.OTHER_FILE, manifest=MANIFEST)))


def _sheets(path: Path, data: bytes, outputs: RunOutputs | None, metrics: FontMetrics, name: str) -> Checked:
    """A file of sheets, drawn again by its name and proven."""
    asked: Output | None = None
    found: Document | None = None
    problems: tuple[str, ...]
    deviation = 0.0
    try:
        form = form_of(path)
        if form is None:
            raise ReadError(message(RunCheck.NO_FILE))
        found = form.read(data)
        if run := carried_print_run(found, metrics):
            return _print_run(path, run, found)
        carried = embedded_run(found.about.inputs, metrics).printer
        alike = outputs.for_printer(carried) if outputs else _outputs_in(found, metrics)
        file = next((each for each in alike.files if each.name == name), None)
        if file is None:
            raise ReadError(message(RunCheck.NO_FILE))
        asked = file.draw()
        result = file.prove(asked, found)
        other = () if found.about == asked.about else (message(Refused.OTHER_INPUTS),)
        problems, deviation = (*result.sentences, *other), result.deviation
    except LayoutError as error:
        problems = tuple(shown_sentences(str(error)).split("\n"))
    return Checked(shown_path(path), counted(asked), counted(found), deviation, problems)


def _print_run(path: Path, run: PrintRun, found: Document) -> Checked:
    """A print run over many orders, drawn again from the orders that it carries, and proven."""
    asked = run.output()
    result = print_run_findings(run, asked, found)
    other = () if found.about == asked.about else (message(Refused.OTHER_INPUTS),)
    problems = (*result.sentences, *other)
    return Checked(shown_path(path), counted(asked), counted(found), result.deviation, problems)


def _outputs_in(found: Document, metrics: FontMetrics) -> RunOutputs:
    """What the run must hold of which a file carries the kits."""
    run = embedded_run(found.about.inputs, metrics)

    def outputs(*_: object) -> RunOutputs:
        kits = Range(run.name, run.kits, run.kits[0].shop, copies_said=True, shared=run.shared)
        every = zip(plans_of(kits), run.without, strict=True)
        plans = [replace(plan, refused=without, printer=run.printer) for plan, without in every]
        return RunOutputs(kits, plans, metrics, run.stock)

    alike = {key: value for key, value in json.loads(found.about.inputs).items() if key != "file"}
    return kept_reading("run", alike, metrics, outputs)


def _table(path: Path, data: bytes, outputs: RunOutputs | None) -> Checked:
    """A table: whether it can be read, and whether it holds what the range asks for."""
    proofs = {each.record.name: each.prove for each in outputs.tables} if outputs else {}
    problems: tuple[str, ...] = ()
    rows = ""
    try:
        found = read(data)
        prove = proofs.get(path.name)
        problems = prove(found).sentences if prove else ()
        rows = message(RunCheck.ROWS if prove else RunCheck.ROWS_READ, number=len(found))
    except LayoutError as error:
        problems = (str(error),)
    return Checked(shown_path(path), None, None, 0.0, tuple(problems), rows=rows)


def wrong_folder(place: Path, sha256: str) -> str:
    """Why the folder of a kit is not the one that the run lists; nothing where it is."""
    try:
        there = kind_at(place)
    except (OSError, ValueError):
        there = "nothing"
    if there != "folder":
        return message(RunCheck.NO_FOLDER, manifest=MANIFEST)
    found = digest(place / MANIFEST, LARGEST_FILE)
    if found is not None and found != sha256:
        return message(RunCheck.OTHER_MANIFEST, manifest=MANIFEST)
    return ""
