"""The foot of the winding sheet: a section of the warped frame with shed stick and heading rows, and what to do there.

The near bar lies to the left, the far bar to the right, the face up. Two sets of ends come together at the headings;
between them the stick lifts one set.
"""

from __future__ import annotations

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Placing, Point, Region, Shape, Step, arc, circle, filled, line, rectangle
from layout.drawing.signs import ring, step_tile
from layout.drawing.symbols import block
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.roles import Shed
from layout.parts.winding.lines import downward, rows_of, step_of, upward
from layout.parts.winding.listing import listed
from layout.plan import Plan
from layout.yardage.heading import Heading, heading_of

_TILE, _TO_TITLE, _TILE_TO_SECTION = 8.0, 10.0, 22.0
_LONG, _NEAR, _FAR, _BAR, _THREAD = 74.0, 5.2, 68.8, 4.2, 4.7
_HEADINGS, _STICK, _LIFT = (14.4, 60.0), 48.5, 9.9
_SIDE, _HALF_STICK = 2.4, 0.9
_DOT, _DOTS_APART, _MOST_DOTS = 0.76, 1.7, 3
_RING_UP, _RING_DOWN = 3.4, 8.0
_LIST = 82.0
_TO_SECTION, _SECTION_LOW, _FIRST = 17.0, 18.0, 6.0
_UNDER_TITLE = 6.6
_OFF_RING, _UNDER_BACK, _UNDER_SIDE = 6.8, 8.4, 7.2
_SHORT, _NAMES_WIDE, _FACE_TO, _FACE_WIDE = 20.0, (23.0, 19.0), 40.0, 39.0  # names of bars end short of the thread


def shed(plan: Plan, corner: Point, right: float, metrics: FontMetrics) -> list[Shape]:
    """The tile of the step, its title, the section with letters in rings, and beside it the list of them.

    It hangs from its upper left `corner` and ends at `right`.
    """
    tile = Point(corner.x + _TILE / 2, corner.y - _TILE / 2)
    title = Point(corner.x + _TO_TITLE, tile.y - metrics.cap * LEAD / 2)
    names = rows_of(plan.words.say(Shed.TITLE), LEAD, right - title.x, metrics, Pen.STRONG)
    shapes: list[Shape] = step_tile(tile, "4", metrics)
    shapes += downward(names, LEAD, title, metrics, pen=Pen.STRONG)
    lower = (len(names) - 1) * step_of(names, LEAD)
    drawn = _Section(plan, metrics)
    level = tile.y - _TILE_TO_SECTION - lower - drawn.higher
    shapes += Placing(0, corner.x, level).shapes(drawn.shapes())
    at = Point(corner.x + _LIST, corner.y - _TILE - _UNDER_TITLE - lower)
    return [*shapes, *_list(plan, at, right, metrics)]


def shed_alone(plan: Plan, corner: Point, right: float, metrics: FontMetrics, *, wide: bool) -> list[Shape]:
    """The section and the list under it, or beside it where it is `wide`, without tile and title."""
    drawn = _Section(plan, metrics)
    level = corner.y - _TO_SECTION - drawn.higher
    at = Point(corner.x + _LIST, corner.y - _FIRST) if wide else Point(corner.x, level - _SECTION_LOW)
    return [*Placing(0, corner.x, level).shapes(drawn.shapes()), *_list(plan, at, right, metrics)]


def _heading(plan: Plan) -> Heading:
    return heading_of(plan.kit.amounts.room)


def _has_rows(plan: Plan) -> bool:
    asked = _heading(plan)
    return asked.hitched or asked.rows > 0


def _list(plan: Plan, at: Point, right: float, metrics: FontMetrics) -> list[Shape]:
    """The letters of the section with what is done there, the first baseline at `at`."""
    said = [plan.words.say(_stick_role(plan)), *_rows_words(plan)]
    return listed(zip("ab", said, strict=False), at, right, metrics)


def _stick_role(plan: Plan) -> Shed:
    if plan.warp.kind != "wound":
        return Shed.STICK_SECOND
    return Shed.STICK_FRONT if plan.warp.winding == "figure eight" else Shed.STICK_FACE


