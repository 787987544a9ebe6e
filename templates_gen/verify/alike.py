"""Numbers as a file has them, told apart by a micrometre: two that are one may lie on both sides of any rounding."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import TypeVar

from layout.drawing.shapes import Point
from templates_gen.verify import LIMIT

_T = TypeVar("_T")


def alike(one: Iterable[float], other: Iterable[float]) -> bool:
    """Whether both are the same numbers, in whatever order."""
    wanted, found = sorted(one), sorted(other)
    return len(wanted) == len(found) and all(abs(a - b) <= LIMIT for a, b in zip(wanted, found, strict=True))


def each_once(numbers: Iterable[float]) -> list[float]:
    """Each number once, in order of size."""
    found: list[float] = []
    for number in sorted(numbers):
        if not found or number - found[-1] > LIMIT:
            found.append(number)
    return found


def in_rows(things: Iterable[_T], place: Callable[[_T], Point]) -> list[list[_T]]:
    """Things by their places: rows from the top, each from the left."""
    rows: list[list[_T]] = []
    for thing in sorted(things, key=lambda each: -place(each).y):
        if not rows or place(rows[-1][0]).y - place(thing).y > LIMIT:
            rows.append([])
        rows[-1].append(thing)
    return [sorted(row, key=lambda each: place(each).x) for row in rows]
