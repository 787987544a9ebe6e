"""The slip as its template reads it: every line with its value, where that is from, and what is wrong with it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from hashlib import blake2s

from markupsafe import Markup

from layout.messages.catalogue import Catalogue
from templates_gen.desk.page.also import also
from templates_gen.desk.page.asked import Asked
from templates_gen.desk.slip.forms import Group, Line, Row, Step, Table, lines_in
from templates_gen.desk.slip.helps import helped
from templates_gen.desk.slip.lines import steps
from templates_gen.desk.slip.reading import Trouble
from templates_gen.desk.slip.sources import Source, sources
from templates_gen.messages.roles.desk_page import DeskPage

FIRST = "name"
"""The line that stands above all steps."""

_SIDE = ("sett.readings",)
"""Lists whose rows are so short that their lines stand side by side."""
_HOW = "].how"
"""Ends the name of the way of a reading, of which one always holds."""
_KIND = "frame.ends"
"""A line that needs no label beside its drawings."""
_WIDE = ("name", "yarns.warp", "yarns.weft")
_SOURCES: Mapping[Source, DeskPage] = {
    "yours": DeskPage.YOURS_LONG,
    "example": DeskPage.EXAMPLE_LONG,
    "assumed": DeskPage.ASSUMED_LONG,
}
_WRITTEN = {"names": "texts", "lines": "texts", "flag": "flag"}
_NUMBERS = ("version", "whole", "number", "amount", "share", "count", "mass")


@dataclass(frozen=True, slots=True)
class UseView:
    """What can be clicked: the `value` that is sent, its `label`; `field` and `text` for scripts."""

    field: str
    text: str
    label: str

    @property
    def value(self) -> str:
        """As a form sends it."""
        return f"{self.field}={self.text}"


@dataclass(frozen=True, slots=True)
class TroubleView:
    """Why a line cannot be read, and what can be clicked instead."""

    say: str
    use: tuple[UseView, ...]


@dataclass(frozen=True, slots=True)
class ChoiceView:
    """One thing to choose."""

    value: str
    label: str
    picture: Markup
    chosen: bool


@dataclass(frozen=True, slots=True)
class LineView:
    """One line of the slip; `write` is what its text becomes in a kit file, `units` what a plain number takes."""

    name: str
    id: str
    label: str
    help: str
    control: str
    width: str
    value: str
    placeholder: str
    choices: tuple[ChoiceView, ...]
    source: Source
    source_said: str
    also: str
    write: str
    units: str
    trouble: TroubleView | None = None
    first: bool = False

    @property
    def groups(self) -> bool:
        """Whether it has several things to press, which a label cannot be for."""
        return self.control in ("pictures", "ticks")


@dataclass(frozen=True, slots=True)
class RowView:
    """One row of a table; a `fresh` one is empty, for one more thing."""

    label: str
    entries: tuple[LineView | TableView, ...]
    source: Source
    source_said: str
    fresh: bool


@dataclass(frozen=True, slots=True)
class TableView:
    """A list of tables; `side` says that the lines of a row stand side by side."""

    name: str
    label: str
    add: str
    side: bool
    rows: tuple[RowView, ...]


@dataclass(frozen=True, slots=True)
class GroupView:
    """What stands under one "+", or first."""

    id: str
    summary: str
    open: bool
    entries: tuple[LineView | TableView, ...]


@dataclass(frozen=True, slots=True)
class StepView:
    """One step; `shape` says which lines it has, in few letters."""

    id: str
    number: int
    title: str
    intro: str
    shape: str
    groups: tuple[GroupView, ...]


@dataclass(frozen=True, slots=True)
class LineLink:
    """A line of the slip to go to."""

    name: str
    label: str


@dataclass(frozen=True, slots=True)
class TickView:
    """One line on the rule: by its name, "yours", "example", "wrong" or ""."""

    name: str
    look: str


def id_of(name: str) -> str:
    """The id of a line's control on the page."""
    return re.sub(r"[^A-Za-z0-9_]+", "-", name).strip("-")


