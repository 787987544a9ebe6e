"""Two sheets, shape for shape: what differs in kind, and how far the rest is off. Knows no format."""

from __future__ import annotations

import math
from collections.abc import Sequence
from operator import itemgetter

from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.messages.catalogue import Message
from layout.values.errors import shown
from templates_gen.messages.roles.proof import Compared, Proof
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said

_through = itemgetter(1)
_SAME = 2e-5  # mm: places that differ by no more than the rounding of numbers in a file


def compare(wanted: Sequence[Sheet], found: Sequence[Sheet]) -> Findings:
    """Count, order, pens, words and positions of every shape on every sheet."""
    if len(wanted) != len(found):
        return Findings(0.0, (finding(Compared.SHEETS, found=len(found), wanted=len(wanted)),))
    total = NOTHING
    for number, (one, other) in enumerate(zip(wanted, found, strict=True), 1):
        total += _sheets(one, other).at(said(Proof.SHEET, number=number))
    return total


def _sheets(wanted: Sheet, found: Sheet) -> Findings:
    deviation = max(abs(wanted.width - found.width), abs(wanted.height - found.height))
    problems = []
    if deviation > LIMIT:
        size, asked = {"width": found.width, "height": found.height}, {"wide": wanted.width, "high": wanted.height}
        problems.append(finding(Compared.SIZE, **size, **asked))
    if len(wanted.shapes) != len(found.shapes):
        problems.append(finding(Compared.SHAPES, found=len(found.shapes), wanted=len(wanted.shapes)))
    for one, other in zip(wanted.shapes, found.shapes, strict=False):
        apart = _between(one, other)
        if apart is None:
            if kind := _differs(one, other):
                return Findings(deviation, (*problems, kind))  # from here on nothing would match
            apart = _apart(one, other)
        deviation = max(deviation, apart)
    if deviation > LIMIT:
        problems.append(finding(Compared.OFF, micrometres=deviation * 1000))
    return Findings(deviation, tuple(problems))


def _between(wanted: Shape, found: Shape) -> float | None:
    """How far off a straight line of one step is, which nearly every shape of a sheet is; None for all else."""
    if type(wanted) is not Curve or type(found) is not Curve or wanted.pen is not found.pen:
        return None
    if wanted.closed or found.closed or len(wanted.steps) != 1 or len(found.steps) != 1:
        return None
    (end, through), (other_end, other_through) = wanted.steps[0], found.steps[0]
    if through is not None or other_through is not None:
        return None
    one, other = math.dist(wanted.start, found.start), math.dist(end, other_end)
    return math.inf if math.isnan(one + other) else max(one, other)


def _differs(wanted: Shape, found: Shape) -> Finding | None:
    """How two shapes differ in anything but position; None if they do not."""
    if type(wanted) is not type(found) or pen_of(wanted) is not pen_of(found):
        return finding(Compared.KIND, found=_named(found), wanted=_named(wanted))
    if isinstance(wanted, Text) and isinstance(found, Text):
        return (
            None
            if wanted.words == found.words
            else finding(Compared.SAYS, found=shown(found.words), wanted=shown(wanted.words))
        )
    return None if _outline(wanted) == _outline(found) else finding(Compared.FORM, wanted=_named(wanted))


def _named(shape: Shape) -> Message:
    kind = {Curve: Compared.LINE, Region: Compared.REGION, Text: Compared.WORD}[type(shape)]
    return said(kind, pen=pen_of(shape).value)


def _contours(shape: Shape) -> Sequence[Curve]:
    if isinstance(shape, Curve):
        return (shape,)
    return shape.contours if isinstance(shape, Region) else ()


def _outline(shape: Shape) -> list[tuple[bool, bool, int, list[bool]]]:
    """Which contours are closed, which of these just miss their start, how many steps each has, and which are arcs."""
    return [(path.closed, _misses(path), len(path.steps), _arcs(path)) for path in _contours(shape)]


def _arcs(path: Curve) -> list[bool]:
    """Which steps are arcs; nothing where none is."""
    throughs = list(map(_through, path.steps))
    return [] if throughs.count(None) == len(throughs) else [through is not None for through in throughs]


def _misses(path: Curve) -> bool:
    """Whether a closed path ends so close to its start that closing it turns a corner, drawn as a spike."""
    return path.closed and _SAME < math.dist(path.start, path.steps[-1].end) <= LIMIT


def _apart(wanted: Shape, found: Shape) -> float:
    """In mm; what is not a number is infinitely far off, since no comparison would notice it."""
    apart = list(map(math.dist, _places(wanted), _places(found)))
    return math.inf if math.isnan(sum(apart)) else max(apart)


def _places(shape: Shape) -> list[Point]:
    """Every point that fixes a shape; for words, the start of the baseline and one em along it and above it."""
    if isinstance(shape, Curve) and len(shape.steps) == 1:  # nearly every shape of a sheet is one line
        end, through = shape.steps[0]
        return [shape.start, end] if through is None else [shape.start, end, through]
    if isinstance(shape, Text):
        angle, size = math.radians(shape.angle), shape.size
        return [shape.at, Point(shape.at.x + size * math.cos(angle), shape.at.y + size * math.sin(angle))]
    places = []
    for path in _contours(shape):
        places += path.points()
        places += filter(None, map(_through, path.steps))
    return places
