"""The price sheet proven: each cost, price and margin again from the kits, packs and prices, in decimals."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from decimal import ROUND_CEILING, ROUND_HALF_UP, Decimal, localcontext
from fractions import Fraction
from typing import Any, NamedTuple

from layout.messages.catalogue import Role
from layout.messages.roles.buying import Packed, Prices
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.verify.run.to_buy import Pack, counted_in, pack_of
from templates_gen.verify.run.to_buy_numbers import asked_of

_DIGITS, _SAME, _TINY = 60, Decimal("1e-9"), Decimal("1e-30")
_CENT = Decimal("0.01")
_MISPRINTS, _LEAST_MISPRINTS = Decimal("0.02"), 2
_NAMES: Mapping[str, Role] = {
    "warp": Prices.WARP,
    "weft": Prices.WEFT,
    "leash_cord": Packed.CORD,
    "bought_in": Prices.BOUGHT_IN,
    "paper": Prices.PAPER,
    "board": Prices.BOARDS,
    "cutting": Prices.CUTTING,
    "work": Prices.WORK,
}


class Boxed(NamedTuple):
    """A kit that is sold: its plan, how many boxes of it are made, and the plain values of its shop."""

    plan: Plan
    boxes: int
    shop: Mapping[str, Any]


class Together(NamedTuple):
    """What so many boxes take together, and what a board and a minute of the cutter cost."""

    sheets: int
    boards: int
    minutes: Fraction | None
    board: Fraction | None
    minute: Fraction | None


class Costs(NamedTuple):
    """What one box costs: by name of what is paid for, and the names of what has no price."""

    parts: dict[str, Decimal]
    missing: list[str]

    @property
    def whole(self) -> Decimal:
        """All that is known of it."""
        return sum(self.parts.values(), Decimal(0))


class Lines(NamedTuple):
    """What the sheet says of one kit: the rows of prices, those of costs, titles of columns, sentences besides."""

    prices: list[tuple[str, ...]]
    costs: list[tuple[str, ...]]
    titles: list[str]
    besides: list[str]


def lines_of(kit: Boxed, together: Callable[[int], Together]) -> Lines:
    """All of it, empty cells left out."""
    with localcontext() as context:
        context.prec = _DIGITS
        return _lines(kit, together)


def _lines(kit: Boxed, together: Callable[[int], Together]) -> Lines:
    say, figure, sell = kit.plan.words.say, kit.plan.words.figure, kit.shop.get("sell", {})
    steps = sell.get("quantities", [{"from": 1}])
    prices = [tuple(_row(kit, step, costs_of(kit, step["from"], together(step["from"])))) for step in steps]
    costs = costs_of(kit, kit.boxes, together(kit.boxes))
    rows: list[tuple[str, ...]] = [
        (say(role), figure(money_of(costs.parts[name]))) for name, role in _NAMES.items() if name in costs.parts
    ]
    rows.append((say(Prices.AT_LEAST if costs.missing else Prices.TOGETHER), figure(money_of(costs.whole))))
    titles = [say(role) for role in (Prices.FROM, Prices.MARGIN, Prices.COST, Prices.PRICE, Prices.ALL)]
    titles.append(say(Prices.ONE_BOX, boxes=kit.boxes))
    besides = [kit.plan.kit.name]
    if costs.missing:
        besides.append(say(Prices.MISSING, things=kit.plan.words.listed(list(dict.fromkeys(costs.missing)))))
    return Lines(prices, rows, titles, besides)


def _row(kit: Boxed, step: Mapping[str, Any], costs: Costs) -> Iterator[str]:
    """The cells of one quantity."""
    words, sell = kit.plan.words, kit.shop.get("sell", {})
    yield str(step["from"])
    yield words.figure(money_of(costs.whole))
    if "margin" not in sell:
        return
    price = price_of(costs.whole, sell, step.get("less", 0))
    yield words.figure(money_of(price))
    yield words.figure(money_of(price * step["from"]))
    if not costs.missing:
        left = 100 * (1 - costs.whole / price) if price else Decimal(0)
        shown = left.quantize(Decimal("0.1"), ROUND_HALF_UP)
        yield words.say(Prices.PERCENT, number=say_number(Fraction(shown), 1))


def price_of(cost: Decimal, sell: Mapping[str, Any], less: Any = 0) -> Decimal:
    """For how much a box is sold that costs so much, by the maker's margin, a share `less`."""
    by = Decimal(repr(sell["round_to"])) if "round_to" in sell else _CENT
    asked = cost * (1 - _share(less)) / (1 - _share(sell["margin"]))
    return (asked / by - _TINY).to_integral_value(ROUND_CEILING) * by