class SlipViews:
    """The views of one slip as it is typed."""

    def __init__(self, asked: Asked) -> None:
        self._asked, self._words = asked, asked.words
        self._steps = steps(asked.typed)
        self._views: dict[str, LineView] = {}
        self._sources = sources(asked.typed, asked.examples)
        self._labels = {line.name: line for step in self._steps for line in step.lines}
        self.troubles = {self._shown_at(each.field): each for each in reversed(asked.read.troubles)}

    def _shown_at(self, field: str) -> str:
        """The line a refusal is shown at: its own, else the first of its table, else the first of all."""
        if field in self._labels:
            return field
        inside = next((name for name in self._labels if field and name.startswith((f"{field}.", f"{field}["))), "")
        return inside or FIRST

    @property
    def names(self) -> Iterable[str]:
        """Every line that is on the page, in its order."""
        return self._labels

    @property
    def bare_steps(self) -> tuple[Step, ...]:
        """The steps without what is typed."""
        return self._steps

    @property
    def examples(self) -> tuple[LineLink, ...]:
        """The lines that are still the example's: those that stand first, and the first of each "+"."""
        return (*self.waiting, *self._further())

    @property
    def waiting(self) -> tuple[LineLink, ...]:
        """The lines that stand first and are still the example's; a row of a table is one."""
        first = (row for step in self._steps for group in step.groups if not group.summary for row in group.rows)
        return tuple(link for row in first for link in self._waiting(row))

    def _waiting(self, row: Row) -> Iterator[LineLink]:
        if isinstance(row, Line):
            if row.name in self._asked.examples:
                yield LineLink(row.name, self._words.say(row.label))
            return
        for number, inner in enumerate(row.rows, 1):
            still = [line.name for line in lines_in(inner) if line.name in self._asked.examples]
            if still:
                yield LineLink(still[0], row.named(number, self._words))

    def _further(self) -> Iterator[LineLink]:
        for group in (group for step in self._steps for group in step.groups if group.summary):
            still = [line for line in group.lines if line.name in self._asked.examples]
            if still and group.summary:
                yield LineLink(still[0].name, self._words.say(group.summary, lines=len(still)))

    @property
    def first_line(self) -> LineView:
        """The line above all steps."""
        return self.line(self._labels[FIRST])

    def label(self, name: str) -> str:
        """What a line is called."""
        line = self._labels.get(name)
        return self._words.say(line.label) if line else name

    def steps(self) -> tuple[StepView, ...]:
        """All steps with their lines."""
        return tuple(map(self.step, self._steps))

    def step(self, step: Step) -> StepView:
        """One step."""
        groups = [self._group(f"{step.id}-{at}", group) for at, group in enumerate(step.groups)]
        say = self._words.say
        return StepView(step.id, step.number, say(step.title), say(step.intro), self.shape(step), tuple(groups))

    def shapes(self) -> dict[str, str]:
        """The shape of each step by its id."""
        return {step.id: self.shape(step) for step in self._steps}

    def shape(self, step: Step) -> str:
        """Which lines it has, in few letters."""
        names = "\n".join(line.name for line in step.lines)
        return blake2s(f"{self._words.language}\n{names}".encode(), digest_size=6).hexdigest()

    def line_views(self) -> Iterator[LineView]:
        """Every line that is on the page."""
        return map(self.line, self._labels.values())

    def ticks(self, step: Step) -> tuple[TickView, ...]:
        """One tick for every line, but for those of rows that are not there yet."""
        return tuple(TickView(line.name, self._look(line.name)) for line in self._ticked(step))

    def _ticked(self, step: Step) -> Iterator[Line]:
        return (line for group in step.groups for row in group.rows for line in self._there(row))

    def _there(self, row: Row) -> Iterator[Line]:
        if isinstance(row, Line):
            yield row
            return
        for inner in row.rows:
            lines = [line for each in inner for line in self._there(each)]
            if self._filled(lines):
                yield from lines

    def _look(self, name: str) -> str:
        if name in self.troubles:
            return "wrong"
        source = self._sources.get(name, "assumed")
        return "" if source == "assumed" else source

    def _filled(self, lines: Iterable[Line]) -> bool:
        typed = self._asked.typed
        return any(typed.get(line.name, "").strip() for line in lines if not line.name.endswith(_HOW))

    def _group(self, name: str, group: Group) -> GroupView:
        summary = self._words.say(group.summary, lines=group.count) if group.summary else ""
        wrong = any(line.name in self.troubles for line in group.lines)
        entries = tuple(self._entry(row) for row in group.rows if not (isinstance(row, Line) and row.name == FIRST))
        return GroupView(name, summary, wrong, entries)

    def _entry(self, row: Row) -> LineView | TableView:
        return self.line(row) if isinstance(row, Line) else self._table(row)

    def _table(self, table: Table) -> TableView:
        say, side = self._words.say, table.name in _SIDE
        label = say(table.label)
        rows = []
        for number, entries in enumerate(table.rows, 1):
            lines = list(lines_in(entries))
            found = [self._sources.get(line.name, "assumed") for line in lines]
            source: Source = next((each for each in ("example", "yours") if each in found), "assumed")
            fresh = not self._filled(lines) and not (number == 1 and side)
            views = tuple(map(self._entry, entries))
            title = table.named(number, self._words)
            rows.append(RowView(title, views, source, say(_SOURCES[source]), fresh))
        return TableView(table.name, label, say(table.add), side, tuple(rows))

    def line(self, line: Line) -> LineView:
        """One line with what is typed in it."""
        if line.name not in self._views:
            self._views[line.name] = self._line(line)
        return self._views[line.name]

    def _line(self, line: Line) -> LineView:
        typed, words = self._asked.typed.get(line.name, ""), self._words
        source = self._sources.get(line.name, "assumed")
        control = _control(line)
        return LineView(
            name=line.name,
            id=id_of(line.name),
            label=words.say(line.label),
            help=helped(line, self._asked.read.plan, words),
            control=control,
            width=_width(line, control),
            value=typed,
            placeholder=line.placeholder,
            choices=_choices(line, control, typed, words),
            source=source,
            source_said=words.say(_SOURCES[source]),
            also=also(line, typed, words),
            write=_WRITTEN.get(line.spec.kind, "number" if line.spec.kind in _NUMBERS else "text"),
            units=" ".join(line.units or ()),
            trouble=self._trouble(line.name),
            first=line.name == FIRST,
        )

    def _trouble(self, name: str) -> TroubleView | None:
        trouble: Trouble | None = self.troubles.get(name)
        if trouble is None:
            return None
        return TroubleView(trouble.say, tuple(self._use(name, use.field, use.text) for use in trouble.use))

    def _use(self, at: str, field: str, text: str) -> UseView:
        say, here = self._words.say, field == at
        first = field.split()[0]  # of a row, its first line
        label = self.label(first)
        if text:
            shown = self._labels[first].said(text, self._words) if first in self._labels else text
            said = say(DeskPage.USE, text=shown) if here else say(DeskPage.USE_AT, label=label, text=shown)
        else:
            said = say(DeskPage.USE_EMPTY) if here else say(DeskPage.USE_AT_EMPTY, label=label)
        return UseView(field, text, said)


