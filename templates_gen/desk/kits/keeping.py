"""The text that a file gets when it is kept: the same one, with other values where the slip has others."""

from __future__ import annotations

import tomllib
from typing import Any

from layout.values.errors import LayoutError
from templates_gen.data import text_of
from templates_gen.desk.kits.kinds import STOCK_PREFIX, kind_of, typed_in
from templates_gen.desk.kits.opened import DeskError, Opened, Typed
from templates_gen.desk.kits.values import KITS, carried, kits_in, range_with, whole_kit
from templates_gen.desk.slip.typed import values_of
from templates_gen.inputs.toml_additions import NoPlaceError
from templates_gen.inputs.toml_order import Order
from templates_gen.inputs.toml_rewrite import alike, rewritten
from templates_gen.messages.roles.desk_kits import DeskKits

_STARTERS = {"kit": "demo.toml", "range": "range.toml", "stock": "stock.toml"}
_MARK = "\ufeff"


def said(opened: Opened, typed: Typed) -> dict[str, Any]:
    """The plain values that the slip says for this file."""
    return values_of(typed, STOCK_PREFIX if opened.kind == "stock" else "")


def unchanged(opened: Opened, typed: Typed) -> bool:
    """Whether the slip says what it said when the file was opened."""
    return alike(said(opened, opened.typed), said(opened, typed))


def text_with(opened: Opened, typed: Typed, text: str, *, shared: bool = False) -> str:
    """`text`, the file as it is now, saying what the slip says; remarks, order and layout stay.

    DeskError where the text has no place for that.
    """
    mark, body = (_MARK, text[1:]) if text.startswith(_MARK) else ("", text)
    before, after = said(opened, opened.typed), said(opened, typed)
    try:
        values = tomllib.loads(body)
        wanted = _wanted(opened, values, before, after, shared=shared)
        found = rewritten(body, wanted, _order(opened))
        if not _says(opened, tomllib.loads(found), after) or _others_differ(opened, values, found, shared=shared):
            raise NoPlaceError
    except (ValueError, TypeError, IndexError, RecursionError) as error:
        if isinstance(error, LayoutError):
            raise
        raise DeskError(DeskKits.NO_PLACE, file=opened.file or opened.name) from error
    return mark + found


def new_text(opened: Opened, typed: Typed) -> str:
    """A file of its own for what the slip says: the text that was opened, else the starter with its remarks."""
    if opened.text and opened.kind != "range":
        return text_with(opened, typed, opened.text)
    alone = Opened("stock" if opened.kind == "stock" else "kit")
    starter = text_of(_STARTERS[alone.kind])
    after = said(alone, typed)
    found = rewritten(starter, after, _order(alone), shown=True)
    if not _says(alone, tomllib.loads(found), after):
        raise DeskError(DeskKits.NO_PLACE, file=opened.name)
    return found


def range_name(text: str) -> str:
    """What the range is called that a file holds."""
    return str(tomllib.loads(text.removeprefix(_MARK)).get("name", ""))


def _wanted(
    opened: Opened, values: dict[str, Any], before: dict[str, Any], after: dict[str, Any], *, shared: bool
) -> dict[str, Any]:
    if opened.number is None:
        return carried(values, before, after)
    return range_with(values, opened.number, before, after, shared=shared)


def _says(opened: Opened, values: dict[str, Any], after: dict[str, Any]) -> bool:
    """Whether a file with these values is opened as what was kept."""
    return kind_of(values) == opened.kind and alike(said(opened, typed_in(values, opened.kind, opened.number)), after)


def _others_differ(opened: Opened, values: dict[str, Any], found: str, *, shared: bool) -> bool:
    """Whether a change of one kit of a range changed another one."""
    if opened.number is None or shared:
        return False
    now = tomllib.loads(found)
    others = [number for number in range(1, len(kits_in(values)) + 1) if number != opened.number]
    above = ("buy", "class")

    def own(of: dict[str, Any], number: int) -> dict[str, Any]:
        return {key: value for key, value in whole_kit(of, number).items() if key not in above}

    return not all(alike(own(values, number), own(now, number)) for number in others)


def _order(opened: Opened) -> Order:
    """Keys stand as in the starter; what a kit alone says of a run, behind its own."""
    if opened.kind == "range":
        return Order(text_of(_STARTERS["range"]), each=KITS)
    return Order(text_of(_STARTERS[opened.kind]))
