"""The files to double-click that open the desk, for people without a terminal: Windows, macOS and Linux."""

from __future__ import annotations

from pathlib import Path

from templates_gen.disk.plain import write_new

FOLDER = Path(__file__).parent
NAMES = ("desk-windows.bat", "desk-macos.command", "desk-linux.sh", "desk-linux.desktop")
_RUNS = 0o755


def write_starters(folder: Path) -> tuple[Path, ...]:
    """Writes them into a folder, never over a file: where they are. OSError where one cannot be written."""
    found = []
    for name in NAMES:
        path = folder / name
        write_new(path, (FOLDER / name).read_bytes())
        path.chmod(_RUNS)
        found.append(path)
    return tuple(found)
