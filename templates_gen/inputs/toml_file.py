"""TOML files that people write: opened, read and parsed, and begun from a starter. Knows no key of any of them."""

from __future__ import annotations

import errno
import tomllib
from dataclasses import dataclass
from functools import cache
from importlib import resources
from pathlib import Path

from layout.values.errors import LayoutError, shown_path
from templates_gen.disk.plain import read_plain
from templates_gen.inputs.toml_slip import said, slip_in

LARGEST = 200_000
"""A larger file is not one that a person wrote, in bytes: some twenty times the starters."""

LONGEST, MOST_POINTS = 2_000, 100
"""Characters, and points, in a line: tomllib needs time and memory by the square of the parts of a dotted key."""


@dataclass(frozen=True, slots=True)
class TomlFiles:
    """One kind of file: what sentences call it, a line that is right, its starter, and the error it is refused with."""

    kind: str
    line: str
    starter: str
    refusal: type[LayoutError]

    def values(self, path: str | Path) -> dict[str, object]:
        """The plain nested values that the file at `path` holds; `refusal` where it cannot be read or parsed."""
        named, text = named_file(path), self._text(path)
        try:
            return tomllib.loads(text)
        except tomllib.TOMLDecodeError as error:
            slip = said(slip_in(text, error), text, self.line)
            raise self.refusal(f"{named} is no {self.kind} yet, {slip}") from None
        except (ValueError, RecursionError):  # tomllib's own words on endless numbers and brackets name no place
            reason = "it holds a number or a nesting far too long to be meant"
            raise self.refusal(f"{named} is no {self.kind}: {reason}") from None

    def starter_text(self) -> str:
        """The packed starter file."""
        return _packed(self.starter)

    def write_starter(self, path: str | Path) -> None:
        """Write the starter to `path`; `refusal`, also where anything stands there already."""
        named = named_file(path)
        try:
            file = Path(path).open("x", encoding="utf-8", newline="\n")  # noqa: SIM115 (what is only begun is removed)
        except FileExistsError:
            raise self.refusal(
                f"{named} is there already and stays as it is; choose a name that is not taken"
            ) from None
        except (OSError, ValueError) as error:
            raise self.refusal(f"{named} cannot be written: {_reason(error, 'write')}") from None
        try:
            with file:
                file.write(self.starter_text())
        except OSError as error:
            Path(path).unlink(missing_ok=True)
            raise self.refusal(f"{named} cannot be written: {_reason(error, 'write')}") from None

    def _text(self, path: str | Path) -> str:
        named = named_file(path)
        try:
            data = read_plain(Path(path), LARGEST)
        except (OSError, ValueError) as error:
            raise self.refusal(f"{named} cannot be read: {_reason(error, 'read')}") from None
        if len(data) > LARGEST:
            raise self.refusal(f"{named} is larger than {LARGEST // 1000} kB, which no {self.kind} is")
        try:
            text = data.decode("utf-8-sig")  # some editors begin a file with a byte order mark
        except UnicodeDecodeError as error:
            line = data.count(b"\n", 0, error.start) + 1
            raise self.refusal(
                f"{named} is not UTF-8 text (line {line}); save it as UTF-8 in a plain text editor"
            ) from None
        for number, words in enumerate(text.split("\n"), 1):
            if (len(words) > LONGEST or words.count(".") > MOST_POINTS) and not words.lstrip().startswith("#"):
                limits = f"more than {LONGEST:,} characters or {MOST_POINTS} points"
                raise self.refusal(
                    f"{named} is no {self.kind}: line {number} has {limits}; write long lists on several lines"
                )
        return text


@cache
def _packed(name: str) -> str:
    return resources.files("templates_gen").joinpath(f"data/{name}").read_text(encoding="utf-8")


def named_file(path: str | Path) -> str:
    """The file as a sentence may name it: control characters shown, not acted on."""
    return shown_path(path) or "a file without a name"


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
