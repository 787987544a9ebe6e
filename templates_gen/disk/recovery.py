"""Putting right what a run left that was stopped in the middle: back to what was there, or rid of what is spent."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import NamedTuple

from layout.values.errors import shown_path
from templates_gen.disk.faults import fault
from templates_gen.disk.plain import kind_at
from templates_gen.disk.run_folder import Move, RunFolder, digest

LARGEST_FILE = 16 * 1024 * 1024
"""In bytes; a larger file is refused unread: ours are a thousand times smaller."""
_FEW = 4


class Undone(NamedTuple):
    """What was put back, what was taken away, what could not be moved, and what was kept aside under another name."""

    back: tuple[str, ...]
    away: tuple[str, ...]
    stuck: tuple[tuple[str, OSError], ...]
    aside: tuple[tuple[str, str], ...]


def undo(run: RunFolder, moves: Sequence[Move]) -> Undone:
    """Puts back all that `run` moved so far, the manifest last. What somebody changed since then stays."""
    back, away, stuck, aside = [], [], [], []
    for move in moves:
        place = run.place(move.name)
        try:
            if kind_at(run.before(move.name)) != "nothing":
                if kind_at(place) == "nothing" or _put_there(run, move):
                    run.before(move.name).replace(place)
                    back.append(move.name)
                else:
                    other = _free_name(place)
                    run.before(move.name).rename(other)
                    aside.append((move.name, other.name))
            elif not move.was and kind_at(place) != "nothing" and _put_there(run, move):
                place.unlink()
                away.append(move.name)
        except OSError as error:
            stuck.append((move.name, error))
    return Undone(tuple(back), tuple(away), tuple(stuck), tuple(aside))


def _put_there(run: RunFolder, move: Move) -> bool:
    """Whether the run itself put there what is in a place now."""
    left = kind_at(run.new(move.name)) == "nothing"
    return left and move.sha256 is not None and digest(run.place(move.name), LARGEST_FILE) == move.sha256


def _free_name(place: Path) -> Path:
    tries = (place.with_name(f"{place.name}.earlier-{number}") for number in range(1, 10_000))
    return next(path for path in tries if kind_at(path) == "nothing")


def recover(target: Path, tell: Callable[[str], None]) -> None:
    """Puts right what earlier runs left in `target`, which must be locked, and tells each thing that was done.

    FaultError where something can be neither put back nor removed; then the rest is as it was left.
    """
    try:
        for run in RunFolder.all_in(target):
            _recover(run, tell)
    except OSError as error:
        raise fault("read", target, error) from error


def _recover(run: RunFolder, tell: Callable[[str], None]) -> None:
    stopped = f"An earlier run into {shown_path(run.target)} was stopped"
    try:
        moves = run.journal()
    except ValueError:
        tell(f"{shown_path(run.path)} looks like what a stopped run leaves, but holds no journal; it was left alone.")
        return
    except OSError as error:
        raise fault("put back what a stopped run left in", run.path, error, after="") from error
    if moves is None:
        tell(f"{stopped} and left hidden files that nobody needs; they were removed.")
    elif run.in_place(moves):
        tell(f"{stopped} when all its files were in place; the files from before, now spent, were removed.")
    else:
        undone = undo(run, moves)
        if undone.stuck:
            name, why = undone.stuck[0]
            raise fault("put back", run.place(name), why, after=f"it lies in {shown_path(run.before(name))}") from why
        tell(f"{stopped} while it moved files; {_what(undone)}.")
        for name, other in undone.aside:
            tell(f"{name} was changed since then and stays; what was there before is now {other}.")
    if not run.remove():
        tell(f"{shown_path(run.path)} could not be removed; nothing in it is needed.")


def _what(undone: Undone) -> str:
    done = ((undone.back, "put back"), (undone.away, "taken away"))
    told = [f"{_few(names)} {what}" for names, what in done if names]
    return " and ".join(told) or "nothing had to be put back"


def _few(names: Sequence[str]) -> str:
    return ", ".join(names) if len(names) <= _FEW else f"{len(names)} files"
