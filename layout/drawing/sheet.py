"""Parts and sheets. A sheet is the hinge of the project: what a writer gets, a reader returns, the proof compares."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from layout.drawing.pens import PAINTING_ORDER, Pen
from layout.drawing.shapes import Box, Curve, Placing, Point, Shape
from layout.messages.catalogue import Said

PT = 25.4 / 72
"""One PDF unit in mm (ISO 32000: 1/72 in)."""

JOINT_THIRD = 7.0
"""The third cross of a joint within a part stands so far to the right of the first one, in mm."""

STACK_GAP = 10.0
"""Between parts that stand one under the other without paper, in mm."""


class Care(Said):
    """A note that a person should know before the part is made, whatever its words are."""

    __slots__ = ()

    def __new__(cls, note: str) -> Care:
        """The same text; what was said by a catalogue can still be said again in another language."""
        care = super().__new__(cls, note)
        if isinstance(note, Said):
            care.role, care.values, care.language = note.role, note.values, note.language
        return care


class OnScreen(Care):
    """Such a note for the screen alone: figures that help nobody who has the sheet in the hand."""

    __slots__ = ()


class Entry(NamedTuple):
    """A line of a legend: a sample of what is drawn, its middle at (0, 0), and what that means."""

    sample: tuple[Shape, ...]
    words: str


class Block(NamedTuple):
    """A picture or a list beside a part, under its `title`, with a remark `beside` that.

    `shapes` lie within `high` mm below (0, 0), to the right of it; `entries` are lines under them. Entries `in_a_row`
    follow each other on one line.
    """

    title: str = ""
    beside: str = ""
    shapes: tuple[Shape, ...] = ()
    high: float = 0.0
    entries: tuple[Entry, ...] = ()
    in_a_row: bool = False


@dataclass(frozen=True, slots=True)
class Part:
    """One thing to make, in its own coordinates.

    `box` is left, bottom, right, top of everything drawn. `datum` are three or more points whose register crosses stand
    among the shapes, in this order, so that the part can be found again wherever it was laid. A `whole` part (a card, a
    picture) lies straight on one sheet and is never tiled.

    What its sheet says about it: `title`, its `purpose` in one line, `notes` in small letters; `steps` are things to
    do, each with a number in a ring; `blocks` are pictures and lists beside the part; `cautions`
    stand last. A sheet that is not `measured` carries no check scales. On a `narrow` sheet the words stand in a column
    beside the part; where they stand `below`, the part comes first.

    What is `numbered` for itself says so where a sheet has its number among those of its file.

    Of a part that may come in pieces, `joint_rows` are the two heights at which the crosses of a joint find room, the
    first one near the edge to the weaving; with none they stand beside it.

    The `scissors` are those of its shapes that say where it is cut out by hand; where straight cuts part it from its
    neighbours it is drawn `bare`, without them.
    """

    name: str
    title: str
    shapes: tuple[Shape, ...]
    datum: tuple[Point, ...]
    box: Box
    notes: tuple[str, ...] = ()
    whole: bool = False
    purpose: str = ""
    steps: tuple[str, ...] = ()
    blocks: tuple[Block, ...] = ()
    cautions: tuple[str, ...] = ()
    measured: bool = True
    narrow: bool = False
    below: bool = False
    joint_rows: tuple[float, float] | None = None
    scissors: tuple[Shape, ...] = ()
    numbered: str = ""

    @property
    def trim(self) -> Box:
        """What is left of it once it is cut out: the box of its cut lines; all of it where it has none."""
        cut = [
            at for shape in self.shapes if isinstance(shape, Curve) and shape.pen is Pen.CUT for at in shape.points()
        ]
        if not cut:
            return self.box
        xs, ys = [at.x for at in cut], [at.y for at in cut]
        return min(xs), min(ys), max(xs), max(ys)

    @property
    def bare(self) -> Part:
        """The same without its scissors, as large as it is once it is cut out."""
        kept = tuple(shape for shape in self.shapes if shape not in self.scissors)
        return replace(self, shapes=kept, scissors=(), box=self.trim)

    @property
    def length(self) -> float:
        """From left to right, in mm."""
        return self.box[2] - self.box[0]

    @property
    def height(self) -> float:
        """From bottom to top, in mm."""
        return self.box[3] - self.box[1]


class Piece(NamedTuple):
    """A part, or a piece of one, and where it lies on its sheet."""

    part: Part
    placing: Placing


@dataclass(frozen=True, slots=True, weakref_slot=True)
class Sheet:
    """`width` x `height` mm with `shapes` on it in painting order; origin lower left, y up."""

    name: str
    width: float
    height: float
    shapes: tuple[Shape, ...]


def pen_of(shape: Shape) -> Pen:
    """The pen a shape is drawn with."""
    return shape.pen


def painted(shapes: Iterable[Shape]) -> tuple[Shape, ...]:
    """`shapes` in painting order: pen by pen, and as they came within a pen."""
    return tuple(sorted(shapes, key=lambda shape: PAINTING_ORDER[pen_of(shape)]))


def stacked(parts: Sequence[Part]) -> tuple[Placing, ...]:
    """Where each of `parts` lies when they stand straight one under the other, the last one lowest, from (0, 0)."""
    placings: list[Placing] = []
    floor = 0.0
    for part in reversed(parts):
        left, bottom, _, _ = part.box
        placings.append(Placing(0, -left, floor - bottom))
        floor += part.height + STACK_GAP
    return tuple(reversed(placings))


def sheet_of(name: str, parts: Sequence[Part]) -> Sheet:
    """The parts alone, stacked, on a sheet of their own size."""
    shapes = [
        shape for part, placing in zip(parts, stacked(parts), strict=True) for shape in placing.shapes(part.shapes)
    ]
    height = sum(part.height for part in parts) + STACK_GAP * (len(parts) - 1)
    return Sheet(name, max(part.length for part in parts), height, painted(shapes))


def cuts_on(sheet: Sheet) -> int:
    """How many outlines on the sheet are cut."""
    return sum(1 for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH)


def marks_on(sheet: Sheet) -> int:
    """How many marks that are measured stand on the sheet: winds or ends, tens, units, limits and bold edges."""
    measured = (Pen.MARK, Pen.TEN, Pen.END_MARK, Pen.END_MARK_BACK, Pen.TEN_BACK, Pen.UNIT, Pen.LIMIT, Pen.EDGE)
    return sum(1 for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen in measured)
