"""Tables of what is said."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

Line = tuple[str, str, str]
"""A name, a value, and a remark."""


class Section(NamedTuple):
    """Rows that belong together, under a heading."""

    heading: str
    rows: Sequence[Line]


def aligned(rows: Sequence[Line]) -> list[str]:
    """Rows as lines with straight columns."""
    name, value = (max(len(row[column]) for row in rows) for column in (0, 1))
    return [f"{row[0]:<{name}}  {row[1]:<{value}}  {row[2]}".rstrip() for row in rows]


def in_sections(sections: Sequence[Section]) -> list[str]:
    """Lines of all sections that have rows, each after a blank line and its heading, all columns straight."""
    filled = [section for section in sections if section.rows]
    lines = iter(aligned([row for section in filled for row in section.rows]))
    said = []
    for section in filled:
        said += ["", section.heading, *(f"  {next(lines)}" for _ in section.rows)]
    return said


def columned(rows: Sequence[Sequence[str]]) -> list[str]:
    """Rows of equally many columns as lines with straight columns."""
    wide = [max(map(len, column)) for column in zip(*rows, strict=True)]
    return ["  ".join(f"{cell:<{room}}" for cell, room in zip(row, wide, strict=True)).rstrip() for row in rows]
