"""A range as a table, a row for each kit; for programs all of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from layout.box.buying import Purchase, Wanted, purchases
from layout.box.needs import needs
from layout.box.shop import Shop
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.quantity import Quantity, combine
from templates_gen.inputs.range_file import Range, RangeKit
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.ranges import Table
from templates_gen.messages.roles.screen import Measure
from templates_gen.screen.origins import origin_values, origins_of
from templates_gen.screen.ranges import LONG, WEIGHT, Unit, about
from templates_gen.screen.report import CM, INCH, plan_values
from templates_gen.screen.tables import columned

_YARNS = ("warp", "weft", "leash_cord")


def range_table(found: Range, plans: Sequence[Plan]) -> str:
    """Its name, a row for each kit, and all boxes together."""
    boxes = sum(each.copies for each in found.kits)
    heads = [message(role) for role in _HEADS]
    rows = [_row(each, planned, found.shop) for each, planned in zip(found.kits, plans, strict=True)]
    imperial = plans[0].warp.sett.unit.imperial
    copies = [each.copies for each in found.kits]
    together = [message(Table.TOGETHER), str(boxes), "", "", ""]
    for units, figures in ((LONG, _warps(plans)), (WEIGHT, _wefts(plans))):
        whole = _sum(figures, copies)
        together.append(_said(whole, units, imperial=imperial) if whole else "")
    together.append(_packs(bought(found, plans)))
    title = message(Table.TITLE, name=found.name, kits=message(Table.KITS, number=len(rows)), boxes=_boxes(boxes))
    return "\n".join([title, *columned([heads, *rows, together])])


_HEADS = (Table.KIT, Table.BOXES, Table.SETT, Table.ENDS, Table.WINDS, Table.WARP, Table.WEFT, Table.PACKS)


def _boxes(number: int) -> str:
    return message(Table.NUMBER_OF_BOXES, number=number)


def _row(each: RangeKit, planned: Plan, shop: Shop) -> list[str]:
    warp, imperial = planned.warp, planned.warp.sett.unit.imperial
    sett = warp.sett.per_mm
    first = (
        message(Measure.PER_CM, number=say_number(sett * CM, 2)),
        message(Measure.PER_INCH, number=say_number(sett * INCH, 2)),
    )
    weft = planned.amounts.weft_total_g
    length = planned.amounts.warp_total_m
    return [
        each.kit.name,
        str(each.copies),
        listed(first[::-1] if imperial else first),
        str(warp.ends),
        str(warp.winds or ""),
        _said(length, LONG, imperial=imperial) if length else "",
        _said(weft, WEIGHT, imperial=imperial) if weft else "",
        _packs(purchases([Wanted(needs(planned), each.copies)], shop)),
    ]


def _said(figure: Quantity, units: Sequence[Unit], *, imperial: bool) -> str:
    """The figure in the kit's own system alone."""
    own = units[1] if imperial else units[0]
    return about(figure, (own,))


def _warps(plans: Iterable[Plan]) -> list[Quantity | None]:
    return [planned.amounts.warp_total_m for planned in plans]


def _wefts(plans: Iterable[Plan]) -> list[Quantity | None]:
    return [planned.amounts.weft_total_g for planned in plans]


def _sum(figures: Sequence[Quantity | None], copies: Sequence[int]) -> Quantity | None:
    """All boxes together; nothing where that of one is not known."""
    known = [figure.scaled(number) for figure, number in zip(figures, copies, strict=True) if figure is not None]
    if len(known) < len(figures):
        return None
    return combine(lambda *each: sum(each), known[0].reason, *known)


def bought(found: Range, plans: Sequence[Plan]) -> tuple[Purchase, ...]:
    """What the yarns of all boxes together are bought as, and what else lies in them."""
    wanted = [Wanted(needs(planned), each.copies) for each, planned in zip(found.kits, plans, strict=True)]
    return purchases(wanted, found.shop)


def _packs(found: Iterable[Purchase]) -> str:
    """How many balls, cones and hanks of yarn and cord."""
    numbers: dict[str, int] = {}
    for purchase in found:
        if purchase.kind in _YARNS and purchase.pack and purchase.packs:
            name = purchase.pack.pack or message(Table.BALL)
            numbers[name] = numbers.get(name, 0) + purchase.packs
    return listed([message(Table.PACK, number=number, pack=name) for name, number in numbers.items()])


def range_values(found: Range, plans: Sequence[Plan], notes: Sequence[Iterable[str]]) -> dict[str, object]:
    """For programs: every kit as `plan` gives it, with how many boxes there are and where each value comes from."""
    each = zip(found.kits, plans, notes, strict=True)
    return {
        "name": found.name,
        "boxes": sum(kit.copies for kit in found.kits),
        "kits": [
            {
                "name": kit.kit.name,
                "folder": kit.folder,
                "copies": kit.copies,
                **plan_values(planned, of_kit),
                "from": origin_values(origins_of(found, kit)),
            }
            for kit, planned, of_kit in each
        ],
        "buy": [_purchase(one) for one in bought(found, plans)],
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
