"""The kerf: lines drawn beside the edges that are wanted, by half the width of the cut, so that parts come out right.

The beam is taken as a spot `kerf_x` wide and `kerf_y` high (a circle where both are equal) whose middle follows the
line. What is kept is drawn fatter all round, so a slot is drawn narrower; no position changes, so no pitch does. With
one kerf for both ways an arc stays an arc of the same middle. With two, straight sides are exact, and each arc becomes
two (so that none turns by more than 45 degrees afterwards) that go through three exact points each: within a few
micrometres while neither kerf is half the other again.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from layout.cutting.parts.outline import area, turned_back
from layout.drawing.arcs import halfway, halved, turn
from layout.drawing.shapes import Curve, Point, Step
from layout.messages.catalogue import Role
from layout.messages.roles import CutNeed
from layout.values.errors import FieldError, LayoutError

_SAME = 1e-9  # mm, and for directions
_USUAL = 0.2  # mm
_KERFS = (0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001)  # mm: of these the widest that fits is offered
_LEAST = 0.01  # mm: what is left of a side that the kerf has not used up


@dataclass(frozen=True, slots=True)
class Kerf:
    """The full width of the cut in mm: `x` of a cut that runs up the sheet, `y` of one that runs across it."""

    x: float
    y: float

    def out(self, normal: Point) -> Point:
        """From an edge to the middle of the beam beside it; `normal` points away from what is kept, one long.

        The farthest point of an ellipse in a direction n is (a2 nx, b2 ny) / sqrt(a2 nx2 + b2 ny2).
        """
        a, b = self.x**2 / 4, self.y**2 / 4
        reach = math.sqrt(a * normal.x**2 + b * normal.y**2)
        return Point(a * normal.x / reach, b * normal.y / reach) if reach else Point(0.0, 0.0)

    def reach(self, normal: Point) -> float:
        """How far off a straight edge of that normal its line is drawn."""
        return math.hypot(self.x * normal.x, self.y * normal.y) / 2


@dataclass(frozen=True, slots=True)
class _Side:
    """One step of an outline with the directions that point away from what is kept, at both its ends."""

    start: Point
    through: Point | None
    end: Point
    first: Point
    last: Point
    middle: Point


def drawn(outer: Curve, holes: Sequence[Curve], kerf: Kerf) -> tuple[Curve, ...]:
    """The lines to cut `outer` with `holes` in it: holes first, the outline last.

    Which side is kept follows from what a path is, not from the way it runs: outside a hole, inside the outline.
    Raises FieldError on the kerf where a slot, a hole or a round is no wider than the kerf.
    """
    try:
        return _drawn(outer, holes, kerf)
    except _ClosedError:
        fits = next((mm for mm in _KERFS if mm < max(kerf.x, kerf.y) and _fits(outer, holes, mm)), 0.0)
        raise too_wide(kerf, CutNeed.KERF_NARROWEST, 2 * fits) from None


class _ClosedError(Exception):
    """A kerf has closed something that is cut."""


def _fits(outer: Curve, holes: Sequence[Curve], mm: float) -> bool:
    try:
        _drawn(outer, holes, Kerf(mm, mm))
    except _ClosedError:
        return False
    return True


def _drawn(outer: Curve, holes: Sequence[Curve], kerf: Kerf) -> tuple[Curve, ...]:
    inner = [_moved(hole if area(hole) < 0 else turned_back(hole), kerf) for hole in holes]
    return (*inner, _moved(outer if area(outer) > 0 else turned_back(outer), kerf))


def _moved(path: Curve, kerf: Kerf) -> Curve:
    """`path`, with what is kept on its left, moved to its right."""
    sides = _sides(path, halves=kerf.x != kerf.y)
    corners = [_corner(sides[k - 1], side, kerf) for k, side in enumerate(sides)]
    steps = []
    for k, side in enumerate(sides):
        there = corners[(k + 1) % len(sides)]
        through = side.through and _plus(side.through, kerf.out(side.middle))
        if through and kerf.x != kerf.y:
            through = halfway(corners[k], through, there)
        step = Step(there, through)
        _check(side, corners[k], step)
        steps.append(step)
    if steps[-1].through is None:
        steps.pop()
    return Curve(corners[0], tuple(steps), path.pen, closed=True)


def _sides(path: Curve, *, halves: bool) -> list[_Side]:
    """Every side of a closed path, the one that its closing draws too; each arc in two where `halves` are wanted."""
    steps = _halved(path) if halves else list(path.steps)
    if math.dist(path.start, steps[-1].end) > _SAME:
        steps.append(Step(path.start))
    sides, start = [], path.start
    for end, through in steps:
        sides.append(_straight(start, end) if through is None else _bent(start, through, end))
        start = end
    return sides


def _halved(path: Curve) -> list[Step]:
    steps: list[Step] = []
    for start, step in zip(path.points(), path.steps, strict=False):
        steps += [step] if step.through is None else halved(start, step.through, step.end)
    return steps


def _straight(start: Point, end: Point) -> _Side:
    length = math.dist(start, end)
    away = Point((end.y - start.y) / length, (start.x - end.x) / length)
    return _Side(start, None, end, away, away, away)


def _bent(start: Point, through: Point, end: Point) -> _Side:
    """An arc: its directions at start and end lie half its angle before and behind that of its chord."""
    half = turn(start, through, end) / 2
    chord = _straight(start, end).first
    return _Side(start, through, end, _rotated(chord, -half), _rotated(chord, half), chord)


def _rotated(direction: Point, angle: float) -> Point:
    cos, sin = math.cos(angle), math.sin(angle)
    return Point(cos * direction.x - sin * direction.y, sin * direction.x + cos * direction.y)


def _plus(one: Point, other: Point) -> Point:
    return Point(one.x + other.x, one.y + other.y)


def _corner(before: _Side, after: _Side, kerf: Kerf) -> Point:
    """Where the lines beside two sides meet: on the normal of a smooth joint, else where two straight lines cross."""
    one, other = before.last, after.first
    if math.dist(one, other) < 1e-6:
        return _plus(after.start, kerf.out(one if before.through is None else other))
    if before.through or after.through:
        raise LayoutError(CutNeed.SMOOTH)
    across = one.x * other.y - one.y * other.x
    if abs(across) < 1e-6:
        raise LayoutError(CutNeed.NO_WAY_BACK)
    a, b = kerf.reach(one), kerf.reach(other)
    return _plus(after.start, Point((a * other.y - b * one.y) / across, (b * one.x - a * other.x) / across))


def _check(side: _Side, start: Point, step: Step) -> None:
    """_ClosedError where the side that is left to draw has vanished or turned round."""
    dx, dy = side.end.x - side.start.x, side.end.y - side.start.y
    wide = math.hypot(dx, dy)
    left = ((step.end.x - start.x) * dx + (step.end.y - start.y) * dy) / wide
    if left < min(_LEAST, wide / 2) and left < wide:
        raise _ClosedError


def too_wide(kerf: Kerf, role: Role, room: float, said: str = "") -> FieldError:
    """The refusal by `role` of a kerf no narrower than what it has to leave, `room` mm wide and `said` to be so."""
    widest = f"{max(kerf.x, kerf.y):g} mm"
    works = "0.20" if room > _USUAL else f"{room / 2:.2g}"
    values = {"room": said} if said else {}
    return FieldError("cutting.kerf", role, widest, f'kerf = "{works} mm"', **values)
