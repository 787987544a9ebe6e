"""What an input of a kit is: the form of one line of the table of inputs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from layout.messages.catalogue import Role
from layout.values.units import Length

Kind = Literal[
    "version", "name", "length", "width", "sett", "density", "whole", "flag", "choice", "size", "tables", "number",
    "colour", "force", "amount", "share", "count", "system", "height", "heading", "language",
    "names", "card", "sides", "mass", "link", "text", "lines", "deviation",
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Input:
    """One input: `low` and `high` bound a length in mm, `least` and `most` a number; `default` stands without it.

    `most` is also the number of characters of a text or link, of lines, and of entries of a list.

    Instead of a length some take one `word`.

    `help` is the role of what is said of it, a phrase that also stands in the refusal of a key that is missing. A
    `required` input has no default; a default of None means that leaving it out says something of its own. Dots in a
    key lead into tables, `[]` stands for each entry of a list of tables (of the kind "tables"). What stands
    `instead_of` another key of its table is not in an example of the whole table.
    """

    key: str
    kind: Kind
    help: Role
    example: str
    required: bool = False
    default: str | bool | int | None = None
    low: Length | None = None
    high: Length | None = None
    choices: tuple[str, ...] = ()
    least: Fraction = Fraction(1)
    most: Fraction = Fraction(10_000)
    word: str = ""
    instead_of: str = ""

    @property
    def leaf(self) -> str:
        """The key without its table."""
        return self.key.rpartition(".")[2]

    @property
    def table(self) -> str:
        """The key of the table that it stands in; empty at the top of the file."""
        return self.key.rpartition(".")[0]


def of_mm(mm: int) -> Length:
    """A whole number of millimetres as a limit."""
    return Length(Fraction(mm))


def tables_of(inputs: Iterable[Input]) -> tuple[str, ...]:
    """The key of every table that `inputs` stand in, outermost first; entries of lists are no tables of their own."""
    found: dict[str, None] = {}
    for spec in inputs:
        parts = spec.table.split(".") if spec.table else []
        found |= dict.fromkeys(".".join(parts[: size + 1]) for size in range(len(parts)))
    return tuple(key for key in found if not key.endswith("[]"))
