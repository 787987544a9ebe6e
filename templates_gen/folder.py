"""Putting finished files into a folder all at once: afterwards every one of them is there, or nothing has changed."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path
from typing import Self

from templates_gen.faults import FaultError, fault

MANIFEST = "manifest.json"


class Exchange:
    """New files under temporary names beside their places; `settle` moves them in, leaving the block takes them away.

    Use it in a `with` block. What was there before is kept until every new file is in place.
    """

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._tag = f"{os.getpid()}.part"
        self._made: list[str] = []
        self._made_folder = False

    def __enter__(self) -> Self:
        try:
            if not self.folder.is_dir():
                self.folder.mkdir(parents=True)
                self._made_folder = True
        except OSError as error:
            raise fault("make the folder", self.folder, error) from error
        return self

    def __exit__(self, *_: object) -> None:
        for name in self._made:
            self._new(name).unlink(missing_ok=True)
        if self._made_folder and not any(self.folder.iterdir()):
            self.folder.rmdir()

    def write(self, name: str, data: bytes) -> bytes:
        """Writes `data` under a temporary name, and returns what can be read back from there."""
        place = self.folder / name
        if place.is_dir():
            raise FaultError(f"could not write {place}: a folder of that name is in the way; nothing was changed there")
        self._made.append(name)
        try:
            self._new(name).write_bytes(data)
            return self._new(name).read_bytes()
        except OSError as error:
            raise fault("write", place, error) from error

    def settle(self) -> None:
        """Moves every file into place, the manifest out of the way first and in last."""
        order = sorted(self._made, key=lambda name: name == MANIFEST)
        kept: list[str] = []
        moved: list[str] = []
        name = MANIFEST
        try:
            for name in reversed(order):
                if (self.folder / name).exists():
                    (self.folder / name).replace(self._old(name))
                    kept.append(name)
            for name in order:
                self._new(name).replace(self.folder / name)
                moved.append(name)
        except OSError as error:
            self._restore(moved, kept)
            raise fault("replace", self.folder / name, error) from error
        self._drop(kept)

    def _restore(self, moved: Iterable[str], kept: Iterable[str]) -> None:
        for name in moved:
            (self.folder / name).unlink(missing_ok=True)
        for name in kept:
            self._old(name).replace(self.folder / name)

    def _drop(self, kept: Iterable[str]) -> None:
        for name in kept:
            self._old(name).unlink(missing_ok=True)

    def _new(self, name: str) -> Path:
        return self.folder / f".{name}.{self._tag}"

    def _old(self, name: str) -> Path:
        return self.folder / f".{name}.before.{self._tag}"
