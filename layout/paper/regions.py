"""The grid of a sheet: two gutters beside one field, the head above, the check scales below. mm, y up.

The hand finds the step, the code and the upright scale in the gutters; what is read or cut stands in the field.
"""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.shapes import Box
from layout.kit.kit import Paper
from layout.paper.area import SIDE

GUTTER, GAP = 12.0, 2.0
"""How wide each gutter is, and the white between it and the field."""

FIELD = 18.0
"""From the upper edge of the sheet to the head, and from its lower edge to the foot of the field."""

HEAD_HIGH, BODY = 12.0, 40.0
"""The height of the head, and how far under the upper edge the body begins."""

FOOT = 30.5
"""From the lower edge of the sheet to the top of the band in which the flat check scale stands."""

COLUMN_RIGHT = 119.0
PARTS_FROM, PARTS_APART = 125.8, 3.0
"""Where the column of text ends on a sheet whose parts stand beside it, where these begin, and their distance."""

_RIGHT = SIDE + GUTTER + GAP - 0.1  # the field is 166 wide on a sheet of 209.9
_ROOMY = 160.0, 210.0


class Regions(NamedTuple):
    """Where things stand on a sheet of `width` x `height`.

    The field reaches from `left` to `right`. `head` and `column` are the boxes of the head and of the column of text;
    the body begins at `body_top`, and ends at `floor` where the check scales stand under it. On a `roomy` sheet every
    fixed place holds; on a smaller one the parts take what is left over.
    """

    width: float
    height: float
    left: float
    right: float
    field: Box
    head: Box
    column: Box
    body_top: float
    floor: float
    roomy: bool


def regions(paper: Paper) -> Regions:
    """The grid of `paper`: on a larger sheet the field grows, and nothing else."""
    width, height = paper.width, paper.height
    left, right, top = SIDE + GUTTER + GAP, width - _RIGHT, height - FIELD
    body_top = height - BODY
    return Regions(
        width,
        height,
        left,
        right,
        field=(left, FIELD, right, top),
        head=(SIDE, top - HEAD_HIGH, right, top),
        column=(left, FOOT, min(COLUMN_RIGHT, right), body_top),
        body_top=body_top,
        floor=FOOT,
        roomy=right - left >= _ROOMY[0] and top - FIELD >= _ROOMY[1],
    )
