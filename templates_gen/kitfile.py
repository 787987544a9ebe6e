"""Kit files: found, opened and parsed here; what they say is for `layout.kit.kit` to judge."""

from __future__ import annotations

import errno
import re
import tomllib
from functools import cache
from importlib import resources
from pathlib import Path

from layout.errors import LayoutError, ascii_safe
from layout.kit.kit import Kit, read_kit
from templates_gen.fonts import metrics

LARGEST = 1_000_000
"""A larger file is no kit file, in bytes."""


class KitFileError(LayoutError):
    """A kit file that cannot be opened, read or written; the sentence names it."""


def load(path: str | Path) -> Kit:
    """The kit that the TOML file at `path` says.

    Raises KitFileError where the file cannot be read, FieldErrors (naming every key) where it cannot be used.
    """
    named, text = _named(path), _text(path)
    try:
        return read_kit(tomllib.loads(text), metrics())
    except tomllib.TOMLDecodeError as error:
        raise KitFileError(f"{named} is no kit file yet, {_syntax(error, text)}") from None
    except LayoutError:
        raise
    except (ValueError, RecursionError):  # tomllib's own words on endless numbers and brackets name no place
        raise KitFileError(f"{named} is no kit file: it holds a number or a nesting far too long to be meant") from None


def demo() -> Kit:
    """The kit that is built in: the same that a starter file says."""
    return read_kit(tomllib.loads(_starter()), metrics())


def write_starter(path: str | Path) -> None:
    """Write a commented kit file to start from. Raises KitFileError, also where anything stands at `path` already."""
    named, starter = _named(path), _starter()
    try:
        file = Path(path).open("x", encoding="utf-8", newline="\n")  # noqa: SIM115 (a file only begun is removed below)
    except FileExistsError:
        raise KitFileError(f"{named} is there already and stays as it is; choose a name that is not taken") from None
    except (OSError, ValueError) as error:
        raise KitFileError(f"{named} cannot be written: {_reason(error, 'write')}") from None
    try:
        with file:
            file.write(starter)
    except OSError as error:
        Path(path).unlink(missing_ok=True)
        raise KitFileError(f"{named} cannot be written: {_reason(error, 'write')}") from None


def _text(path: str | Path) -> str:
    try:
        with Path(path).open("rb") as file:
            data = file.read(LARGEST + 1)
    except (OSError, ValueError) as error:
        raise KitFileError(f"{_named(path)} cannot be read: {_reason(error, 'read')}") from None
    if len(data) > LARGEST:
        raise KitFileError(f"{_named(path)} is larger than {LARGEST // 1_000_000} MB, which no kit file is")
    try:
        return data.decode("utf-8-sig")  # some editors begin a file with a byte order mark
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise KitFileError(
            f"{_named(path)} is not UTF-8 text (line {line}); save it as UTF-8 in a plain text editor"
        ) from None


@cache
def _starter() -> str:
    return resources.files("templates_gen").joinpath("data/demo.toml").read_text(encoding="utf-8")


def _named(path: str | Path) -> str:
    """The file as a sentence may name it: control characters shown, not acted on."""
    return ascii_safe(str(path)) or "a file without a name"


def _syntax(error: tomllib.TOMLDecodeError, text: str) -> str:
    """What tomllib found, in a sentence that begins with its line and column."""
    what, _, place = str(error).rpartition(" (at ")
    found = re.fullmatch(r"line (\d+), column (\d+)\)", place)
    if found:
        line, column = found.groups()
    else:  # "(at end of document)"
        line, column = str(text.count("\n") + 1), str(len(text) - text.rfind("\n"))
    twice = "overwrite" in what or "twice" in what
    what = "the same key or table for a second time" if twice else f"{what[:1].lower()}{what[1:]}"
    return f'line {line}, column {column}: {ascii_safe(what)}; a line reads like outer_width = "40 cm"'


_REASONS = {
    errno.ENOENT: "there is no such file or folder",
    errno.EISDIR: "it is a folder, not a file",
    errno.ENOTDIR: "a part of that path is a file, not a folder",
    errno.ENAMETOOLONG: "the name is too long",
    errno.ENOSPC: "the disk is full",
    errno.EFBIG: "the file would be larger than this system allows",
    errno.EROFS: "that disk can only be read",
}


def _reason(error: OSError | ValueError, doing: str) -> str:
    if not isinstance(error, OSError):
        return "the name holds a character that no file name can hold"
    if error.errno in (errno.EACCES, errno.EPERM):
        return f"there is no permission to {doing} it"
    return _REASONS.get(error.errno or 0) or error.strerror or "the system gave no reason"
