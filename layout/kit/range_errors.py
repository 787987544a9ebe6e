"""Refusals of a kit of a range: each says, behind its key, which kit it is of."""

from __future__ import annotations

from collections.abc import Sequence

from layout.messages.catalogue import Message
from layout.messages.roles import Refusal
from layout.messages.roles.ranges import RangeNeed
from layout.values.errors import FieldError, FieldErrors


class KitFieldError(FieldError):
    """The refusal of one input of one kit; `field` is the key, `kit` the name of the kit, or its number in the file."""

    def __init__(self, error: FieldError, kit: str | int) -> None:
        super().__init__(error.field, error.needed, error.got, error.suggestion)
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


def said_of_all(found: Sequence[tuple[str, Sequence[FieldError]]], *, alone: bool = False) -> FieldErrors | None:
    """The refusals of all kits, by name, in their order: what is wrong with all in the same way is said once, alone.

    Those of a kit that is `alone` are left as they are.
    """
    if len(found) > 1 or alone:
        shared = set.intersection(*({str(error) for error in errors} for _, errors in found))
    else:
        shared = set()
    first = [error for _, errors in found[:1] for error in errors if str(error) in shared]
    own = [in_kit(error, name) for name, errors in found for error in errors if str(error) not in shared]
    return FieldErrors([*first, *own]) if first or own else None
