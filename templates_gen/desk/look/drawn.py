"""The sheets of one entry of the pile, drawn when they are looked at; the last few are kept."""

from __future__ import annotations

from threading import Lock
from typing import NamedTuple

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock import Stock
from layout.drawing.sheet import Sheet
from layout.kit.box import CUT
from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from layout.products import PRODUCTS, suiting
from layout.values.errors import LayoutError, shown
from templates_gen.files.kept import with_stock
from templates_gen.files.outputs import kept_outputs
from templates_gen.inputs.families import products_of
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.english import ENGLISH
from templates_gen.messages.roles.desk_numbers import Pile

_MOST = 6  # entries whose sheets are kept: a few hundred kilobytes each


class DeskError(LayoutError):
    """A refusal in the words of the desk."""

    @staticmethod
    def _english() -> Catalogue:
        return ENGLISH


class Drawn(NamedTuple):
    """The sheets of a file, or of all boards, and what they are called."""

    title: str
    sheets: tuple[Sheet, ...]


_Key = tuple[str, Plan, Stock | None]
_LOCK = Lock()
_KEPT: list[tuple[_Key, Drawn]] = []


def known_files(plan: Plan, stock: Stock | None) -> frozenset[str]:
    """Every file that may be looked at, whether it is made unasked or not."""
    found = {f"{name}.{form}" for name in suiting(plan) for form in PRODUCTS[name].forms} | {"kit.pdf"}
    if stock is not None:
        found |= {f"{name}.{form}" for name in cut_suiting(plan) for form in CUT_PRODUCTS[name].forms}
        found |= {"board.svg", "job.pdf"}
    return frozenset(found)


def drawn(plan: Plan, stock: Stock | None, file: str) -> Drawn:
    """The sheets of a file, named by product and form as for `make --only`.

    Raises LayoutError for a file that the plan and the stock do not have, or what paper or stock do not allow.
    """
    if file not in known_files(plan, stock):
        raise DeskError(Pile.NO_FILE, file=shown(file))
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
    records = wanted.records  # of a part that the stock does not allow there are none
    outputs = [record.draw() for record in ([records[file]] if file in records else records.values())]
    if not outputs:
        raise DeskError(Pile.NO_FILE, file=shown(file))
    title = outputs[0].about.title.removeprefix(f"{plan.kit.name}: ")
    return Drawn(title, tuple(sheet for output in outputs for sheet in output.sheets))
