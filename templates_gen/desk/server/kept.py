"""Kit files of the start folder: opened, kept, copied; which slip is of which file."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import TYPE_CHECKING

from templates_gen.desk.kits.folder import copied
from templates_gen.desk.kits.opened import Changed, DeskError, Opened
from templates_gen.desk.server.person import words
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.desk.server.slips import new_slip
from templates_gen.desk.slip.fields import STOCK_PREFIX
from templates_gen.messages.roles.desk_kits import DeskKits
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk, Slip

HOW = ("asked", "mine", "theirs", "new")


def laid(desk: Desk, slip: Slip | None, opened: Opened) -> Slip:
    """The slip on which something lies that was opened: stock goes to the `slip` that is there, a kit has its own.

    A kit that lies on the desk already is not opened twice: what was typed since would be lost.
    """
    if opened.kind == "stock":
        return _stocked(slip, opened)
    there = next((each for each in desk.slips.all() if opened.file and is_of(each, opened)), None)
    if there is None:
        fresh = new_slip(desk, opened.typed)
        fresh.opened = opened
        return fresh
    with there.lock:
        if not there.touched:
            there.opened, there.typed, there.examples = opened, dict(opened.typed), set()
    return desk.slips.get(there.id) or there


def is_of(slip: Slip, opened: Opened) -> bool:
    """Whether a slip is of that kit of that file."""
    return slip.opened is not None and (slip.opened.file, slip.opened.number) == (opened.file, opened.number)


def _stocked(slip: Slip | None, opened: Opened) -> Slip:
    if slip is None:
        raise RefusedError(404, DeskRefusal.NO_SLIP)
    with slip.lock:
        without = {name: text for name, text in slip.typed.items() if not name.startswith(STOCK_PREFIX)}
        slip.typed, slip.stock = {**without, **opened.typed}, opened
        slip.examples = {name for name in slip.examples if not name.startswith(STOCK_PREFIX)}
    return slip


def named(desk: Desk, which: str) -> Slip | Opened:
    """What a number of the list, or the id of a slip, stands for; DeskError or RefusedError where there is none."""
    if which.isascii() and which.isdecimal() and len(which) < 6:
        return desk.kits.open(int(which))
    slip = desk.slips.get(which)
    if slip is None:
        raise RefusedError(404, DeskRefusal.NO_SLIP)
    return slip


def opened_in(desk: Desk, which: str) -> tuple[Opened, dict[str, str]]:
    """The same as what was opened and what is typed now."""
    found = named(desk, which)
    if not isinstance(found, Opened):
        with found.lock:
            return found.opened or Opened("kit"), dict(found.typed)
    slip = next((each for each in desk.slips.all() if found.file and is_of(each, found)), None)
    return found, dict(slip.typed if slip else found.typed)


def copy(desk: Desk, which: str) -> Slip:
    """A copy of a kit on a slip of its own, which no file holds yet."""
    opened, typed = opened_in(desk, which)
    if opened.kind == "stock":
        raise DeskError(DeskKits.NO_SUCH)
    taken = {slip.typed.get("name", "") for slip in desk.slips.all()}
    taken |= {entry.opened.typed.get("name", "") for entry in desk.kits.listed().kits if entry.opened}
    of, now = copied(opened, typed, words(desk), frozenset(taken))
    slip = new_slip(desk, now)
    slip.opened, slip.touched = of, True
    return slip


def keep(desk: Desk, slip: Slip, how: str) -> None:
    """Writes what the slip says into its file, and its stock into that of the stock.

    Changed where one was changed elsewhere meanwhile; LayoutError where it cannot be written.
    """
    with slip.lock:
        opened = slip.opened or Opened("kit")
        if how == "theirs":
            slip.opened = desk.kits.again(opened)
            slip.typed, slip.examples = {**slip.opened.typed, **_stock_of(slip.typed)}, set()
        else:
            slip.changed = True
            slip.opened = desk.kits.keep(opened, slip.typed, how=how, shared=slip.shared)
        _stock_kept(desk, slip, how)
        slip.kept = datetime.now().astimezone().strftime("%H:%M")
        slip.touched = slip.changed = False
    if slip.shared:
        _taken_over(desk, slip)


def _taken_over(desk: Desk, kept: Slip) -> None:
    """What was kept for all kits of a range comes to the slips of the others, where nothing was typed since."""
    file = kept.opened.file if kept.opened else ""
    for slip in desk.slips.all():
        with slip.lock:
            if slip is not kept and file and slip.opened and slip.opened.file == file and not slip.touched:
                slip.opened = desk.kits.again(slip.opened)
                slip.typed, slip.examples = {**_stock_of(slip.typed), **slip.opened.typed}, set()


def _stock_of(typed: Mapping[str, str]) -> dict[str, str]:
    return {name: text for name, text in typed.items() if name.startswith(STOCK_PREFIX)}


def _stock_kept(desk: Desk, slip: Slip, how: str) -> None:
    """The lines of the stock go into a file of their own, which the slip may have opened."""
    if not any(name.startswith(STOCK_PREFIX) for name in slip.typed):
        return
    opened = slip.stock or Opened("stock")
    if how == "theirs" and opened.file:
        slip.stock = desk.kits.again(opened)
        slip.typed = {**slip.typed, **slip.stock.typed}
    else:
        typed = {f"{STOCK_PREFIX}name": slip.typed.get("name", ""), **slip.typed}
        slip.stock = desk.kits.keep(opened, typed, how="asked" if how == "theirs" else how)


__all__ = ["HOW", "Changed", "copy", "is_of", "keep", "laid", "named", "opened_in"]
