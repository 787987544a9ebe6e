"""Putting right what a run left that was stopped in the middle: back to what was there, or rid of what is spent."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import NamedTuple

from layout.values.errors import shown_path
from templates_gen.disk.faults import fault
from templates_gen.disk.plain import kind_at
from templates_gen.disk.run_folder import Move, RunFolder, digest
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.disk import After, Fault, Recovery

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
    """Puts right what earlier runs left in `target`, which must be locked; `tell` hears what was done.

    FaultError where something can be neither put back nor removed; then the rest is as it was left.
    """
    try:
        for run in RunFolder.all_in(target):
            _recover(run, tell)
    except OSError as error:
        raise fault(Fault.READ, target, error) from error


def _recover(run: RunFolder, tell: Callable[[str], None]) -> None:
    folder = shown_path(run.target)
    try:
        moves = run.journal()
    except ValueError:
        tell(message(Recovery.NO_JOURNAL, folder=shown_path(run.path)))
        return
    except OSError as error:
        raise fault(Fault.PUT_BACK_LEFT, run.path, error, after="") from error
    if moves is None:
        tell(message(Recovery.HIDDEN, folder=folder))
    elif run.in_place(moves):
        tell(message(Recovery.SPENT, folder=folder))
    else:
        undone = undo(run, moves)
        if undone.stuck:
            name, why = undone.stuck[0]
            raise fault(
                Fault.PUT_BACK, run.place(name), why, after=message(After.LIES_IN, file=shown_path(run.before(name)))
            ) from why
        tell(_what(undone, folder))
        for name, other in undone.aside:
            tell(message(Recovery.ASIDE, name=name, other=other))
    if not run.remove():
        tell(message(Recovery.STAYS, folder=shown_path(run.path)))


def _what(undone: Undone, folder: str) -> str:
    back, away = _few(undone.back), _few(undone.away)
    if undone.back and undone.away:
        return message(Recovery.BACK_AND_AWAY, folder=folder, back=back, away=away)
    if undone.back:
        return message(Recovery.BACK, folder=folder, back=back)
    return message(Recovery.AWAY, folder=folder, away=away) if undone.away else message(Recovery.MOVED, folder=folder)


def _few(names: Sequence[str]) -> str:
    return listed(names) if len(names) <= _FEW else message(Recovery.FILES, number=len(names))
