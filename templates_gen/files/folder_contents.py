"""What lies in a folder of finished files: those that may be ours, and what a run left there that was stopped."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from pathlib import Path

from layout.values.errors import LayoutError, shown_path
from templates_gen.disk.exchange import LOCK
from templates_gen.disk.faults import fault
from templates_gen.disk.locks import held_elsewhere
from templates_gen.disk.plain import kind_at, read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import RunFolder
from templates_gen.files.formats import FORMATS, Format
from templates_gen.files.manifest import Manifest, product_of
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Check


def files_in(folder: Path) -> list[Path]:
    """Everything in `folder` but folders, by name; FaultError where it cannot be listed."""
    try:
        return sorted(path for path in folder.iterdir() if not is_a(Path.is_dir, path))
    except OSError as error:
        raise fault(Fault.READ, folder, error, after="") from error


def is_a(kind: Callable[[Path], bool], path: Path) -> bool:
    """Whether `path` is of that kind; what cannot be found out is not: reading it will say why."""
    try:
        return kind(path)
    except (OSError, ValueError):
        return False


def is_there(path: Path) -> bool:
    """Whether anything but a folder is at `path`, where that can be found out."""
    try:
        return kind_at(path) not in ("nothing", "folder")
    except (OSError, ValueError):
        return False


def form_of(path: Path) -> Format | None:
    """The format that the name of a file tells."""
    return next((form for form in FORMATS.values() if form.suffix == path.suffix.lower()), None)


def unlisted(inside: Sequence[Path], manifest: Manifest) -> list[Path]:
    """The files that look like ours, by name or by what they carry, and that `manifest` does not list."""
    others = (path for path in inside if path.name not in manifest.digests and not path.name.startswith("."))
    return [path for path in others if product_of(path.name) or _carries_inputs(path)]


def _carries_inputs(path: Path) -> bool:
    """Whether it is made of a kit or of a run."""
    form = form_of(path)
    try:
        found = json.loads(form.read(read_plain(path, LARGEST_FILE)).about.inputs) if form else {}
        return "kit" in found or "run" in found
    except (OSError, ValueError, TypeError, LayoutError):
        return False


def left_by_runs(folder: Path) -> tuple[str, ...]:
    """What is to say of hidden folders in which a run keeps what was there before."""
    try:
        runs = RunFolder.all_in(folder)
    except OSError as error:
        raise fault(Fault.READ, folder, error, after="") from error
    if not runs:
        return ()
    if held_elsewhere(folder / LOCK):
        return (message(Check.BUSY),)
    names = listed([shown_path(run.path.relative_to(folder)) for run in runs])
    return (message(Check.STOPPED, names=names),)
