"""What a run changes in a folder: what is new there, changed, the same, and what is no longer made."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from templates_gen.disk.plain import kind_at, read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import digest
from templates_gen.files.formats import FORMATS, TABLE
from templates_gen.files.manifest import MANIFEST, Manifest, read_manifest


@dataclass(frozen=True, slots=True)
class Changes:
    """Names of files. `kept` are no longer made, but were changed since they were.

    `other_kit` stay in the manifest, though they are of another kit than what was made now.
    """

    new: tuple[str, ...] = ()
    changed: tuple[str, ...] = ()
    same: tuple[str, ...] = ()
    removed: tuple[str, ...] = ()
    kept: tuple[str, ...] = ()
    other_kit: tuple[str, ...] = ()


NOTHING = Changes()


def former_manifest(folder: Path) -> Manifest:
    """The manifest that lies in `folder`, an empty one where none of ours does."""
    try:
        return read_manifest(read_plain(folder / MANIFEST, LARGEST_FILE))
    except (OSError, ValueError):
        return Manifest((), whole=False)


def changes(folder: Path, former: Manifest, new: Manifest, made: Mapping[str, str]) -> Changes:
    """What moving the files `made` (their sha256 by name) and the manifest `new` into `folder` will change there.

    Of the files that the `former` manifest lists and the new one does not, those may be removed that are as they were
    made; nothing else ever is.
    """
    found: dict[str, list[str]] = {"new": [], "changed": [], "same": [], "removed": [], "kept": []}
    for name, sha256 in made.items():
        there = digest(folder / name, LARGEST_FILE)
        found["same" if there == sha256 else "changed" if _there(folder, name) else "new"].append(name)
    for name, sha256 in former.digests.items():
        if name not in new.digests and _could_be_ours(name) and _there(folder, name):
            found["removed" if digest(folder / name, LARGEST_FILE) == sha256 else "kept"].append(name)
    kits = {entry["file"]: entry.get("kit_sha256") for entry in new.entries}
    now = {kits[name] for name in made}
    other = tuple(name for name, kit in kits.items() if kit not in now)
    return Changes(**{kind: tuple(names) for kind, names in found.items()}, other_kit=other)


def _there(folder: Path, name: str) -> bool:
    try:
        return kind_at(folder / name) != "nothing"
    except (OSError, ValueError):
        return False


def _could_be_ours(name: str) -> bool:
    return not name.startswith(".") and name.endswith((*(form.suffix for form in FORMATS.values()), TABLE))
