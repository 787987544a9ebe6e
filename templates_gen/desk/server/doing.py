"""What a button of the slip does."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from templates_gen.desk.server.refusals import RefusedError
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from templates_gen.desk.server.state import Desk, Slip


class Done(NamedTuple):
    """Where the page goes on: another `address` than its own, or a place on it."""

    address: str = ""
    where: str = ""


def do(desk: Desk, slip: Slip, what: str, *, as_is: bool) -> Done:  # noqa: ARG001
    """Does what a button of that value says; RefusedError for a value that no button has."""
    if what.startswith("pdf:"):
        if as_is:
            with slip.lock:
                slip.left_as_is = True
        return Done(address=f"/pdf/{what.removeprefix('pdf:')}?k={slip.id}")
    raise RefusedError(400, DeskRefusal.BAD)
