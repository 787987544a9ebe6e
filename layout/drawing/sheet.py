"""Parts and sheets. A sheet is the hinge of the project: what a writer gets, a reader returns, the proof compares."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from layout.drawing.pens import PAINTING_ORDER, Pen
from layout.drawing.shapes import Path, Placing, Point, Shape, Text

PT = 25.4 / 72
"""One PDF unit in mm (ISO 32000: 1/72 in)."""


@dataclass(frozen=True, slots=True)
class Part:
    """One thing to make, in its own coordinates.

    `box` is left, bottom, right, top of everything drawn. `datum` are three or more points whose register crosses stand
    among the shapes, in this order, so that the part can be found again wherever it was laid. `title` and `notes` are
    what its sheet says about it.
    """

    name: str
    title: str
    shapes: tuple[Shape, ...]
    datum: tuple[Point, ...]
    box: tuple[float, float, float, float]
    notes: tuple[str, ...] = ()

    @property
    def length(self) -> float:
        """From left to right, in mm."""
        return self.box[2] - self.box[0]

    @property
    def height(self) -> float:
        """From bottom to top, in mm."""
        return self.box[3] - self.box[1]


@dataclass(frozen=True, slots=True)
class Sheet:
    """`width` x `height` mm with `shapes` on it in painting order; origin lower left, y up."""

    name: str
    width: float
    height: float
    shapes: tuple[Shape, ...]


def pen_of(shape: Shape) -> Pen:
    """The pen a shape is drawn with; words have one of their own."""
    return Pen.TEXT if isinstance(shape, Text) else shape.pen


def painted(shapes: Iterable[Shape]) -> tuple[Shape, ...]:
    """`shapes` in painting order: pen by pen, and as they came within a pen."""
    return tuple(sorted(shapes, key=lambda shape: PAINTING_ORDER[pen_of(shape)]))


def sheet_of(part: Part) -> Sheet:
    """The part alone, straight, on a sheet of its own size."""
    left, bottom, _, _ = part.box
    shapes = Placing(0, -left, -bottom).shapes(part.shapes)
    return Sheet(part.name, part.length, part.height, painted(shapes))


def marks_on(sheet: Sheet) -> int:
    """How many marks that are measured stand on the sheet: winds, tens and units."""
    measured = (Pen.MARK, Pen.TEN, Pen.UNIT)
    return sum(1 for shape in sheet.shapes if isinstance(shape, Path) and shape.pen in measured)
