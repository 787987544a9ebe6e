"""What a button of the slip does, with scripts and without."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple
from urllib.parse import quote

from layout.values.errors import LayoutError
from templates_gen.desk.kits.opened import DeskError
from templates_gen.desk.server.kit_routes import kept
from templates_gen.desk.server.made import start
from templates_gen.desk.server.person import words
from templates_gen.desk.server.printed import stops
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.desk.server.slips import asked_of
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk, Slip

MAKES = ("make", "strips")
KEEPS = ("keep", "keep-shared")
_AWAY = "away"


class Done(NamedTuple):
    """Where the page goes on: another `address` than its own, or a place on it; `wrong` if a line is to be mended."""

    address: str = ""
    where: str = ""
    wrong: bool = False


def do(desk: Desk, slip: Slip, what: str, *, as_is: bool) -> Done:
    """Does what a button of that value says; RefusedError for a value that no button has."""
    if what in KEEPS:
        slip.shared = what != KEEPS[0]
        return Done(kept(desk, slip, "asked"))
    if what in MAKES:
        return make(desk, slip, what, as_is=as_is)
    if what == "stop":
        stop(desk, slip.job)
        return Done(where=_AWAY)
    if what.startswith("pdf:"):
        if as_is:
            stops(slip, what, as_is=True)
        return Done(f"/pdf/{quote(what.removeprefix('pdf:'), safe='')}?k={slip.id}")
    raise RefusedError(400, DeskRefusal.BAD)


def make(desk: Desk, slip: Slip, what: str, *, as_is: bool) -> Done:
    """Begins to make files, unless a line cannot be read, or lines are the example's and that was not asked yet."""
    with slip.lock:
        slip.refused = ""
        now = asked_of(desk, slip).read
        if now.plan is None or now.troubles:
            slip.refused = words(desk).say(DeskRefusal.NOT_READ)
            return Done(where=_AWAY, wrong=True)
        if stops(slip, what, as_is=as_is):
            return Done(where=_AWAY)
        try:
            start(desk, slip, what)
        except LayoutError as error:
            slip.refused = error.said(words(desk))
        return Done(where=_AWAY)


def stop(desk: Desk, name: str) -> None:
    """Ends a run; nothing happens where there is none."""
    try:
        desk.making.job(name).stop()
    except DeskError:
        return
    desk.making.job(name).wait(_SECONDS)


_SECONDS = 5.0
