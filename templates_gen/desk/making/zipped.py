"""A folder of made files as one zip: the same bytes for the same files, whenever it is written."""

from __future__ import annotations

import zipfile
from pathlib import Path

_FIRST_DATE = (1980, 1, 1, 0, 0, 0)
_PLAIN_FILE, _UNIX = 0o100644 << 16, 3


def write_zip(folder: Path, place: Path) -> None:
    """Writes a zip of all that is in `folder`, by name, with one date and no path outside of it."""
    files = sorted(path for path in folder.rglob("*") if path.is_file() and not path.is_symlink())
    with zipfile.ZipFile(place, "x") as archive:
        for path in files:
            name = path.relative_to(folder)
            if any(part.startswith(".") for part in name.parts):
                continue
            entry = zipfile.ZipInfo(name.as_posix(), _FIRST_DATE)
            entry.external_attr, entry.create_system = _PLAIN_FILE, _UNIX
            entry.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(entry, path.read_bytes(), compresslevel=6)
