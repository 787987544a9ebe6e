"""What lies on the boards of a job: every part that kit and stock ask for, and what there is to do, measured once more.

Which parts there are, and how large, is asked of the builders: each of their parts is proven in a file of its own.
"""

from __future__ import annotations

import math
from collections.abc import Container, Iterable, Iterator, Mapping
from itertools import pairwise
from typing import NamedTuple

from layout.cutting.products import CUT_PRODUCTS, cut_suiting
from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Part
from layout.plan import Plan
from layout.values.errors import FieldError
from templates_gen.lettering.fonts import metrics
from templates_gen.lettering.outlines import contours_of
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Left
from templates_gen.messages.roles.run import Run
from templates_gen.verify.whole_boards import copies


class Needed(NamedTuple):
    """Parts of one kind, how many there must be on all boards, and what they are called in the lists."""

    part: Part
    copies: int
    title: str


def needed_parts(plan: Plan, stock: Stock) -> tuple[list[Needed], list[str]]:
    """Every kind of part on the boards of a kit, and a sentence for every product that the stock cannot give."""
    times = copies(plan.kit, stock)
    found, refused = list[Needed](), list[str]()
    for name in (each for each in cut_suiting(plan) if each != "square-check"):  # it is made where it is asked for
        built = _built(plan, stock, name)
        if isinstance(built, FieldError):
            refused.append(message(Left.NOT_MADE, name=name, why=built))
        elif name != "trial-cut":  # it is cut before anything else, and is on no board
            found += [Needed(part, times.get(part.name, 1), part.title) for part in built]
    return found, refused


def _built(plan: Plan, stock: Stock, name: str) -> tuple[Part, ...] | FieldError:
    try:
        return CUT_PRODUCTS[name].builds(plan, stock, metrics())
    except FieldError as error:
        return error


def refused_by(plan: Plan, stock: Stock, names: Iterable[str]) -> frozenset[str]:
    """Those of these products that the stock cannot give."""
    return frozenset(name for name in names if isinstance(_built(plan, stock, name), FieldError))


def parts_by_name(plan: Plan, stock: Stock, names: Iterable[str]) -> Mapping[str, Part]:
    """Every part of these products that can be cut for a kit."""
    built = (_built(plan, stock, name) for name in names)
    return {part.name: part for parts in built if not isinstance(parts, FieldError) for part in parts}


def refusals(plan: Plan, stock: Stock, names: Container[str], kit: str) -> Iterator[str]:
    """A sentence for each of these products that the stock cannot give, with the name of the kit if any."""
    for name in (name for name in cut_suiting(plan) if name in names):
        built = _built(plan, stock, name)
        if isinstance(built, FieldError):
            said = message(Left.NOT_MADE, name=name, why=built)
            yield message(Run.OF_KIT, name=kit, note=said) if kit else said


def work_on(parts: Iterable[Part]) -> Mapping[str, float]:
    """Millimetres cut and scored, and mm2 engraved."""
    shapes = [shape for part in parts for shape in part.shapes]
    lines = {
        name: sum(_length(shape) for shape in shapes if isinstance(shape, Curve) and shape.pen is pen)
        for name, pen in (("score", Pen.SCORE), ("cut", Pen.THROUGH))
    }
    words = [shape for shape in shapes if isinstance(shape, Text) and shape.pen is Pen.ENGRAVE]
    engraved = abs(sum(_area(contour) for text in words for contour in contours_of(text)))
    return {"engrave": engraved, **lines}


def _length(path: Curve) -> float:
    total, start = 0.0, path.start
    for end, through in path.steps:
        total += math.dist(start, end) if through is None else _arc(start, through, end)
        start = end
    return total + (math.dist(start, path.start) if path.closed else 0.0)


def _arc(start: Point, through: Point, end: Point) -> float:
    """By Heron: three sides give the radius a b c / (4 area), each chord its angle 2 asin(chord / 2 r)."""
    a, b, c = math.dist(start, through), math.dist(through, end), math.dist(start, end)
    area = abs((through.x - start.x) * (end.y - start.y) - (end.x - start.x) * (through.y - start.y)) / 2
    radius = a * b * c / (4 * area)
    return 2 * radius * (math.asin(a / (2 * radius)) + math.asin(b / (2 * radius)))


def _area(points: list[Point]) -> float:
    """A fan of triangles from the first corner."""
    x, y = points[0]
    return sum(((b.x - x) * (c.y - y) - (c.x - x) * (b.y - y)) / 2 for b, c in pairwise(points[1:]))
