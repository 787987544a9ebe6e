"""The numbers of marks and ends in the small pictures beside strips, templates and guides, from the kit alone."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text
from layout.drawing.sheet import Sheet
from layout.kit.kit import Kit
from templates_gen.messages.roles.proof import Furnished
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of

_SMALL, _LEAD = 7.5 * 25.4 / 72, 9.5 * 25.4 / 72  # mm to the em: numbers in pictures, and sentences
_NAME = 22 * 25.4 / 72  # mm: the size of titles
_HEAD, _UNDER = 12.0, 30.0  # nothing but the head stands above so far under a title, or where it begins under it
_SAME = 1e-3
_RING, _RING_STEPS = 2.4, 8
_LEVEL, _SIGN = 0.5, 16.0  # a number that is a sign stands so level with its meaning, and so close to it at most, in mm
_NAMED = 3  # so many ends of a guide are numbered from where the warp begins, and the last one
_TEMPLATES = ("notched ends", "pegged ends", "nails")


def check_figures(sheet: Sheet, found: Sequence[FoundPart], kit: Kit, sett: Fraction) -> Findings:
    """Whether the numbers beside these parts go on from the first mark, or lead to the last end."""
    toward = 1 if kit.weaving.start == "left" else -1
    shown = sorted(_numbers(sheet, found), key=lambda text: toward * text.at.x)
    numbers = [int(text.words) for text in shown]
    wanted: list[int] = []
    names = {seen.part.name for seen in found}
    if names & {"spacing-near", "spacing-far"}:
        ends = ends_of(kit, sett)
        wanted = [*range(1, min(_NAMED, ends) + 1), *([ends] if ends > _NAMED + 1 else [])]
    elif not names & {"strip-near", "strip-far"}:
        return Findings(0.0, ())
    elif kit.frame.ends.name in _TEMPLATES:
        first = truth_of(kit).first_near
        wanted = list(range(first, first + len(numbers)))
    right = numbers in ([], wanted)
    return Findings(0.0, () if right else (finding(Furnished.FIGURES, found=str(numbers), wanted=str(wanted)),))


def _numbers(sheet: Sheet, found: Sequence[FoundPart]) -> list[Text]:
    """Upright numbers outside all parts that stand in no ring, are no sign and end no name of a kit."""
    texts = [shape for shape in sheet.shapes if isinstance(shape, Text) and not shape.angle]
    rings = [_middle(shape) for shape in sheet.shapes if isinstance(shape, Curve) and _is_ring(shape)]
    titles = [text.at for text in texts if abs(text.size - _NAME) <= _SAME]
    meanings = [text.at for text in texts if text.pen is Pen.TEXT and abs(text.size - _LEAD) <= _SAME]
    return [
        text
        for text in texts
        if text.words.isdigit()
        and text.pen is Pen.STRONG
        and abs(text.size - _SMALL) <= _SAME
        and not any(_in_head(text.at, title) for title in titles)
        and not any(dist(text.at, ring) < _RING for ring in rings)
        and not any(abs(at.y - text.at.y) < _LEVEL and 0 < at.x - text.at.x < _SIGN for at in meanings)
        and not any(seen.holds(seen.lie.back(text.at)) for seen in found)
    ]


def _in_head(at: Point, title: Point) -> bool:
    """Whether words stand where the name of a kit may: beside the title, or under it where that begins."""
    down = title.y - at.y
    return down < _HEAD or (abs(at.x - title.x) <= _SAME and down < _UNDER)


def _is_ring(path: Curve) -> bool:
    return path.pen is Pen.RING and len(path.steps) == _RING_STEPS


def _middle(path: Curve) -> Point:
    points = path.points()[:-1]
    return Point(sum(point.x for point in points) / len(points), sum(point.y for point in points) / len(points))
