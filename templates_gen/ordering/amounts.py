"""What a box takes as plain figures, which a journal can keep and another process can send, and back."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import cast

from layout.box.needs import Kind, Need, Taken
from layout.box.shop import Unit
from layout.values.quantity import Quantity, measured
from templates_gen.ordering.result import Amount


def amounts_of(needs: Iterable[Need]) -> tuple[Amount, ...]:
    """Each thing in each unit in which it is known; those of one thing follow each other."""
    return tuple(_amount(need, unit) for need in needs for unit in need.taken)


def _amount(need: Need, unit: Unit) -> Amount:
    amount = need.taken[unit].amount
    sums = amount.value, amount.low, amount.high, need.spare(unit)
    return Amount(need.kind, str(need.name), str(need.colour), unit, need.figure(unit), *sums, need.ball_g)


def needs_of(amounts: Iterable[Amount]) -> tuple[Need, ...]:
    """The things again, each bought by the same figures; how they are known is lost."""
    return tuple(map(_need, _things(amounts)))


def _things(amounts: Iterable[Amount]) -> Iterator[list[Amount]]:
    """The amounts of each thing: the same name again, in a unit that it had not yet."""
    held: list[Amount] = []
    for each in amounts:
        if held and (each[:3] != held[0][:3] or each.unit in [one.unit for one in held]):
            yield held
            held = []
        held.append(each)
    if held:
        yield held


def _need(held: list[Amount]) -> Need:
    first = held[0]
    taken = {cast(Unit, each.unit): _taken(each) for each in held}
    sampled = all(each.figure == each.likely + each.spare for each in held)
    return Need(cast(Kind, first.kind), first.name, first.colour, taken, sampled, first.ball_g)


def _taken(each: Amount) -> Taken:
    return Taken(_figure(each.likely, each.low, each.high), _figure(each.spare, each.spare, each.spare))


def _figure(likely: float, low: float, high: float) -> Quantity:
    return measured(likely, "", low, high)
