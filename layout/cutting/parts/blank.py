"""A part as it is wanted, before anything is known of the cut; and the part as it is drawn for a stock."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from layout.cutting.stock.kerf import Kerf, drawn
from layout.cutting.stock.stock import Stock
from layout.drawing.boxes import box_of
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.messages.catalogue import Catalogue, Message
from layout.messages.roles import CutNeed, CutNote, Unit
from layout.values.errors import FieldError
from layout.values.numerals import say_number

ARM = 1.0
"""Of the crosses by which a part is found again, in mm; nothing runs them."""


def small_part(words: Catalogue) -> str:
    """What is said of all that is small."""
    return words.say(CutNote.SMALL_PART)


@dataclass(frozen=True, slots=True)
class Blank:
    """One part in its own coordinates, every edge where it is wanted.

    `grain` is the axis of the part that has to lie along the face grain of the stock, where it has one: teeth and
    sticks break along it. `datum` are the crosses, on the part itself.
    """

    name: str
    title: str
    outline: Curve
    datum: tuple[Point, ...]
    holes: tuple[Curve, ...] = ()
    scores: tuple[Curve, ...] = ()
    words: tuple[Text, ...] = ()
    notes: tuple[str, ...] = ()
    grain: Literal["x", "y"] = "x"


def turned(blank: Blank, stock: Stock) -> bool:
    """Whether the part has to be turned by 90 degrees for its grain to run as that of the stock."""
    return stock.grain not in ("none", blank.grain)


def cut_part(blank: Blank, stock: Stock, words: Catalogue) -> Part:
    """The part as it lies on `stock`: along its grain, and drawn for its kerf if the stock wants that.

    Raises FieldError where the kerf closes something, or the part is larger than the sheet.
    """
    placing = Placing(90 if turned(blank, stock) else 0)
    outer, *holes = (path for path in placing.shapes((blank.outline, *blank.holes)) if isinstance(path, Curve))
    cuts = drawn(outer, holes, Kerf(stock.kerf_x, stock.kerf_y)) if stock.kerf_drawn else (*holes, outer)
    datum = tuple(placing.points(blank.datum))
    shapes: list[Shape] = [*placing.shapes((*blank.words, *blank.scores)), *cuts]
    shapes += [hair for point in datum for hair in cross(point, ARM, Pen.REFERENCE)]
    part = Part(
        blank.name, blank.title, tuple(shapes), datum, box_of(cuts[-1]), (*blank.notes, _lies(stock, words)), whole=True
    )
    check_fits(part, stock)
    return part


def _lies(stock: Stock, words: Catalogue) -> str:
    up, across = say_number(stock.kerf_x), say_number(stock.kerf_y)
    kerf = Message(Unit.MM, {"number": up})
    if stock.kerf_x != stock.kerf_y:
        kerf = Message(CutNote.TWO_KERFS, {"up": up, "across": across})
    if stock.grain == "none":
        return words.say(CutNote.STOCK_DRAWN if stock.kerf_drawn else CutNote.STOCK_LEFT, stock=stock.name, kerf=kerf)
    role = CutNote.STOCK_DRAWN_GRAIN if stock.kerf_drawn else CutNote.STOCK_LEFT_GRAIN
    return words.say(role, stock=stock.name, kerf=kerf, grain=stock.grain)


def check_fits(part: Part, stock: Stock) -> None:
    """FieldError on the sheet where the part is larger than the stock."""
    for key, size, room in (("width", part.length, stock.width), ("height", part.height, stock.height)):
        if size > room:
            values = {"size": math.ceil(size), "part": part.title}
            role = CutNeed.WIDER_SHEET
            if stock.grain != "none":
                role, values = CutNeed.WIDER_SHEET_GRAIN, {**values, "grain": stock.grain}
            example = f'{key} = "{math.ceil(size / 50) * 50} mm"'
            raise FieldError(f"sheet.{key}", role, Message(Unit.MM, {"number": say_number(room)}), example, **values)
