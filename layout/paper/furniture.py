"""What stands on every sheet: head, text, check scales, code and targets, and what they leave for the part."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from layout.drawing.boxes import box_around
from layout.drawing.metrics import FontMetrics
from layout.drawing.shapes import Box, Placing, Point, Shape
from layout.drawing.sheet import Block, Part, Piece
from layout.kit.kit import Paper
from layout.messages.catalogue import Catalogue
from layout.paper.area import Area, printable
from layout.paper.code import Modules, code, code_box
from layout.paper.column import column
from layout.paper.head import Head, head
from layout.paper.regions import COLUMN_RIGHT, FIELD, PARTS_FROM, regions
from layout.paper.scales import scales
from layout.paper.targets import target_boxes, targets

_UNDER_WORDS, _OVER_WORDS, _OVER_SCALES = 4.0, 4.0, 4.0
_CORNERS = 4  # the targets that never move
_WORDS_DOWN = 17.2  # the head's words begin so far under the upper edge, below the target there
_PAST = 1.0  # ink and crosses reach past the box of a part
_STEPS_ALONG = 48  # a part that lies across is enclosed by so many boxes


class Page(NamedTuple):
    """The paper and the words of a sheet; `printing` where the reader prints it, `mirrored` where a part lies across.

    A part from the lower left to the upper right leaves the lower right and the upper left free.
    """

    paper: Paper
    words: Catalogue
    printing: bool = True
    mirrored: bool = False


class Furnished(NamedTuple):
    """What is left for the part, everything drawn, and the blocks that found no room."""

    area: Area
    shapes: list[Shape]
    rest: tuple[Block, ...]


def furnish(page: Page, said: Head, part: Part, metrics: FontMetrics) -> Furnished:
    """Head, words and check scales of a sheet of `part`, and the area that they leave.

    A `mirrored` sheet has no room for blocks.
    """
    paper, grid = page.paper, regions(page.paper)
    page = page._replace(mirrored=page.mirrored and grid.roomy)  # small paper has no room to move things to
    narrow = page.mirrored or (part.narrow and grid.roomy)
    shapes, head_box = head(replace(said, narrow=narrow), grid, metrics)
    taken = [*target_boxes(paper)[:_CORNERS], head_box, code_box(grid, mirrored=page.mirrored)]
    floor = FIELD
    if part.measured:
        drawn, boxes = scales(grid, page.words, metrics, printing=page.printing, mirrored=page.mirrored)
        shapes += drawn
        taken += boxes
        floor = boxes[0][3] + _OVER_SCALES
    right = min(COLUMN_RIGHT, grid.right) if narrow else grid.right
    here = replace(part, narrow=narrow and not page.mirrored, blocks=() if page.mirrored else part.blocks)
    text = column(here, grid.left, right, head_box[1], floor, metrics)
    if text.shapes and part.below and not narrow:
        shapes += Placing(0, 0, floor - text.low).shapes(text.shapes)
        taken.append((grid.left, floor, right, floor + head_box[1] - text.low + _OVER_WORDS))
        text = text._replace(shapes=())
    elif text.shapes:
        taken.append((grid.left, text.low - _UNDER_WORDS, PARTS_FROM if narrow else right, head_box[1]))
    elif narrow:
        taken.append((grid.left, head_box[1], PARTS_FROM, head_box[3]))
    rest = part.blocks if page.mirrored else text.rest
    return Furnished(replace(printable(paper), taken=tuple(taken)), [*shapes, *text.shapes], rest)


def finished(page: Page, free: Area, pieces: Sequence[Piece], modules: Modules | None) -> list[Shape]:
    """The targets, clear of everything else on the sheet, and its code."""
    grid = regions(page.paper)
    highest = page.paper.height - _WORDS_DOWN
    said = [(left, low, right, min(high, highest)) for left, low, right, high in free.taken[_CORNERS:]]
    boxes = [*said, *(box for piece in pieces for box in _boxes_of(piece))]
    return [*targets(page.paper, boxes), *code(modules, grid, mirrored=page.mirrored and grid.roomy)]


def _boxes_of(piece: Piece) -> Iterator[Box]:
    """Boxes that together hold a piece as it lies: one, or many along one that lies across."""
    left, low, right, high = piece.part.box
    count = 1 if piece.placing.degrees % 90 == 0 else _STEPS_ALONG
    step = (right - left) / count
    for k in range(count):
        corners = [Point(left + step * (k + more), y) for more in (0, 1) for y in (low, high)]
        yield box_around(piece.placing.points(corners), _PAST)
