"""Which lines are still the example's, as links to them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from templates_gen.desk.page.asked import Asked
from templates_gen.desk.slip.forms import Line, Row, Step, lines_in


@dataclass(frozen=True, slots=True)
class LineLink:
    """A line of the slip to go to."""

    name: str
    label: str


def waiting_in(steps: Sequence[Step], asked: Asked) -> tuple[LineLink, ...]:
    """The lines that stand first and are still the example's; a row of a table is one."""
    first = (row for step in steps for group in step.groups if not group.summary for row in group.rows)
    return tuple(link for row in first for link in _waiting(row, asked))


def examples_in(steps: Sequence[Step], asked: Asked) -> tuple[LineLink, ...]:
    """The same, and the first such line of each "+"."""
    return (*waiting_in(steps, asked), *_further(steps, asked))


def _waiting(row: Row, asked: Asked) -> Iterator[LineLink]:
    if isinstance(row, Line):
        if row.name in asked.examples:
            yield LineLink(row.name, asked.words.say(row.label))
        return
    for number, inner in enumerate(row.rows, 1):
        still = [line.name for line in lines_in(inner) if line.name in asked.examples]
        if still:
            yield LineLink(still[0], row.named(number, asked.words))


def _further(steps: Sequence[Step], asked: Asked) -> Iterator[LineLink]:
    for group in (group for step in steps for group in step.groups if group.summary):
        still = [line for line in group.lines if line.name in asked.examples]
        if still and group.summary:
            yield LineLink(still[0].name, asked.words.say(group.summary, lines=len(still)))
