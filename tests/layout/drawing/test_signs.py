from __future__ import annotations

import math

import pytest
import shapely
from kits import font_metrics

from layout.drawing import signs
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import painted
from layout.drawing.typeset import LEAD, SMALL

METRICS = font_metrics()


def bounds(shapes: list[Shape]) -> tuple[float, ...]:
    """The box of all lines and areas, without the width of the pens."""
    curves = [c for s in shapes if not isinstance(s, Text) for c in (s.contours if isinstance(s, Region) else (s,))]
    return shapely.union_all([shapely.LineString(curve.points()) for curve in curves]).bounds


def middle_of(text: Text) -> tuple[float, float]:
    """The middle of words, as high as capitals."""
    width = METRICS.width(text.words, text.size, text.pen)
    return text.at.x + width / 2, text.at.y + METRICS.cap * text.size / 2


def test_scissors_lie_across_a_line() -> None:
    """Eyes of 0.8 mm radius 1.15 mm to both sides, blades 4.85 mm along, and the line runs free between the eyes."""
    shapes = signs.scissors(Point(10, 20))
    eyes = [shape for shape in shapes if isinstance(shape, Curve)]
    assert bounds(shapes) == pytest.approx((9.2, 18.05, 14.85, 21.95))
    line = shapely.LineString([(0, 20), (30, 20)])
    for eye in eyes:
        assert shapely.Polygon(eye.points()).distance(line) >= 0.35 - 1e-9
        assert {eye.pen} == {Pen.OUTLINE}
    turned = signs.scissors(Point(10, 20), 90)
    assert bounds(turned) == pytest.approx((8.05, 19.2, 11.95, 24.85))


@pytest.mark.parametrize(("radius", "size", "pen"), [(2.4, SMALL, Pen.RING), (3.2, LEAD, Pen.OUTLINE)])
@pytest.mark.parametrize("words", ["1", "8", "12", "a"])
def test_a_ring_holds_its_number(radius: float, size: float, pen: Pen, words: str) -> None:
    """In the middle, in semibold letters, clear of the line; white inside, painted so that the ring stays whole."""
    shapes = painted(signs.ring(Point(24.4, 39.8), words, METRICS, radius))
    (circle,) = [shape for shape in shapes if isinstance(shape, Curve)]
    (white,) = [shape for shape in shapes if isinstance(shape, Region)]
    (text,) = [shape for shape in shapes if isinstance(shape, Text)]
    assert (circle.pen, white.pen, text.pen, text.size) == (pen, Pen.PAPER, Pen.STRONG, size)
    assert middle_of(text) == pytest.approx((24.4, 39.8))
    reach = math.hypot(METRICS.width(words, size, Pen.STRONG) / 2, METRICS.cap * size / 2)
    assert reach < radius - 0.3
    inner = max(abs(at.x - 24.4) for at in white.contours[0].points())
    assert inner == pytest.approx(radius - pen.ink.width / 2)


def test_a_step_tile_is_black_with_a_white_number() -> None:
    """8 mm square, the number in its middle."""
    square, text = signs.step_tile(Point(26, 45), "G", METRICS)
    assert isinstance(square, Region)
    assert isinstance(text, Text)
    assert bounds([square]) == pytest.approx((22, 41, 30, 49))
    assert (square.pen, text.pen, text.size) == (Pen.SOLID, Pen.ON_BLACK, LEAD)
    assert middle_of(text) == pytest.approx((26, 45))


WAYS = [Point(1, 0), Point(0, -1), Point(-3, 4)]


