"""From the pieces that lie on a sheet to their measured marks.

A mark is taken from what is drawn, and its number from the plan: it is the straight line that stands, to a nanometre,
where the plan has a wind, a notch, a peg, a nail, an end or a line of the grid.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import inf

from layout.drawing.shapes import Placing, Point
from layout.drawing.sheet import Part, Piece
from layout.parts.grid import NAME as GRID
from layout.parts.wrap_gauge import NAME as GAUGE
from layout.plan import Plan
from templates_gen.measuring.groups import Group
from templates_gen.measuring.rows import Row, gauge_rows, grid_rows, guide_rows, strip_rows
from templates_gen.scan.seen import Line

_AT = {"x": Point(1.0, 0.0), "y": Point(0.0, 1.0)}


def groups_on(pieces: Sequence[Piece], plan: Plan | None, every: Sequence[Part] = ()) -> tuple[Group, ...]:
    """The groups of marks of the pieces on a sheet, in the order of the pieces; none where nothing is measured.

    `every` are all pieces of the file, by which joints are known. A gauge needs no plan.
    """
    return tuple(group for piece in pieces for group in _of_piece(piece, plan, every))


def _of_piece(piece: Piece, plan: Plan | None, every: Sequence[Part]) -> Iterator[Group]:
    part, placing = piece
    joints, crosses = _joints(part, placing, every) if part.joint_rows else ((-inf, inf), ())
    for row in _rows(part, plan):
        (begin, end) = placing.points([(0.0, 0.0), _AT[row.axis]])
        along = Point(end.x - begin.x, end.y - begin.y)
        marks = tuple(mark._replace(lines=tuple(_placed(mark.lines, placing))) for mark in row.marks)
        if len(marks) > 1:
            yield Group(part.name, part.title, row.kind, along, marks, joints, crosses)


def _rows(part: Part, plan: Plan | None) -> Iterator[Row]:
    if part.name == GAUGE:
        yield from gauge_rows(part)
    elif plan is None:
        return
    elif part.name in ("strip-near", "strip-far"):
        yield from strip_rows(part, plan)
    elif part.name in ("spacing-near", "spacing-far"):
        yield from guide_rows(part, plan)
    elif part.name == GRID:
        yield from grid_rows(part, plan)


def _placed(lines: Sequence[Line], placing: Placing) -> Iterator[Line]:
    for line in lines:
        start, end = placing.points([line.start, line.end])
        yield line._replace(start=start, end=end)


def _joints(
    part: Part, placing: Placing, every: Sequence[Part]
) -> tuple[tuple[float, float], tuple[tuple[float, Point], ...]]:
    """Where a piece begins and ends, and the crosses of both joints: those that a neighbour shows at the same place."""
    begin, end = -inf, inf
    middle = (part.box[0] + part.box[2]) / 2
    shown: list[Point] = []
    for other in every:
        if other is part or other.name != part.name:
            continue
        shared = [point for point in part.datum if point in other.datum]
        if len(shared) < 2:
            continue
        joint = min(point.x for point in shared)
        begin, end = (max(begin, joint), end) if joint < middle else (begin, min(end, joint))
        shown += shared
    places = placing.points(shown)
    return (begin, end), tuple((point.x, place) for point, place in zip(shown, places, strict=True))
