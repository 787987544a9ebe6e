"""A range as a table, a row for each kit; for programs all of it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from layout.box.buying import Purchase, Wanted, purchases
from layout.box.needs import needs
from layout.box.shop import Shop
from layout.messages.roles.ranges import OverviewSheet
from layout.values.numerals import say_fixed, say_number
from layout.values.quantity import Quantity
from templates_gen.files.run_outputs import Planned, RunOutputs
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.ranges import Table
from templates_gen.screen.origins import origin_values, origins_of
from templates_gen.screen.ranges import LONG, WEIGHT, bare
from templates_gen.screen.report import CM, INCH, plan_values
from templates_gen.screen.tables import columned

_YARNS = ("warp", "weft", "leash_cord")


def range_table(outputs: RunOutputs) -> str:
    """The name of the range, a row for each kit, all boxes together; then what the numbers are of, and packs by kit."""
    found, whole = outputs.range, outputs.whole
    title = message(
        Table.TITLE,
        name=found.name,
        kits=message(Table.KITS, number=len(found.kits)),
        boxes=message(Table.NUMBER_OF_BOXES, number=whole.boxes),
    )
    columns = [
        column for column in zip(_heads(outputs), *_rows(outputs), _together(outputs), strict=True) if any(column[1:])
    ]
    packs = [[message(Table.KIT), message(Table.PACKS)]]
    packs += [[each.kit.kit.name, _packs(_bought_alone(each, found.shop))] for each in outputs.kits]
    packs.append([message(Table.TOGETHER), _packs(outputs.scopes[-1].bought)])
    said = [message(OverviewSheet.OF_ONE), message(OverviewSheet.OF_ALL)]
    said += [message(OverviewSheet.COSTS)] if _priced(outputs) else []
    return "\n".join([title, *columned(list(zip(*columns, strict=True))), *said, *columned(packs)])


def _heads(outputs: RunOutputs) -> list[str]:
    imperial, currency = _imperial(outputs), outputs.range.shop.currency
    roles = (
        Table.KIT,
        Table.BOXES,
        OverviewSheet.PER_INCH if imperial else OverviewSheet.PER_CM,
        Table.ENDS,
        Table.WINDS,
        OverviewSheet.WARP_YD if imperial else OverviewSheet.WARP_M,
        OverviewSheet.WEFT_OZ if imperial else OverviewSheet.WEFT_G,
        OverviewSheet.SHEETS,
        OverviewSheet.BOARDS,
    )
    money = (Table.COST_IN, Table.PRICE_IN) if currency else ()
    bare = () if currency else (Table.COST, Table.PRICE)
    return [*map(message, roles), *(message(role, currency=currency) for role in money), *map(message, bare)]


def _rows(outputs: RunOutputs) -> Iterator[list[str]]:
    imperial, priced = _imperial(outputs), _priced(outputs)
    for row in outputs.rows:
        yield [
            row.name,
            str(row.boxes),
            say_number(row.sett * (INCH if imperial else CM), 2),
            str(row.ends),
            str(row.winds or ""),
            *_amounts(row.warp_m, row.weft_g, imperial=imperial),
            str(row.singly.each + row.singly.once),
            str(row.singly.boards or ""),
            _money(row.quote.cost.whole) if priced else "",
            _money(row.quote.price.each) if row.quote.price else "",
        ]


def _together(outputs: RunOutputs) -> list[str]:
    whole = outputs.whole
    return [
        message(Table.TOGETHER),
        str(whole.boxes),
        *("", "", ""),
        *_amounts(whole.warp_m, whole.weft_g, imperial=_imperial(outputs)),
        str(whole.sheets),
        str(whole.boards or ""),
        _money(whole.cost) if _priced(outputs) else "",
        _money(whole.price) if whole.price is not None else "",
    ]


def _amounts(warp: Quantity | None, weft: Quantity | None, *, imperial: bool) -> Iterator[str]:
    """Without their units, which stand at the head."""
    for figure, units in ((warp, LONG), (weft, WEIGHT)):
        yield bare(figure, units[1] if imperial else units[0]) if figure else ""


def _money(value: Fraction) -> str:
    return say_fixed(value, 2)


def _imperial(outputs: RunOutputs) -> bool:
    return outputs.kits[0].plan.warp.sett.unit.imperial


def _priced(outputs: RunOutputs) -> bool:
    """Whether anything is bought or sold for money."""
    return bool(outputs.range.shop.currency) or any(row.quote.price for row in outputs.rows)


def _bought_alone(each: Planned, shop: Shop) -> tuple[Purchase, ...]:
    return purchases([Wanted(needs(each.plan), each.kit.copies)], shop)


def _packs(found: Iterable[Purchase]) -> str:
    """How many balls, cones and hanks of yarn and cord."""
    numbers: dict[str, int] = {}
    for purchase in found:
        if purchase.kind in _YARNS and purchase.pack and purchase.packs:
            name = purchase.pack.pack or message(Table.BALL)
            numbers[name] = numbers.get(name, 0) + purchase.packs
    return listed([message(Table.PACK, number=number, pack=name) for name, number in numbers.items()])


def range_values(outputs: RunOutputs, notes: Sequence[Iterable[str]]) -> dict[str, object]:
    """For programs: every kit as `plan` gives it, with how many boxes there are, what one takes and costs, and where
    each value comes from; then what the whole run takes.
    """
    found, whole, totals = outputs.range, outputs.whole, outputs.printing.totals
    return {
        "name": found.name,
        "boxes": whole.boxes,
        "kits": [
            {
                "name": row.name,
                "folder": row.folder,
                "copies": row.boxes,
                **plan_values(each.plan, of_kit),
                "sheets_in_box": row.singly.each,
                "sheets_once": row.singly.once,
                "boards": row.singly.boards,
                "cost": float(row.quote.cost.whole),
                "cost_is": "part" if row.quote.cost.missing else "all",
                "price": float(row.quote.price.each) if row.quote.price else None,
                "from": origin_values(origins_of(found, each.kit)),
            }
            for each, row, of_kit in zip(outputs.kits, outputs.rows, notes, strict=True)
        ],
        "sheets": totals.sheets,
        "singly": totals.singly,
        "least": totals.least,
        "placed": totals.placed,
        "waste": round(totals.waste, 4),
        "boards": whole.boards,
        "cost": float(whole.cost),
        "price": None if whole.price is None else float(whole.price),
        "currency": found.shop.currency or None,
        "buy": [_purchase(one) for one in outputs.scopes[-1].bought],
    }


def _purchase(one: Purchase) -> dict[str, object]:
    return {
        "kind": one.kind,
        "name": one.name or None,
        "colour": one.colour or None,
        "unit": one.unit,
        "needed": float(one.needed),
        "pack": one.pack.pack or None if one.pack else None,
        "pack_size": float(one.pack.size) if one.pack and one.pack.size is not None else None,
        "packs": one.packs,
        "left": None if one.left is None else float(one.left),
    }
