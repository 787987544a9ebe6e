"""Is a curve in a file the circular arc that our writers draw, and where is its middle? Everything in mm.

The reader computes from chord and rise, the writers from angles, so that each checks the other.
"""

from __future__ import annotations

import math
from functools import partial

from layout.drawing.shapes import Point, Step
from templates_gen.document import ReadError
from templates_gen.messages.language import message
from templates_gen.messages.roles.reading import Arc

Handle = tuple[float, float]
_new_point = partial(tuple.__new__, Point)  # curves have thousands
_NEAR = 0.001  # 1 micrometre
_MOST = 45  # degrees; an arc of up to twice as many may be written for its halves
_STEEPEST = math.tan(math.radians(_MOST) / 4) / 2  # rise over chord of an arc of so many
_TWICE = math.tan(math.radians(2 * _MOST) / 4) / 2


def middle_of_curve(start: Point, first: Handle, second: Handle, end: Point) -> Point:
    """The middle of a Bézier curve with these handles; `ReadError` if it is not an arc of at most 45 degrees.

    A Bézier curve reaches three quarters of its handles' height; an arc of rise h over a chord c has the radius
    r = c²/8h + h/2 and handles of 4/3 r tan(turn/4), where tan(turn/4) = 2h/c.
    """
    (from_x, from_y), (to_x, to_y), (ax, ay), (bx, by) = start, end, first, second
    middle = _new_point(((from_x + 3 * (ax + bx) + to_x) / 8, (from_y + 3 * (ay + by) + to_y) / 8))
    chord, (ux, uy), rise = _chord_and_rise(start, middle, end)
    handle = (4 / 3) * (chord / 4 + rise * rise / chord)  # 4/3 · 2h/c · (c²/8h + h/2)
    height = 4 * rise / 3
    along = math.sqrt(max(handle * handle - height * height, 0.0))
    wanted_first = from_x + along * ux - height * uy, from_y + along * uy + height * ux
    wanted_second = to_x - along * ux - height * uy, to_y - along * uy + height * ux
    if math.dist(first, wanted_first) > _NEAR or math.dist(second, wanted_second) > _NEAR:
        raise ReadError(message(Arc.NO_ARC, x=from_x, y=from_y))
    return middle


def _chord_and_rise(
    start: Point, middle: Point, end: Point, steepest: float = _STEEPEST
) -> tuple[float, tuple[float, float], float]:
    """The chord's length and direction, and how far the middle lies to its left."""
    chord = math.dist(start, end)
    if chord == 0:
        raise ReadError(message(Arc.NOWHERE, x=start.x, y=start.y))
    ux, uy = (end.x - start.x) / chord, (end.y - start.y) / chord
    rise = ux * (middle.y - start.y) - uy * (middle.x - start.x)
    if abs(rise) > steepest * chord + _NEAR:
        most = _MOST if steepest == _STEEPEST else 2 * _MOST
        raise ReadError(message(Arc.STEEP, x=start.x, y=start.y, most=most))
    return chord, (ux, uy), rise


def steps_of_arc(start: Point, radius: float, counter_clockwise: bool, end: Point) -> tuple[Step, ...]:
    """The shorter arc of that radius from `start` to `end`, one of more than 45 degrees in its two halves.

    `ReadError` if our writers draw no such arc.
    """
    middle = _middle_of_arc(start, radius, counter_clockwise, end)
    if not _is_two(start, middle, end):
        return (Step(end, middle),)
    halves = (start, middle), (middle, end)
    return tuple([Step(to, _middle_of_arc(at, radius, counter_clockwise, to)) for at, to in halves])


def steps_of_bulge(start: Point, bulge: float, end: Point) -> tuple[Step, ...]:
    """The arc from `start` to `end` whose rise is `bulge` times half its chord, to the right of it; halved as above.

    A bulge is the tangent of a quarter of its angle (DXF reference, group code 42 of LWPOLYLINE); that of each half is
    the tangent of half of that quarter.
    """
    middle = _middle_of_bulge(start, bulge, end)
    if not _is_two(start, middle, end):
        return (Step(end, middle),)
    half = bulge / (1 + math.sqrt(1 + bulge * bulge))
    return Step(middle, _middle_of_bulge(start, half, middle)), Step(end, _middle_of_bulge(middle, half, end))


def _is_two(start: Point, middle: Point, end: Point) -> bool:
    """Whether an arc stands for two; `ReadError` where it turns by more than 90 degrees."""
    chord, _, rise = _chord_and_rise(start, middle, end, _TWICE)
    return abs(rise) > _STEEPEST * chord + _NEAR


def middle_of_arc(start: Point, radius: float, counter_clockwise: bool, end: Point) -> Point:
    """The middle of the shorter arc of that radius from `start` to `end`; `ReadError` if it is over 45 degrees."""
    middle = _middle_of_arc(start, radius, counter_clockwise, end)
    _chord_and_rise(start, middle, end)
    return middle


def _middle_of_arc(start: Point, radius: float, counter_clockwise: bool, end: Point) -> Point:
    """The same, however steep.

    The rise is r - sqrt(r² - c²/4), in a form that stays exact for flat arcs. A counter-clockwise arc lies to the right
    of its chord.
    """
    chord = math.dist(start, end)
    if not 0 < chord <= 2 * radius:
        raise ReadError(message(Arc.SHORT, x=start.x, y=start.y))
    rise = chord * chord / 4 / (radius + math.sqrt(radius * radius - chord * chord / 4))
    side = -rise if counter_clockwise else rise
    x, y = (start.x + end.x) / 2, (start.y + end.y) / 2
    return Point(x - side * (end.y - start.y) / chord, y + side * (end.x - start.x) / chord)


def _middle_of_bulge(start: Point, bulge: float, end: Point) -> Point:
    x, y = (start.x + end.x) / 2, (start.y + end.y) / 2
    return Point(x + bulge * (end.y - start.y) / 2, y - bulge * (end.x - start.x) / 2)
