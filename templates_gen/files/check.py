"""Reading finished files back: each against the inputs that it carries, or against a kit that is given."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import replace
from functools import partial
from pathlib import Path

from layout.drawing.metrics import FontMetrics
from layout.plan import Plan
from layout.values.errors import LayoutError, shown, shown_path, shown_sentences
from templates_gen.beside import beside
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.plain import read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.document import Document, ReadError
from templates_gen.files.against import Against
from templates_gen.files.check_alone import check_alone
from templates_gen.files.check_run import alone_of_run, checked_in_run, lacking_files, outputs_of, wrong_folder
from templates_gen.files.check_zip import check_zip, is_zip
from templates_gen.files.checked import Checked, counted
from templates_gen.files.cut_records import cut_products_of
from templates_gen.files.embedded import Embedded, embedded_inputs
from templates_gen.files.folder_contents import files_in, form_of, is_a, is_there, left_by_runs, unlisted
from templates_gen.files.formats import FORMATS, TABLE
from templates_gen.files.kept import planned
from templates_gen.files.manifest import MANIFEST, Manifest, product_of, read_manifest
from templates_gen.files.output import Output
from templates_gen.files.outputs import Outputs, kept_outputs
from templates_gen.files.printer_check import FILE as CHECK_FILE
from templates_gen.files.proof import findings
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Check
from templates_gen.verify.finding import Finding
from templates_gen.verify.whole import lacking


def check(paths: Iterable[Path], against: Against, metrics: FontMetrics) -> list[Checked]:
    """Every file of `paths`, folders and zips by their manifest; what cannot be read is the problem of its file."""
    checked: list[Checked] = []
    for path in paths:
        try:
            checked += _at(path, against, metrics)
        except FaultError as error:
            checked.append(_unread(path, error))
    return checked


def _at(path: Path, against: Against, metrics: FontMetrics) -> list[Checked]:
    if is_a(Path.is_dir, path):
        return _folder(path, against, metrics)
    if is_zip(path):
        return check_zip(path, lambda folder: _folder(folder, against, metrics))
    return [_single(path, against, metrics)]


def _single(path: Path, against: Against, metrics: FontMetrics) -> Checked:
    try:
        data = _bytes(path)
        found = _file(path, data, against, metrics)
        unreadable = found.found is None and path.suffix != TABLE
        if found.asked or unreadable:
            return found
        return alone_of_run(path, data, against, metrics) or check_alone(path, data, metrics) or found
    except FaultError as error:
        return _unread(path, error)


def _unread(path: Path, error: FaultError) -> Checked:
    return Checked(_said(path), None, None, 0.0, (str(error),), unread=True)


def _folder(folder: Path, against: Against, metrics: FontMetrics) -> list[Checked]:
    inside = files_in(folder)
    stopped = left_by_runs(folder)
    try:
        manifest = _manifest(folder)
    except ReadError as error:
        found = [path for path in inside if form_of(path)]
        if not stopped and [path.name for path in found] == [CHECK_FILE]:  # which is made alone, without a list
            return [_single(found[0], against, metrics)]
        whole = Checked(_said(folder), None, None, 0.0, (str(error), *stopped))
        return [whole, *(_single(path, against, metrics) for path in found)]
    if manifest.folders:
        return _run(folder, manifest, against, metrics)
    if manifest.whole:
        cut = _first(folder, filter(cut_products_of, manifest.parts), metrics)
        against = replace(against, cut_from=cut and cut.stock)
    checked = _all_listed(folder, manifest, against, metrics)
    strays = [
        Checked(_said(path), None, None, 0.0, (message(Check.UNLISTED, manifest=MANIFEST),))
        for path in unlisted(inside, manifest)
    ]
    lacking = _lacking(folder, manifest, against, metrics) if manifest.whole else ()
    mixed = () if len(manifest.kits) == 1 else (message(Check.MIXED),)
    problems = (*stopped, *map(str, lacking), *mixed)
    if problems:
        checked.insert(0, Checked(_said(folder), None, None, 0.0, problems))
    return [*checked, *strays]


_FEW = 8
"""So few files are checked sooner than a process is copied."""


def _all_listed(folder: Path, manifest: Manifest, against: Against, metrics: FontMetrics) -> list[Checked]:
    """Every file that the manifest lists, the second half of many beside the first."""

    def each(files: Iterable[tuple[str, str]]) -> list[Checked]:
        return [_listed(folder / name, digest, against, metrics) for name, digest in files]

    files = list(manifest.digests.items())
    half = len(files) // 2
    with beside(partial(each, files[half:]), worth=len(files) >= _FEW) as others:
        return [*each(files[:half]), *(others() or each(files[half:]))]


def _run(folder: Path, manifest: Manifest, against: Against, metrics: FontMetrics) -> list[Checked]:
    """The folder of a run: its own files, then those of each kit by the kit's own manifest."""
    outputs = outputs_of(folder, manifest, against, metrics)
    problems = (*left_by_runs(folder), *lacking_files(manifest, outputs))
    checked = [Checked(_said(folder), None, None, 0.0, problems)] if problems else []
    checked += [checked_in_run(folder / name, digest, outputs, metrics) for name, digest in manifest.digests.items()]
    strays = unlisted(files_in(folder), manifest)
    checked += [Checked(_said(path), None, None, 0.0, (message(Check.UNLISTED, manifest=MANIFEST),)) for path in strays]
    for entry in manifest.folders:
        place = folder / entry["folder"]
        wrong = wrong_folder(place, entry["sha256"])
        checked += [Checked(_said(place), None, None, 0.0, (wrong,))] if wrong else []
        if is_a(Path.is_dir, place):
            checked += _folder(place, against.of(entry["name"]), metrics)
    return checked


