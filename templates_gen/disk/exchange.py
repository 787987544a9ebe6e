"""Putting finished files into a folder all at once: afterwards every one of them is there, or nothing has changed."""

from __future__ import annotations

import errno
import hashlib
from collections.abc import Callable, Iterable, Sequence
from contextlib import ExitStack, suppress
from pathlib import Path
from typing import Self

from layout.values.errors import shown_path
from templates_gen.disk.faults import FaultError, fault
from templates_gen.disk.locks import locked
from templates_gen.disk.plain import kind_at, read_plain, write_new
from templates_gen.disk.recovery import LARGEST_FILE, recover, undo
from templates_gen.disk.run_folder import Move, RunFolder, digest
from templates_gen.disk.stopping import Stops, stoppable
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.disk import After, Fault, Reason

LOCK = ".templates-gen.lock"
"""The lock of a folder, in that folder."""
PATIENCE = 5.0
"""Seconds that a run waits for another one in the same folder."""
_TRIES = 10


class Exchange:
    """New files in a hidden folder beside their places; `settle` moves them in, leaving the block takes them away.

    Use it in a `with` block, which holds the folder's lock and first puts right what a stopped run left there; `tell`
    hears of that. `last` names the file that goes out of its place first and comes in last. What was there before is
    kept until every new file is in place.
    """

    def __init__(self, folder: Path, last: str, tell: Callable[[str], None] = lambda _: None) -> None:
        self.folder, self._last, self._tell = folder, last, tell
        self._digests: dict[str, str] = {}
        self._made_folders: list[Path] = []
        self._stack = ExitStack()
        self._stuck = False
        self._at = last
        self._waiting = False

    def __enter__(self) -> Self:
        self._stops: Stops = self._stack.enter_context(stoppable())
        self._stops.hold()  # until the block has begun, so that leaving it tidies up whatever stops it
        self._waiting = True
        try:
            self._stack.callback(self._remove_folders)
            self._enter_folder()
            recover(self.folder, self._tell)
            self._run = self._made_run()
        except BaseException:
            self.__exit__()
            raise
        return self

    def __exit__(self, *_: object) -> None:
        with self._stops.held():
            if self._waiting:
                self._stops.let_go()
            self._stack.close()

    def _enter_folder(self) -> None:
        """Makes the folder where there is none, and locks it; one that a run takes away meanwhile is made again."""
        for tries_left in reversed(range(_TRIES)):
            self._make_folders()
            try:
                lock = locked(self.folder / LOCK, self.folder, PATIENCE, self._stops.heed)
                self._stack.enter_context(lock)
            except FaultError as error:
                if not tries_left or not isinstance(error.__cause__, FileNotFoundError):
                    raise
            else:
                return

    def _make_folders(self) -> None:
        for folder in reversed((self.folder, *self.folder.parents)):
            try:
                if not folder.is_dir():
                    folder.mkdir(exist_ok=True)
                    self._made_folders.append(folder)
            except (OSError, ValueError) as error:
                raise fault(Fault.MAKE_FOLDER, folder, error) from error

    def _made_run(self) -> RunFolder:
        try:
            run = RunFolder.made(self.folder)
        except OSError as error:
            raise fault(Fault.WRITE_INTO, self.folder, error) from error
        self._stack.callback(self._remove_run)
        return run

    def _remove_run(self) -> None:
        if not self._stuck:
            self._run.remove()

    def _remove_folders(self) -> None:
        for folder in reversed(self._made_folders):
            with suppress(OSError):  # one that holds anything stays
                folder.rmdir()

    def begin(self) -> None:
        """From now on a stop is heeded at once; the first `write` begins too."""
        self._heed()

    def _heed(self) -> None:
        if self._waiting:
            self._waiting = False
            self._stops.let_go()
        self._stops.heed()

    def write(self, name: str, data: bytes) -> bytes:
        """Writes `data` under that name in the hidden folder, and returns what can be read back from there."""
        self._heed()
        try:
            _refuse_odd(self.folder / name)
            write_new(self._run.new(name), data)
            self._digests[name] = hashlib.sha256(data).hexdigest()
            return read_plain(self._run.new(name), LARGEST_FILE)
        except OSError as error:
            raise fault(Fault.WRITE, self.folder / name, error) from error

    def settle(self, gone: Iterable[str] = ()) -> None:
        """Moves every file into place, and those that are `gone` out of theirs; all of that or nothing."""
        self._heed()
        with self._stops.held():
            moves = self._moves(gone)
            try:
                self._run.write_journal(moves)
                self._move(moves)
            except BaseException as error:  # whatever stops it: all or nothing
                if not self._all_in_place(moves):
                    self._put_back(moves, error)
            self._stops.finished = True

    def _moves(self, gone: Iterable[str]) -> list[Move]:
        names = sorted(self._digests, key=lambda name: name == self._last)
        wanted: dict[str, str | None] = {**dict.fromkeys(gone), **{name: self._digests[name] for name in names}}
        try:
            return [Move(name, sha256, kind_at(self.folder / name) != "nothing") for name, sha256 in wanted.items()]
        except OSError as error:
            raise fault(Fault.READ, self.folder, error) from error

    def _move(self, moves: Sequence[Move]) -> None:
        for move in reversed(moves):
            self._stops.heed()
            self._at = move.name
            if move.was:
                _refuse_odd(self.folder / move.name)
                self._run.place(move.name).replace(self._run.before(move.name))
        for move in moves:
            self._stops.heed()
            self._at = move.name
            if move.sha256 is not None:
                self._run.new(move.name).replace(self._run.place(move.name))

    def _all_in_place(self, moves: Sequence[Move]) -> bool:
        """Some disks report a failure of what they have done."""
        last = moves[-1]
        return self._run.in_place(moves) and digest(self._run.place(last.name), LARGEST_FILE) == last.sha256

    def _put_back(self, moves: Sequence[Move], error: BaseException) -> None:
        """Raises `error` again after all was put back; names what does not go back, and leaves it hidden."""
        undone = undo(self._run, moves)
        self._stuck = bool(undone.stuck)
        after = message(After.UNCHANGED)
        if undone.stuck:
            lies = listed([shown_path(self._run.before(name)) for name, _ in undone.stuck])
            after = message(After.HIDDEN, files=lies)
        if isinstance(error, OSError):
            raise fault(Fault.REPLACE, self.folder / self._at, error, after=after) from error
        raise error


def _refuse_odd(place: Path) -> None:
    """OSError where something stands that no file may replace."""
    kind = kind_at(place)
    if kind == "folder":
        raise IsADirectoryError(errno.EISDIR, "")
    if kind == "other":
        raise OSError(errno.ENODEV, message(Reason.DEVICE_THERE))
