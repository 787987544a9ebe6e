"""The hidden folder of one run, inside the folder it writes into: what is new, what was there before, and a journal.

While the last of the new files, the manifest, still lies in it, what was moved can be put back. When that one is in its
place, everything is, and what was there before is spent. Without a journal nothing was moved, or all was put back.
"""

from __future__ import annotations

import hashlib
import json
import re
from collections.abc import Sequence
from contextlib import suppress
from pathlib import Path
from typing import NamedTuple, Self

from templates_gen.disk.plain import kind_at, read_plain, token, write_new

LARGEST_JOURNAL = 10_000_000
_NAME = re.compile(r"\.templates-gen-[0-9a-f]{16}")
_JOURNAL = "journal.json"


class Move(NamedTuple):
    """One place: the sha256 of the new file that comes there (None for none), and whether something `was` there."""

    name: str
    sha256: str | None
    was: bool


class RunFolder:
    """The hidden folder at `path`; `target` is the folder that holds it."""

    def __init__(self, path: Path) -> None:
        self.path, self.target = path, path.parent

    @classmethod
    def made(cls, target: Path) -> Self:
        """A new one in `target`, under a name that nobody can guess; closed to others where the system has such."""
        run = cls(target / f".templates-gen-{token()}")
        run.path.mkdir(mode=0o700)
        for inner in (run.path / "new", run.path / "before"):
            inner.mkdir(mode=0o700)
        return run

    @classmethod
    def all_in(cls, target: Path) -> list[Self]:
        """Every one that lies in `target`; OSError where that cannot be listed."""
        paths = sorted(path for path in target.iterdir() if _NAME.fullmatch(path.name))
        return [cls(path) for path in paths if kind_at(path) == "folder"]

    def new(self, name: str) -> Path:
        """Where the new file of that name lies until it is moved into place."""
        return self.path / "new" / name

    def before(self, name: str) -> Path:
        """Where lies what was in that place before."""
        return self.path / "before" / name

    def place(self, name: str) -> Path:
        """Where it belongs."""
        return self.target / name

    def write_journal(self, moves: Sequence[Move]) -> None:
        """Writes down which moves will be made; it is there whole or not at all."""
        unfinished = self.path / f"{_JOURNAL}.part"
        values = [move._asdict() for move in moves]
        write_new(unfinished, json.dumps({"version": 1, "moves": values}).encode())
        unfinished.replace(self.path / _JOURNAL)

    def journal(self) -> list[Move] | None:
        """The moves that were written down, None where none are.

        OSError where it cannot be read; ValueError where it is none of ours.
        """
        if any(kind_at(path) == "link" for path in (self.path / "new", self.path / "before", self.path / _JOURNAL)):
            raise ValueError("a link")
        try:
            data = read_plain(self.path / _JOURNAL, LARGEST_JOURNAL)
        except FileNotFoundError:
            return None
        try:
            moves = [Move(**move) for move in json.loads(data)["moves"]]
        except (TypeError, KeyError, RecursionError) as error:
            raise ValueError("not a journal") from error
        if not all(_sound(move) for move in moves) or not any(move.sha256 for move in moves):
            raise ValueError("not a journal")
        return moves

    def in_place(self, moves: Sequence[Move]) -> bool:
        """Whether the last new file has left this folder: then all have."""
        last = next(move for move in reversed(moves) if move.sha256 is not None)
        return kind_at(self.new(last.name)) == "nothing"

    def forget(self) -> None:
        """Takes the journal away: what is left is spent."""
        (self.path / _JOURNAL).unlink(missing_ok=True)

    def remove(self) -> bool:
        """Takes the folder away with the files in it; whether it is gone."""
        with suppress(OSError):
            self.forget()
            for inner in (self.path / "new", self.path / "before", self.path):
                _remove(inner)
        return kind_at(self.path) == "nothing"


def _remove(folder: Path) -> None:
    """A folder that holds another one, or a file that does not go, stays."""
    if kind_at(folder) != "folder":
        return
    for path in folder.iterdir():
        with suppress(OSError):
            path.unlink()
    with suppress(OSError):
        folder.rmdir()


def _sound(move: Move) -> bool:
    named = isinstance(move.name, str) and Path(move.name).name == move.name and not move.name.startswith(".")
    return named and isinstance(move.sha256, str | None) and isinstance(move.was, bool)


def digest(path: Path, most: int) -> str | None:
    """The sha256 of the plain file at `path`; None where that is none, or larger than `most`, or cannot be read."""
    try:
        if kind_at(path) != "file":
            return None
        data = read_plain(path, most)
    except (OSError, ValueError):
        return None
    return hashlib.sha256(data).hexdigest() if len(data) <= most else None
