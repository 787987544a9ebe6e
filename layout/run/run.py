"""A run: so many boxes of each of several kits, printed together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from layout.messages.catalogue import Catalogue
from layout.plan import Plan


class RunKit(NamedTuple):
    """One kit of a run: its plan, and how many boxes of it are made."""

    plan: Plan
    copies: int


@dataclass(frozen=True, slots=True)
class Run:
    """The kits of the range `name`; what is of all of them is said in the language of the first one."""

    name: str
    kits: tuple[RunKit, ...]

    @property
    def words(self) -> Catalogue:
        """What is said with."""
        return self.kits[0].plan.words

    @property
    def boxes(self) -> int:
        """How many boxes there are in all."""
        return sum(kit.copies for kit in self.kits)
