"""The sheets of one entry of the pile, drawn when they are looked at; the last few are kept."""

from __future__ import annotations

from threading import Lock
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Sheet
from layout.kit.box import CUT
from layout.plan import Plan
from templates_gen.files.kept import with_stock
from templates_gen.files.outputs import kept_outputs
from templates_gen.inputs.families import products_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.roles.files import Left

_MOST = 6  # entries whose sheets are kept: a few hundred kilobytes each


class Drawn(NamedTuple):
    """The sheets of a file, or of all boards, and what they are called."""

    title: str
    sheets: tuple[Sheet, ...]


_Key = tuple[str, Plan, Stock | None]
_LOCK = Lock()
_KEPT: list[tuple[_Key, Drawn]] = []


def drawn(plan: Plan, stock: Stock | None, file: str) -> Drawn:
    """The sheets of a file, named by product and form as for `make --only`; LayoutError where there are none."""
    key = file, plan, stock
    with _LOCK:
        found = next((pair for pair in _KEPT if pair[0] == key), None)
    pair = found or (key, _draw(plan, stock, file))
    with _LOCK:
        others = [each for each in _KEPT if each[0] != key]
        _KEPT[:] = [pair, *others][:_MOST]
    return pair[1]


def _draw(plan: Plan, stock: Stock | None, file: str) -> Drawn:
    names = products_of(plan, (file,))
    if any(plan.kit.box.has(name) for name in CUT):
        plan = with_stock(plan, stock, metrics())
    wanted = kept_outputs(plan, metrics(), names, stock)
    records = wanted.records
    outputs = [record.draw() for record in ([records[file]] if file in records else records.values())]
    if not outputs:
        raise OptionError("file", Left.ONE_FILE, file, "strip-near.pdf")
    title = outputs[0].about.title.removeprefix(f"{plan.kit.name}: ")
    return Drawn(title, tuple(sheet for output in outputs for sheet in output.sheets))
