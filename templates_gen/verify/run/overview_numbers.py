"""The numbers of a kit as the overview of its run must say them: from the kit; amounts have tests of their own."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from typing import Protocol

from layout.plan import Plan
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of


class _Figure(Protocol):
    """An amount with its likely value."""

    @property
    def value(self) -> float: ...


def numbers_of(plan: Plan) -> Iterator[str]:
    """From the sett to the cord, as a table has them."""
    kit, sett, amounts = plan.kit, plan.warp.sett.per_mm, plan.amounts
    ends = ends_of(kit, sett)
    yield fixed(sett * 10, 3)
    yield fixed(sett * Fraction(127, 5), 3)
    yield str(ends)
    yield str(ends // 2) if truth_of(kit).winds else ""
    yield fixed(ends / sett, 2)
    asked = kit.weaving.height
    yield fixed(asked.mm if asked else amounts.woven_mm[1].value, 2)
    yield _likely(amounts.warp_total_m, 2)
    yield _likely(amounts.warp_total_g, 1)
    yield _likely(amounts.weft_total_m, 2)
    weft_g = amounts.weft_total_g
    yield from (fixed(each, 1) for each in (weft_g.value, weft_g.low, weft_g.high)) if weft_g else ("", "", "")
    yield fixed(amounts.leashes.together.value / 1000, 2)


def _likely(figure: _Figure | None, places: int) -> str:
    return "" if figure is None else fixed(figure.value, places)


def fixed(value: Fraction | float, places: int) -> str:
    """A number to so many places, halves away from zero."""
    exact = Fraction(value)
    step = Decimal(1).scaleb(-places)
    return f"{(Decimal(exact.numerator) / Decimal(exact.denominator)).quantize(step, ROUND_HALF_UP):f}"
