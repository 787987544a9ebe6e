"""Flushing: what was written stays, whatever happens to the machine."""

from __future__ import annotations

import os
from pathlib import Path

_READ = os.O_RDWR if os.name == "nt" else os.O_RDONLY  # Windows flushes only what it may write


def flush_file(path: Path) -> None:
    """Returns when the bytes of a file lie on its disk; OSError where they do not, or where it is a link."""
    _flush(path, _READ | getattr(os, "O_NOFOLLOW", 0))


def flush_folder(path: Path) -> None:
    """Returns when the names in a folder, which a link may lead to, lie on its disk.

    Windows opens no folder, and writes names down by itself.
    """
    if os.name != "nt":
        _flush(path, os.O_RDONLY | os.O_DIRECTORY)


def _flush(path: Path, flags: int) -> None:
    descriptor = os.open(path, flags)
    try:
        os.fsync(descriptor)
    finally:
        os.close(descriptor)
