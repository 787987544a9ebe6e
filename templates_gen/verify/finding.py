"""What a proof finds: each thing that is wrong as a message with its place, and how far the rest is off."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, replace

from layout.messages.catalogue import Message, Role
from templates_gen.messages.language import message
from templates_gen.messages.roles.proof import Proof
from templates_gen.verify import LIMIT


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that is wrong: its message, and the places `where` it is, the outermost first."""

    what: Message
    where: tuple[Message, ...] = ()

    def at(self, place: Message) -> Finding:
        """The same, within a place."""
        return replace(self, where=(place, *self.where))

    def __str__(self) -> str:
        """The sentence, its places before it."""
        said = message(self.what.role, **self.what.values)
        for place in reversed(self.where):
            said = message(Proof.AT, place=place, finding=said)
        return said


@dataclass(frozen=True, slots=True)
class Findings:
    """`deviation` is the largest distance in mm between where something is and should be; `problems` what is wrong."""

    deviation: float
    problems: tuple[Finding, ...]

    @property
    def sound(self) -> bool:
        """Whether nothing is wrong and nothing lies further off than the limit."""
        return not self.problems and self.deviation <= LIMIT

    @property
    def sentences(self) -> tuple[str, ...]:
        """The problems in words."""
        return tuple(map(str, self.problems))

    def at(self, place: Message) -> Findings:
        """The same, within a place."""
        return Findings(self.deviation, tuple(problem.at(place) for problem in self.problems))

    def __add__(self, other: Findings) -> Findings:
        return Findings(max(self.deviation, other.deviation), self.problems + other.problems)


NOTHING = Findings(0.0, ())


def finding(role: Role, **values: object) -> Finding:
    """One thing that is wrong; a value that is a role is said in words too."""
    return Finding(said(role, **values))


def said(role: Role, **values: object) -> Message:
    """A message with its values, those that are roles as messages of their own."""
    return Message(role, {name: Message(each) if isinstance(each, Role) else each for name, each in values.items()})


def wrong(role: Role, **values: object) -> Findings:
    """One thing that is wrong, and nothing else."""
    return Findings(0.0, (finding(role, **values),))


def said_once(sentences: Iterable[str]) -> list[str]:
    """Every sentence once, in order, with how often it came: "3 times: a wind mark is missing"."""
    counted = Counter(sentences).items()
    return [message(Proof.TIMES, count=count, finding=each) if count > 1 else each for each, count in counted]


def once(problems: Iterable[Finding]) -> list[Finding]:
    """Every problem once, in order."""
    return list({str(problem): problem for problem in problems}.values())


def end_place(end: str) -> Message:
    """The frame end as a place."""
    return said(Proof.NEAR if end == "near" else Proof.FAR)