def _share(said: Any) -> Decimal:
    """A share as it is written back: a number, or text in per cent, which may be a fraction."""
    if isinstance(said, str):
        exact = Fraction(said.removesuffix("%").strip()) / 100
        return Decimal(exact.numerator) / Decimal(exact.denominator)
    return Decimal(repr(said))


def money_of(value: Decimal) -> str:
    """Money as it is shown, to two decimals."""
    return str(value.quantize(_CENT, ROUND_HALF_UP))


def costs_of(kit: Boxed, boxes: int, made: Together) -> Costs:
    """What one of so many boxes costs, all alike: what is paid for them, in as many shares."""
    paid: dict[str, Decimal] = {}
    missing: list[str] = []
    for kind, name, total in _paid(kit, boxes, made):
        if total is None:
            missing.append(name)
        else:
            paid[kind] = paid.get(kind, Decimal(0)) + total / boxes
    return Costs(paid, missing)


def _paid(kit: Boxed, boxes: int, made: Together) -> Iterator[tuple[str, str, Decimal | None]]:
    """Each thing that is paid for: its kind, its name, and what all boxes pay; None where that is not known."""
    say, buy = kit.plan.words.say, kit.shop.get("buy", {})
    for asked in asked_of(kit.plan):
        pack = pack_of(asked, buy)
        unit = counted_in(asked, pack)
        name = say(Prices.COLOURED, yarn=asked.name, colour=asked.colour) if asked.colour else asked.name
        counted = boxes * Decimal(asked.counted(unit))
        if counted:
            yield asked.kind, name or say(_NAMES[asked.kind]), packed(counted, pack)
    if made.sheets:
        spare = max((made.sheets * _MISPRINTS).to_integral_value(ROUND_CEILING), Decimal(_LEAST_MISPRINTS))
        found = buy.get("paper")
        price = Decimal(repr(found["price"])) if found and "price" in found else None
        pack = Pack("", Decimal(found["sheets"]), "sheet", price) if found else None
        yield "paper", say(Prices.PAPER), packed(made.sheets + spare, pack)
    if made.boards:
        yield "board", say(Prices.BOARDS), None if made.board is None else made.boards * _exact(made.board)
        known = made.minutes is not None and made.minute is not None
        cutting = _exact(made.minutes or Fraction(0)) * _exact(made.minute or Fraction(0)) if known else None
        yield "cutting", say(Prices.CUTTING), cutting
    hours = Decimal(repr(buy["minutes"])) / 60 if "minutes" in buy else None
    work = None if hours is None or "hour" not in buy else hours * Decimal(repr(buy["hour"])) * boxes
    yield "work", say(Prices.WORK), work


def packed(counted: Decimal, pack: Pack | None) -> Decimal | None:
    """What whole packs cost that hold so much."""
    if pack is None or pack.size is None or pack.price is None:
        return None
    return max((counted * (1 - _SAME) / pack.size).to_integral_value(ROUND_CEILING), Decimal(1)) * pack.price


def _exact(value: Fraction) -> Decimal:
    return Decimal(value.numerator) / Decimal(value.denominator)


__all__ = ["Boxed", "Costs", "Lines", "Together", "costs_of", "lines_of", "money_of", "packed", "price_of"]
