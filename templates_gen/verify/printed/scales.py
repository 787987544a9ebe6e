"""The check scales of a sheet that is measured from: their outlines, their blocks and their numbers."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Region, Text
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Laid
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import NOTHING, Findings, finding


class _Scale(NamedTuple):
    """In mm: how long it is, and each of its blocks; the first block that is black, and the number at its end."""

    length: float
    block: float
    first: int
    whole: int


_MILLIMETRES, _INCHES = _Scale(100.0, 10.0, 0, 100), _Scale(101.6, 12.7, 1, 4)
_SCALES = _MILLIMETRES, _INCHES
_HIGH = 1.6
_NEAR = 3.0  # how far its numbers stand from a scale at most, in mm


Axis = tuple[int, Laid]
"""0 for x or 1 for y, and what is wrong where it has no scale."""

ACROSS: Axis = 0, Laid.NO_BAR_ACROSS
UPWARD: Axis = 1, Laid.NO_BAR_UP


def check_scales(sheet: Sheet, *axes: Axis) -> Findings:
    """One scale of each length along each axis, or those asked for: outline, every second block, numbers."""
    rules = (shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.RULE)
    outlines = [box_of(rule) for rule in rules if rule.closed]
    solids = [
        list(map(box_of, shape.contours))
        for shape in sheet.shapes
        if isinstance(shape, Region) and shape.pen is Pen.SOLID
    ]
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text)]
    total = NOTHING
    for axis, missing in axes or (ACROSS, UPWARD):
        for length, block, first, whole in _SCALES:
            offs = [_scale_off(outline, solids, axis, length, block, first) for outline in outlines]
            off, outline = min(zip(offs, outlines, strict=True), default=(length, None), key=lambda each: each[0])
            right = outline is not None and off <= LIMIT and _is_numbered(outline, texts, axis, whole)
            total += Findings(off, () if right else (finding(missing, length=length),))
    return total


def _is_numbered(box: Box, texts: Sequence[Text], axis: int, whole: int) -> bool:
    """Whether nothing, the half and the whole stand along a scale: millimetres over it, inches under it."""
    begin, end = box[axis], box[axis + 2]
    upward = (1, 1) if axis == 0 else (0, -1)  # a scale that rises is one that was turned to the left
    low, high = sorted(upward[1] * box[upward[0] + more] for more in (0, 2))
    band = (high, high + _NEAR) if whole == _MILLIMETRES.whole else (low - _NEAR, low)
    found = sorted(
        (text.at[axis], text.words)
        for text in texts
        if band[0] < upward[1] * text.at[upward[0]] < band[1] and begin - _NEAR < text.at[axis] < end
    )
    if len(found) != 3:
        return False
    (first, nothing), (second, half), (third, last) = found
    middle = (begin + end) / 2
    in_place = abs(first - begin) <= LIMIT and middle - _NEAR < second < middle < third
    return in_place and (nothing, half) == ("0", str(whole // 2)) and str(whole) in last.split()


def _scale_off(
    outline: Box, solids: Sequence[Sequence[Box]], axis: int, length: float, block: float, first: int
) -> float:
    """How far an outline and the blocks in it are off those of a scale; a whole length where there are none."""
    left, low, right, high = outline
    begin, end, across = (left, right, high - low) if axis == 0 else (low, high, right - left)
    off = max(abs(end - begin - length), abs(across - _HIGH))
    if off > LIMIT:
        return off
    wanted = [begin + block * k for k in range(first, round(length / block), 2)]
    inside = [boxes for boxes in solids if all(_within(box, outline) for box in boxes)]
    if len(inside) != 1 or len(inside[0]) != len(wanted):
        return length
    found = sorted(box[axis::2] for box in inside[0])
    return max(
        off, *(max(abs(at - begin), abs(at + block - end)) for (begin, end), at in zip(found, wanted, strict=True))
    )


def _within(box: Box, outline: Box) -> bool:
    left, low, right, high = outline
    across = left - LIMIT <= box[0] and box[2] <= right + LIMIT
    return across and low - LIMIT <= box[1] and box[3] <= high + LIMIT
