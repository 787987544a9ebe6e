"""What a file for a cutter may hold, checked before it is written."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Sequence
from itertools import takewhile

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet, painted
from layout.values.errors import LayoutError, shown
from templates_gen.document import OPERATION_OF, Operations, operations_fault
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import CutFile
from templates_gen.writers.checks import Found
from templates_gen.writers.cutting.inside import first_wrong
from templates_gen.writers.cutting.overlaps import overlap

SQUARE = 50.0
"""The side in mm of the square that every cutter's file has for reference."""

_SAME = 1e-4  # mm: shorter than a tenth of a micrometre counts as nothing


_FIT = Found()


def check_cut(sheets: Sequence[Sheet], operations: Operations) -> None:
    """`LayoutError` with one sentence if the one sheet, whose numbers are sound, is not what a cutter can take."""
    if wrong := operations_fault(operations):
        raise LayoutError(message(CutFile.OPERATIONS, fault=wrong))
    if len(sheets) != 1:
        raise LayoutError(message(CutFile.SHEETS, count=len(sheets)))
    if sheets[0] in _FIT:
        return
    if fault := _fault(sheets[0].shapes):
        raise LayoutError(message(CutFile.SHEET, sheet=shown(sheets[0].name), fault=fault))
    _FIT.add(sheets[0])


def _fault(shapes: Sequence[Shape]) -> str:
    if any(isinstance(shape, Text) for shape in shapes):
        return message(CutFile.WORDS)
    drawn = [shape for shape in shapes if not isinstance(shape, Text)]
    if strange := [shape.pen for shape in drawn if shape.pen not in OPERATION_OF]:
        return message(CutFile.PEN, pen=shown(strange[0].value))
    if painted(drawn) != tuple(drawn):
        return message(CutFile.ORDER, operations=", ".join(OPERATION_OF.values()))
    paths = [shape for shape in drawn if isinstance(shape, Curve)]
    cuts = [path for path in paths if path.pen is Pen.THROUGH]
    contours = [contour for shape in drawn if isinstance(shape, Region) for contour in shape.contours]
    return _outlines_fault([*paths, *contours], cuts) or _repeats_fault(paths, contours) or _square_fault(paths)


def _outlines_fault(paths: Sequence[Curve], cuts: Sequence[Curve]) -> str:
    if not cuts:
        return message(CutFile.NO_CUT)
    if any(not path.closed for path in cuts):
        return message(CutFile.OPEN)
    for path in paths:
        last = path.steps[-1]
        if path.closed and last.through is None and _meet(path, last.end):
            return message(CutFile.CLOSING)
    if outer := first_wrong(cuts):
        x, y = outer.start
        return message(CutFile.INSIDE, x=x, y=y)
    return ""


def _meet(path: Curve, end: tuple[float, float]) -> bool:
    return abs(path.start.x - end[0]) < _SAME and abs(path.start.y - end[1]) < _SAME


def _repeats_fault(paths: Sequence[Curve], contours: Sequence[Curve]) -> str:
    """Lines that run over each other would be burnt twice."""
    worked = [path for path in paths if path.pen is not Pen.REFERENCE]
    for own in (worked, [path for path in paths if path.pen is Pen.REFERENCE]):
        if place := overlap(own):
            return message(CutFile.OVERLAP, x=place.x, y=place.y)
    return message(CutFile.TWICE) if repeated([path.points() for path in contours]) else ""


def repeated(outlines: Iterable[Sequence[Point]]) -> bool:
    """Whether two outlines have the same points, each within a tenth of a micrometre."""
    ahead = deque(sorted(map(tuple, outlines)))
    while ahead:
        one = ahead.popleft()
        for other in takewhile(lambda each, x=one[0].x: each[0].x - x < _SAME, ahead):  # type: ignore[misc]
            if len(one) == len(other) and all(
                abs(a - b) < _SAME for p, q in zip(one, other, strict=True) for a, b in zip(p, q, strict=True)
            ):
                return True
    return False


def _square_fault(paths: Sequence[Curve]) -> str:
    """A square on the reference operation, by which a person sees in any program whether the scale is right."""
    if any(path.pen is Pen.REFERENCE and _is_square(path) for path in paths):
        return ""
    return message(CutFile.SQUARE, side=SQUARE)


def _is_square(path: Curve) -> bool:
    xs, ys = zip(*path.points(), strict=True)
    straight = path.closed and len(path.steps) == 3 and all(step.through is None for step in path.steps)
    upright = all(min(each - min(way), max(way) - each) < _SAME for way in (xs, ys) for each in way)
    sides = (max(xs) - min(xs), max(ys) - min(ys))
    return straight and upright and all(abs(side - SQUARE) < _SAME for side in sides)
