"""Reading back the folder of a run: its tables, and whether the folders of its kits are those that it lists."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

from layout.drawing.metrics import FontMetrics
from layout.values.errors import LayoutError, shown_path
from templates_gen.disk.plain import kind_at, read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import digest
from templates_gen.files.against import Against
from templates_gen.files.checked import Checked
from templates_gen.files.manifest import MANIFEST, Manifest
from templates_gen.files.run_outputs import Rows, RunOutputs
from templates_gen.files.run_plans import plans_of
from templates_gen.files.tables import TO_BUY
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.files import Check
from templates_gen.messages.roles.run import RunCheck
from templates_gen.readers.csv import read
from templates_gen.verify.finding import Findings

Proofs = Mapping[str, Callable[[Rows], Findings]]


def lacking_files(manifest: Manifest) -> tuple[str, ...]:
    """What the folder of a whole run must list beside its kits and does not."""
    wanted = (TO_BUY,) if manifest.whole else ()
    return tuple(message(RunCheck.FILE_MISSING, file=name) for name in wanted if name not in manifest.digests)


def proofs_of(manifest: Manifest, against: Against, metrics: FontMetrics) -> Proofs:
    """What proves each table of a run from the range that is given; nothing without one, or where it has other kits."""
    if against.found is None:
        return {}
    copies = {entry["name"]: entry["copies"] for entry in manifest.folders}
    kits = tuple(replace(kit, copies=copies[kit.kit.name]) for kit in against.found.kits if kit.kit.name in copies)
    if len(kits) < len(copies):
        return {}
    every = against.found
    try:
        plans = dict(zip((kit.number for kit in every.kits), plans_of(every), strict=True))
    except LayoutError:
        return {}  # it is said of the kits themselves
    outputs = RunOutputs(replace(every, kits=kits), [plans[kit.number] for kit in kits], metrics, against.stock)
    return {table.record.name: table.prove for table in outputs.tables}


def checked_table(path: Path, sha256: str, proofs: Proofs) -> Checked:
    """One table: whether it is the file that was listed, can be read, and holds what it must."""
    said = shown_path(path)
    if kind_at(path) == "nothing":
        return Checked(said, None, None, 0.0, (message(Check.MISSING, manifest=MANIFEST),))
    try:
        data = read_plain(path, LARGEST_FILE)
    except (OSError, ValueError) as error:
        from templates_gen.disk.faults import fault

        return Checked(said, None, None, 0.0, (str(fault(Fault.READ, path, error, after="")),), unread=True)
    problems: tuple[str, ...] = ()
    rows = ""
    try:
        found = read(data)
        prove = proofs.get(path.name)
        problems = prove(found).sentences if prove else ()
        rows = message(RunCheck.ROWS if prove else RunCheck.ROWS_READ, number=len(found))
    except LayoutError as error:
        problems = (str(error),)
    if hashlib.sha256(data).hexdigest() != sha256:
        problems += (message(Check.OTHER_FILE, manifest=MANIFEST),)
    return Checked(said, None, None, 0.0, tuple(problems), rows=rows)


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
