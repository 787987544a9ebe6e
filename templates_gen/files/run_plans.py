"""The plans of the kits of a range."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TypeVar

from layout.box.needs import needs
from layout.box.shop import Shop
from layout.box.shop_check import shop_errors
from layout.kit.range_errors import Refused, in_kit, said_of_all
from layout.plan import Plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.files.kept import planned
from templates_gen.inputs.range_file import Range

_T = TypeVar("_T")


def plans_of(kits: Range) -> tuple[Plan, ...]:
    """The plan of each kit of a range.

    FieldError where a kit alone cannot be woven; FieldErrors with the refusals of all such kits of a range, each with
    the kit's name, or of what the maker buys and no kit has.
    """
    plans = of_each(kits, lambda place: planned(kits.kits[place].kit))
    if wrong := tuple(shop_errors(kits.shop, map(needs, plans))) if _buys_by_name(kits.shop) else ():
        raise FieldErrors(wrong)
    return plans


def of_each(kits: Range, made: Callable[[int], _T]) -> tuple[_T, ...]:
    """What is `made` of each kit, by its place; errors as of `plans_of` where that is refused."""
    found: list[_T] = []
    refused: list[Refused] = []
    for place, each in enumerate(kits.kits):
        try:
            found.append(made(place))
            refused.append(Refused(each.kit.name, ()))
        except FieldError as error:
            if kits.alone:
                raise
            refused.append(Refused(each.kit.name, (error,)))
    if errors := said_of_all(refused):
        raise errors
    return tuple(found)


@contextmanager
def named(kits: Range, kit: str) -> Iterator[None]:
    """A refusal from here on says which kit of a range it is of."""
    try:
        yield
    except FieldError as error:
        if kits.alone:
            raise
        raise in_kit(error, kit) from None


def _buys_by_name(shop: Shop) -> bool:
    """Whether anything is bought by the name that a kit gives it."""
    return bool(shop.colours or shop.also)
