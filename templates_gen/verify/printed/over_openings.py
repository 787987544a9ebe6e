"""Nothing but its own outline, its cross and the lines that run along a template lies on a notch or a hole."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Region, Shape, Text
from templates_gen.messages.roles.proof_printed import Openings
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import Finding, finding, once
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.opening import Opening

_CAP, _LETTER = 1.88, 1.1  # how high capitals are, and how wide a letter is at least on average, in mm
_ALONG = 0.5  # what takes more than this share of the length runs along the template


def nothing_over(seen: FoundPart, openings: Sequence[Opening]) -> Iterator[Finding]:
    """What lies over an opening of a piece."""
    boxes = [_of(each) for each in openings]
    wrong: list[Finding] = []
    for shape in seen.shapes():
        for box in _boxes(shape):
            along = box[2] - box[0] > _ALONG * seen.part.length
            if along or _is_opening(shape):
                continue
            if any(_meet(box, other) for other in boxes):
                wrong.append(finding(Openings.COVERED))
    yield from once(wrong)


def _of(each: Opening) -> Box:
    across, up = each.across / 2 - LIMIT, each.up / 2 - LIMIT
    return each.x - across, each.y - up, each.x + across, each.y + up


def _is_opening(shape: Shape) -> bool:
    """An opening itself, or the upright of its cross: they are proven elsewhere."""
    if isinstance(shape, Region):
        return shape.pen is Pen.TINT
    return isinstance(shape, Curve) and shape.pen in (Pen.HOLE, Pen.HELP)


def _boxes(shape: Shape) -> Iterator[Box]:
    if isinstance(shape, Text):
        yield shape.at.x, shape.at.y, shape.at.x + _LETTER * len(shape.words), shape.at.y + _CAP
        return
    for path in shape.contours if isinstance(shape, Region) else (shape,):
        yield box_of(path)


def _meet(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
