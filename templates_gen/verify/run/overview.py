"""The overview of a run proven: each cell again from kits, copies, what their files hold, packs and prices."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import zip_longest
from typing import NamedTuple

from layout.messages.roles.buying import Prices
from templates_gen.messages.roles.run import Overview
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.run.overview_numbers import numbers_of
from templates_gen.verify.run.prices import Boxed, Together, lines_of

_HEAD = (
    "kit", "folder", "boxes", "sett_per_cm", "sett_per_inch", "ends", "winds", "width_mm", "height_mm", "warp_m",
    "warp_g", "weft_m", "weft_g", "weft_g_low", "weft_g_high", "leash_cord_m", "sheets_in_box", "sheets_once", "boards",
    "cost", "cost_is", "price", "currency",
)  # fmt: skip


class Held(NamedTuple):
    """A kit of the run: its terms, its folder, and how many sheets and boards one set takes."""

    boxed: Boxed
    folder: str
    each: int
    once: int
    boards: int
    together: Callable[[int], Together]


def prove_overview(rows: Sequence[Sequence[str]], kits: Sequence[Held]) -> Findings:
    """Every row of the table that was read."""
    wanted = [_HEAD, *(tuple(_row(held)) for held in kits)]
    wrong = [
        finding(Overview.ROW, row=number, want=", ".join(want or ()), got=", ".join(got or ()))
        for number, (want, got) in enumerate(zip_longest(wanted, rows), 1)
        if want is None or got is None or tuple(want) != tuple(got)
    ]
    return Findings(0.0, tuple(wrong))


def _row(held: Held) -> Iterator[str]:
    boxed = held.boxed
    yield from (boxed.plan.kit.name, held.folder, str(boxed.boxes))
    yield from numbers_of(boxed.plan)
    yield from (str(held.each), str(held.once), str(held.boards))
    now = boxed._replace(
        shop={**boxed.shop, "sell": {**boxed.shop.get("sell", {}), "quantities": [{"from": boxed.boxes}]}}
    )
    found = lines_of(now, held.together)
    figure = boxed.plan.words.figure
    name, cost = found.costs[-1]
    price = found.prices[0][2] if len(found.prices[0]) > 2 else ""
    yield _plain(cost, figure)
    yield "part" if name == boxed.plan.words.say(Prices.AT_LEAST) else "all"
    yield _plain(price, figure)
    yield str(boxed.shop.get("buy", {}).get("currency", ""))


def _plain(said: str, figure: Callable[[str], str]) -> str:
    """A sum of money with a decimal point, whatever the language."""
    comma = figure("0.5")[1]
    return said.replace(comma, ".")
