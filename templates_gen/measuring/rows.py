"""The rows of marks of one part, in its own coordinates."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import hypot
from typing import Literal, NamedTuple

from layout.drawing.boxes import middle_of
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region
from layout.drawing.sheet import Part
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.catalogue import Message, Role
from layout.parts.gauge_form import FIVE_CM, INCH, INK, TWO_INCHES
from layout.parts.grid_size import grid_of
from layout.parts.strip import numbered_marks
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End
from templates_gen.measuring.groups import Mark
from templates_gen.messages.roles.measure import MarkName, RowName
from templates_gen.scan.seen import Line

_SAME = 1e-6  # mm: what a place that is computed twice may differ by
_BOLD, _CLEAR = 0.6, 0.2  # mm: lines so wide hide what they cross, and so much more beside them
_CLOSE = 0.6  # mm from a line, within which it is read
_SHORTEST = 1.0  # mm of a mark, below which nothing can be measured on it

_NAMES: Mapping[str, Role] = {
    NotchedEnd.name: MarkName.NOTCH,
    PeggedEnd.name: MarkName.PEG,
    NailEnd.name: MarkName.NAIL,
}
_OF_STRIP = (Pen.MARK, Pen.TEN)
_OF_GUIDE = (Pen.END_MARK, Pen.TEN, Pen.END_MARK_BACK, Pen.TEN_BACK)
_OF_GRID = (Pen.GRID, Pen.GRID_TEN, Pen.LIMIT, Pen.CENTRE)


class Row(NamedTuple):
    """Marks in a row along one `axis` of the part, which `at` grows with; `kind` names one row of several."""

    axis: Literal["x", "y"]
    marks: tuple[Mark, ...]
    kind: Message | None = None


def strip_rows(part: Part, plan: Plan) -> Iterator[Row]:
    """Winds of a marking strip; notches, pegs or nails of a template."""
    end: End = "near" if part.name.endswith("near") else "far"
    wound = MarkName.WIND if plan.warp.kind == "wound" else MarkName.MARK
    holes = {_key(middle_of(shape).x) for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.HOLE}
    crosses = {x: lines for x, lines in _uprights(part, (Pen.HELP,)).items() if x in holes}
    upright = {x: (_longest(lines),) for x, lines in {**crosses, **_uprights(part, _OF_STRIP)}.items()}
    drawn = {**_sides(part), **upright}
    yield Row("x", _matched(numbered_marks(plan, end), drawn, _NAMES.get(plan.kit.frame.ends.name, wound)))


def guide_rows(part: Part, plan: Plan) -> Iterator[Row]:
    """Ends of a spacing guide, without what its bold edge hides of them."""
    edges = list(_straight(part, (Pen.EDGE,)))
    found = _uprights(part, _OF_GUIDE)
    drawn = {x: (_longest(lines),) for x, lines in found.items()}
    free = {x: tuple(_free_of(line, edges) for line in lines) for x, lines in drawn.items()}
    numbered = list(enumerate(map(float, plan.warp.end_positions[:: plan.warp.toward]), 1))
    which = RowName.NEAR if part.name.endswith("near") else RowName.FAR
    yield Row("x", _matched(numbered, free, MarkName.END), Message(which))


def grid_rows(part: Part, plan: Plan) -> Iterator[Row]:
    """The lines between ends and those between rows."""
    grid = grid_of(plan)
    if grid is None:
        return
    uprights, levels = _uprights(part, _OF_GRID), _levels(part, _OF_GRID)
    across = {x: (_longest(lines),) for x, lines in uprights.items() if _apart(x, _beside(part, 0))}
    up = {y: (_longest(lines),) for y, lines in levels.items() if _apart(y, _beside(part, 1))}
    columns = [(number, grid.column_line(number)) for number in range(grid.columns + 1)]
    rows = [(number, grid.row_line(number)) for number in range(grid.rows + 1)]
    yield Row("x", _matched(columns, across, MarkName.COLUMN), Message(RowName.COLUMNS))
    yield Row("y", _matched(rows, up, MarkName.ROW), Message(RowName.ROWS))


def _beside(part: Part, axis: int) -> Iterator[tuple[float, float]]:
    """Where edges of grey and lines to cut by stand across that axis, and half of their width: from end to end."""
    for shape in part.shapes:
        if isinstance(shape, Region) and shape.pen is Pen.TINT:
            yield from ((point[axis], 0.0) for contour in shape.contours for point in contour.points())
        elif isinstance(shape, Curve) and shape.pen is Pen.CUT:
            places = [point[axis] for point in shape.points()]
            yield from [(places[0], Pen.CUT.ink.width / 2)] if max(places) - min(places) < _SAME else []


def _apart(at: float, others: Iterable[tuple[float, float]]) -> bool:
    """Whether none of these others stands so close to a line, and not in it, that the line cannot be read alone."""
    return not any(abs(at - other) > _SAME and abs(at - other) - half < _CLOSE for other, half in others)


def gauge_rows(part: Part) -> Iterator[Row]:
    """The bold edges of the windows, for each height at which windows stand."""
    drawn = [line for lines in _uprights(part, (Pen.EDGE,)).values() for line in lines]
    for low in sorted({_key(min(line.start.y, line.end.y)) for line in drawn}):
        level = (each for each in drawn if _key(min(each.start.y, each.end.y)) == low)
        edges = sorted(level, key=lambda each: each.start.x)
        marks = []
        for left, right in zip(edges[::2], edges[1::2], strict=False):
            free = right.start.x - left.start.x - INK
            window = next((each for each in (INCH, TWO_INCHES, FIVE_CM) if abs(float(each.mm) - free) < _SAME), None)
            if window is None:
                return
            said = {"window": say_length(window)}
            marks += [
                Mark(Message(MarkName.LEFT_EDGE, said), left.start.x, (left,)),
                Mark(Message(MarkName.RIGHT_EDGE, said), right.start.x, (right,)),
            ]
        yield Row("x", tuple(marks))


def _matched(
    numbered: Iterable[tuple[int, float]], drawn: Mapping[float, tuple[Line, ...]], name: Role
) -> tuple[Mark, ...]:
    """The marks that are drawn where the plan has one, from left to right or upward."""
    marks = [
        Mark(Message(name, {"number": number}), at, drawn[_key(at)])
        for number, at in numbered
        if drawn.get(_key(at)) and all(_long(line) >= _SHORTEST for line in drawn[_key(at)])
    ]
    return tuple(sorted(marks, key=lambda mark: mark.at))


def _key(at: float) -> float:
    return round(at, 5) + 0.0


def _uprights(part: Part, pens: Sequence[Pen]) -> dict[float, list[Line]]:
    """Upright straight lines by their x, each from above to below: to the right is to their left."""
    found: dict[float, list[Line]] = {}
    for shape in _straight(part, pens):
        one, other = shape.points()
        if abs(one.x - other.x) < _SAME:
            low, high = sorted((one, other), key=lambda at: at.y)
            found.setdefault(_key(low.x), []).append(Line(high, low, shape.pen.ink.width))
    return found


def _levels(part: Part, pens: Sequence[Pen]) -> dict[float, list[Line]]:
    """Level straight lines by their y, each from left to right: up is to their left."""
    found: dict[float, list[Line]] = {}
    for shape in _straight(part, pens):
        one, other = shape.points()
        if abs(one.y - other.y) < _SAME:
            left, right = sorted((one, other))
            found.setdefault(_key(left.y), []).append(Line(left, right, shape.pen.ink.width))
    return found


def _straight(part: Part, pens: Sequence[Pen]) -> Iterator[Curve]:
    for shape in part.shapes:
        if not isinstance(shape, Curve) or shape.pen not in pens or shape.closed:
            continue
        if len(shape.steps) == 1 and shape.steps[0].through is None:
            yield shape


def _sides(part: Part) -> dict[float, tuple[Line, ...]]:
    """Both upright sides of every outline of a notch, by the x of its middle."""
    found = {}
    for shape in part.shapes:
        if isinstance(shape, Curve) and shape.pen is Pen.HELP and shape.closed and len(shape.points()) == 4:
            xs, ys = ([point[axis] for point in shape.points()] for axis in (0, 1))
            low, high, wide = min(ys), max(ys), shape.pen.ink.width
            sides = tuple(Line(Point(x, high), Point(x, low), wide) for x in (min(xs), max(xs)))
            found[_key((min(xs) + max(xs)) / 2)] = sides
    return found


def _long(line: Line) -> float:
    return hypot(line.end.x - line.start.x, line.end.y - line.start.y)


def _longest(lines: Sequence[Line]) -> Line:
    """Of a mark that leaves room for a number, the longer half."""
    return max(lines, key=_long)


def _free_of(line: Line, edges: Sequence[Curve]) -> Line:
    """What is left of an upright line beside level bold lines that hide one of its ends."""
    high, low = line.start.y, line.end.y
    for edge in edges:
        one, other = edge.points()
        if abs(one.y - other.y) > _SAME or edge.pen.ink.width < _BOLD:
            continue
        half = edge.pen.ink.width / 2 + _CLEAR
        if low < one.y + half and one.y < (low + high) / 2:
            low = one.y + half
        elif high > one.y - half and one.y > (low + high) / 2:
            high = one.y - half
    return line._replace(start=Point(line.start.x, high), end=Point(line.start.x, low))
