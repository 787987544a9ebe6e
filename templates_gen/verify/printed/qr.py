"""The code of a link, read from its modules without the library that made them."""

from __future__ import annotations

from collections.abc import Iterator
from math import isclose

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Region, Text
from templates_gen.document import ReadError
from templates_gen.messages.roles.proof_cards import Cards
from templates_gen.readers.qr_code import text_of
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_of
from templates_gen.verify.finding import NOTHING, Findings, finding, wrong
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.card_form import Sides

_LEAST, _QUIET = 0.4, 4  # mm; modules of white around it (ISO/IEC 18004, 9.1)
_FEWEST = 30  # rectangles: no sign on a card has so many


def check_link(link: str, seen: FoundPart, sides: Sides) -> Findings:
    """One code that says the link, with its white; none where there is no link."""
    codes = [shape for shape in seen.shapes() if isinstance(shape, Region) and len(shape.contours) >= _FEWEST]
    if len(codes) != bool(link):
        return wrong(Cards.LINK, found=len(codes), wanted=int(bool(link)))
    if not codes:
        return NOTHING
    (code,) = codes
    boxes = [box_of(contour) for contour in code.contours]
    module = min(top - low for _, low, _, top in boxes)
    left, low, right, top = _around(boxes)
    side = round((right - left) / module)
    bits = [[False] * side for _ in range(side)]
    if not _fill(bits, boxes, module, (left, top)):
        return wrong(Cards.LINK_SAYS, found="", wanted=link)
    problems = []
    try:
        said = text_of(bits)
    except ReadError as error:
        said = str(error)
    if said != link:
        problems.append(finding(Cards.LINK_SAYS, found=said, wanted=link))
    if module < _LEAST - LIMIT:
        problems.append(finding(Cards.LINK_SMALL, least=_LEAST))
    white = _QUIET * module - LIMIT
    reach = left - white, low - white, right + white, top + white
    inside = reach[0] >= 0 and reach[1] >= 0 and reach[2] <= sides[0] and reach[3] <= sides[1]
    if not inside or any(_meets(box, reach) for box in _others(seen, code)):
        problems.append(finding(Cards.LINK_WHITE))
    return Findings(0.0, tuple(problems))


def _fill(bits: list[list[bool]], boxes: list[Box], module: float, corner: tuple[float, float]) -> bool:
    """Sets every module that is black; whether each rectangle lies on whole modules, one high."""
    left, top = corner
    for one, low, other, high in boxes:
        begin, end, row = ((one - left) / module, (other - left) / module, (top - high) / module)
        whole = all(abs(each - round(each)) * module <= LIMIT for each in (begin, end, row))
        if not whole or not isclose(high - low, module, abs_tol=LIMIT) or round(row) >= len(bits):
            return False
        for column in range(round(begin), min(round(end), len(bits))):
            bits[round(row)][column] = True
    return True


def _around(boxes: list[Box]) -> Box:
    lefts, lows, rights, tops = zip(*boxes, strict=True)
    return min(lefts), min(lows), max(rights), max(tops)


def _others(seen: FoundPart, code: Region) -> Iterator[Box]:
    """The boxes of everything else on the card but its outline; of words where they begin."""
    for shape in seen.shapes():
        if shape is code or shape.pen is Pen.CUT:
            continue
        if isinstance(shape, Text):
            yield shape.at.x, shape.at.y, shape.at.x, shape.at.y
        else:
            yield _around([box_of(path) for path in (shape.contours if isinstance(shape, Region) else (shape,))])


def _meets(one: Box, other: Box) -> bool:
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]
