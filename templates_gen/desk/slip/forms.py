"""What the slip is made of: lines, tables of lines, groups and steps. All words are roles, to be said by the page."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Literal

from layout.kit.input import Input
from layout.messages.catalogue import Catalogue, Role
from templates_gen.desk.slip.texts import NO, YES
from templates_gen.messages.roles.desk_slip import DeskSlip

Control = Literal["text", "choice", "pictures", "flag", "names", "lines", "size", "system"]


@dataclass(frozen=True, slots=True)
class Choice:
    """One thing to choose: the `value` as it stands in the file, its `label`, and a drawing (SVG) or ""."""

    value: str
    label: Role
    picture: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """One key of the kit file, of the stock file ("stock/...") or of a run ("run/...") by the `name` of its field.

    A `placeholder` is an example as it would be typed, or what stands there if the line is left empty. A plain number
    takes one of `units`, the metric one or that of inches; where there are none, numbers stay plain. `choices` are
    those of choices and pictures, the sizes of a "size" and the names of "names"; other text than these is typed.
    """

    name: str
    spec: Input
    label: Role
    help: Role | None
    control: Control
    choices: tuple[Choice, ...] = ()
    placeholder: str = ""
    units: tuple[str, str] | None = None

    @property
    def usual(self) -> Choice | None:
        """The choice that stands where nothing is chosen; None where that says something of its own."""
        default = self.spec.default
        default = (YES if default else NO) if isinstance(default, bool) else default
        return next((each for each in self.choices if each.value == default), None)

    @property
    def required(self) -> bool:
        """Whether the file must have it."""
        return self.spec.required

    def empty(self, words: Catalogue) -> str:
        """What an empty choice is called: what stands then, or that it is not said."""
        return words.say(self.usual.label if self.usual else DeskSlip.LEFT_OUT)

    def chosen(self, text: str) -> str:
        """The value of the choice that is typed, in whatever capitals and spaces; "" for any other text."""
        word = " ".join(text.lower().split())
        return word if any(each.value == word for each in self.choices) else ""

    def said(self, text: str, words: Catalogue) -> str:
        """What is typed as people call it: the label of what is chosen, or the text itself."""
        value = self.chosen(text)
        return next((words.say(each.label) for each in self.choices if value and each.value == value), text)

    def helped(self, words: Catalogue) -> str:
        """What is said while the line is filled in: a whole sentence, or ""."""
        if self.help is None:
            return ""
        said = words.say(self.help)
        return said if said.endswith(".") else f"{said[:1].upper()}{said[1:]}."


@dataclass(frozen=True, slots=True)
class Table:
    """A list of tables: `rows` are those that are filled in and, where one more is allowed, a `fresh` one at the end.

    `label` names one row, `add` the button that adds one; `most` rows are allowed.
    """

    name: str
    label: Role
    add: Role
    most: int
    rows: tuple[tuple[Line | Table, ...], ...]
    fresh: bool = False

    def named(self, number: int, words: Catalogue) -> str:
        """What a row is called, by its number from 1."""
        return words.say(DeskSlip.ROW, label=words.say(self.label), number=number)

    @property
    def lines(self) -> Iterator[Line]:
        """Every line of all its rows."""
        return (line for row in self.rows for line in lines_in(row))


Row = Line | Table


@dataclass(frozen=True, slots=True)
class Group:
    """What stands under one "+" with a `summary`, which says how many lines (`{lines}`); or the first, without one."""

    summary: Role | None
    rows: tuple[Row, ...]

    @property
    def lines(self) -> Iterator[Line]:
        """Every line in it, those of tables too."""
        return lines_in(self.rows)

    @property
    def count(self) -> int:
        """How many lines stand in it, as the summary says it: without rows that are still to be added, if any is."""
        return _there(self.rows) or sum(1 for _ in self.lines)


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the work, in its order."""

    id: Literal["measured", "frame", "weaving", "yarns", "box"]
    number: int
    title: Role
    intro: Role
    groups: tuple[Group, ...]

    @property
    def lines(self) -> Iterator[Line]:
        """Every line in it."""
        return (line for group in self.groups for line in group.lines)


def lines_in(rows: tuple[Row, ...]) -> Iterator[Line]:
    """Every line of these rows, those of tables within tables too."""
    for row in rows:
        if isinstance(row, Line):
            yield row
        else:
            yield from row.lines


def _there(rows: tuple[Row, ...]) -> int:
    """How many lines there are, but for those of fresh rows."""
    tables = (row for row in rows if isinstance(row, Table))
    inside = (inner for table in tables for inner in (table.rows[:-1] if table.fresh else table.rows))
    return sum(isinstance(row, Line) for row in rows) + sum(map(_there, inside))