def _rows_words(plan: Plan) -> list[str]:
    if not _has_rows(plan):
        return []
    asked, on_rod = _heading(plan), plan.warp.kind == "rod"
    if asked.hitched:
        return [plan.words.say(Shed.HITCHED_ROD if on_rod else Shed.HITCHED)]
    return [plan.words.say(Shed.ROWS_ROD if on_rod else Shed.ROWS, rows=asked.rows)]


class _Section:
    """The section, drawn about the height of the ends at x = 0 and to the right."""

    def __init__(self, plan: Plan, metrics: FontMetrics) -> None:
        self.plan, self.metrics = plan, metrics
        say = plan.words.say
        names = zip((Shed.NEAR_BAR, Shed.FAR_BAR), _NAMES_WIDE, strict=True)
        self.bars = [rows_of(say(role), SMALL, wide, metrics) for role, wide in names]
        lifted = {Shed.STICK_FACE: Shed.FACE_ENDS, Shed.STICK_FRONT: Shed.FRONT_ENDS}.get(_stick_role(plan))
        self.ends = rows_of(say(lifted or Shed.SECOND_ENDS), SMALL, _FACE_WIDE, metrics)
        self.at_headings: tuple[float, ...] = _HEADINGS[1:] if plan.warp.kind == "rod" else _HEADINGS
        if not _has_rows(plan):
            self.at_headings = ()

    @property
    def higher(self) -> float:
        """How much further down the section lies, so that long names stay under the title."""
        rows = max(len(rows) for rows in (*self.bars, self.ends))
        return max(0.0, (rows - 2) * step_of(self.ends, SMALL))

    def shapes(self) -> list[Shape]:
        """All of it."""
        return [*self.wood(), *self.threads(), *self.rows(), *self.names(), *self.rings()]

    @property
    def wound(self) -> bool:
        """Whether the thread goes round both bars."""
        return self.plan.warp.kind in ("wound", "rod")

    def wood(self) -> list[Shape]:
        """A side piece, both bars, what stands on them, and the stick."""
        shapes: list[Shape] = [rectangle(0, -_SIDE, _LONG, _SIDE if self.wound else -_FLAT, Pen.HELP)]
        for x in (_NEAR, _FAR):
            if not self.wound:
                shapes += block(x - _BAR, -_SIDE * 2, x + _BAR, -_FLAT, Pen.OUTLINE)
            elif self.plan.kit.frame.ends.name == "round bars":
                outline = circle(Point(x, 0), _BAR, Pen.TINT)
                shapes += [Region((outline,), Pen.TINT), outline._replace(pen=Pen.OUTLINE)]
            else:
                shapes += block(x - _BAR, -_BAR * _BOARD, x + _BAR, _BAR * _BOARD, Pen.OUTLINE)
            if self.plan.warp.kind not in ("wound", "rod", "notched"):
                shapes += block(x - _PIN, -_FLAT, x + _PIN, _PIN_HIGH, Pen.OUTLINE)
        foot = _SIDE if self.wound else _ON_ENDS
        stick = rectangle(_STICK - _HALF_STICK, foot, _STICK + _HALF_STICK, _LIFT - 0.5, Pen.OUTLINE)
        inside = rectangle(_STICK - 0.7, foot + 0.2, _STICK + 0.7, _LIFT - 0.7, Pen.PAPER)
        return [*shapes, filled(inside.points(), Pen.PAPER), stick]

    def threads(self) -> list[Shape]:
        """The ends that the stick lifts, the others, and what runs round the bars."""
        near, far = (Point(x, 0) for x in _HEADINGS)
        lifted = [near, Point(_STICK, _LIFT), far]
        high = _THREAD if self.plan.kit.frame.ends.name == "round bars" else _BAR * _BOARD + 0.5
        if not self.wound:
            out = _BAR if self.plan.warp.kind == "notched" else 0.0
            begin, end = Point(_NEAR - out, _PIN_UP), Point(_FAR + out, _PIN_UP)
            if out:
                begin, end = Point(begin.x, 0), Point(end.x, 0)
            return [_way(begin, *lifted, end), line(near, far, Pen.THREAD)]
        top, low = (Point(_NEAR, high), Point(_NEAR, -high))
        far_top, far_low = Point(_FAR, high), Point(_FAR, -high)
        shapes: list[Shape] = [*self.round_bars(high)]
        if self.plan.warp.kind == "rod":
            shapes += [_way(top, *lifted, far_top), line(near, far, Pen.THREAD)]
            rod = circle(Point(_ROD_AT, -high), 1.1, Pen.OUTLINE)
            return [*shapes, line(low, Point(_ROD_AT - 1.6, -high), Pen.THREAD_BACK),
                    line(Point(_ROD_AT + 1.6, -high), far_low, Pen.THREAD_BACK), rod]  # fmt: skip
        others = [line(near, far, Pen.THREAD_BACK), line(far, far_low, Pen.THREAD_BACK)]
        if self.plan.warp.winding == "figure eight":
            return [*shapes, _way(*lifted, far_top), line(top, near, Pen.THREAD), *others,
                    line(low, near, Pen.THREAD_BACK)]  # fmt: skip
        return [*shapes, _way(top, *lifted, far_top), line(low, near, Pen.THREAD_BACK), *others]

    def round_bars(self, high: float) -> list[Shape]:
        """The thread round the outer side of each bar."""
        if high == _THREAD:
            return [
                Curve(Point(_NEAR, high), arc(Point(_NEAR, 0), high, 90, 270), Pen.THREAD),
                Curve(Point(_FAR, high), arc(Point(_FAR, 0), high, 90, -90), Pen.THREAD),
            ]
        return [
            _way(
                Point(x, high),
                Point(x + side * (_BAR + 0.5), high),
                Point(x + side * (_BAR + 0.5), -high),
                Point(x, -high),
            )
            for x, side in ((_NEAR, -1), (_FAR, 1))
        ]

    def rows(self) -> list[Shape]:
        """A dot for each heading row, three at most."""
        asked = _heading(self.plan)
        count = 1 if asked.hitched else min(asked.rows, _MOST_DOTS)
        places = [Point(x + (k - (count - 1) / 2) * _DOTS_APART, 0) for x in self.at_headings for k in range(count)]
        return [Region((circle(at, _DOT, Pen.SOLID),), Pen.SOLID) for at in places]

    def names(self) -> list[Shape]:
        """The bars, the ends that are lifted, a side piece."""
        (near, far), metrics = self.bars, self.metrics
        up, step = _BAR + 2.0, step_of(self.ends, SMALL)
        shapes: list[Shape] = [*upward(near, SMALL, Point(0.2, up), metrics)]
        shapes += upward(far, SMALL, Point(_LONG - 0.2, up), metrics, "right")
        wide = max(metrics.width(each, SMALL) for each in self.ends)
        right = min(_FACE_TO, max(_FACE_TO - 6.5, 16 + wide))
        near_wide = max(metrics.width(each, SMALL) for each in near)
        y = (right - _HEADINGS[0]) * _LIFT / (_STICK - _HEADINGS[0]) + 1.9
        if right - wide < near_wide + 1.5:
            y = max(y, up + len(near) * step)
        shapes += upward(self.ends, SMALL, Point(right, y), metrics, "right")
        side = rows_of(self.plan.words.say(Shed.SIDE_PIECE), SMALL, _FACE_WIDE - 6, metrics)
        wide_side = max(metrics.width(each, SMALL) for each in side)
        x = sum(_HEADINGS) / 2 - (_OFF_RING if wide_side < _SHORT else 0.0)
        y = -_UNDER_BACK if self.plan.warp.kind == "rod" else -_UNDER_SIDE
        return [*shapes, *downward(side, SMALL, Point(x, y), metrics, "centre")]

    def rings(self) -> list[Shape]:
        """Where each thing is done."""
        shapes = ring(Point(_STICK, _LIFT + _RING_UP), "a", self.metrics)
        for x in self.at_headings:
            shapes += ring(Point(x, -_RING_DOWN), "b", self.metrics)
        return shapes


_PIN_UP, _FLAT, _BOARD, _PIN, _PIN_HIGH, _ON_ENDS, _ROD_AT = 1.2, 0.6, 0.7, 0.5, 2.4, 0.6, 37.0


def _way(begin: Point, *others: Point) -> Curve:
    return Curve(begin, tuple(map(Step, others)), Pen.THREAD)
