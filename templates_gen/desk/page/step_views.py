"""Steps of the slip as their template reads them, and their ticks on the rule."""

from __future__ import annotations

from dataclasses import dataclass

from templates_gen.desk.page.line_views import LineView
from templates_gen.desk.slip.sources import Source


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
class TickView:
    """One line on the rule: by its name, "yours", "example", "wrong" or ""."""

    name: str
    look: str
