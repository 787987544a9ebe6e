"""A part as it is wanted, before anything is known of the cut; and the part as it is drawn for a stock."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from layout.cutting.stock.kerf import Kerf, drawn
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Shape, Text, cross
from layout.drawing.sheet import Part
from layout.values.errors import FieldError

ARM = 1.0
"""Of the crosses by which a part is found again, in mm; nothing runs them."""

SMALL_PART = "Keep small parts and offcuts from children."


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


def cut_part(blank: Blank, stock: Stock) -> Part:
    """The part as it lies on `stock`: along its grain, and drawn for its kerf if the stock wants that.

    Raises FieldError where the kerf closes something, or the part is larger than the sheet.
    """
    placing = Placing(90 if turned(blank, stock) else 0)
    outer, *holes = (path for path in placing.shapes((blank.outline, *blank.holes)) if isinstance(path, Curve))
    cuts = drawn(outer, holes, Kerf(stock.kerf_x, stock.kerf_y)) if stock.kerf_drawn else (*holes, outer)
    datum = tuple(placing.points(blank.datum))
    shapes: list[Shape] = [*placing.shapes((*blank.words, *blank.scores)), *cuts]
    shapes += [hair for point in datum for hair in cross(point, ARM, Pen.REFERENCE)]
    xs, ys = zip(*cuts[-1].points(), strict=True)
    box = (min(xs), min(ys), max(xs), max(ys))
    part = Part(blank.name, blank.title, tuple(shapes), datum, box, (*blank.notes, _lies(stock)), whole=True)
    check_fits(part, stock)
    return part


def _lies(stock: Stock) -> str:
    kerf = f"{stock.kerf_x:g} mm"
    if stock.kerf_x != stock.kerf_y:
        kerf = f"{stock.kerf_x:g} mm up the sheet and {stock.kerf_y:g} mm across it"
    how = "drawn in" if stock.kerf_drawn else "left to the machine"
    grain = f"; the face grain runs along {stock.grain}" if stock.grain != "none" else ""
    return f"For the stock {stock.name}: kerf {kerf}, {how}{grain}."


def check_fits(part: Part, stock: Stock) -> None:
    """FieldError on the sheet where the part is larger than the stock."""
    for key, size, room in (("width", part.length, stock.width), ("height", part.height, stock.height)):
        if size > room:
            needed = f"at least {math.ceil(size)} mm for the {part.title.lower()}"
            along = f", whose grain has to lie along {stock.grain}" if stock.grain != "none" else ""
            example = f'{key} = "{math.ceil(size / 50) * 50} mm"'
            raise FieldError(f"sheet.{key}", needed + along, f"{room:g} mm", example)
