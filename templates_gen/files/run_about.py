"""What the files of a run say of themselves: its kits, how many boxes of each; money in those of the maker alone."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from layout.box.shop import Shop
from layout.box.shop_values import shop_values
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import stock_values, without_money
from layout.kit.kit import kit_values, without_persons
from layout.plan import Plan
from templates_gen.document import About

MAKERS = "maker-"
"""The names of all files that hold money begin so; none of them is for a buyer."""


@dataclass(frozen=True, slots=True)
class SoldKit:
    """One kit of a run: its plan, how many boxes of it are made, and on what terms it is bought for and sold."""

    plan: Plan
    copies: int
    shop: Shop


def in_one_language(kits: Sequence[SoldKit]) -> tuple[SoldKit, ...]:
    """The same with the words of the first: a sheet that is of all kits is in one language."""
    words = kits[0].plan.words
    return tuple(replace(each, plan=replace(each.plan, words=words)) for each in kits)


def about_run(
    name: str,
    kits: Sequence[SoldKit],
    what: str,
    file: str,
    stock: Stock | None = None,
    lesson: tuple[int, int] | None = None,
    *,
    source: Mapping[str, Any] | None = None,
    legal: bool = False,
) -> About:
    """What `file` shows of a run: `name` is that of the range, `what` it holds. Files of the maker alone carry the
    shop, for each kit with the terms on which that is sold; they alone carry what a stock costs. Files that show the
    maker's legal words and the buyer (`legal`) carry these; one that shows where values come from carries their
    `source`. What a box has to do `without` is carried where there is any.
    """
    run: dict[str, object] = {
        "name": name,
        "kits": [kit_values(each.plan.kit if legal else without_persons(each.plan.kit)) for each in kits],
        "copies": [each.copies for each in kits],
    }
    if any(each.plan.refused for each in kits):
        run["without"] = [sorted(each.plan.refused) for each in kits]
    values: dict[str, object] = {"file": file, "run": run}
    if file.startswith(MAKERS):
        values["shop"] = _shops(kits)
    if source is not None:
        values["range"] = source
    if lesson is not None:
        values["class"] = {"people": lesson[0], "at_a_table": lesson[1]}
    if stock is not None:
        values["stock"] = stock_values(stock if file.startswith(MAKERS) else without_money(stock))
    return About(f"{name}: {what}", json.dumps(values, ensure_ascii=False, separators=(",", ":")))


def _shops(kits: Sequence[SoldKit]) -> list[Mapping[str, object]]:
    return [shop_values(each.shop) for each in kits]
