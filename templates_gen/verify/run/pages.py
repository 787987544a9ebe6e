"""What the proofs of a print run are given: its kits, and the pages that were read with what was planned for each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple, Protocol

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Point
from layout.drawing.sheet import Piece, Sheet
from layout.plan import Plan
from templates_gen.verify.boxes import box_around
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.warp_words import order_on


class RunKit(NamedTuple):
    """A kit, and how many boxes of it are made."""

    plan: Plan
    copies: int


def called(plan: Plan) -> str:
    """What sheets with parts of many call one of them: its order, or its kit where that is of no order."""
    return next(iter(order_on(plan.kit)), plan.kit.name)


class ClaimedCut(Protocol):
    """A cut as the sheet is said to need it; the proof makes it on the sheet that was read."""

    @property
    def number(self) -> int: ...  # noqa: D102
    @property
    def axis(self) -> str: ...  # noqa: D102
    @property
    def at(self) -> float: ...  # noqa: D102
    @property
    def gap(self) -> float: ...  # noqa: D102
    @property
    def begin(self) -> float: ...  # noqa: D102
    @property
    def end(self) -> float: ...  # noqa: D102


class PlacedPage(NamedTuple):
    """A sheet with parts of several boxes: whose each piece is, its cuts, and which it is of how many such sheets."""

    sheet: Sheet
    pieces: tuple[Piece, ...]
    kits: tuple[int, ...]
    cuts: Sequence[ClaimedCut]
    number: int
    total: int
    times: int


def on_sheet(seen: FoundPart, points: Sequence[Point]) -> Iterator[Point]:
    """Where points of a part lie on its sheet, by its crosses."""
    (origin_x, origin_y), (shift_x, shift_y), cos, sin = seen.lie
    for x, y in points:
        dx, dy = x - origin_x, y - origin_y
        yield Point(shift_x + cos * dx - sin * dy, shift_y + sin * dx + cos * dy)


def trim_of(seen: FoundPart) -> Box:
    """What is cut out of the sheet, by the cut lines that were read; all of the part where it has none."""
    drawn = [point for path in seen.paths(Pen.CUT) for point in path.points()]
    return box_around(on_sheet(seen, drawn)) if drawn else room_of(seen)


def room_of(seen: FoundPart) -> Box:
    """All that a part takes on its sheet."""
    left, low, right, high = seen.part.box
    return box_around(on_sheet(seen, (Point(left, low), Point(right, high))))
