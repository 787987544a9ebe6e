"""The first sheet of a kit, which leads to all others: so it is laid when these are."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Text
from layout.drawing.sheet import Part
from layout.paper.choice import Laying
from layout.paper.joints import Build
from layout.paper.leaves import Leaf
from layout.paper.room import room_for
from layout.paper.sheets import lay, leaves
from layout.paper.steps import place_of
from layout.parts.start_here import Contents, Room, start_here
from layout.parts.start_in_run import contents_in_run
from layout.plan import Plan

_MOST = 4  # sheets that it may take
_ANY = Room(166.0, 300.0)  # whatever it holds, its sheet says the same beside it


def with_first_sheet(plan: Plan, layings: Sequence[Laying], metrics: FontMetrics, grid: str = "") -> tuple[Laying, ...]:
    """The sheets of a kit in their order, before them the one that leads to them where the reader prints them.

    `grid` is the name of the file of the weaving grid, if there is one.
    """
    if not plan.kit.paper.buyer_prints:
        return tuple(layings)
    first: tuple[Laying, ...] = ()
    for count in range(1, _MOST + 1):  # how many sheets it takes moves the numbers on it
        first = _laid(plan, contents_of(plan, layings, count, metrics, grid), metrics)
        if len(first) == count:
            break
    return (*first, *layings)


def first_in_run(plan: Plan, metrics: FontMetrics) -> tuple[Laying, ...]:
    """The same sheet, or sheets, of a kit in a run, which say what lies in its box."""
    return _laid(plan, contents_in_run(plan), metrics)


def _laid(plan: Plan, contents: Contents, metrics: FontMetrics) -> tuple[Laying, ...]:
    probe = start_here(plan, contents, _ANY, metrics)[0]
    parts = start_here(plan, contents, Room(*room_for(plan, probe, metrics)), metrics)
    return tuple(lay(plan, _build(part), metrics) for part in parts)


def _build(part: Part) -> Build:
    return lambda _low, _joints: part


def contents_of(plan: Plan, layings: Sequence[Laying], before: int, metrics: FontMetrics, grid: str = "") -> Contents:
    """Where the sheets of each step are, `before` of them the first ones: by the tiles that they show."""
    sheets: dict[str, tuple[int, int]] = {}
    for number, leaf in enumerate(leaves(plan, layings, metrics), before + 1):
        for tile in _tiles(leaf):
            sheets[tile] = (sheets.get(tile, (number, number))[0], number)
    return Contents(sheets, grid)


def _tiles(leaf: Leaf) -> Iterator[str]:
    """The tile in the head of a sheet, and those within its parts."""
    yield place_of(leaf.part.name).tile
    for part in (piece.part for piece in leaf.pieces):
        yield from (shape.words for shape in part.shapes if isinstance(shape, Text) and shape.pen is Pen.ON_BLACK)
