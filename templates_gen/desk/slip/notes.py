"""What asks for care in a plan, by the field or the number that it concerns."""

from __future__ import annotations

from typing import NamedTuple

from layout.messages.catalogue import Catalogue, Said
from layout.plan import Plan


class Note(NamedTuple):
    """A warning or a question: `about` is the name of a field, or of a number or product; "" where it is of all."""

    about: str
    say: str


def notes_of(plan: Plan | None, words: Catalogue) -> tuple[Note, ...]:
    """The warnings of a plan, in its order."""
    return tuple(Note(_about(each), words.again(each)) for each in plan.warnings) if plan else ()


def _about(warning: str) -> str:
    key = warning.values.get("key") if isinstance(warning, Said) else None
    return str(key) if key else ""
