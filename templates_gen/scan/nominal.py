"""Where targets and code stand on a sheet, from nothing but the rectangle that its code names."""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.shapes import Point
from layout.kit.kit import Paper
from layout.kit.paper_size import OWN, PaperSize
from layout.paper.code import MODULE, code_box
from layout.paper.regions import regions
from layout.paper.targets import centres, rectangle

_CORNERS = 4


class Target(NamedTuple):
    """A target; where it may have moved along an edge, `slides` says along which axis (0 across, 1 up)."""

    at: Point
    slides: int | None = None


def nominal_paper(sides: tuple[float, float]) -> Paper:
    """The paper whose targets are so far apart. Papers are whole PDF units, the sides in the code are rounded."""
    none = rectangle(Paper(PaperSize(OWN, 0, 0)))
    point = Paper(PaperSize(OWN, 1, 1)).width
    width, height = (round((side - less) / point) for side, less in zip(sides, none, strict=True))
    return Paper(PaperSize(OWN, width, height))


def nominal_targets(paper: Paper) -> list[Target]:
    """All places of a sheet on which nothing stood in the way of a target."""
    places = centres(paper)
    low, high = places[2].y, places[0].y
    return [*map(Target, places[:_CORNERS]), *(Target(at, 0 if at.y in (low, high) else 1) for at in places[_CORNERS:])]


def code_places(paper: Paper) -> list[list[Point]]:
    """The corners that a code may have, from above left clockwise: at the left, and at the right."""
    found = []
    for mirrored in (False, True):
        left, low, right, high = code_box(regions(paper), mirrored=mirrored)
        left, low, right, high = left + MODULE, low + MODULE, right - MODULE, high - MODULE
        found.append([Point(left, high), Point(right, high), Point(right, low), Point(left, low)])
    return found
