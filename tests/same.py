"""Two sheets checked against each other number by number, without the project's own comparison."""

from __future__ import annotations

import math
from collections.abc import Iterator

from layout.drawing.shapes import Region, Shape, Text
from layout.drawing.sheet import Sheet

MICROMETRE = 0.001


def kinds(shape: Shape) -> object:
    """Everything of a shape that must be the same exactly."""
    if isinstance(shape, Text):
        return "text", shape.words
    if isinstance(shape, Region):
        return "region", shape.pen, [kinds(contour) for contour in shape.contours]
    return "path", shape.pen, shape.closed, [step.through is not None for step in shape.steps]


def numbers(shape: Shape) -> Iterator[float]:
    """Every number of a shape in mm; an angle as the place it leads to one em further on."""
    if isinstance(shape, Text):
        angle = math.radians(shape.angle)
        yield from (*shape.at, shape.size, shape.size * math.cos(angle), shape.size * math.sin(angle))
    elif isinstance(shape, Region):
        for contour in shape.contours:
            yield from numbers(contour)
    else:
        yield from shape.start
        for end, through in shape.steps:
            yield from end
            yield from through or ()


def assert_same(wanted: Sheet, found: Sheet) -> None:
    """The same shapes in the same order, no number more than a micrometre off."""
    assert [kinds(shape) for shape in found.shapes] == [kinds(shape) for shape in wanted.shapes]
    pairs = [(wanted.width, found.width), (wanted.height, found.height)]
    for one, other in zip(wanted.shapes, found.shapes, strict=True):
        pairs += zip(numbers(one), numbers(other), strict=True)
    assert max(abs(one - other) for one, other in pairs) <= MICROMETRE
    assert found.name == wanted.name
