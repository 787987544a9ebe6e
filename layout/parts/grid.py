"""Cartoon paper: a column to every end, a row to every bead, at the size of the weaving.

x runs from the centre of the weaving, y up from the bottom limit, both in mm. Columns stand where the ends truly lie:
the k-th from the left is (k + 1/2) p - W/2, give or take p/2, in a weaving of width W at the pitch p.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil, floor

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import Pane, Paned
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text, cross, filled, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL
from layout.messages.english import ENGLISH
from layout.messages.roles import Grid as Said
from layout.messages.roles import SheetNeed
from layout.parts.grid_size import Grid, grid_of, left_out, notes_for
from layout.plan import Plan
from layout.values.errors import LayoutError

NAME = "weaving-grid"

_GAP = 1.2  # from the drawing to its numbers
_OFF, _ARM = 4.5, 1.2  # the small crosses outside the corners
_JOINT_ARM = 4.0
_LABEL = 6.4  # from the drawing to the foot of a piece's name, above the small crosses
_WORD = 7.0  # from the drawing to the foot of the word under the centre
_LARGE = 8.0  # larger cells are halved until a cross need not move far
_CLEAR = 3.0  # a number so near to a trimmed edge is left to the neighbour


def drawing_of(plan: Plan, metrics: FontMetrics) -> Paned:
    """The grid of a plan, to be drawn whole or in panes; LayoutError where it has none."""
    grid = grid_of(plan)
    if grid is None:
        raise LayoutError(SheetNeed.NO_GRID, why=left_out(plan))
    return paned(grid, notes_for(plan, grid), metrics)


def paned(grid: Grid, notes: tuple[str, ...], metrics: FontMetrics) -> Paned:
    """The grid, to be drawn whole or in panes."""
    half, high = float(grid.width / 2), float(grid.height)
    draft = _Draft(grid, notes, metrics)
    return Paned(Pane(-half, 0.0, half, high), draft.part, draft.snap, draft.clear)


@dataclass(frozen=True, slots=True)
class _Draft:
    grid: Grid
    notes: tuple[str, ...]
    metrics: FontMetrics

    @property
    def left(self) -> float:
        """The x of the left limit."""
        return -float(self.grid.width / 2)

    def part(self, pane: Pane) -> Part:
        """What `pane` shows, with its numbers at the left and under it."""
        margin = _GAP + self.metrics.width(str(self.grid.rows), SMALL) + _GAP + self.metrics.ascent * SMALL
        left, top = pane.left - max(margin, _OFF + _ARM), pane.top + _LABEL + self.metrics.ascent * SMALL
        box = (left, pane.bottom - _WORD - 1, pane.right + _OFF + _ARM, top)
        corners = self.corners(pane)
        shapes: list[Shape] = [*self.tens(pane), *self.lines(pane), *self.numbers(pane), *self.centres(pane)]
        shapes += [hair for point in corners for hair in cross(point, _ARM, Pen.REGISTER)]
        shapes += [hair for point in pane.crosses for hair in cross(point, _JOINT_ARM, Pen.REGISTER)]
        shapes += trims(pane)
        if pane.label:
            shapes.append(Text(Point(pane.left, pane.top + _LABEL), SMALL, pane.label))
        return Part(NAME, ENGLISH.say(Said.TITLE), tuple(shapes), (*corners, *pane.crosses), box, self.notes)

    def snap(self, point: Point) -> Point:
        """The nearest point in the middle of a column and a row (or of a half or quarter of large ones).

        A cross is seen there, and no line runs through it.
        """
        left = self.left
        return Point(left + _middle(point.x - left, float(self.grid.pitch)), _middle(point.y, float(self.grid.bead)))

    def clear(self, point: Point) -> Point:
        """A quarter into a column and a row, where neither a line nor a centre line of odd numbers runs."""
        left, (pitch, bead) = self.left, (float(self.grid.pitch), float(self.grid.bead))
        return Point(left + _quarter(point.x - left, pitch), _quarter(point.y, bead))

    def corners(self, pane: Pane) -> list[Point]:
        """The small crosses outside those corners of the whole grid that `pane` holds."""
        half, high = -self.left, self.grid.row_line(self.grid.rows)
        inner = [Point(-half, 0.0), Point(half, 0.0), Point(-half, high), Point(half, high)]
        outer = [Point(x + _OFF * (1 if x > 0 else -1), y + _OFF * (1 if y > 0 else -1)) for x, y in inner]
        return [far for near, far in zip(inner, outer, strict=True) if _holds(pane, near)]

    def tens(self, pane: Pane) -> Iterator[Region]:
        """Every second block of ten columns and ten rows, as on a chessboard."""
        grid = self.grid
        for across in range(ceil(grid.columns / 10)):
            left, right = sorted(grid.column_line(min(10 * k, grid.columns)) for k in (across, across + 1))
            left, right = max(left, pane.left), min(right, pane.right)
            for up in range(1 - across % 2, ceil(grid.rows / 10), 2) if left < right else ():
                low, high = (grid.row_line(min(10 * k, grid.rows)) for k in (up, up + 1))
                low, high = max(low, pane.bottom), min(high, pane.top)
                if low < high:
                    corners = ((left, low), (right, low), (right, high), (left, high))
                    yield filled([Point(x, y) for x, y in corners], Pen.TINT)

    def lines(self, pane: Pane) -> Iterator[Curve]:
        """Thin lines between ends and beads, stronger ones at the tens, bold ones at the limits and the centres."""
        for number in range(self.grid.columns + 1):
            x = self.grid.column_line(number)
            if pane.left <= x <= pane.right and 2 * number != self.grid.columns:
                yield line(Point(x, pane.bottom), Point(x, pane.top), _pen(number, self.grid.columns))
        for number in range(self.grid.rows + 1):
            y = self.grid.row_line(number)
            if pane.bottom <= y <= pane.top and 2 * number != self.grid.rows:
                yield line(Point(pane.left, y), Point(pane.right, y), _pen(number, self.grid.rows))
        if pane.left <= 0 <= pane.right:
            yield line(Point(0.0, pane.bottom), Point(0.0, pane.top), Pen.EDGE)
        if pane.bottom <= (middle := float(self.grid.height / 2)) <= pane.top:
            yield line(Point(pane.left, middle), Point(pane.right, middle), Pen.EDGE)

    def numbers(self, pane: Pane) -> Iterator[Text]:
        """The number of every tenth line: under it, or to its left."""
        cap = self.metrics.cap * SMALL
        for number in range(10, self.grid.columns + 1, 10):
            x, words = self.grid.column_line(number), str(number)
            if _clear(x, pane.left, pane.right, "left" in pane.trimmed):
                yield Text(Point(x - self.metrics.width(words, SMALL) / 2, pane.bottom - _GAP - cap), SMALL, words)
        for number in range(10, self.grid.rows + 1, 10):
            y, words = self.grid.row_line(number), str(number)
            if _clear(y, pane.bottom, pane.top, "bottom" in pane.trimmed):
                x = pane.left - _GAP - self.metrics.width(words, SMALL)
                yield Text(Point(x, y - cap / 2), SMALL, words)

    def centres(self, pane: Pane) -> Iterator[Text]:
        """The word at both centre lines, beyond the numbers."""
        words = ENGLISH.say(Said.CENTRE)
        long, beyond = self.metrics.width(words, SMALL), _GAP + self.metrics.width(str(self.grid.rows), SMALL) + _GAP
        if _clear(0.0, pane.left, pane.right, "left" in pane.trimmed):
            yield Text(Point(-long / 2, pane.bottom - _WORD), SMALL, words)
        middle = float(self.grid.height / 2)
        if _clear(middle, pane.bottom, pane.top, "bottom" in pane.trimmed):
            yield Text(Point(pane.left - beyond, middle - long / 2), SMALL, words, 90.0)


def _middle(at: float, cell: float) -> float:
    while cell > _LARGE:
        cell /= 2
    return (floor(at / cell) + 0.5) * cell


def _quarter(at: float, cell: float) -> float:
    """The nearest place a quarter of a cell (at most of _LARGE) from a line."""
    while cell > _LARGE:
        cell /= 2
    return (floor(2 * at / cell) + 0.5) * cell / 2


def _holds(pane: Pane, point: Point) -> bool:
    return pane.left <= point.x <= pane.right and pane.bottom <= point.y <= pane.top


def _clear(at: float, low: float, high: float, trimmed: bool) -> bool:
    return low + (_CLEAR if trimmed else 0.0) <= at <= high


def _pen(number: int, last: int) -> Pen:
    if number in (0, last):
        return Pen.EDGE
    return Pen.HELP if number % 10 else Pen.MARK


def trims(pane: Pane) -> Iterator[Curve]:
    """Where a pane is cut before it is laid over its neighbours."""
    corner = Point(pane.left, pane.bottom)
    if "left" in pane.trimmed:
        yield line(corner, Point(pane.left, pane.top), Pen.CUT)
    if "bottom" in pane.trimmed:
        yield line(corner, Point(pane.right, pane.bottom), Pen.CUT)
