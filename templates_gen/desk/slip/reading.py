"""What is typed on the slip, read: the kit, its plan, its stock, and what cannot be read, at the field it is of."""

from __future__ import annotations

from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from templates_gen.desk.slip.chips import Use, ways_out
from templates_gen.desk.slip.judging import judged
from templates_gen.desk.slip.notes import Note, notes_of
from templates_gen.desk.slip.shape import Typed

__all__ = ["Note", "Read", "Trouble", "Use", "read"]


class Trouble(NamedTuple):
    """What cannot be read in a `field`, in the sentence of the command line, and what can be clicked instead."""

    field: str
    say: str
    use: tuple[Use, ...] = ()


class Read(NamedTuple):
    """What the slip reads as. Where there are troubles, what they are of is None."""

    kit: Kit | None
    plan: Plan | None
    stock: Stock | None
    troubles: tuple[Trouble, ...]
    notes: tuple[Note, ...] = ()


def read(typed: Typed, words: Catalogue) -> Read:
    """What is typed, read and planned, with every refusal in the language of `words`; nothing that is typed raises."""
    found = judged(typed)
    troubles = tuple(
        Trouble(each.field, each.error.said(words), ways_out(typed, found, each)) for each in found.refusals
    )
    return Read(found.kit, found.plan, found.stock, troubles, notes_of(found.plan, words))
