"""Finished sheets: the pieces of a file laid out, each sheet with its head and foot and its number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import Paned
from layout.drawing.sheet import Part, Piece, Sheet, painted
from layout.kit.kit import Paper
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet as Sheets
from layout.paper.area import Area, printable
from layout.paper.choice import Furnish, Laying, choose
from layout.paper.furniture import Head, furnish
from layout.paper.joints import Build
from layout.paper.laying import straight
from layout.paper.panes import lay_in_panes
from layout.plan import Plan


@dataclass(frozen=True, slots=True)
class Printed:
    """A sheet and the pieces that lie on it, in the order in which their crosses were drawn."""

    sheet: Sheet
    pieces: tuple[Piece, ...]


def lay(plan: Plan, build: Build | Paned, metrics: FontMetrics) -> Laying:
    """How the part that `build` makes lies on the kit's paper; FieldError where it cannot.

    A paned drawing is cut both ways where it must be, however the kit wants its strips to lie.
    """
    take_room = furnisher(plan, metrics)
    if isinstance(build, Paned):
        return lay_in_panes(build, plan.kit.paper, take_room)
    return choose(build, plan.kit.paper, take_room, metrics)


def furnisher(plan: Plan, metrics: FontMetrics) -> Furnish:
    """Takes the room that head and foot need out of an area; the same for every lay of a part whose notes stay."""
    kept: dict[tuple[Area, str, tuple[str, ...]], Area] = {}

    def take_room(area: Area, part: Part) -> Area:
        key = (area, part.title, part.notes)
        if key not in kept:
            kept[key] = furnish(area, _head(plan, part, (999, 999)), metrics)[0]
        return kept[key]

    return take_room


def printed(plan: Plan, layings: Sequence[Laying], metrics: FontMetrics) -> tuple[Printed, ...]:
    """The sheets of one file, numbered through."""
    leaves = [(laying, pieces) for laying in layings for pieces in laying.sheets]
    total = len(leaves)
    return tuple(_sheet(plan, laying, pieces, (k, total), metrics) for k, (laying, pieces) in enumerate(leaves, 1))


def _sheet(
    plan: Plan, laying: Laying, pieces: tuple[Piece, ...], number: tuple[int, int], metrics: FontMetrics
) -> Printed:
    paper = plan.kit.paper
    _, shapes = furnish(printable(paper), _head(plan, laying.part, number), metrics)
    for part, placing in pieces:
        shapes += placing.shapes(part.shapes)
    name = f"{laying.part.name} {number[0]} of {number[1]}"
    return Printed(Sheet(name, paper.width, paper.height, painted(shapes)), pieces)


def sheet_alone(part: Part, paper: Paper, head: Head, metrics: FontMetrics) -> Printed | None:
    """A part that no kit asks for, straight on a sheet of its own under its head; None where it finds no room."""
    area, shapes = furnish(printable(paper), head, metrics)
    placing = straight(part, area)
    if placing is None:
        return None
    shapes += placing.shapes(part.shapes)
    piece = Piece(part, placing)
    return Printed(Sheet(part.name, paper.width, paper.height, painted(shapes)), (piece,))


def _head(plan: Plan, part: Part, number: tuple[int, int]) -> Head:
    kit = plan.kit
    lines = (
        ENGLISH.say(Sheets.PART, part=part.title, sett=plan.sett_words),
        ENGLISH.say(Sheets.YARNS, warp=kit.warp, weft=kit.weft, counts=plan.count_words),
        ENGLISH.say(Sheets.NUMBER, number=number[0], total=number[1]),
    )
    return Head(kit.name, lines, part.notes)
