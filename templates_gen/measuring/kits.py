"""What `--kit` may name, and the files that it stands for: a kit, a range, a folder of made files, or PDF files."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Any

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.plan import Plan
from layout.values.errors import LayoutError, shown_path
from templates_gen.codes.digest import digest_of
from templates_gen.disk.faults import fault
from templates_gen.disk.plain import read_plain
from templates_gen.document import ReadError
from templates_gen.files.embedded import Embedded, embedded_inputs
from templates_gen.files.folder_contents import is_a
from templates_gen.files.formats import FORMATS
from templates_gen.files.gauge import gauge_of
from templates_gen.files.kept import planned, with_stock
from templates_gen.files.output import Output
from templates_gen.files.outputs import kept_outputs
from templates_gen.files.run_outputs import RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.inputs import range_file, stock_file
from templates_gen.inputs.range_file import Range
from templates_gen.measuring.check_sheet import carried_check
from templates_gen.measuring.known_sheets import PAPER, Source, sources_of
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Carried
from templates_gen.messages.roles.measure import Refused
from templates_gen.readers.pdf import LARGEST_FILE

_MOST_FILES = 2000
_SUFFIX = FORMATS[PAPER].suffix


def sources_at(path: Path, metrics: FontMetrics) -> Iterator[Source]:
    """Every file on paper that `path` stands for, as it would be made now.

    Raises what reading and planning a range raises, FaultError where a file or folder cannot be read, ReadError for a
    PDF file that is not ours.
    """
    if is_a(Path.is_dir, path):
        return _in_folder(path, metrics)
    if path.suffix.lower() == _SUFFIX:
        try:
            return iter([_of_file(path, metrics)])
        except ReadError as error:
            raise ReadError(message(Refused.ON_SCAN, scan=shown_path(path), why=error)) from error
    kits = range_file.load_range(path)
    return sources_in(kits, plans_of(kits), metrics, stock_file.built_in())


def sources_in(kits: Range, plans: Sequence[Plan], metrics: FontMetrics, stock: Stock) -> Iterator[Source]:
    """Every file on paper of the kits of a range, by their plans, then those that are of all of them."""
    for plan in plans:
        yield from sources_of(plan, metrics, stock)
    if kits.alone and not kits.copies_said:
        return
    judged = [with_stock(plan, stock, metrics) for plan in plans]
    for file in RunOutputs(kits, judged, metrics, stock).files:
        if file.name.endswith(_SUFFIX):
            output = file.draw()
            yield Source(digest_of(output.about.inputs), file.name, kits.name, partial(_drawn, output))


def _drawn(output: Output) -> Output:
    return output


def _in_folder(folder: Path, metrics: FontMetrics) -> Iterator[Source]:
    """The PDF files of ours in a folder and those below it."""
    try:
        paths = sorted(path for path in folder.rglob(f"*{_SUFFIX}") if path.is_file())[:_MOST_FILES]
    except OSError as error:
        raise fault(Fault.READ, folder, error, after="") from error
    for path in paths:
        try:
            yield _of_file(path, metrics)
        except LayoutError:
            continue  # a PDF that is not ours may lie beside them


def _of_file(path: Path, metrics: FontMetrics) -> Source:
    """A made file, by the inputs that it carries."""
    try:
        data = read_plain(path, LARGEST_FILE)
    except (OSError, ValueError) as error:
        raise fault(Fault.READ, path, error, after="") from error
    inputs = FORMATS[PAPER].read(data).about.inputs
    try:
        return _carried(inputs, path, metrics)
    except (KeyError, TypeError, AttributeError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error


def _carried(inputs: str, path: Path, metrics: FontMetrics) -> Source:
    values: dict[str, Any] = json.loads(inputs)
    named = Source(digest_of(inputs), str(values["file"]), shown_path(path), corrected="printer" in values)
    if "kit" in values:
        said = embedded_inputs(inputs, metrics)
        plan = replace(planned(said.kit), refused=said.without)
        return named._replace(kit=said.kit.name, draw=partial(_of_kit, said, metrics), plan=plan)
    if "check" in values:
        return carried_check(inputs, metrics)._replace(corrected=named.corrected)
    if "gauge" in values:
        return named._replace(draw=partial(gauge_of, inputs, metrics))
    return named._replace(kit=str(values["run"]["name"])) if "run" in values else named


def _of_kit(said: Embedded, metrics: FontMetrics) -> Output:
    """The file as it is drawn for the kit that it carries."""
    plan = replace(planned(said.kit), refused=said.without)
    for boxed in (True, False):
        records = kept_outputs(plan, metrics, None, said.stock, boxed=boxed).records
        if said.file in records:
            return records[said.file].draw()
    raise ReadError(said.file)
