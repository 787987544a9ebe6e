"""The lines of the slip for what is typed: its frame ends decide which there are, lists are as long as filled in."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import lru_cache

from templates_gen.desk.slip.arrangement import ADDS, ARRANGEMENT
from templates_gen.desk.slip.fields import SPECS, belongs, pattern_of
from templates_gen.desk.slip.forms import Choice, Control, Group, Line, Row, Step, Table
from templates_gen.desk.slip.labels import choices_of, control_of, help_of, label_of, placeholder_of, units_of
from templates_gen.desk.slip.shape import MOST_ROWS, Shape, Typed, most_of, shape_of

__all__ = ["Choice", "Control", "Group", "Line", "Row", "Step", "Table", "Typed", "lines", "steps"]

_ENTRIES = {name: tuple(each for each in SPECS if each.startswith(f"{name}[].")) for name in ADDS}
_KEPT = 64


def steps(typed: Typed) -> tuple[Step, ...]:
    """The steps of the slip with every line that suits what is typed."""
    return _steps(shape_of(typed))


def lines(typed: Typed) -> Mapping[str, Line]:
    """The same lines, all of them by name, in their order."""
    return _lines(shape_of(typed))


@lru_cache(_KEPT)
def _lines(shape: Shape) -> Mapping[str, Line]:
    return {line.name: line for step in _steps(shape) for line in step.lines}


@lru_cache(_KEPT)
def _steps(shape: Shape) -> tuple[Step, ...]:
    rows = dict(shape.rows)
    found = []
    for number, part in enumerate(ARRANGEMENT, 1):
        groups = (
            Group(place.summary, tuple(row for name in place.names for row in _rows(name, shape, rows)))
            for place in part.places
        )
        kept = tuple(group for group in groups if group.rows)
        found.append(Step(part.id, number, part.title, part.intro, kept))
    return tuple(found)


def _rows(name: str, shape: Shape, rows: Mapping[str, tuple[int, ...]]) -> Iterator[Row]:
    """The line of a field, or the table of a list, where this frame has it."""
    pattern = pattern_of(name)
    if SPECS[pattern].kind != "tables":
        if belongs(name, shape.kind, shape.hold):
            yield _line(name)
        return
    if choices_of(pattern):
        yield _line(name)
    yield _table(name, pattern, shape, rows)


def _table(name: str, pattern: str, shape: Shape, rows: Mapping[str, tuple[int, ...]]) -> Table:
    numbers, most = rows.get(name, ()), most_of(name)
    last = min(max(numbers, default=0), MOST_ROWS + 1)
    shown = range(1, max(min(last + 1, most), last) + 1)
    inner = [each for each in _ENTRIES[pattern] if "[]" not in each[len(pattern) + 2 :]]
    entries = (
        tuple(row for each in inner for row in _rows(f"{name}[{number}]{each[len(pattern) + 2 :]}", shape, rows))
        for number in shown
    )
    return Table(name, label_of(pattern), ADDS[pattern], most, tuple(entries), fresh=len(shown) > last)


@lru_cache(2048)
def _line(name: str) -> Line:
    pattern = pattern_of(name)
    spec = SPECS[pattern]
    return Line(
        name,
        spec,
        label_of(pattern),
        help_of(pattern),
        control_of(pattern, spec),
        choices_of(pattern) if spec.kind in _CHOSEN else (),
        placeholder_of(pattern, spec),
        units_of(spec),
    )


_CHOSEN = ("choice", "flag", "language", "size", "card", "names", "system", "tables")
