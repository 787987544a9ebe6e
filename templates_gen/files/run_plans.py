"""The plans of the kits of a range."""

from __future__ import annotations

from layout.box.needs import needs
from layout.box.shop import Shop
from layout.box.shop_check import shop_errors
from layout.kit.range_errors import Refused, said_of_all
from layout.plan import Plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.files.kept import planned
from templates_gen.inputs.range_file import Range


def plans_of(kits: Range) -> tuple[Plan, ...]:
    """The plan of each kit of a range.

    FieldError where a kit alone cannot be woven; FieldErrors with the refusals of all such kits of a range, each with
    the kit's name, or of what the maker buys and no kit has.
    """
    plans: list[Plan] = []
    refused: list[Refused] = []
    for each in kits.kits:
        try:
            plans.append(planned(each.kit))
            refused.append(Refused(each.kit.name, ()))
        except FieldError as error:
            if kits.alone:
                raise
            refused.append(Refused(each.kit.name, (error,)))
    if errors := said_of_all(refused):
        raise errors
    if wrong := tuple(shop_errors(kits.shop, map(needs, plans))) if _named(kits.shop) else ():
        raise FieldErrors(wrong)
    return tuple(plans)


def _named(shop: Shop) -> bool:
    """Whether anything is bought by the name that a kit gives it."""
    return bool(shop.colours or shop.also)