def _lacking(folder: Path, manifest: Manifest, against: Against, metrics: FontMetrics) -> tuple[Finding, ...]:
    """What a folder that was made whole lacks of the kit given, or of the one that its first file carries."""
    made = manifest.parts
    first = _first(folder, made, metrics)
    kit, stock = against.kit or (first and first.kit), against.cut_from
    if kit is None:
        return ()
    try:
        without = kept_outputs(planned(kit), metrics, stock=stock).without
    except LayoutError:
        return ()  # it is said of the files themselves
    return lacking(kit, made, without, stock, boxed=manifest.of_run)


def _first(folder: Path, names: Iterable[str], metrics: FontMetrics) -> Embedded | None:
    """What the first of these files that can be read carries; what is wrong with others is said of each itself."""
    for path in (folder / name for name in names):
        try:
            if form := form_of(path):
                return embedded_inputs(form.read(_bytes(path)).about.inputs, metrics)
        except LayoutError:
            continue
    return None


def _manifest(folder: Path) -> Manifest:
    """ReadError if there is no manifest of ours."""
    path = folder / MANIFEST
    if not is_a(Path.is_file, path):
        raise ReadError(message(Check.NO_MANIFEST, manifest=MANIFEST))
    try:
        return read_manifest(_bytes(path))
    except FaultError:
        raise
    except ValueError as error:
        raise ReadError(message(Check.FOREIGN_MANIFEST, manifest=MANIFEST)) from error


def _listed(path: Path, digest: str, against: Against, metrics: FontMetrics) -> Checked:
    if not is_there(path):
        return Checked(_said(path), None, None, 0.0, (message(Check.MISSING, manifest=MANIFEST),))
    try:
        data = _bytes(path)
    except FaultError as error:
        return _unread(path, error)
    result = _file(path, data, against, metrics, path.name)
    if hashlib.sha256(data).hexdigest() == digest:
        return result
    problems = (*result.problems, message(Check.OTHER_FILE, manifest=MANIFEST))
    return Checked(result.file, result.asked, result.found, result.deviation, problems)


def _bytes(path: Path) -> bytes:
    try:
        data = read_plain(path, LARGEST_FILE)
    except (OSError, ValueError) as error:
        raise fault(Fault.READ, path, error, after="") from error
    if len(data) > LARGEST_FILE:
        raise FaultError(message(Check.TOO_LARGE, file=_said(path), size=LARGEST_FILE // 2**20))
    return data


def _said(path: Path) -> str:
    return shown_path(path)


def _file(path: Path, data: bytes, against: Against, metrics: FontMetrics, name: str = "") -> Checked:
    """One file; one that a manifest lists under `name` must be that file, any other may have any name."""
    found: Document | None = None
    asked: Output | None = None
    try:
        form = form_of(path)
        if form is None:
            endings = listed([form.suffix for form in FORMATS.values()])
            got = shown(path.suffix) if path.suffix else message(Check.NO_ENDING)
            raise ReadError(message(Check.ENDING, endings=endings, got=got))
        found = form.read(data)
        said = embedded_inputs(found.about.inputs, metrics)
        against = against.of(said.kit.name) if against.found else against
        if name and said.file != name:
            raise ReadError(message(Check.OTHER_NAME, made=shown(said.file), listed=shown(name)))
        plan = against.plan_of(said, metrics)
        asked = _outputs(plan, said, against, metrics).output(said.file)
        result = findings(plan, asked, found) + against.unlike(said)
    except LayoutError as error:
        problems = tuple(shown_sentences(str(error)).split("\n"))
        return Checked(_said(path), counted(asked), counted(found), 0.0, problems)
    return Checked(_said(path), counted(asked), counted(found), result.deviation, result.sentences)


def _outputs(plan: Plan, said: Embedded, against: Against, metrics: FontMetrics) -> Outputs:
    """Where the file is found again, no more than the product that it is of; all where its name is none of ours."""
    product = product_of(said.file)
    stock = (against.stock or said.stock) if said.stock is not None else None
    return kept_outputs(plan, metrics, (product,) if product else None, stock)


__all__ = ["Against", "check"]
