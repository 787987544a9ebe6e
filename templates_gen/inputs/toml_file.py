"""TOML files that people write: opened, read and parsed, and begun from a starter. Knows no key of any of them."""

from __future__ import annotations

import errno
import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from layout.values.errors import LayoutError, shown_path
from templates_gen.data import text_of
from templates_gen.disk.faults import reason
from templates_gen.disk.plain import read_plain
from templates_gen.inputs.toml_slip import said, slip_in
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File

LARGEST = 200_000
"""A larger file is not one that a person wrote, in bytes: some twenty times the starters."""

LONGEST, MOST_POINTS = 2_000, 100
"""Characters, and points, in a line: tomllib needs time and memory by the square of the parts of a dotted key."""


@dataclass(frozen=True, slots=True)
class TomlFiles:
    """One kind of file: what sentences call it, a line that is right, its starter, and the error it is refused with."""

    kind: File
    line: str
    starter: str
    refusal: type[LayoutError]

    def values(self, path: str | Path) -> dict[str, object]:
        """The plain nested values that the file at `path` holds; `refusal` where it cannot be read or parsed."""
        return self.read(path)[0]

    def read(self, path: str | Path) -> tuple[dict[str, object], str]:
        """The same, and the text of the file."""
        return self.parsed(self._data(path), named_file(path))

    def parsed(self, data: bytes, named: str) -> tuple[dict[str, object], str]:
        """The same of bytes that are called `named`; `refusal` where they cannot be read or parsed."""
        text = self._text(data, named)
        try:
            return tomllib.loads(text), text
        except tomllib.TOMLDecodeError as error:
            slip = said(slip_in(text, error), text, self.line)
            raise self.refusal(message(File.NOT_YET, file=named, kind=message(self.kind), slip=slip)) from None
        except (ValueError, RecursionError):  # tomllib's own words on endless numbers and brackets name no place
            raise self.refusal(
                message(File.NOT_ONE, file=named, kind=message(self.kind), reason=message(File.TOO_DEEP))
            ) from None

    def starter_text(self) -> str:
        """The packed starter file."""
        return _packed(self.starter)

    def write_starter(self, path: str | Path) -> None:
        """Write the starter to `path`; `refusal`, also where anything stands there already."""
        named = named_file(path)
        try:
            file = Path(path).open("x", encoding="utf-8", newline="\n")  # noqa: SIM115 (what is only begun is removed)
        except FileExistsError:
            raise self.refusal(message(File.THERE, file=named)) from None
        except (OSError, ValueError) as error:
            raise self.refusal(
                message(File.NOT_WRITTEN, file=named, reason=why_not(error, File.MAY_NOT_WRITE))
            ) from None
        try:
            with file:
                file.write(self.starter_text())
        except OSError as error:
            Path(path).unlink(missing_ok=True)
            raise self.refusal(
                message(File.NOT_WRITTEN, file=named, reason=why_not(error, File.MAY_NOT_WRITE))
            ) from None

    def _data(self, path: str | Path) -> bytes:
        try:
            return read_plain(Path(path), LARGEST)
        except (OSError, ValueError) as error:
            raise self.not_read(error, named_file(path)) from None

    def not_read(self, error: OSError | ValueError, named: str) -> LayoutError:
        """The refusal of a file that the system could not read."""
        return self.refusal(message(File.NOT_READ, file=named, reason=why_not(error, File.MAY_NOT_READ)))

    def _text(self, data: bytes, named: str) -> str:
        if len(data) > LARGEST:
            raise self.refusal(message(File.TOO_LARGE, file=named, size=LARGEST // 1000, kind=message(self.kind)))
        try:
            text = data.decode("utf-8-sig")  # some editors begin a file with a byte order mark
        except UnicodeDecodeError as error:
            line = data.count(b"\n", 0, error.start) + 1
            raise self.refusal(message(File.NOT_TEXT, file=named, line=line)) from None
        for number, words in enumerate(text.split("\n"), 1):
            if (len(words) > LONGEST or words.count(".") > MOST_POINTS) and not words.lstrip().startswith("#"):
                limits = message(File.LINE_LIMITS, most=LONGEST, points=MOST_POINTS)
                raise self.refusal(
                    message(File.LONG_LINE, file=named, kind=message(self.kind), line=number, limits=limits)
                )
        return text


@cache
def _packed(name: str) -> str:
    return text_of(name)


def named_file(path: str | Path) -> str:
    """The file as a sentence may name it: control characters shown, not acted on."""
    return shown_path(path) or message(File.UNNAMED)


_REASONS = {
    errno.ENOENT: File.NO_SUCH,
    errno.EISDIR: File.FOLDER,
}


def why_not(error: OSError | ValueError, forbidden: File) -> str:
    """Why it cannot be read or written; `forbidden` says that there is no permission to."""
    number = error.errno if isinstance(error, OSError) else None
    if number in (errno.EACCES, errno.EPERM):
        return message(forbidden)
    return message(_REASONS[number]) if number in _REASONS else reason(error)
