"""What to buy, in one sentence for people and as plain values for programs."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from fractions import Fraction
from math import ceil, floor

from layout.box.buying import Purchase
from layout.box.scopes import Scope
from layout.values.numerals import say_fixed, say_number
from layout.yarns.yarn_counts import OUNCE_G, YARD_M
from templates_gen.messages.language import listed, message
from templates_gen.messages.roles.buying import Buy
from templates_gen.messages.roles.screen import Measure

_METRIC = {"g": (Measure.GRAMS, Fraction(1)), "m": (Measure.METRES, Fraction(1))}
_IMPERIAL = {"g": (Measure.OUNCES, OUNCE_G), "m": (Measure.YARDS, YARD_M)}
_WHOLE = 10  # from so many on there are no decimals


def buy_sentences(bought: Sequence[Purchase], currency: str, *, imperial: bool = False) -> tuple[str, ...]:
    """What to buy and, where anything has a price, what that comes to; amounts in the units of the kits."""
    things = [_thing(each, imperial=imperial) for each in bought if each.needed]
    line = message(Buy.LINE, things=listed(things)) if things else message(Buy.NOTHING)
    paid = [each.paid for each in bought if each.needed and each.paid is not None]
    if not paid:
        return (line,)
    money = say_fixed(sum(paid, Fraction(0)), 2)
    lacking = [_name(each) for each in bought if each.paid is None]
    if lacking:
        return line, message(Buy.PAID_LEAST, money=money, currency=currency, things=listed(lacking))
    return line, message(Buy.PAID, money=money, currency=currency)


def _thing(bought: Purchase, *, imperial: bool) -> str:
    if bought.kind == "board":
        return message(Buy.BOARDS, boards=int(bought.needed))
    packs, pack = bought.packs, bought.pack
    if bought.unit == "piece" and (packs is None or pack is None or pack.size == 1):
        return message(Buy.PIECES, pieces=int(bought.needed), thing=_name(bought))
    if packs is None or pack is None or pack.size is None or bought.left is None:
        needed = _amount(bought.needed, bought.unit, imperial=imperial, by=ceil)
        return message(Buy.UNPACKED, amount=needed, thing=_name(bought))
    if pack.pack:
        count = message(Buy.PACKS, packs=packs, pack=pack.pack)
    else:
        count = message(Buy.BALLS if bought.kind in ("warp", "weft") else Buy.OF_PACKS, packs=packs)
    values = {"packs": count, "thing": _name(bought), "size": _amount(pack.size, bought.unit, imperial=imperial)}
    if left := _amount(bought.left, bought.unit, imperial=imperial, by=floor):
        return message(Buy.THING_LEFT, left=left, **values)
    return message(Buy.THING, **values)


def _name(bought: Purchase) -> str:
    """What is bought, with its colour."""
    own = {"leash_cord": Buy.CORD, "paper": Buy.PAPER}.get(bought.kind)
    if own:
        return message(own)
    if bought.kind == "board":
        return message(Buy.BOARDS, boards=int(bought.needed))
    return message(Buy.COLOURED, yarn=bought.name, colour=bought.colour) if bought.colour else bought.name


def _amount(value: Fraction, unit: str, *, imperial: bool, by: Callable[[Fraction], int] = round) -> str:
    """An amount in whole units, in tenths where it is small; nothing where that is nothing."""
    if unit in ("sheet", "piece"):
        number = by(value)
        return "" if not number else message(Buy.SHEETS, sheets=number) if unit == "sheet" else say_number(number)
    role, each = (_IMPERIAL if imperial else _METRIC)[unit]
    tenths = value / each < _WHOLE
    number = by(value / each * (10 if tenths else 1))
    return message(role, number=say_number(Fraction(number, 10 if tenths else 1))) if number else ""


def buy_values(scopes: Iterable[Scope]) -> list[dict[str, object]]:
    """For programs: every thing to buy of every scope, exact figures as floats, null where it is not known."""
    return [
        {
            "scope": scope.scope,
            "kit": scope.kit or None,
            "boxes": scope.boxes,
            "kind": bought.kind,
            "name": bought.name or None,
            "colour": bought.colour or None,
            "unit": bought.unit,
            "needed": float(bought.likely),
            "needed_low": float(bought.low),
            "needed_high": float(bought.high),
            "spare": float(bought.spare),
            "bought_for": float(bought.needed),
            "pack": bought.pack.pack if bought.pack else None,
            "pack_size": _number(bought.pack.size if bought.pack else None),
            "packs": bought.packs,
            "left": _number(bought.left),
            "price_each": _number(bought.pack.price if bought.pack else None),
            "paid": _number(bought.paid),
        }
        for scope in scopes
        for bought in scope.bought
    ]


def _number(value: Fraction | None) -> float | None:
    return None if value is None else float(value)
