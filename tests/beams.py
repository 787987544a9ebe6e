"""A cutter's beam, simulated with shapely: a spot that runs with its middle along the lines, and what it leaves."""

from __future__ import annotations

import math
from collections.abc import Iterable

import shapely
from shapely import affinity

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape

_FINE = 12  # chords to an arc of at most 45 degrees


def ring(path: Curve) -> list[Point]:
    """The corners of a closed path, its arcs as many short chords through points of the circle."""
    points, start = [path.start], path.start
    for end, through in path.steps:
        points += [end] if through is None else [*_along(start, through, end), end]
        start = end
    return points


def _along(start: Point, through: Point, end: Point) -> list[Point]:
    """Points on the circle through three points, found from where its perpendicular bisectors cross."""
    (ax, ay), (bx, by), (cx, cy) = start, through, end
    d = 2 * (ax * (by - cy) + bx * (cy - ay) + cx * (ay - by))
    a, b, c = ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy
    x = (a * (by - cy) + b * (cy - ay) + c * (ay - by)) / d
    y = (a * (cx - bx) + b * (ax - cx) + c * (bx - ax)) / d
    first, last = math.atan2(ay - y, ax - x), math.atan2(cy - y, cx - x)
    sweep = math.remainder(last - first, math.tau)
    size = math.dist(start, (x, y))
    angles = (first + sweep * k / _FINE for k in range(1, _FINE))
    return [Point(x + size * math.cos(angle), y + size * math.sin(angle)) for angle in angles]


def area_of(outer: Curve, holes: Iterable[Curve] = ()) -> shapely.Polygon:
    """What lies inside an outline and outside its holes."""
    return shapely.Polygon(ring(outer), [ring(hole) for hole in holes])


def left_over(cuts: Iterable[Curve], kerf_x: float, kerf_y: float) -> shapely.Geometry:
    """What stays of a large board inside the outline after a spot `kerf_x` by `kerf_y` has run along all `cuts`.

    The board is stretched until the spot is a circle of one millimetre, and shrunk again.
    """
    *holes, outer = cuts
    wide, high = 1 / kerf_x, 1 / kerf_y

    def stretched(geometry: shapely.Geometry) -> shapely.Geometry:
        return affinity.scale(geometry, wide, high, origin=(0, 0))

    burnt = shapely.union_all(
        [stretched(shapely.LinearRing(ring(path))).buffer(0.5, quad_segs=16) for path in (*holes, outer)]
    )
    kept = stretched(area_of(outer, holes)).difference(burnt)
    return affinity.scale(kept, kerf_x, kerf_y, origin=(0, 0))


def cuts_of(shapes: Iterable[Shape]) -> list[Curve]:
    """What is cut through, in the order of cutting."""
    return [shape for shape in shapes if isinstance(shape, Curve) and shape.pen is Pen.THROUGH]


def made_of(shapes: Iterable[Shape], stock: Stock) -> shapely.Geometry:
    """The part as it falls out of the stock."""
    return left_over(cuts_of(shapes), stock.kerf_x, stock.kerf_y)


def crossed(part: shapely.Geometry, line: shapely.LineString) -> list[tuple[float, float]]:
    """Where a line along x or y runs through material: from and to along it, in order."""
    found = part.intersection(line)
    pieces = [piece for piece in getattr(found, "geoms", [found]) if not piece.is_empty]
    along = 0 if line.bounds[2] - line.bounds[0] > line.bounds[3] - line.bounds[1] else 1
    return sorted((piece.bounds[along], piece.bounds[along + 2]) for piece in pieces)
