"""The sheets of a printer check: head, code and targets round what stands on each."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Shape
from layout.drawing.sheet import Sheet, painted
from layout.messages.roles import PrinterCheck, SheetName
from layout.messages.roles import Sheet as Sheets
from layout.paper.code import Modules, code
from layout.paper.head import Head, head
from layout.paper.printer_check.boxes import boxes_of
from layout.paper.printer_check.ladders import margin_boxes
from layout.paper.printer_check.pages import NAME, Asked, pages
from layout.paper.printer_check.places import UNTIL, places_on
from layout.paper.regions import Regions, regions
from layout.paper.steps import place_of
from layout.paper.targets import targets

_BESIDE_RULE = 7.0  # from the head to the numbers of the rule that stands up


def printer_check(
    asked: Asked,
    metrics: FontMetrics,
    codes: Callable[[int], Sequence[Modules | None]] = lambda total: [None] * total,
) -> tuple[Sheet, ...]:
    """The sheets of a printer check; `codes` gives the modules of the code of each of so many."""
    found = pages(asked, places_on(asked.paper), _under_head(asked, metrics), metrics)
    total = len(found)
    return tuple(
        _sheet(asked, (number, total), page, modules, metrics)
        for number, (page, modules) in enumerate(zip(found, codes(total), strict=True), 1)
    )


def _under_head(asked: Asked, metrics: FontMetrics) -> float:
    return head(_head(asked, (9, 9)), _grid(asked), metrics)[1][1]


def _grid(asked: Asked) -> Regions:
    """That of the paper, its head ending beside the rule that stands up."""
    grid = regions(asked.paper)
    return grid._replace(right=grid.width - UNTIL - _BESIDE_RULE)


def _head(asked: Asked, number: tuple[int, int]) -> Head:
    say = asked.words.say
    numbered = say(Sheets.NUMBER, number=number[0], total=number[1]) if number[1] > 1 else ""
    page = say(PrinterCheck.PAGE, paper=asked.paper.size.words)
    name, purpose = say(SheetName.NAME_PRINTER_CHECK), say(SheetName.PURPOSE_PRINTER_CHECK)
    return Head(place_of(NAME).tile, name, purpose, "", page, numbered)


def _sheet(
    asked: Asked, number: tuple[int, int], page: Sequence[Shape], modules: Modules | None, metrics: FontMetrics
) -> Sheet:
    paper, grid = asked.paper, _grid(asked)
    heading, _ = head(_head(asked, number), grid, metrics)
    shapes = [*heading, *page, *code(modules, grid)]
    taken = [*boxes_of(shapes, metrics), *(margin_boxes(paper, places_on(paper)) if number[0] == 1 else ())]
    shapes += targets(paper, taken)
    return Sheet(f"{NAME} {number[0]} of {number[1]}", paper.width, paper.height, painted(shapes))
