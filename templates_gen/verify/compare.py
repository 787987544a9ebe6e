"""Two sheets, shape for shape: what differs in kind, and how far the rest is off. Knows no format."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from operator import itemgetter

from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.messages.catalogue import Message
from layout.values.errors import shown
from templates_gen.messages.roles.proof import Compared, Proof
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding, said

_end, _through = itemgetter(0), itemgetter(1)
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
        if not isinstance(apart, float):
            return Findings(deviation, (*problems, apart))  # from here on nothing would match
        deviation = max(deviation, apart)
    if deviation > LIMIT:
        problems.append(finding(Compared.OFF, micrometres=deviation * 1000))
    return Findings(deviation, tuple(problems))


def _between(wanted: Shape, found: Shape) -> float | Finding:
    """How far off a shape is, in mm; or how it differs in anything but its position."""
    if type(wanted) is not type(found) or pen_of(wanted) is not pen_of(found):
        return finding(Compared.KIND, found=_named(found), wanted=_named(wanted))
    if isinstance(wanted, Text) and isinstance(found, Text):
        if wanted.words != found.words:
            return finding(Compared.SAYS, found=shown(found.words), wanted=shown(wanted.words))
        return _largest(map(math.dist, _em(wanted), _em(found)))
    apart = _outlines_apart(wanted, found)
    return finding(Compared.FORM, wanted=_named(wanted)) if apart is None else apart


def _named(shape: Shape) -> Message:
    kind = {Curve: Compared.LINE, Region: Compared.REGION, Text: Compared.WORD}[type(shape)]
    return said(kind, pen=pen_of(shape).value)


def _em(text: Text) -> tuple[Point, Point]:
    """The start of the baseline of words, and one em along it."""
    angle, size = math.radians(text.angle), text.size
    return text.at, Point(text.at.x + size * math.cos(angle), text.at.y + size * math.sin(angle))


def _outlines_apart(wanted: Shape, found: Shape) -> float | None:
    """How far off a line or an area is, in mm; None where it has another form."""
    if isinstance(wanted, Curve) and isinstance(found, Curve):
        return _paths_apart(wanted, found)
    if not isinstance(wanted, Region) or not isinstance(found, Region) or len(wanted.contours) != len(found.contours):
        return None
    apart = 0.0
    for one, other in zip(wanted.contours, found.contours, strict=True):
        off = _paths_apart(one, other)
        if off is None:
            return None
        apart = max(apart, off)
    return apart


def _paths_apart(wanted: Curve, found: Curve) -> float | None:
    """How far the points of a path are off, in mm; None where it is another one: closed or not, its steps, its arcs."""
    steps, others = wanted.steps, found.steps
    if wanted.closed is not found.closed or len(steps) != len(others):
        return None
    if len(steps) == 1 and steps[0].through is None is others[0].through:  # nearly every path of a sheet is one line
        one, other = math.dist(wanted.start, found.start), math.dist(steps[0].end, others[0].end)
        return math.inf if math.isnan(one + other) else max(one, other)
    apart = [math.dist(wanted.start, found.start), *map(math.dist, map(_end, steps), map(_end, others))]
    if wanted.closed and _misses(wanted) is not _misses(found):
        return None
    throughs, other_throughs = list(map(_through, steps)), list(map(_through, others))
    if throughs.count(None) + other_throughs.count(None) < 2 * len(steps):  # most have no arc
        for through, other in zip(throughs, other_throughs, strict=True):
            if (through is None) is not (other is None):
                return None
            if through is not None and other is not None:
                apart.append(math.dist(through, other))
    return _largest(apart)


def _misses(path: Curve) -> bool:
    """Whether a closed path ends so close to its start that closing it turns a corner, drawn as a spike."""
    return _SAME < math.dist(path.start, path.steps[-1].end) <= LIMIT


def _largest(apart: Iterable[float]) -> float:
    """In mm; what is not a number is infinitely far off, since no comparison would notice it."""
    each = list(apart)
    return math.inf if math.isnan(sum(each)) else max(each)
