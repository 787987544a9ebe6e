"""The numbers of a kit as the overview of its run must say them: from the kit; amounts have tests of their own."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from typing import NamedTuple, Protocol

from layout.messages.catalogue import Catalogue
from layout.messages.roles.ranges import OverviewSheet
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


_YARD, _OUNCE = Decimal("0.9144"), Decimal("28.349523125")  # m and g, exactly: the international yard and pound, 1959


class Ranged(NamedTuple):
    """An amount: likely, least, most."""

    value: float
    low: float
    high: float


def likely_of(plan: Plan) -> tuple[Ranged | None, Ranged | None]:
    """The warp of one box in m, and its weft in g; None where that is not known."""
    warp, weft = plan.amounts.warp_total_m, plan.amounts.weft_total_g
    return (
        Ranged(warp.value, warp.low, warp.high) if warp else None,
        Ranged(weft.value, weft.low, weft.high) if weft else None,
    )


def sum_of(each: Sequence[Ranged | None], copies: Sequence[int]) -> Ranged | None:
    """All boxes together."""
    known = [(figure, number) for figure, number in zip(each, copies, strict=True) if figure]
    if len(known) < len(each):
        return None
    return Ranged(*(float(sum(Fraction(figure[k]) * number for figure, number in known)) for k in range(3)))


def overview_figures(plan: Plan, words: Catalogue, *, imperial: bool) -> Iterator[str]:
    """The cells of the sheet from the sett to the weft."""
    sett, ends = plan.warp.sett.per_mm, ends_of(plan.kit, plan.warp.sett.per_mm)
    shown = fixed(sett * (Fraction(127, 5) if imperial else 10), 2).rstrip("0").rstrip(".")
    yield from (words.figure(shown), str(ends), str(ends // 2) if truth_of(plan.kit).winds else "")
    for figure, length in zip(likely_of(plan), (True, False), strict=True):
        yield amount_of(figure, length, words, imperial=imperial)


def amount_of(figure: Ranged | None, length: bool, words: Catalogue, *, imperial: bool) -> str:
    """A length in m or yards, or a weight in g or ounces: the likely one, and its range where that shows."""
    if figure is None:
        return ""
    unit = (_YARD if length else _OUNCE) if imperial else Decimal(1)
    likely, low, high = (words.figure(_shown(Decimal(f"{each:.14e}") / unit)) for each in figure)
    return likely if low == high else words.say(OverviewSheet.BETWEEN, likely=likely, low=low, high=high)


def _shown(value: Decimal) -> str:
    """Without decimals from a hundred on, else with one; what two computations leave behind turns no figure."""
    near = Decimal(f"{value:.11e}")
    return f"{near.quantize(Decimal(1) if near >= 100 else Decimal('0.1'), ROUND_HALF_UP):f}"
