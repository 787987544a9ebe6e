"""Wrong builders of a printer check: what is spoiled before it is drawn, each of which its proof must find."""

from __future__ import annotations

from collections.abc import Mapping
from types import SimpleNamespace
from typing import Any

from wrong_builders import Spoil, returns, swap, value

import layout.paper.printer_check.ladders as ladders
import layout.paper.printer_check.marks as marks
import layout.paper.printer_check.pages as pages
import layout.paper.printer_check.places as places
import layout.paper.printer_check.sheets as sheets
import layout.paper.printer_check.table as table
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.messages.roles import PrinterCheck


def _spans(**other: float) -> Spoil:
    """Spans that are a little longer."""
    return returns(
        places, "spans_of", lambda found: found._replace(**{k: getattr(found, k) + by for k, by in other.items()})
    )


def _page(change: Any) -> Spoil:
    """The shapes of the first page changed."""
    return returns(sheets, "pages", lambda found: [list(change(found[0])), *found[1:]])


def _without(wanted: Any) -> Spoil:
    """The first shape that `wanted` takes is left out."""

    def change(page: list[Shape]) -> list[Shape]:
        lost = next(k for k, shape in enumerate(page) if wanted(shape))
        return page[:lost] + page[lost + 1 :]

    return _page(change)


def _other_words(old: str, new: str) -> Spoil:
    """Another text in the first place where `old` stands."""

    def change(page: list[Shape]) -> list[Shape]:
        at = next(k for k, shape in enumerate(page) if isinstance(shape, Text) and shape.words == old)
        return [shape._replace(words=new) if k == at else shape for k, shape in enumerate(page)]  # type: ignore[call-arg]

    return _page(change)


def _tick_moved(page: list[Shape]) -> list[Shape]:
    """The hundredth line of the rules, 2 micrometres aside."""
    ticks = [k for k, shape in enumerate(page) if isinstance(shape, Curve) and shape.pen is Pen.RULE]
    tick = page[ticks[100]]
    assert isinstance(tick, Curve)
    moved = tick._replace(start=Point(tick.start.x + 0.002, tick.start.y + 0.002))
    return [moved if k == ticks[100] else shape for k, shape in enumerate(page)]


def _said(module: Any, **instead: PrinterCheck) -> Spoil:
    """Sentences said in the place of others by one module of the builder."""
    roles = {each.name: each for each in PrinterCheck}
    return value(module, "PrinterCheck", SimpleNamespace(**roles | instead))


def _is(pen: Pen) -> Any:
    return lambda shape: not isinstance(shape, Region | Text) and shape.pen is pen


def _long_blank(shape: Shape) -> bool:
    if not isinstance(shape, Curve) or shape.pen is not Pen.HELP or len(shape.steps) != 1:
        return False
    (x, y), (to_x, to_y) = shape.points()
    return abs(y - to_y) < 1e-9 and to_x - x > 15


def _lower(found: Any) -> Any:
    """The first span of a map a little lower."""
    at = next(k for k, shape in enumerate(found.shapes) if isinstance(shape, Curve) and shape.pen is Pen.OUTLINE)
    old = found.shapes[at]
    moved = Point(old.start.x, old.start.y - 1)
    shapes = [old._replace(start=moved) if k == at else shape for k, shape in enumerate(found.shapes)]
    return found._replace(shapes=tuple(shapes))


CHECKS: Mapping[str, Spoil] = {
    "A to B 2 micrometres longer at each end": _spans(across=0.004),
    "C to D 10 micrometres longer": _spans(up=0.01),
    "diagonals wider": _spans(wide=0.01),
    "diagonals higher": _spans(high=0.01),
    "an inch of 25 mm": value(marks, "SIXTEENTH", 25 / 16),
    "an inch of the old British standard": value(marks, "SIXTEENTH", 25.39998 / 16 * 1.00001),
    "ticks of fives as long as of ones": value(marks, "_MM", ((10, 4.0), (5, 2.0), (1, 2.0))),
    "eighths as long as quarters": value(marks, "_INCH", ((16, 4.0), (8, 3.3), (4, 2.6), (2, 2.6), (1, 1.4))),
    "a tick too few": _without(_is(Pen.RULE)),
    "a tick 2 micrometres aside": _page(_tick_moved),
    "a number at another tick": _other_words("120", "130"),
    "numbers aside": value(marks, "_OFF", 1.0),
    "no bold end": _without(_is(Pen.EDGE)),
    "bold ends longer": value(marks, "BOLD", (3.5, 2.3)),
    "no fine line": value(marks, "FINE", (1.5, 1.0)),
    "letters changed round": value(marks, "LETTERS", (("A", "B"), ("C", "D"), ("G", "H"), ("E", "F"))),
    "the ends of a span changed round": value(marks, "LETTERS", (("B", "A"), ("C", "D"), ("E", "F"), ("G", "H"))),
    "another length at a mark": _other_words("A to B: 190 mm", "A to B: 191 mm"),
    "no cross in the middle": value(marks, "NO_CROSS", 1000.0),
    "margins from 4 mm on": value(ladders, "MARGINS", range(4, 14)),
    "a margin too few": value(ladders, "MARGINS", range(3, 12)),
    "lines of margins shorter": value(ladders, "RUNG", 3.7),
    "another pen in the ladder of widths": value(
        ladders, "WIDTHS", (*ladders.WIDTHS[:4], Pen.END_MARK, *ladders.WIDTHS[5:])
    ),
    "a width too few": value(ladders, "WIDTHS", ladders.WIDTHS[:-1]),
    "another width said": _other_words("0.5", "0.6"),
    "a card 85.6 x 54 mm": value(ladders, "CARD_HIGH", 54.0),
    "a card 0.01 mm wider": value(ladders, "CARD_WIDE", 85.61),
    "square corners": value(ladders, "CARD_CORNER", 3.0),
    "another option in a row": value(table, "OPTIONS", ("--x", "--y", "--across-2", "--across")),
    "no line to write on": _page(lambda page: [s for s in page if not _long_blank(s)]),
    "a span of the map elsewhere": returns(pages, "small_map", _lower),
    "steps in another order": returns(pages, "_steps", lambda steps: (steps[1], steps[0], *steps[2:])),
    "a step too few": returns(pages, "_steps", lambda steps: steps[:-1]),
    "another sentence": _said(ladders, CARD_LAY=PrinterCheck.CARD_SHOWS),
    "another name of a row": _said(table, UP=PrinterCheck.ACROSS),
    "inches said as mm": _said(marks, INCH=PrinterCheck.MM),
    "another tile": swap(sheets, "place_of", lambda right: lambda _: right("wrap-gauge")),
}
