"""How many sheets and boards one set of a kit takes where it is made by itself."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache

from layout.box.overview import Singly
from layout.box.weights import Boards
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.kit.box import START
from layout.paper.sheets import leaves
from layout.parts.held import held_each, held_once
from layout.plan import Plan
from layout.products import PRODUCTS
from templates_gen.files.drawings import PrintedDrawings
from templates_gen.files.kept import printed_drawings
from templates_gen.files.run_boards import box_parts, cut_together, seconds_of

_KITS = 24


@lru_cache(_KITS)
def _printed(plan: Plan, metrics: FontMetrics) -> tuple[int, int]:
    drawn = printed_drawings(plan, metrics)
    return _sheets(drawn, held_each(plan)), _sheets(drawn, held_once(plan))


def _sheets(drawn: PrintedDrawings, names: Iterable[str]) -> int:
    """The sheets of these products, each in a file of its own; what the kit cannot have has none."""
    known = [name for name in names if name in (*PRODUCTS, START)]
    return sum(len(leaves(drawn.plan, drawn.layings(name), drawn.metrics)) for name in known)


def singly_of(plan: Plan, metrics: FontMetrics, stock: Stock | None) -> Singly:
    """What one set takes; boards for the cut parts that lie in its box, and for those that there are once."""
    each, once = _printed(plan, metrics)
    if stock is None:
        return Singly(each, once)
    both, own = (cut_together(plan, stock, metrics, 1, once=with_once) for with_once in (True, False))
    whole, alone = seconds_of(both), seconds_of(own)
    rest = None if whole is None or alone is None else whole - alone
    return Singly(each, once, both.count, alone, rest)


def cut_in_box(plan: Plan, metrics: FontMetrics, stock: Stock | None) -> Boards | None:
    """What is cut for one box: the outer sizes of the cut parts that lie in it; None where there is none."""
    if stock is None:
        return None
    parts = [(each.part, each.each) for each in box_parts(plan, stock, metrics, 0, 1, once=False)]
    area = sum(part.length * part.height * number for part, number in parts)
    return Boards(area, stock.thickness, stock.material) if parts else None
