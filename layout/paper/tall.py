"""Parts that stand upright beside the column of text: whole where they are short enough, else in pieces.

A part is turned a quarter to the left, so that its left end stands at the foot. On the first sheet parts stand to the
right of the text; a later one has no text, and they fill it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Placing
from layout.drawing.sheet import Part, Piece
from layout.paper.area import TOP, Area
from layout.paper.joints import LEAST_PIECE, MOST_PIECES, SEAM, Build, beside_centre
from layout.paper.regions import PARTS_APART, Regions

_MARGIN = TOP + 0.3  # the tallest part is 252 mm long on a sheet of 278.7
_SPILL, _CLOSE = 2.6, 2.4  # how far a pair may reach into the white of the gutter, and how close it may stand then
_SHORTEST = 100.0  # mm, of a place that is worth using
_TRIES = 4

Sheets = tuple[tuple[Piece, ...], ...]


class _Place(NamedTuple):
    """Where a piece may stand: its left edge, its foot, and how long it may be."""

    x: float
    low: float
    long: float


def stand_whole(parts: Sequence[Part], grid: Regions, area: Area) -> tuple[Piece, ...] | None:
    """All `parts` on one sheet, the last one at the right; None where they have no room."""
    papers = [_paper_of(part) for part in parts]
    ordered = sorted(zip(papers, parts, strict=True), key=lambda pair: -_edge(pair[1]))
    widths = [paper[3] - paper[1] for paper in papers]
    for right, apart in ((grid.right, PARTS_APART), (grid.right + _SPILL, _CLOSE)):
        x = right - sum(widths) - apart * (len(parts) - 1)
        found = []
        for paper, part in ordered:
            long = paper[2] - paper[0]
            placing = _upright(paper, x, (grid.height - long) / 2)
            if long <= grid.height - 2 * _MARGIN + 1e-9 and area.holds(paper, placing):
                found.append(Piece(part, placing))
            x += paper[3] - paper[1] + apart
        if len(found) == len(parts):
            return tuple(piece for part in parts for piece in found if piece.part is part)
    return None


def _edge(part: Part) -> float:
    """How far up the edge to the weaving lies: above the middle it comes to the left, and such edges point outward.

    The last of the three register crosses stands near it, the first one away from it.
    """
    return part.datum[-1].y - part.datum[0].y


def _paper_of(part: Part) -> Box:
    """What is cut out: scissors on the line reach past it, and may lie in the white between parts."""
    cuts = [shape for shape in part.shapes if isinstance(shape, Curve) and shape.pen is Pen.CUT]
    if not cuts or part.joint_rows is None:
        return part.box
    ys = [point.y for path in cuts for point in path.points()]
    return part.box[0], min(ys), part.box[2], max(ys)


def _upright(paper: Box, x: float, low: float) -> Placing:
    return Placing(90, x + paper[3], low - paper[0])


@dataclass
class Pieces:
    """Parts in pieces that fill upright places, sheet by sheet."""

    grid: Regions
    first: Area
    later: Area

    def lay(
        self, builds: Sequence[Build], *, low: bool, cut: Callable[[Part, list[float]], list[Part]]
    ) -> tuple[Sheets, list[Part]] | None:
        """The sheets, and every part as it is cut; None where a piece finds no place. `cut` cuts at joints."""
        wholes = [build(low, ()) for build in builds]
        wide = _widest(wholes)
        for _ in range(_TRIES):
            found = self._laid(builds, wholes, wide, low=low, cut=cut)
            if found is None or _widest(found[1]) <= wide + 1e-9:
                return found
            wide = _widest(found[1])  # words broken at the joints take more rows
        return None

    def _laid(
        self,
        builds: Sequence[Build],
        wholes: Sequence[Part],
        wide: float,
        *,
        low: bool,
        cut: Callable[[Part, list[float]], list[Part]],
    ) -> tuple[Sheets, list[Part]] | None:
        places = self._places(wide)
        sheets: list[list[Piece]] = []
        parts: list[Part] = []
        for build, whole in zip(builds, wholes, strict=True):
            filled = _fill(whole, places)
            if filled is None:
                return None
            joints, taken = filled
            parts.append(build(low, tuple(joints)))
            for piece, (number, place) in zip(cut(parts[-1], joints), taken, strict=True):
                sheets += [[] for _ in range(number + 1 - len(sheets))]
                paper = _paper_of(piece)
                sheets[number].append(
                    Piece(piece, _upright(paper, place.x, place.low + (place.long - piece.length) / 2))
                )
        return tuple(map(tuple, sheets)), parts

    def _places(self, wide: float) -> Iterator[tuple[int, _Place]]:
        """Every place for pieces so `wide`, with the number of its sheet, 0 the first; none where there is none."""
        yield from ((0, place) for place in _slots(self.grid, self.first, wide))
        later = _slots(self.grid, self.later, wide)
        number = 1
        while later and number <= MOST_PIECES:
            yield from ((number, place) for place in later)
            number += 1


def _widest(parts: Sequence[Part]) -> float:
    """How far the paper of the parts reaches across, at most."""
    return max(paper[3] - paper[1] for paper in map(_paper_of, parts))


def _slots(grid: Regions, area: Area, wide: float) -> list[_Place]:
    """Upright places from left to right, packed from the right edge of the field; closer where that makes it more."""
    usual = _packed(grid, area, wide, grid.right, PARTS_APART)
    closer = _packed(grid, area, wide, grid.right + _SPILL, _CLOSE)
    return closer if len(closer) > len(usual) else usual


def _packed(grid: Regions, area: Area, wide: float, right: float, apart: float) -> list[_Place]:
    """The places from `right` to the left that are `apart`."""
    found = []
    x = right - wide
    while x >= grid.left - 1e-9:
        low, high = _free(grid, area, x, x + wide)
        if high - low >= _SHORTEST:
            found.append(_Place(x, low, high - low))
        x -= wide + apart
    return found[::-1]


def _free(grid: Regions, area: Area, left: float, right: float) -> tuple[float, float]:
    """The longest stretch up the sheet that is free between two uprights."""
    taken = sorted((low, high) for x, low, other, high in area.taken if x < right - 1e-9 and left < other - 1e-9)
    edges = [_MARGIN, grid.height - _MARGIN]
    stretches, at = [], edges[0]
    for low, high in taken:
        stretches.append((at, min(low, edges[1])))
        at = max(at, high)
    stretches.append((at, edges[1]))
    return max(stretches, key=lambda stretch: stretch[1] - stretch[0])


def _fill(part: Part, places: Iterator[tuple[int, _Place]]) -> tuple[list[float], list[tuple[int, _Place]]] | None:
    """Joints of `part`, in two pieces at least, each as long as the next place allows, and the places taken."""
    at, end = part.box[0], part.box[2]
    joints: list[float] = []
    taken: list[tuple[int, _Place]] = []
    for number, place in places:
        taken.append((number, place))
        inner = SEAM if joints else 0.0
        last = end - at + inner <= place.long
        if last and joints:
            return joints, taken
        at, before = (at + end) / 2 if last else _joint(at + place.long - inner - SEAM, end), at
        at = beside_centre(at)
        if at - before < LEAST_PIECE:
            return None
        joints.append(at)
    return None


def _joint(furthest: float, end: float) -> float:
    """The joint at `furthest`, or before, so that no scrap is left over."""
    return min(furthest, end - LEAST_PIECE)
