"""The table of what to buy proven: each cell again from kits, copies, packs and prices, in decimals."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from decimal import ROUND_CEILING, ROUND_HALF_UP, Decimal
from fractions import Fraction
from itertools import chain
from typing import Any, NamedTuple

from layout.plan import Plan
from templates_gen.verify.finding import Findings
from templates_gen.verify.run.table_rows import CENT, PLACES, Amount, Wanted, compared
from templates_gen.verify.run.to_buy_numbers import Asked, asked_of

HEAD = (
    "scope", "kit", "boxes", "kind", "name", "colour", "unit", "needed", "needed_low", "needed_high", "spare",
    "bought_for", "pack", "pack_size", "packs", "left", "price_each", "paid", "currency",
)  # fmt: skip
_SIZES = {"grams": "g", "length": "m", "sheets": "sheet", "number": "piece"}
_SAME = Decimal("1e-9")
_MISPRINTS, _LEAST_MISPRINTS = Decimal("0.02"), 2
_ORDER = ("warp", "weft", "leash_cord", "bought_in")


class Boxes(NamedTuple):
    """So many boxes of a kit, by its plan."""

    plan: Plan
    boxes: int


class Bought(NamedTuple):
    """What a run takes besides: sheets, boards, what a board costs."""

    sheets: int = 0
    boards: int = 0
    board_price: Fraction | None = None


class Pack(NamedTuple):
    """How a thing is sold: what a pack is called, how much of the unit is in it, what it costs."""

    name: str
    size: Decimal | None
    unit: str
    price: Decimal | None


def prove_to_buy(
    rows: Sequence[Sequence[str]], kits: Sequence[Boxes], shop: Mapping[str, Any], run: Bought
) -> Findings:
    """Every row of the table that was read; `shop` are the plain values of [buy] and [class]."""
    return compared(rows, HEAD, _scopes(kits, shop, run))


def prove_bought(
    rows: Iterable[Sequence[str]],
    every: Iterable[tuple[Sequence[Asked], int]],
    boxes: int,
    shop: Mapping[str, Any],
    run: Bought,
) -> Findings:
    """The same of a table of a run alone: of `every` order what one box takes and how many there are, and all boxes."""
    head = "run", "", str(boxes)
    return compared(rows, HEAD, chain(_rows(head, every, shop), _made_of(head, shop, run)))


def _scopes(kits: Sequence[Boxes], shop: Mapping[str, Any], run: Bought) -> Iterator[Wanted]:
    """All rows: each kit, a class with each, the run."""
    every = [(plan.kit.name, asked_of(plan), boxes) for plan, boxes in kits]
    for name, asked, boxes in every:
        yield from _rows(("kit", name, str(boxes)), [(asked, boxes)], shop)
    people = shop.get("class", {}).get("people", 0)
    for name, asked, _ in every if people else ():
        yield from _rows(("class", name, str(people)), [(asked, people)], shop)
    head = "run", "", str(sum(boxes for _, boxes in kits))
    yield from _rows(head, [(asked, boxes) for _, asked, boxes in every], shop)
    yield from _made_of(head, shop, run)


def _rows(
    head: tuple[str, ...], kits: Iterable[tuple[Sequence[Asked], int]], shop: Mapping[str, Any]
) -> Iterator[Wanted]:
    sums: dict[tuple[Any, ...], list[Decimal]] = {}
    for asked, boxes in kits:
        for one in asked:
            pack = pack_of(one, shop.get("buy", {}))
            unit = counted_in(one, pack)
            total = sums.setdefault((one.kind, one.name, one.colour, unit, pack), [Decimal(0)] * 5)
            for k, each in enumerate((*one.units[unit][:4], one.counted(unit))):
                total[k] += boxes * Decimal(each)
    for (kind, name, colour, unit, pack), total in sorted(sums.items(), key=lambda entry: _ORDER.index(entry[0][0])):
        yield _row((*head, kind, name, colour, unit), total, pack, shop)


def pack_of(asked: Asked, buy: Mapping[str, Any]) -> Pack | None:
    """How a thing is sold: by its own entry, else by that of all, else in the balls of the kit."""
    ball = None if asked.ball is None else Decimal(asked.ball)
    if asked.kind == "weft":
        entries = {entry["name"]: entry for entry in buy.get("colours", ())}
        names = (f"{asked.name}, {asked.colour}", asked.colour, asked.name) if asked.colour else (asked.name,)
        found = next((entries[name] for name in names if name in entries), buy.get("weft"))
    elif asked.kind == "bought_in":
        found = next((entry for entry in buy.get("also", ()) if entry["name"] == asked.name), None)
        found = found and {"number": 1, **found}
    else:
        found = buy.get("warp" if asked.kind == "warp" else "leash_cord")
    if not found:
        return Pack("", ball, "g", None) if ball and "g" in asked.units else None
    price = None if "price" not in found else Decimal(repr(found["price"]))
    for key, unit in _SIZES.items():
        if key in found:
            made = Pack(found.get("pack", ""), _size(found[key]), unit, price)
            return made if unit in asked.units else None
    return Pack(found.get("pack", ""), ball, "g", price)


def counted_in(asked: Asked, pack: Pack | None) -> str:
    """In what a thing is bought: as its packs are, else in g where its weight is known."""
    if pack is not None and pack.unit in asked.units:
        return pack.unit
    return next(unit for unit in ("g", "m", "piece") if unit in asked.units)


def _size(said: Any) -> Decimal:
    """How much is in a pack; a length as it is written back, in m, maybe as a fraction."""
    if not isinstance(said, str):
        return Decimal(repr(said))
    exact = Fraction(said.removesuffix(" m"))
    return Decimal(exact.numerator) / Decimal(exact.denominator)


def _row(head: tuple[str, ...], total: Sequence[Decimal], pack: Pack | None, shop: Mapping[str, Any]) -> Wanted:
    """The cells of one thing: as many packs as hold what is counted, and no more."""
    likely, counted, place = total[0], total[-1], PLACES[head[-1]]
    packs = left = paid = None
    if pack is not None and pack.size is not None:
        packs = (counted * (1 - _SAME) / pack.size).to_integral_value(ROUND_CEILING)
        packs = max(packs, Decimal(int(counted > 0)))
        left = max(packs * pack.size - likely, Decimal(0))
    if counted == 0:
        paid = Decimal(0)
    elif packs is not None and pack is not None and pack.price is not None:
        paid = packs * pack.price
    return (
        *head,
        *(Amount(each, place) for each in total),
        pack.name if pack else "",
        "" if pack is None or pack.size is None else Amount(pack.size, place),
        "" if packs is None else str(packs),
        "" if left is None else Amount(left, place),
        "" if pack is None or pack.price is None else _money(pack.price),
        "" if paid is None else _money(paid),
        shop.get("buy", {}).get("currency", ""),
    )


def _made_of(head: tuple[str, ...], shop: Mapping[str, Any], run: Bought) -> Iterator[Wanted]:
    """Paper, two in a hundred misprinted and at least two sheets, and boards."""
    if run.sheets:
        sheets = Decimal(run.sheets)
        spare = max((sheets * _MISPRINTS).to_integral_value(ROUND_CEILING), Decimal(_LEAST_MISPRINTS))
        found = shop.get("buy", {}).get("paper")
        price = Decimal(repr(found["price"])) if found and "price" in found else None
        pack = Pack(found.get("pack", ""), _size(found["sheets"]), "sheet", price) if found else None
        yield _row((*head, "paper", "", "", "sheet"), (sheets, sheets, sheets, spare, sheets + spare), pack, shop)
    if run.boards:
        boards, cost = Decimal(run.boards), run.board_price
        price = None if cost is None else Decimal(cost.numerator) / Decimal(cost.denominator)
        pack = Pack("", Decimal(1), "piece", price)
        yield _row((*head, "board", "", "", "piece"), (boards, boards, boards, Decimal(0), boards), pack, shop)


def _money(value: Decimal) -> str:
    return str(value.quantize(CENT, ROUND_HALF_UP))
