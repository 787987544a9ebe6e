"""Moving the finished folder of an order into its place, where an earlier one may stand, and losing nothing by it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Callable, Mapping, Set
from pathlib import Path

from layout.values.errors import shown_path
from templates_gen.disk.exchange import Exchange
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.flushed import flush_file, flush_folder
from templates_gen.disk.plain import kind_at, read_plain
from templates_gen.disk.recovery import LARGEST_FILE
from templates_gen.disk.run_folder import digest
from templates_gen.files.changes import former_manifest
from templates_gen.files.manifest import MANIFEST
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import Fault
from templates_gen.messages.roles.engine import Failed, InTheWay, Kept, Stopped

_BEFORE, _MIXED = "before", "mixed"
_ODD = {"file": InTheWay.FILE, "link": InTheWay.LINK}

Digests = Mapping[str, str]
"""The sha256 of files by their names."""


def in_the_way(place: Path) -> str:
    """Why no folder can come to `place`, one sentence; empty where nothing or a folder is there."""
    kind = kind_at(place)
    if kind in ("nothing", "folder"):
        return ""
    return message(Failed.IN_THE_WAY, what=message(_ODD.get(kind, InTheWay.OTHER)), path=shown_path(place))


class Places:
    """The folders of the orders in `target`; `hidden` is the folder in it that only runs of orders know.

    What stood in a place is moved to `hidden`/before first, and back by the next run if this one is killed just then.
    Where files are exchanged one by one, `hidden`/mixed says in which folder, so that the next run puts that right.
    """

    def __init__(self, target: Path, hidden: Path) -> None:
        self._target, self._before, self._mixed = target, hidden / _BEFORE, hidden / _MIXED
        self._moved: list[Path] = []

    def recover(self, tell: Callable[[str], None]) -> None:
        """Puts right what a killed run left: an earlier folder without a newer one goes back into its place."""
        for folder, put_right in ((self._before, self._put_back), (self._mixed, self._exchange_back)):
            if kind_at(folder) not in ("nothing", "folder"):
                raise FaultError(message(Stopped.LINK, path=shown_path(folder)))
            try:
                for each in folder.iterdir() if kind_at(folder) == "folder" else ():
                    put_right(each, tell)
            except OSError as error:
                raise fault(Fault.PUT_BACK_LEFT, folder, error, after="") from error

    def _put_back(self, earlier: Path, tell: Callable[[str], None]) -> None:
        place = self._target / earlier.name
        if kind_at(place) == "nothing":
            earlier.rename(place)
        else:
            _remove(earlier)
        if kind_at(earlier) != "nothing":
            tell(message(Kept.BEFORE, path=shown_path(earlier)))

    def _exchange_back(self, mark: Path, tell: Callable[[str], None]) -> None:
        place = self._target / mark.name
        if kind_at(place) == "folder":
            with Exchange(place, MANIFEST, tell):
                pass
        mark.rmdir()

    def put(self, staged: Path, name: str, made: Digests, known: Digests) -> tuple[str, ...]:
        """Moves a staged folder into its place; `made` are its files, `known` those that an earlier run made there.

        An earlier folder gives way where all in it is known. Else its own files stay: what a person changed gets
        another name, which is said. FaultError where it cannot be; then the earlier one is as it was.
        """
        place = self._target / name
        try:
            if why := in_the_way(place):
                raise FaultError(why)
            if kind_at(place) == "nothing":
                staged.rename(place)
                return ()
            if not _strange(place, made, known):
                self._swap(staged, place)
                return ()
            return self._exchanged(staged, place, made, known)
        except OSError as error:
            raise fault(Fault.REPLACE, place, error) from error

    def flush(self) -> None:
        """Returns when all that was put lies on the disk under its name; then earlier folders are taken away."""
        try:
            flush_folder(self._target)
        except OSError as error:
            raise fault(Fault.WRITE_INTO, self._target, error, after=message(Stopped.MADE_STAYS)) from error
        for earlier in self._moved:
            _remove(earlier)
        self._moved.clear()

    def _exchanged(self, staged: Path, place: Path, made: Digests, known: Digests) -> tuple[str, ...]:
        mark = self._mixed / place.name
        mark.mkdir(parents=True, exist_ok=True)
        notes = _exchanged(staged, place, made, known)
        mark.rmdir()
        return notes

    def _swap(self, staged: Path, place: Path) -> None:
        self._before.mkdir(exist_ok=True)
        earlier = self._before / place.name
        place.rename(earlier)
        try:
            staged.rename(place)
        except BaseException:
            earlier.rename(place)
            raise
        self._moved.append(earlier)


def _strange(place: Path, made: Digests, known: Digests) -> list[str]:
    """The names in a folder that neither an earlier run made, nor a killed one, which wrote nothing down."""
    listed = former_manifest(place).digests
    ours = {*known.items(), *((name, sha256) for name, sha256 in listed.items() if name in made)}
    names = sorted(entry.name for entry in os.scandir(place))
    return [name for name in names if not _ours(place, name, ours, of_ours=bool(listed))]


def _ours(place: Path, name: str, ours: Set[tuple[str, str]], *, of_ours: bool) -> bool:
    if name == MANIFEST and of_ours:
        return kind_at(place / name) == "file"
    return (name, digest(place / name, LARGEST_FILE) or "") in ours


def _exchanged(staged: Path, place: Path, made: Digests, known: Digests) -> tuple[str, ...]:
    """The files go into the folder that is there, all or none; what was made by hand under their names is kept."""
    strange = _strange(place, made, known)
    gone = [name for name in known if name not in made and name not in strange and kind_at(place / name) != "nothing"]
    notes = tuple(_kept(place, name) for name in strange if name in made or name == MANIFEST)
    with Exchange(place, MANIFEST) as exchange:
        for name in [*made, MANIFEST]:
            exchange.write(name, read_plain(staged / name, LARGEST_FILE))
        exchange.settle(gone)
    for name in [*made, MANIFEST]:
        flush_file(place / name)
    flush_folder(place)
    shutil.rmtree(staged, ignore_errors=True)
    return notes


def _kept(place: Path, name: str) -> str:
    """Gives what a person changed a name of its own, and says which."""
    tries = (f"{name}.earlier-{number}" for number in range(1, 10_000))
    other = next(each for each in tries if kind_at(place / each) == "nothing")
    (place / name).rename(place / other)
    return message(Kept.BY_HAND, name=shown_path(name), other=shown_path(other))


def _remove(folder: Path) -> None:
    """Takes the folder of an order away; one that holds folders of its own holds more than was made, and stays."""
    if kind_at(folder) != "folder" or any(entry.is_dir(follow_symlinks=False) for entry in os.scandir(folder)):
        return
    shutil.rmtree(folder, ignore_errors=True)
