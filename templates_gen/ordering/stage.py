"""Where a worker writes: a folder of this one attempt, which nothing else writes into, flushed as a whole."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from pathlib import Path

from templates_gen.disk.faults import fault
from templates_gen.disk.flushed import flush_file, flush_folder
from templates_gen.disk.plain import read_plain, token, write_new
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Stopped


class Stage:
    """The folder of one attempt at a few orders, below the stage of the run, which must be there.

    A run that was ended takes its stage away: a worker that outlives it can then make nothing any more.
    """

    def __init__(self, run: Path, target: Path) -> None:
        self.path, self._target = run / token(), target
        self._folders: list[Path] = []
        self.path.mkdir()

    def folder(self, name: str) -> StagedFolder:
        """A new folder for the order that will lie under that name in the target."""
        folder = StagedFolder(self.path / name, self._target / name)
        self._folders.append(folder.folder)
        return folder

    def drop(self, folder: StagedFolder) -> None:
        """Takes a folder away that is no use."""
        self._folders.remove(folder.folder)
        shutil.rmtree(folder.folder, ignore_errors=True)

    def flush(self) -> None:
        """Returns when every file and every name lies on the disk; FaultError where they do not."""
        for path in self._to_flush():
            try:
                flush_folder(path) if path.is_dir() else flush_file(path)
            except OSError as error:
                raise fault(Fault.WRITE, self._target, error, after=message(Stopped.MADE_STAYS)) from error

    def _to_flush(self) -> Iterator[Path]:
        for folder in self._folders:
            yield from folder.iterdir()
            yield folder
        yield self.path


class StagedFolder:
    """The files of one order until all are proven; they are written and read as an exchange does it."""

    def __init__(self, folder: Path, place: Path) -> None:
        self.folder, self._place = folder, place
        folder.mkdir()

    def write(self, name: str, data: bytes) -> bytes:
        """Writes `data` under that name, and returns what can be read back; FaultError where that cannot be."""
        try:
            write_new(self.folder / name, data)
            return read_plain(self.folder / name, LARGEST_FILE)
        except OSError as error:
            raise fault(Fault.WRITE, self._place / name, error, after=message(Stopped.MADE_STAYS)) from error
