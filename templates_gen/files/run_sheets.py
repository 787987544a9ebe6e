"""Sheets that are of a whole run, as a file: under a head that names the range, each with its code."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.messages.roles import Sheet as Sheets
from layout.messages.roles import SheetNeed
from layout.messages.roles.buying import Prices
from layout.paper.furniture import Page
from layout.paper.head import Head
from layout.paper.room import room_under
from layout.paper.sheets import Printed, sheet_alone
from layout.paper.steps import place_of
from layout.values.errors import FieldError
from templates_gen.codes.modules import codes_for
from templates_gen.files.output import Output, names_of
from templates_gen.files.run_about import SoldKit, about_run

_MANY = 99


def room_of(name: str, kits: Sequence[SoldKit], probe: Part, metrics: FontMetrics) -> tuple[float, float]:
    """Width and height in mm that a part may take on such a sheet which says what that of `probe` does."""
    first = kits[0].plan
    return room_under(Page(first.kit.paper, first.words), _head(name, kits, probe, _MANY, _MANY), probe, metrics)


def run_output(
    name: str,
    kits: Sequence[SoldKit],
    parts: Sequence[Part],
    file: str,
    metrics: FontMetrics,
    stock: Stock | None = None,
    lesson: tuple[int, int] | None = None,
    source: Mapping[str, Any] | None = None,
) -> Output:
    """The file with a sheet for each part, on the paper and in the language of the first kit; it carries the `stock`,
    how many people are in a `lesson`, and at a table, and the `source` of all values, legal words too.

    Raises FieldError on paper.size where a part finds no room.
    """
    first = kits[0].plan
    about = about_run(name, kits, parts[0].title, file, stock, lesson, source=source, legal=source is not None)
    codes = codes_for(about, first.kit.paper, len(parts))
    sheets = [
        _sheet(name, kits, part, (number, len(parts)), modules, metrics)
        for number, (part, modules) in enumerate(zip(parts, codes, strict=True), 1)
    ]
    shown, laid = tuple(sheet.sheet for sheet in sheets), tuple(sheet.pieces for sheet in sheets)
    return Output(file, names_of(parts[:1]), shown, laid, about, on_paper=True)


def _sheet(
    name: str,
    kits: Sequence[SoldKit],
    part: Part,
    number: tuple[int, int],
    modules: tuple[str, ...],
    metrics: FontMetrics,
) -> Printed:
    paper, words = kits[0].plan.kit.paper, kits[0].plan.words
    found = sheet_alone(part, paper, _head(name, kits, part, *number), words, metrics, modules)
    if found is None:
        raise FieldError("paper.size", SheetNeed.WHOLE, part.title, 'size = "a4"')
    return found


def _head(name: str, kits: Sequence[SoldKit], part: Part, number: int, total: int) -> Head:
    words = kits[0].plan.words
    boxes = sum(each.copies for each in kits)
    facts = words.listed([words.say(Prices.KITS, kits=len(kits)), words.say(Prices.BOXES, boxes=boxes)])
    shown = words.say(Sheets.NUMBER, number=number, total=total)
    return Head(place_of(part.name).tile, part.title, part.purpose, name, facts, shown)
