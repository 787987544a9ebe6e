"""What one process keeps: the plans of the kits it met last, their drawings, and the files that were proven.

The same kit and stock need not be planned, laid and drawn again for every file that is made or checked. Only values are
kept that follow from kit, stock and font alone; bytes are kept with the proof that they passed.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import replace
from functools import lru_cache
from threading import Lock
from typing import TYPE_CHECKING, Any, TypeVar

from layout.drawing.metrics import FontMetrics
from layout.kit.box import CUT
from layout.kit.kit import Kit
from layout.plan import Plan
from layout.plan import plan as plan_kit
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.languages.catalogues import words_of

if TYPE_CHECKING:
    from layout.cutting.stock.stock import Stock
    from templates_gen.files.cut_drawings import CutDrawings

_T = TypeVar("_T")
_MOST = 3  # drawings of whole kits; each takes up to some ten megabytes
_PLANS = 16


class _Last:
    """The last few values by what they were made from, which need only be comparable."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._kept: list[tuple[object, Any]] = []

    def value(self, key: object, make: Callable[[], _T]) -> _T:
        """The value that is kept for that key, else the one that `make` gives."""
        with self._lock:
            found = next((pair for pair in self._kept if pair[0] == key), None)
        pair = found or (key, make())
        with self._lock:
            others = [each for each in self._kept if each[0] != key]
            self._kept = [pair, *others][:_MOST]
        value: _T = pair[1]
        return value

    def clear(self) -> None:
        """Keep nothing."""
        with self._lock:
            self._kept = []


_PRINTED, _CUT, _PROVEN, _READ = _Last(), _Last(), _Last(), _Last()


@lru_cache(_PLANS)
def planned(kit: Kit) -> Plan:
    """The plan of a kit; FieldError where it cannot be woven."""
    return plan_kit(kit, words_of(kit))


def kept_reading(
    kind: str, values: dict[str, Any], metrics: FontMetrics, read: Callable[[dict[str, Any], FontMetrics], _T]
) -> _T:
    """What `read` makes of plain values, such as the kit that every file of a folder carries; its refusals too.

    The values are known apart by their JSON text, in which 1 is not true.
    """
    return _READ.value((kind, json.dumps(values), metrics), lambda: read(values, metrics))


def printed_drawings(plan: Plan, metrics: FontMetrics) -> PrintedDrawings:
    """What is printed for a plan."""
    return _PRINTED.value((plan, metrics), lambda: PrintedDrawings(plan, metrics))


def cut_drawings(plan: Plan, stock: Stock, metrics: FontMetrics) -> CutDrawings:
    """What is cut for a plan from a stock, whatever lies in its box."""
    from templates_gen.files.cut_drawings import CutDrawings  # a kit without a stock does without

    plan = replace(plan, refused=frozenset())
    return _CUT.value((plan, stock, metrics), lambda: CutDrawings(plan, metrics, stock))


def with_stock(plan: Plan, stock: Stock | None, metrics: FontMetrics) -> Plan:
    """A plan that knows what its box would hold and cannot, since the stock does not allow it to be cut."""
    names = [name for name in CUT if plan.kit.box.has(name)]
    if stock is None or not names:
        return replace(plan, refused=frozenset())
    drawn = cut_drawings(plan, stock, metrics)
    return replace(plan, refused=frozenset(drawn.refused(name for name in names if name in drawn.names)))


def proven_files(plan: Plan, stock: Stock | None, metrics: FontMetrics) -> dict[str, Any]:
    """By its name, what is known of each file of a plan and a stock that was made before."""
    return _PROVEN.value((plan, stock, metrics), dict)


def forget() -> None:
    """Keep nothing any more."""
    planned.cache_clear()
    for kept in (_PRINTED, _CUT, _PROVEN, _READ):
        kept.clear()
