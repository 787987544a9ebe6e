"""The files of one folder: regular TOML files in it, read and written without following links."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from layout.kit.folder_names import LONGEST_FOLDER, folder_name
from templates_gen.desk.kits.opened import Changed, DeskError
from templates_gen.disk.faults import fault, reason
from templates_gen.disk.locks import locked
from templates_gen.disk.plain import kind_at, read_unlinked, write_new
from templates_gen.disk.replace import replace_file
from templates_gen.inputs.kit_file import FILES
from templates_gen.inputs.toml_file import LARGEST
from templates_gen.messages.roles.desk_kits import DeskKits
from templates_gen.messages.roles.disk import Fault

SUFFIX = ".toml"
MOST_FILES = 50
_MOST_LOOKED_AT = 10_000
_TRIES = 100
_PATIENCE = 5.0


class Folder:
    """The folder at `path`; what it is asked for are names of files in it, never paths."""

    def __init__(self, path: Path) -> None:
        self._path = path

    def names(self) -> tuple[tuple[str, ...], int]:
        """The first files that may be kits, by name, and how many there are more."""
        try:
            with os.scandir(self._path) as entries:
                looked_at = (entry for entry, _ in zip(entries, range(_MOST_LOOKED_AT), strict=False))
                names = [entry.name for entry in looked_at if _may_be_kit(entry)]
        except OSError as error:
            raise DeskError(DeskKits.NO_FOLDER, why=reason(error)) from error
        names.sort(key=lambda name: (name.casefold(), name))
        return tuple(names[:MOST_FILES]), max(0, len(names) - MOST_FILES)

    def read(self, name: str) -> bytes:
        """The bytes of a file, at most one more than a kit file may have; LayoutError where it cannot be read."""
        try:
            return read_unlinked(self._path / name, LARGEST)
        except (OSError, ValueError) as error:
            raise FILES.not_read(error, name) from None

    def there(self, name: str) -> bool:
        """Whether a plain file of that name is in the folder."""
        try:
            return kind_at(self._path / name) == "file"
        except OSError:
            return False

    @contextmanager
    def held(self, name: str) -> Iterator[None]:
        """Holds a file against other runs of ours while the block runs."""
        with locked(self._path / f".{name}.lock", Path(name), _PATIENCE):
            yield

    def replace(self, name: str, data: bytes) -> None:
        """Puts `data` in the place of a file that is there; Changed where it is there no more."""
        if not self.there(name):
            raise Changed(name, gone=True)
        replace_file(self._path / name, data, name)

    def write(self, name: str, data: bytes) -> None:
        """A new file of that name; FaultError where that cannot be."""
        try:
            write_new(self._path / name, data)
        except OSError as error:
            raise fault(Fault.WRITE, Path(name), error) from error

    def write_new(self, kit: str, data: bytes) -> str:
        """A new file, called after a kit, never over another one: its name."""
        stem = stem_of(kit)
        for number in range(1, _TRIES):
            end = f"-{number}" if number > 1 else ""
            name = f"{stem[: LONGEST_FOLDER - len(end)].rstrip('-')}{end}{SUFFIX}"
            try:
                write_new(self._path / name, data)
            except FileExistsError:
                continue
            except OSError as error:
                raise fault(Fault.WRITE, Path(name), error) from error
            return name
        raise DeskError(DeskKits.NO_FREE_NAME, file=f"{stem}{SUFFIX}")


def stem_of(kit: str) -> str:
    """The name of the file of a kit without its ending: letters, digits, hyphens; FieldError at "name" for no name."""
    return folder_name(kit)[:LONGEST_FOLDER].rstrip("-")


def _may_be_kit(entry: os.DirEntry[str]) -> bool:
    name = entry.name
    if name.startswith(".") or not name.lower().endswith(SUFFIX) or not name.isprintable():
        return False
    try:
        return entry.is_file(follow_symlinks=False)
    except OSError:
        return False
