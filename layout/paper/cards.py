"""Cards on sheets: each as far up and to the left as it can lie, as many to a sheet as it holds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from layout.drawing.boxes import placed
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing
from layout.drawing.sheet import Part, Piece
from layout.messages.catalogue import Figure, Message
from layout.messages.roles import SheetNeed
from layout.paper.area import Area
from layout.paper.choice import Laying
from layout.paper.regions import regions
from layout.paper.sheets import Furnisher
from layout.plan import Plan
from layout.values.errors import FieldError

_INK = Pen.CUT.ink.width / 2
_APART = 4.0 - 2 * _INK  # from ink to ink: outlines are 4 mm apart


def lay_cards(plan: Plan, parts: Sequence[Part], metrics: FontMetrics, notes: tuple[str, ...] = ()) -> Laying:
    """How cards lie, all under the head of the first one; `notes` are said about them.

    Raises FieldError on paper.size where one finds no room on a sheet of its own.
    """
    grid = regions(plan.kit.paper)
    empty = Furnisher(plan, metrics)(parts[0])
    empty = replace(empty, left=grid.left - _INK, right=grid.right + _INK)
    sheets: list[tuple[Piece, ...]] = []
    area = empty
    for part in parts:
        placing = _place(part, area)
        if placing is None:
            placing, area = _place(part, empty), empty
            sheets.append(())
        elif not sheets:
            sheets.append(())
        if placing is None:
            raise _refusal(plan, part)
        sheets[-1] += (Piece(part, placing),)
        area = replace(area, taken=(*area.taken, _around(part, placing)))
    return Laying("straight", parts[0], tuple(sheets), notes, together=tuple(parts))


def _place(part: Part, area: Area) -> Placing | None:
    return next((placing for placing in _places(part, area) if area.holds(part.box, placing)), None)


def _places(part: Part, area: Area) -> Iterator[Placing]:
    """Row by row from above, in each from the left; lying, then turned a quarter to the left."""
    lefts = sorted({area.left, *(box[2] for box in area.taken)})
    tops = sorted({area.top, *(box[1] for box in area.taken)}, reverse=True)
    left, _, right, high = part.box
    for turn in (0, 90):
        for top in tops:
            for at in lefts:
                yield Placing(0, at - left, top - high) if turn == 0 else Placing(90, at + high, top - right)


def _around(part: Part, placing: Placing) -> Box:
    """The box of a card as it lies, with the white around it."""
    return placed(part.box, placing, _APART)


def _refusal(plan: Plan, part: Part) -> FieldError:
    paper = plan.kit.paper
    size = {
        "part": part.title,
        "length": _plain(part.length),
        "height": _plain(part.height),
        "width": _plain(paper.width),
        "up": _plain(paper.height),
    }
    return FieldError("paper.size", SheetNeed.WHOLE, Message(SheetNeed.GOT_WHOLE, size), 'size = "a4"')


def _plain(mm: float) -> Figure:
    return Figure(f"{mm:.1f}")
