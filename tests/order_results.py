"""Results of orders for tests, as a run would give them, without making any."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from functools import cache

from order_files import MIDDLE, SMALL, three_kits

from layout.box.needs import needs
from layout.box.shop import Pack
from layout.plan import Plan, plan
from templates_gen.inputs.range_file import Range
from templates_gen.ordering.amounts import amounts_of
from templates_gen.ordering.order import Problem
from templates_gen.ordering.result import OrderFile, Result

FILES = (
    OrderFile("strips.pdf", "0" * 64, 1, 62, 1e-6),
    OrderFile("spacing-guide.pdf", "1" * 64, 2, 31, 1e-6),
    OrderFile("comb.svg", "2" * 64, 1, 0, 0.0),
)
"""Two files that are printed, on three sheets, and one that is not."""


@cache
def planned(kit: str) -> Plan:
    """The plan of a kit of the range to start from."""
    return plan(next(each.kit for each in three_kits().kits if each.kit.name == kit))


def result(line: int, kit: str = SMALL, copies: int = 1, **changes: object) -> Result:
    """An order that was made."""
    made = planned(kit)
    number = f"W-{line}"
    found = Result(line, number, number.lower(), kit, copies, "made", FILES, amounts=amounts_of(needs(made)))
    return replace(found, ends=made.warp.ends, **changes)  # type: ignore[arg-type]


def failed(line: int, kit: str = SMALL, *problems: tuple[str, str]) -> Result:
    """A row that failed."""
    found = tuple(Problem(*each) for each in problems or [("copies", "needs a number, got nothing")])
    return Result(line, f"W-{line}", "", kit, 0, "failed", problems=found)


def few() -> tuple[Result, ...]:
    """Some of each kind."""
    two = failed(4, SMALL, ("weaving width", 'needs a length, got "x"'), ("", "cannot be woven"))
    unchanged = result(5, MIDDLE, 3, state="unchanged", notes=("Mind the gap.", "And the step."))
    return result(2), result(3, SMALL, 12), two, unchanged, failed(6, ""), failed(7, "No such kit")


def many(number: int) -> Iterator[Result]:
    """So many orders that were made, one at a time."""
    return (result(line, (SMALL, MIDDLE)[line % 2], line % 3 + 1) for line in range(2, number + 2))


def unpriced() -> Range:
    """The range without money, and a thing that is sold in no pack."""
    found = three_kits()
    return replace(found, shop=found.shop.unpriced)


def with_work() -> Range:
    """The range with a price for everything that its boxes take."""
    found = three_kits()
    also = {name: Pack("", Fraction(1), "piece", Fraction(2)) for name in ("beater", "rod for the leashes")}
    also |= {name: pack for name, pack in found.shop.also.items() if name not in also}
    priced = {name: replace(pack, price=pack.price or Fraction(1)) for name, pack in also.items()}
    return replace(found, shop=replace(found.shop, also=priced, hour=Fraction(24), minutes=Fraction(20)))