def _control(line: Line) -> str:
    if line.control == "pictures":
        return "pictures"
    if line.control in ("flag", "choice"):
        return "choice"
    if line.control == "names" and line.choices:
        return "ticks"
    if line.control in ("names", "lines"):
        return "lines"
    return "offered" if line.choices else "text"


def _width(line: Line, control: str) -> str:
    if line.name == _KIND:
        return "kind"
    if control in ("pictures", "ticks", "lines"):
        return "tall"
    return "wide" if line.name in _WIDE or control == "offered" else ""


def _choices(line: Line, control: str, typed: str, words: Catalogue) -> tuple[ChoiceView, ...]:
    """What can be chosen; a text that is no choice stays, so that nothing typed is lost."""
    chosen = {each.strip() for each in typed.splitlines()} if control == "ticks" else {line.chosen(typed) or typed}
    always = control == "pictures" or line.name.endswith(_HOW)
    if always and line.usual and not typed.strip():
        chosen = {line.usual.value}
    left_out = control == "pictures" and line.usual and not typed.strip()
    found = [
        ChoiceView(
            "" if left_out and each == line.usual else each.value,
            words.say(each.label),
            Markup(each.picture),  # noqa: S704 (of our own)
            each.value in chosen,
        )
        for each in line.choices
    ]
    if control == "choice":
        if not always and all(each.value for each in found):
            empty = words.say(DeskPage.USUAL, choice=line.empty(words)) if line.usual else line.empty(words)
            found.insert(0, ChoiceView("", empty, Markup(), not typed.strip()))
        if not any(each.chosen for each in found):
            found.append(ChoiceView(typed, typed, Markup(), chosen=True))
    return tuple(found)
