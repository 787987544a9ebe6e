"""The files to double-click that open the desk, for people without a terminal: Windows, macOS and Linux."""

from __future__ import annotations

import errno
import os
from pathlib import Path

from templates_gen.disk.plain import kind_at, write_new

FOLDER = Path(__file__).parent
NAMES = ("desk-windows.bat", "desk-macos.command", "desk-linux.sh", "desk-linux.desktop")
_RUNS = 0o755


def write_starters(folder: Path) -> tuple[Path, ...]:
    """Writes them into a folder, which is made if need be, never over a file: where they are.

    FileExistsError, and nothing is written, where a file of one of these names is there; OSError where one cannot be
    written.
    """
    folder.mkdir(parents=True, exist_ok=True)
    paths = tuple(folder / name for name in NAMES)
    for path in paths:
        if kind_at(path) != "nothing":
            raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST), str(path))
    for path in paths:
        write_new(path, (FOLDER / path.name).read_bytes())
        path.chmod(_RUNS)
    return paths
