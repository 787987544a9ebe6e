"""Which slip a request is of, and what the page is given to draw it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from flask import request
from werkzeug.datastructures import MultiDict

from templates_gen.desk.page.asked import WORKING, Asked
from templates_gen.desk.server.made import made_of
from templates_gen.desk.server.person import UNITS, Unit, unit, words
from templates_gen.desk.server.refusals import RefusedError
from templates_gen.desk.server.state import SLIPS, Slip, TooManySlipsError
from templates_gen.desk.slip.reading import read
from templates_gen.desk.slip.typed import NOT_TYPED, example
from templates_gen.messages.roles.desk_server import DeskRefusal

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from templates_gen.desk.server.state import Desk

_LONGEST_VIEW = 80


def slip_of(desk: Desk, values: MultiDict[str, str]) -> Slip:
    """The slip of that id; RefusedError where there is none."""
    slip = desk.slips.get(values.get("k", ""))
    if slip is None:
        raise RefusedError(404, DeskRefusal.NO_SLIP)
    return slip


def new_slip(desk: Desk, typed: Mapping[str, str], examples: Iterable[str] = ()) -> Slip:
    """One more slip; RefusedError where the desk is full."""
    try:
        return desk.slips.new(typed, examples)
    except TooManySlipsError as error:
        raise RefusedError(429, DeskRefusal.TOO_MANY_KITS, most=SLIPS) from error


def example_slip(desk: Desk) -> Slip:
    """A slip with the numbers of the example, every one of which waits for the person's own."""
    typed = example()
    return new_slip(desk, typed, (name for name in typed if name not in NOT_TYPED))


def slip_shown(desk: Desk) -> Slip:
    """The slip of a page: the one asked for, else the one used last, else the example."""
    if "k" in request.args:
        return slip_of(desk, request.args)
    return desk.slips.last() or example_slip(desk)


def view_in(values: MultiDict[str, str]) -> str:
    """What is shown beside the slip; what it names is looked up where it is drawn."""
    view = values.get("view", WORKING)
    return view if view.isprintable() and 0 < len(view) <= _LONGEST_VIEW else WORKING


def unit_in(desk: Desk, values: MultiDict[str, str]) -> Unit:
    """The unit of the switch in a form, else the one that was chosen before."""
    return next((each for each in UNITS if each == values.get("unit")), unit(desk))


def asked_of(desk: Desk, slip: Slip, view: str = WORKING, shown: Unit | None = None) -> Asked:
    """Everything that a page of this slip is drawn from; whoever calls holds its lock."""
    said = words(desk)
    now = read(slip.typed, said)
    if now.plan is not None and not now.troubles:
        slip.good, slip.good_typed = now, dict(slip.typed)
    return Asked(
        slip=slip.id,
        token=desk.token,
        typed=dict(slip.typed),
        examples=frozenset(slip.examples),
        words=said,
        unit=shown or unit(desk),
        read=now,
        good=slip.good,
        good_typed=slip.good_typed,
        file=slip.opened.file if slip.opened else "",
        kept=slip.kept,
        touched=slip.touched,
        kits=slip.opened.kits if slip.opened else 1,
        view=view,
        only=slip.only,
        asks=slip.asks,
        made=made_of(desk, slip, said),
        happened=slip.happened,
        refused=slip.refused,
    )


def undrawn(asked: Asked, why: str) -> Asked:
    """The same without what takes long to draw, and the sentence why."""
    return replace(asked, read=asked.read._replace(kit=None, plan=None), good=None, good_typed={}, refused=why)
