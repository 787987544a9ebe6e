"""Cartoon paper: a column to every end, a row to every bead, at the size of the weaving.

x runs from the centre of the weaving, y up from the bottom limit, both in mm. Columns stand where the ends truly lie:
the k-th from the left is (k + 1/2) p - W/2, give or take p/2, in a weaving of width W at the pitch p.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from math import floor

from layout.drawing.metrics import FontMetrics
from layout.drawing.pane import OnSheet, Pane, Paned
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Placing, Point, Region, Shape, Text, circle, cross, filled, line
from layout.drawing.sheet import Block, Part
from layout.drawing.signs import scissors
from layout.drawing.typeset import SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Grid as Said
from layout.messages.roles import SheetName, SheetNeed
from layout.parts.grid_key import WIDE, Key, key_of, signs
from layout.parts.grid_size import Grid, grid_of, left_out, notes_for, remarks_for
from layout.plan import Plan
from layout.values.errors import LayoutError
from layout.values.numerals import say_fixed

NAME = "weaving-grid"

_GAP = 1.2  # from the drawing to its numbers
_OFF, _ARM = 4.5, 1.2  # the small crosses outside the corners
_JOINT_ARM, _JOINT_RING = 2.4, 1.5
_WORD = 7.0  # from the drawing to the foot of the word under the centre
_LARGE = 8.0  # larger cells are halved until a cross need not move far
_CLEAR = 5.5  # a number so near to a trimmed edge is left to the neighbour
_FOOT, _TURNED_FOOT, _TURNED_SIDE, _PAST = 8.0, 10.5, 8.0, 5.7  # margins round a piece, for numbers and crosses
_KEY_OFF, _CUT_ON, _SCISSORS = 4.0, 7.0, 6.0


def drawing_of(plan: Plan, metrics: FontMetrics) -> Paned:
    """The grid of a plan, to be drawn whole or in panes; LayoutError where it has none."""
    grid = grid_of(plan)
    if grid is None:
        raise LayoutError(SheetNeed.NO_GRID, why=left_out(plan))
    return paned(grid, remarks_for(plan, grid), notes_for(plan, grid), plan.words, metrics)


def paned(
    grid: Grid, remarks: tuple[str, ...], notes: tuple[str, ...], words: Catalogue, metrics: FontMetrics
) -> Paned:
    """The grid, to be drawn whole or in panes."""
    half, high = float(grid.width / 2), float(grid.height)
    draft = _Draft(grid, remarks, notes, words, metrics)
    whole = Pane(-half, 0.0, half, high)
    return Paned(whole, Point(0.0, high / 2), draft.part, draft.box, draft.snap, draft.clear, draft.with_words)


@dataclass(frozen=True, slots=True)
class _Draft:
    grid: Grid
    remarks: tuple[str, ...]
    notes: tuple[str, ...]
    words: Catalogue
    metrics: FontMetrics

    @property
    def left(self) -> float:
        """The x of the left limit."""
        return -float(self.grid.width / 2)

    def part(self, pane: Pane, on: OnSheet | None = None) -> Part:
        """What `pane` shows, with its numbers at the left and under it, and as it stands `on` a sheet its key."""
        turned = on is not None and on.turned
        corners = self.corners(pane)
        shapes: list[Shape] = [*self.under(pane), *self.lines(pane)]
        shapes += [*self.numbers(pane, turned=turned), *self.centres(pane, turned=turned)]
        shapes += [hair for point in corners for hair in cross(point, _ARM, Pen.REGISTER)]
        for point in pane.crosses:
            shapes += [*cross(point, _JOINT_ARM, Pen.REGISTER), circle(point, _JOINT_RING, Pen.HELP)]
        shapes += trims(pane)
        if on:
            shapes += self._place_of_key(pane, on).shapes(self.key(on).shapes)
        say = self.words.say
        datum, box = (*corners, *pane.crosses), self.box(pane, on or OnSheet(), keyed=on is not None)
        title, purpose = say(SheetName.NAME_GRID), say(SheetName.PURPOSE_GRID)
        return Part(NAME, title, tuple(shapes), datum, box, purpose=purpose)

    def with_words(self, part: Part, on: OnSheet) -> Part:
        """What the first sheet says; where it `says` nothing beside the piece, all of it."""
        say, steps = self.words.say, [self.words.say(Said.STEP_DRAW)]
        if on.total > 1:
            half, high = -self.left + _OFF, self.grid.row_line(self.grid.rows) + 2 * _OFF
            wide, high_words = (say_fixed(side, 1) for side in (2 * half, high))
            tape = say(Said.STEP_TAPE, count=on.total, wide=wide, high=high_words)
            steps = [say(Said.STEP_CUT), tape, *steps]
        if on.says:
            return replace(part, steps=tuple(steps), notes=self.notes)
        legend = Block(entries=tuple(signs(on, self.words)), in_a_row=True)
        return replace(part, steps=tuple(steps), notes=(*self.all_remarks(on), *self.notes), blocks=(legend,))

    def all_remarks(self, on: OnSheet) -> tuple[str, ...]:
        """What the grid has, and where pieces are numbered from."""
        return (self.words.say(Said.NUMBERED), *self.remarks) if on.total > 1 else self.remarks

    def key(self, on: OnSheet) -> Key:
        """The column beside a piece."""
        return key_of(on, self.all_remarks(on), self.words, self.metrics)

    def box(self, pane: Pane, on: OnSheet, *, keyed: bool = True) -> Box:
        """Of all that a piece shows, and its key at the right, or where it is turned at the foot."""
        digits = self.metrics.width(str(self.grid.rows), SMALL)
        side = max(_GAP + digits + _GAP + self.metrics.ascent * SMALL, _PAST, _CUT_ON)
        if on.turned:
            left, bottom = pane.left - _TURNED_SIDE, pane.bottom - _TURNED_FOOT - _KEY_OFF - WIDE
            return min(left, pane.right - self.key(on).high), bottom, pane.right + _PAST, pane.top + _PAST
        right = pane.right + _KEY_OFF + WIDE if keyed else pane.right + _PAST
        low = pane.bottom - _FOOT
        return pane.left - side, min(low, pane.top - self.key(on).high) if keyed else low, right, pane.top + _PAST

    def _place_of_key(self, pane: Pane, on: OnSheet) -> Placing:
        if on.turned:
            return Placing(-90, pane.right, pane.bottom - _TURNED_FOOT - _KEY_OFF)
        return Placing(0, pane.right + _KEY_OFF, pane.top)

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

    def under(self, pane: Pane) -> Iterator[Region]:
        """Where pieces at the right and above will lie over this one."""
        right = pane.right
        if pane.under_right is not None:
            yield _grey(pane.under_right, pane.bottom, right, pane.top)
            right = pane.under_right
        if pane.under_top is not None:
            yield _grey(pane.left, pane.under_top, right, pane.top)

    def lines(self, pane: Pane) -> Iterator[Curve]:
        """Fine lines between ends and beads, stronger ones at the tens, bold ones at the limits; the centres dashed."""
        for number in range(self.grid.columns + 1):
            x = self.grid.column_line(number)
            if pane.left <= x <= pane.right and 2 * number != self.grid.columns:
                yield line(Point(x, pane.bottom), Point(x, pane.top), _pen(number, self.grid.columns))
        for number in range(self.grid.rows + 1):
            y = self.grid.row_line(number)
            if pane.bottom <= y <= pane.top and 2 * number != self.grid.rows:
                yield line(Point(pane.left, y), Point(pane.right, y), _pen(number, self.grid.rows))
        if pane.left <= 0 <= pane.right:
            yield line(Point(0.0, pane.bottom), Point(0.0, pane.top), Pen.CENTRE)
        if pane.bottom <= (middle := float(self.grid.height / 2)) <= pane.top:
            yield line(Point(pane.left, middle), Point(pane.right, middle), Pen.CENTRE)

    def numbers(self, pane: Pane, *, turned: bool = False) -> Iterator[Text]:
        """The number of every tenth line: under it, or to its left; upright on a piece that is `turned` too."""
        cap = self.metrics.cap * SMALL
        for number in range(10, self.grid.columns + 1, 10):
            x, words = self.grid.column_line(number), str(number)
            long = self.metrics.width(words, SMALL)
            if _clear(x, pane.left, pane.right, "left" in pane.trimmed):
                at = Point(x - cap / 2, pane.bottom - _GAP) if turned else Point(x - long / 2, pane.bottom - _GAP - cap)
                yield Text(at, SMALL, words, -90.0 if turned else 0.0)
        for number in range(10, self.grid.rows + 1, 10):
            y, words = self.grid.row_line(number), str(number)
            long = self.metrics.width(words, SMALL)
            if _clear(y, pane.bottom, pane.top, "bottom" in pane.trimmed):
                at = (
                    Point(pane.left - _GAP - cap, y + long / 2)
                    if turned
                    else Point(pane.left - _GAP - long, y - cap / 2)
                )
                yield Text(at, SMALL, words, -90.0 if turned else 0.0)

    def centres(self, pane: Pane, *, turned: bool = False) -> Iterator[Text]:
        """The word at both centre lines, beyond the numbers."""
        words = self.words.say(Said.CENTRE)
        long, middle = self.metrics.width(words, SMALL), float(self.grid.height / 2)
        digits, ascent = _GAP + self.metrics.width(str(self.grid.columns), SMALL), self.metrics.ascent * SMALL
        beyond = _GAP + self.metrics.width(str(self.grid.rows), SMALL) + _GAP
        if _clear(0.0, pane.left, pane.right, "left" in pane.trimmed):
            yield Text(Point(-long / 2, pane.bottom - (digits + ascent if turned else _WORD)), SMALL, words)
        if _clear(middle, pane.bottom, pane.top, "bottom" in pane.trimmed):
            if turned:
                yield Text(Point(pane.left - _WORD, middle + long / 2), SMALL, words, -90.0)
            else:
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
        return Pen.LIMIT
    return Pen.GRID if number % 10 else Pen.GRID_TEN


def _grey(left: float, low: float, right: float, high: float) -> Region:
    return filled([Point(left, low), Point(right, low), Point(right, high), Point(left, high)], Pen.TINT)


def trims(pane: Pane) -> Iterator[Shape]:
    """Where a pane is cut before it is laid over its neighbours, from beyond its numbers on."""
    if "left" in pane.trimmed:
        yield line(Point(pane.left, pane.bottom - _CUT_ON), Point(pane.left, pane.top), Pen.CUT)
        yield from scissors(Point(pane.left, pane.bottom - _SCISSORS), 90)
    if "bottom" in pane.trimmed:
        yield line(Point(pane.left - _CUT_ON, pane.bottom), Point(pane.right, pane.bottom), Pen.CUT)
        yield from scissors(Point(pane.left - _SCISSORS, pane.bottom))
