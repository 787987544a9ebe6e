"""Reading finished files back: each against the inputs that it carries, or against a kit that is given."""

from __future__ import annotations

import hashlib
import json
import stat
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from layout.cutting.stock import Stock
from layout.cutting.stock_values import without_money
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import cuts_on, marks_on
from layout.errors import LayoutError, shown, shown_path, shown_sentences
from layout.kit.kit import Kit
from layout.plan import Plan, plan
from templates_gen.carried import Carried, carried
from templates_gen.cut_outputs import cut_products_of
from templates_gen.document import Document, ReadError
from templates_gen.faults import FaultError, fault
from templates_gen.folder import MANIFEST
from templates_gen.formats import FORMATS, Format
from templates_gen.output import Output
from templates_gen.outputs import Outputs
from templates_gen.proof import findings
from templates_gen.verify.compare import Findings
from templates_gen.verify.whole import lacking

LARGEST_FILE = 64 * 1024 * 1024
"""Larger files are refused unread: ours are a thousand times smaller."""


@dataclass(frozen=True, slots=True)
class Count:
    """How much is on the sheets of one file."""

    sheets: int
    size: tuple[float, float]
    marks: int
    cuts: int = 0


@dataclass(frozen=True, slots=True)
class Checked:
    """One file: what was asked, what was found (None where that could not be told), how far off, what is wrong."""

    file: str
    asked: Count | None
    found: Count | None
    deviation: float
    problems: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Against:
    """The kit and the stock that files are checked against; None for what each file carries itself."""

    kit: Kit | None = None
    stock: Stock | None = None

    def unlike(self, said: Carried) -> Findings:
        """Whether a file carries another kit or stock than these."""
        kit = self.kit is not None and said.kit != self.kit
        stock = self.stock is not None and said.stock is not None and said.stock != without_money(self.stock)
        unlike = [what for what, differs in (("kit", kit), ("stock", stock)) if differs]
        return Findings(0.0, tuple(f"carries the inputs of another {what} than the one given" for what in unlike))


def check(paths: Iterable[Path], against: Against, metrics: FontMetrics) -> list[Checked]:
    """Every file of `paths`, folders by their manifest. FaultError where a path cannot be read at all."""
    checked: list[Checked] = []
    for path in paths:
        checked += (
            _folder(path, against, metrics) if _is(Path.is_dir, path) else [_file(path, _bytes(path), against, metrics)]
        )
    return checked


def _folder(folder: Path, against: Against, metrics: FontMetrics) -> list[Checked]:
    try:
        digests, made = _listing(folder)
    except ReadError as error:
        found = [path for path in _inside(folder) if _format(path) and _is(Path.is_file, path)]
        whole = Checked(_said(folder), None, None, 0.0, (str(error),))
        return [whole, *(_file(path, _bytes(path), against, metrics) for path in found)]
    checked = [_listed(folder / name, digest, against, metrics) for name, digest in digests.items()]
    problems = _lacking(folder, made, against, metrics) if made else ()
    return [Checked(_said(folder), None, None, 0.0, problems), *checked] if problems else checked


def _lacking(
    folder: Path, made: Mapping[str, Sequence[str]], against: Against, metrics: FontMetrics
) -> tuple[str, ...]:
    """What a folder that was made whole lacks of the kit given, or of the one that its first file carries."""
    first, cut = (_first(folder, names, metrics) for names in (made, filter(cut_products_of, made)))
    kit, stock = against.kit or (first and first.kit), cut and cut.stock
    if kit is None:
        return ()
    try:
        without = Outputs(plan(kit), metrics, stock=stock).without
    except LayoutError:
        return ()  # it is told of the files themselves
    return lacking(kit, made, without, stock)


def _first(folder: Path, names: Iterable[str], metrics: FontMetrics) -> Carried | None:
    """What the first of these files that can be read carries; what is wrong with others is told of each itself."""
    for path in (folder / name for name in names):
        try:
            if form := _format(path):
                return carried(form.read(_bytes(path)).about.inputs, metrics)
        except LayoutError:
            continue
    return None


def _inside(folder: Path) -> list[Path]:
    try:
        return sorted(folder.iterdir())
    except OSError as error:
        raise fault("read", folder, error, after="") from error


