"""The slip as its template reads it: every line with its value, where that is from, and what is wrong with it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from hashlib import blake2s

from templates_gen.desk.page.also import also
from templates_gen.desk.page.asked import Asked
from templates_gen.desk.page.line_views import FIRST, HOW, SOURCES, LineView, TroubleView, UseView, line_view
from templates_gen.desk.page.step_views import GroupView, RowView, StepView, TableView, TickView
from templates_gen.desk.page.waiting import LineLink, examples_in, waiting_in
from templates_gen.desk.slip.forms import Group, Line, Row, Step, Table, lines_in
from templates_gen.desk.slip.helps import BY_PLAN, helped
from templates_gen.desk.slip.lines import steps
from templates_gen.desk.slip.reading import Trouble
from templates_gen.desk.slip.sources import Source, sources
from templates_gen.messages.roles.desk_page import DeskPage

_SIDE = ("sett.readings",)
"""Lists whose rows are so short that their lines stand side by side."""


class SlipViews:
    """The views of one slip as it is typed."""

    def __init__(self, asked: Asked) -> None:
        self._asked, self._words = asked, asked.words
        self._steps = steps(asked.typed)
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
        return examples_in(self._steps, self._asked)

    @property
    def waiting(self) -> tuple[LineLink, ...]:
        """The lines that stand first and are still the example's."""
        return waiting_in(self._steps, self._asked)

    @property
    def first_line(self) -> LineView:
        """The line above all steps."""
        return self.line(self._labels[FIRST])

    def label(self, name: str) -> str:
        """What a line is called."""
        line = self._labels.get(name)
        return self._words.say(line.label) if line else name

    def steps(self, there: Mapping[str, str] | None = None) -> tuple[StepView, ...]:
        """All steps with their lines; where a page has steps of these shapes, those that are others now."""
        shapes = {step.id: self.shape(step) for step in self._steps}
        known = there or {}
        return tuple(
            self._step(step, shapes[step.id])
            for step in self._steps
            if there is None or known.get(f"step-{step.id}", shapes[step.id]) != shapes[step.id]
        )

    def _step(self, step: Step, shape: str) -> StepView:
        groups = tuple(self._group(f"{step.id}-{at}", group) for at, group in enumerate(step.groups))
        return StepView(step.id, step.number, self._words.say(step.title), self._words.say(step.intro), shape, groups)

    def shape(self, step: Step) -> str:
        """Which lines it has, in few letters."""
        names = "\n".join(line.name for line in step.lines)
        return blake2s(f"{self._words.language}\n{names}".encode(), digest_size=6).hexdigest()

    def states(self) -> dict[str, dict[str, object]]:
        """Of every line what may change while somebody types: its source, the other unit, its help, its trouble."""
        typed, plan, words = self._asked.typed, self._asked.read.plan, self._words
        found: dict[str, dict[str, object]] = {}
        for name, line in self._labels.items():
            said: dict[str, object] = {"source": self._sources.get(name, "assumed")}
            if line.units:
                said["also"] = also(line, typed.get(name, ""), words)
            if name in BY_PLAN:
                said["help"] = helped(line, plan, words)
            if trouble := self._trouble(name):
                use = [{"field": each.field, "text": each.text, "say": each.label} for each in trouble.use]
                said |= {"say": trouble.say, "use": use}
            found[name] = said
        return found

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
        return any(typed.get(line.name, "").strip() for line in lines if not line.name.endswith(HOW))

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
            rows.append(RowView(title, views, source, say(SOURCES[source]), fresh))
        return TableView(table.name, label, say(table.add), side, tuple(rows))

    def line(self, line: Line) -> LineView:
        """One line with what is typed in it."""
        typed, source = self._asked.typed.get(line.name, ""), self._sources.get(line.name, "assumed")
        said = helped(line, self._asked.read.plan, self._words)
        return line_view(line, typed, source, self._words, said, self._trouble(line.name))

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