@pytest.mark.parametrize("way", WAYS)
def test_triangles_and_arrows_point_at_their_tip(way: Point) -> None:
    """The tip is the furthest point that way; 2.1 x 2.2 mm, and an arrow 3.7 mm long."""
    long = math.hypot(*way)

    def along(at: Point) -> float:
        return ((at.x - 5) * way.x + (at.y - 7) * way.y) / long

    triangle = signs.triangle(Point(5, 7), way)
    corners = triangle.contours[0].points()
    assert sorted(map(along, corners)) == pytest.approx([-2.1, -2.1, 0])
    assert math.dist(*sorted(corners, key=along)[:2]) == pytest.approx(2.2)
    shaft, head = signs.small_arrow(Point(5, 7), way)
    assert isinstance(shaft, Curve)
    assert isinstance(head, Region)
    assert sorted(map(along, head.contours[0].points())) == pytest.approx([-2.2, -2.2, 0])
    assert sorted(map(along, shaft.points())) == pytest.approx([-3.7, -1.7])


def test_dots_are_open_or_full() -> None:
    """Half a millimetre of radius about their points; an open one is a line that units are drawn with."""
    at = [Point(0, 0), Point(10, 0)]
    full, ringed = signs.dots(at, full=True), signs.dots(at, full=False)
    assert [shape.pen for shape in full] == [Pen.SOLID] * 2
    assert [shape.pen for shape in ringed] == [Pen.UNIT] * 2
    assert bounds(full) == bounds(ringed) == pytest.approx((-0.5, -0.5, 10.5, 0.5))


def test_a_leader_has_its_dot_on_the_thing() -> None:
    """It runs from there to the words."""
    line, dot = signs.leader(Point(1, 2), Point(9, 8))
    assert isinstance(line, Curve)
    assert line.points() == [Point(1, 2), Point(9, 8)]
    assert bounds([dot]) == pytest.approx((0.5, 1.5, 1.5, 2.5))


@pytest.mark.parametrize(
    ("one", "other", "angle"),
    [
        (Point(10, 20), Point(60, 20), 0),
        (Point(60, 20), Point(10, 20), 0),
        (Point(10, 70), Point(10, 20), 90),
        (Point(10, 20), Point(40, 60), math.degrees(math.atan2(4, 3))),
    ],
)
def test_a_dimension_spans_its_places(one: Point, other: Point, angle: float) -> None:
    """Its heads reach within 0.1 mm of both, the words stand over its middle and never upside down."""
    shapes = signs.dimension(one, other, "45 mm", METRICS)
    (text,) = [shape for shape in shapes if isinstance(shape, Text)]
    assert text.angle == pytest.approx(angle)
    tips = [shape.contours[0].points() for shape in shapes if isinstance(shape, Region)]
    for end in (one, other):
        assert min(math.dist(end, at) for points in tips for at in points) == pytest.approx(0.1)
    middle = Point((one.x + other.x) / 2, (one.y + other.y) / 2)
    half = METRICS.width("45 mm", SMALL) / 2
    turn = math.radians(angle)
    begun = Point(text.at.x + half * math.cos(turn), text.at.y + half * math.sin(turn))
    assert math.dist(begun, middle) == pytest.approx(1.4)


@pytest.mark.parametrize("mine", [1, 2, 5, 6])
def test_a_key_map_numbers_its_pieces_from_the_lower_left(mine: int) -> None:
    """12 x 17 mm a piece; the one that is held is grey and its number semibold."""
    shapes = signs.key_map(Point(164, 100), 3, 2, mine, METRICS)
    numbers = {shape.words: middle_of(shape) for shape in shapes if isinstance(shape, Text)}
    wanted = {str(2 * row + column + 1): (170 + 12 * column, 108.5 + 17 * row) for row in range(3) for column in (0, 1)}
    assert numbers.keys() == wanted.keys()
    for number, at in wanted.items():
        assert numbers[number] == pytest.approx(at)
    (held,) = [shape for shape in shapes if isinstance(shape, Region)]
    assert held.pen is Pen.HELD
    assert shapely.Point(wanted[str(mine)]).within(shapely.box(*bounds([held])))
    assert [s.words for s in shapes if isinstance(s, Text) and s.pen is Pen.STRONG] == [str(mine)]