def _is(kind: Callable[[Path], bool], path: Path) -> bool:
    """Whether `path` is of that kind; what cannot be told is not: reading it will say why."""
    try:
        return kind(path)
    except (OSError, ValueError):
        return False


def _listing(folder: Path) -> tuple[Mapping[str, str], Mapping[str, Sequence[str]]]:
    """The sha256 of the manifest's files, and their parts if they were made as a whole kit (else nothing).

    ReadError if there is no manifest of ours.
    """
    path = folder / MANIFEST
    if not _is(Path.is_file, path):
        raise ReadError(f"the folder is incomplete: it holds no {MANIFEST}, which is written last")
    try:
        told = json.loads(_bytes(path))
        listed = {str(entry["file"]): str(entry["sha256"]) for entry in told["files"]}
        made = {
            str(entry["file"]): list(map(str, entry["parts"])) for entry in told["files"] if told.get("whole") is True
        }
    except (ValueError, TypeError, KeyError, RecursionError) as error:
        raise ReadError(f"{MANIFEST} is not one that was written here") from error
    if not listed or any(Path(name).name != name for name in listed):
        raise ReadError(f"{MANIFEST} is not one that was written here")
    return listed, made


def _listed(path: Path, digest: str, against: Against, metrics: FontMetrics) -> Checked:
    if not _is(Path.is_file, path):
        return Checked(_said(path), None, None, 0.0, (f"missing, though {MANIFEST} lists it",))
    data = _bytes(path)
    result = _file(path, data, against, metrics, path.name)
    if hashlib.sha256(data).hexdigest() == digest:
        return result
    problems = (*result.problems, f"is not the file that {MANIFEST} lists")
    return Checked(result.file, result.asked, result.found, result.deviation, problems)


def _format(path: Path) -> Format | None:
    return next((form for form in FORMATS.values() if form.suffix == path.suffix.lower()), None)


def _bytes(path: Path) -> bytes:
    try:
        status = path.stat()
        ours = stat.S_ISREG(status.st_mode) and status.st_size <= LARGEST_FILE
        data = path.read_bytes() if ours or stat.S_ISDIR(status.st_mode) else b""
    except (OSError, ValueError) as error:
        raise fault("read", path, error, after="") from error
    if not ours:
        what = f"larger than {LARGEST_FILE // 2**20} MB" if stat.S_ISREG(status.st_mode) else "a device, not a file"
        raise FaultError(f"could not read {_said(path)}: it is {what}")
    return data


def _said(path: Path) -> str:
    return shown_path(path)


def _file(path: Path, data: bytes, against: Against, metrics: FontMetrics, listed: str = "") -> Checked:
    """One file; one that is `listed` must be the file of that name, wherever else it may be called as one likes."""
    found: Document | None = None
    asked: Output | None = None
    try:
        form = _format(path)
        if form is None:
            endings = ", ".join(form.suffix for form in FORMATS.values())
            got = shown(path.suffix) if path.suffix else "no ending"
            raise ReadError(f"needs a file that ends in one of {endings}, got {got}")
        found = form.read(data)
        said = carried(found.about.inputs, metrics)
        if listed and said.file != listed:
            raise ReadError(f"was made as {shown(said.file)}, not as {shown(listed)}")
        plans = plan(against.kit or said.kit)
        asked = _outputs(plans, said, against, metrics).output(said.file)
        result = findings(plans, asked, found) + against.unlike(said)
    except LayoutError as error:
        problems = tuple(shown_sentences(str(error)).split("\n"))
        return Checked(_said(path), _counted(asked), _counted(found), 0.0, problems)
    return Checked(_said(path), _counted(asked), _counted(found), result.deviation, result.problems)


def _outputs(plans: Plan, said: Carried, against: Against, metrics: FontMetrics) -> Outputs:
    """Where the file is found again; of what is cut part by part, no more than the products that it may be of."""
    if said.stock is None:
        return Outputs(plans, metrics)
    return Outputs(plans, metrics, cut_products_of(said.file) or None, against.stock or said.stock)


def _counted(source: Output | Document | None) -> Count | None:
    if source is None or not source.sheets:
        return None
    first = source.sheets[0]
    size = (round(first.width, 4), round(first.height, 4))
    return Count(len(source.sheets), size, sum(map(marks_on, source.sheets)), sum(map(cuts_on, source.sheets)))
