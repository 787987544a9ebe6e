"""The kerf: lines drawn beside the edges that are wanted, by half the width of the cut, so that parts come out right.

The beam is taken as a spot `kerf_x` wide and `kerf_y` high (a circle where both are equal) whose middle follows the
line. What is kept is drawn fatter all round, so a slot is drawn narrower; no position changes, so no pitch does. With
one kerf for both ways an arc stays an arc of the same middle. With two, straight sides are exact, and each arc becomes
two (so that none turns by more than 45 degrees afterwards) that go through three exact points each: within a few
micrometres while neither kerf is half the other again. A flat spot (one kerf none, or far less than the other) does not
go round by arcs: its line would jump or cross itself. Such a path is drawn with its rounds a little nearer instead.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from layout.cutting.parts.outline import area, turned_back
from layout.cutting.stock.outline_sides import Side, sides_of
from layout.drawing.arcs import halfway, turn
from layout.drawing.shapes import Curve, Point, Step
from layout.messages.catalogue import Role
from layout.messages.roles import CutNeed
from layout.values.errors import FieldError, LayoutError

_USUAL = 0.2  # mm
_KERFS = (0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001)  # mm: of these the widest that fits is offered
_LEAST = 0.01  # mm: what is left of a side that the kerf has not used up
_ROUND = 3  # a spot of more times its smaller width is too flat to go round by arcs through exact points
_ALIKE = (0.5, 1.5)  # so many times its own turn an arc may turn where exact points are joined by arcs
_LEAST_TURN, _MOST_TURN = 0.001, math.pi / 4  # radians: an arc of less is no arc, one of more is not drawn


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

    def goes_round(self, was: float, now: float) -> bool:
        """Whether the line beside an arc that turns by `was` radians may turn by `now`: the same way, and as much."""
        return _LEAST_TURN <= abs(now) <= _MOST_TURN and _ALIKE[0] <= now / was <= _ALIKE[1]


class _Flat(Kerf):
    """A kerf whose spot is too flat for a round: every direction goes out evenly, by its shares of both ways.

    Sides along x and y are exact still, and a circle becomes an ellipse, which never crosses itself. A round
    loses more than is wanted at its slanting edges: with one kerf none an eighth of the other, a (1 - cos t) cos t at
    its most with a of half the kerf, and a little more where the round is hardly larger than the kerf.
    """

    __slots__ = ()

    def out(self, normal: Point) -> Point:
        return Point(self.x * normal.x / 2, self.y * normal.y / 2)

    def reach(self, normal: Point) -> float:
        return (self.x * normal.x**2 + self.y * normal.y**2) / 2

    def goes_round(self, was: float, now: float) -> bool:
        return _LEAST_TURN <= abs(now) <= _MOST_TURN and now / was > 0


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
    if max(kerf.x, kerf.y) <= _ROUND * min(kerf.x, kerf.y) or kerf.x == kerf.y:
        try:
            return _beside(path, kerf)
        except _ClosedError:
            if kerf.x == kerf.y:
                raise
    return _beside(path, _Flat(kerf.x, kerf.y))


def _beside(path: Curve, kerf: Kerf) -> Curve:
    sides = sides_of(path, halves=kerf.x != kerf.y)
    corners = [_corner(sides[k - 1], side, kerf) for k, side in enumerate(sides)]
    steps = []
    for k, side in enumerate(sides):
        there = corners[(k + 1) % len(sides)]
        through = side.through and _plus(side.through, kerf.out(side.middle))
        if through and kerf.x != kerf.y:
            through = halfway(corners[k], through, there)
        step = Step(there, through)
        _check(side, corners[k], step, kerf)
        steps.append(step)
    if steps[-1].through is None:
        steps.pop()
    return Curve(corners[0], tuple(steps), path.pen, closed=True)


def _plus(one: Point, other: Point) -> Point:
    return Point(one.x + other.x, one.y + other.y)


def _corner(before: Side, after: Side, kerf: Kerf) -> Point:
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


def _check(side: Side, start: Point, step: Step, kerf: Kerf) -> None:
    """_ClosedError where the side that is left to draw has vanished or turned round, or an arc no longer goes round."""
    dx, dy = side.end.x - side.start.x, side.end.y - side.start.y
    wide = math.hypot(dx, dy)
    left = ((step.end.x - start.x) * dx + (step.end.y - start.y) * dy) / wide
    if left < min(_LEAST, wide / 2) and left < wide:
        raise _ClosedError
    if side.through and step.through and kerf.x != kerf.y:
        was, now = turn(side.start, side.through, side.end), turn(start, step.through, step.end)
        if not kerf.goes_round(was, now):
            raise _ClosedError


def too_wide(kerf: Kerf, role: Role, room: float, said: str = "") -> FieldError:
    """The refusal by `role` of a kerf no narrower than what it has to leave, `room` mm wide and `said` to be so."""
    widest = f"{max(kerf.x, kerf.y):g} mm"
    works = "0.20" if room > _USUAL else f"{room / 2:.2g}"
    values = {"room": said} if said else {}
    return FieldError("cutting.kerf", role, widest, f'kerf = "{works} mm"', **values)
