"""Refusals of a kit of a range: each says, behind its key, which kit it is of."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from typing import NamedTuple

from layout.messages.catalogue import Message
from layout.messages.roles import Refusal
from layout.messages.roles.ranges import RangeNeed
from layout.values.errors import FieldError, FieldErrors


class KitFieldError(FieldError):
    """The refusal of one input of one kit; `field` is the key, `kit` the name of the kit, or its number in the file."""

    def __init__(self, error: FieldError, kit: str | int) -> None:
        super().__init__(error.field, error.needed, error.got, error.suggestion)
        self.offering(*error.use)
        self.kit = kit
        role = RangeNeed.OF_NUMBER if isinstance(kit, int) else RangeNeed.OF_KIT
        where = Message(role, {"field": error.field, "kit": kit})
        sentence = Message(self.needed.role, {**self.needed.values, "got": self.got, "example": self.suggestion})
        self.message = Message(Refusal.AT, {"field": where, "sentence": sentence})
        self.args = (self._text(),)

    def at(self, field: str, example: Message | str | None = None) -> FieldError:
        """The same refusal at another key of the same kit."""
        return KitFieldError(FieldError(field, self.needed, self.got, self.suggestion).at(field, example), self.kit)


def in_kit(error: FieldError, kit: str | int) -> FieldError:
    """The same refusal with the kit it is of; one that says so already is left as it is."""
    return error if isinstance(error, KitFieldError) else KitFieldError(error, kit)


class Refused(NamedTuple):
    """What is wrong with the kit of that name, and the keys that it takes from the range."""

    name: str
    errors: Sequence[FieldError]
    taken: Collection[str] = ()

    def own(self, shared: Collection[str]) -> Iterator[FieldError]:
        """Its refusals but for the `shared` ones. What it is to leave out and the range says, it must go without."""
        for error in self.errors:
            if str(error) not in shared:
                yield in_kit(_going_without(error) if error.field in self.taken else error, self.name)


def _going_without(error: FieldError) -> FieldError:
    asked = error.suggestion
    if not isinstance(asked, Message) or asked.role != Refusal.LEAVE_OUT:
        return error
    return error.at(error.field, f'without = ["{error.field}"]')


def said_of_all(found: Sequence[Refused], *, alone: bool = False) -> FieldErrors | None:
    """The refusals of all kits, in their order: what is wrong with all in the same way is said once, alone.

    Those of a kit that is `alone` are left as they are.
    """
    if len(found) > 1 or alone:
        shared = set.intersection(*({str(error) for error in each.errors} for each in found))
    else:
        shared = set()
    first = [error for each in found[:1] for error in each.errors if str(error) in shared]
    own = [error for each in found for error in each.own(shared)]
    return FieldErrors([*first, *own]) if first or own else None
