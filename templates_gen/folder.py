"""Putting finished files into a folder all at once: afterwards every one of them is there, or nothing has changed."""

from __future__ import annotations

import errno
import os
import shutil
from contextlib import suppress
from pathlib import Path
from typing import Self

from templates_gen.faults import fault

MANIFEST = "manifest.json"


class Exchange:
    """New files under temporary names beside their places; `settle` moves them in, leaving the block takes them away.

    Use it in a `with` block. What was there before is kept until every new file is in place.
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._tag = f"{os.getpid()}.part"
        self._made: list[str] = []
        self._made_folders: list[Path] = []

    def __enter__(self) -> Self:
        folder = self.folder
        try:
            for folder in reversed((self.folder, *self.folder.parents)):
                if not folder.is_dir():
                    folder.mkdir(exist_ok=True)
                    self._made_folders.append(folder)
        except (OSError, ValueError) as error:
            self.__exit__()
            raise fault("make the folder", folder, error) from error
        return self

    def __exit__(self, *_: object) -> None:
        for name in self._made:
            with suppress(OSError):
                self._new(name).unlink(missing_ok=True)
        for folder in reversed(self._made_folders):
            with suppress(OSError):  # one that holds anything stays
                folder.rmdir()

    def write(self, name: str, data: bytes) -> bytes:
        """Writes `data` under a temporary name, and returns what can be read back from there."""
        place = self.folder / name
        try:
            if place.is_dir():
                raise IsADirectoryError(errno.EISDIR, "")
            self._made.append(name)
            self._new(name).write_bytes(data)
            return self._new(name).read_bytes()
        except OSError as error:
            raise fault("write", place, error) from error

    def settle(self) -> None:
        """Moves every file into place, the manifest out of the way first and in last."""
        order = sorted(self._made, key=lambda name: name == MANIFEST)
        name = MANIFEST
        try:
            for name in reversed(order):
                if os.path.lexists(self.folder / name):
                    (self.folder / name).replace(self._old(name))
            for name in order:
                self._new(name).replace(self.folder / name)
        except BaseException as error:  # whatever stops it, a keystroke too: all or nothing
            stuck = self._restore(order)
            if not isinstance(error, OSError):
                raise
            after = f"what was there lies beside it as {', '.join(stuck)}" if stuck else "nothing was changed there"
            raise fault("replace", self.folder / name, error, after=after) from error
        for name in order:
            with suppress(OSError):
                self._old(name).unlink(missing_ok=True)

    def _restore(self, order: list[str]) -> list[str]:
        """Puts back what was there, the manifest last; the names of files that would not go back."""
        stuck = []
        for name in order:
            try:
                if os.path.lexists(self._old(name)):
                    self._old(name).replace(self.folder / name)
                elif not os.path.lexists(self._new(name)):  # moved into a place where nothing was
                    (self.folder / name).unlink(missing_ok=True)
            except OSError:
                stuck.append(self._old(name).name)
        return stuck

    def _new(self, name: str) -> Path:
        return self.folder / f".{name}.{self._tag}"

    def _old(self, name: str) -> Path:
        return self.folder / f".{name}.before.{self._tag}"


def replace_file(path: Path, data: bytes) -> None:
    """Puts `data` in the place of the file at `path`, which is the old one or the new one at every moment.

    Raises FaultError where that cannot be; then the old file stays.
    """
    place = path.resolve()  # a link stays one
    new = place.with_name(f".{place.name}.{os.getpid()}.part")
    try:
        place.open("r+b").close()  # one that must not be written to is not replaced either
        new.write_bytes(data)
        shutil.copymode(place, new)
        new.replace(place)
    except OSError as error:
        raise fault("replace", path, error) from error
    finally:
        with suppress(OSError):
            new.unlink(missing_ok=True)
