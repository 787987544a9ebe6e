"""Tables of what is said, and numbers with their units."""

from __future__ import annotations

from collections.abc import Sequence


def aligned(rows: Sequence[tuple[str, str, str]]) -> list[str]:
    """Rows of a name, a value and a remark as lines with straight columns."""
    name, value = (max(len(row[column]) for row in rows) for column in (0, 1))
    return [f"{row[0]:<{name}}  {row[1]:<{value}}  {row[2]}".rstrip() for row in rows]
