"""Reading and writing plain files: a pipe is never waited for, a link planted at a new name is never followed."""

from __future__ import annotations

import errno
import os
import secrets
import stat
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO

from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Reason

_READ = os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_CLOEXEC", 0) | getattr(os, "O_BINARY", 0)
_WRITE = (
    os.O_WRONLY
    | os.O_CREAT
    | os.O_EXCL
    | getattr(os, "O_NOFOLLOW", 0)
    | getattr(os, "O_CLOEXEC", 0)
    | getattr(os, "O_BINARY", 0)
)


def read_plain(path: Path, most: int) -> bytes:
    """The bytes of the file at `path`, at most `most` and one more.

    OSError where it cannot be read; a folder, a pipe or a device is refused at once.
    """
    with open_plain(path) as file:
        return file.read(most + 1)


@contextmanager
def open_plain(path: Path) -> Iterator[BinaryIO]:
    """The file at `path`, open for reading while the block runs; OSError as for `read_plain`."""
    refuse_odd(path.stat())  # before it is opened: opening a pipe can wake the program at its other end
    with os.fdopen(os.open(path, _READ), "rb") as file:
        refuse_odd(os.fstat(file.fileno()))
        yield file


def read_unlinked(path: Path, most: int) -> bytes:
    """The same of a file that is itself at `path`: OSError for a link, wherever it leads."""
    if stat.S_ISLNK(path.lstat().st_mode):
        raise OSError(errno.ELOOP, os.strerror(errno.ELOOP))
    refuse_odd(path.lstat())
    with os.fdopen(os.open(path, _READ | getattr(os, "O_NOFOLLOW", 0)), "rb") as file:
        refuse_odd(os.fstat(file.fileno()))
        return file.read(most + 1)


def refuse_odd(status: os.stat_result) -> None:
    """OSError for what is no plain file: a folder, a pipe, a device."""
    if stat.S_ISDIR(status.st_mode):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR))
    if not stat.S_ISREG(status.st_mode):
        raise OSError(errno.ENODEV, message(Reason.DEVICE))


def write_new(path: Path, data: bytes) -> None:
    """Writes `data` to a new file at `path`; OSError if anything is there already, be it a link."""
    write_parts(path, (data,))


def write_parts(path: Path, parts: Iterable[bytes]) -> None:
    """The same part by part, for a file that is too long to be held."""
    with os.fdopen(os.open(path, _WRITE, 0o666), "wb") as file:
        file.writelines(parts)


def token() -> str:
    """16 characters for a name that nobody can guess."""
    return secrets.token_hex(8)


def kind_at(path: Path) -> str:
    """What is at `path` itself, a link not followed: "nothing", "file", "link", "folder" or "other" (pipes, devices).

    OSError where that cannot be found out.
    """
    try:
        mode = path.lstat().st_mode
    except FileNotFoundError:
        return "nothing"
    tests = {"file": stat.S_ISREG, "link": stat.S_ISLNK, "folder": stat.S_ISDIR}
    return next((name for name, is_so in tests.items() if is_so(mode)), "other")
