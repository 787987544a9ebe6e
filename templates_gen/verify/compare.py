"""Two sheets, shape for shape: what differs in kind, and how far the rest is off. Knows no format."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from layout.drawing.shapes import Curve, Point, Region, Shape, Text
from layout.drawing.sheet import Sheet, pen_of
from layout.values.errors import shown
from templates_gen.verify import LIMIT


@dataclass(frozen=True, slots=True)
class Findings:
    """`deviation` is the largest distance in mm between where something is and should be; `problems` are sentences."""

    deviation: float
    problems: tuple[str, ...]

    @property
    def sound(self) -> bool:
        """Whether nothing is wrong and nothing lies further off than the limit."""
        return not self.problems and self.deviation <= LIMIT

    def __add__(self, other: Findings) -> Findings:
        return Findings(max(self.deviation, other.deviation), self.problems + other.problems)


def said_once(problems: Iterable[str]) -> list[str]:
    """Every problem once, in order, with how often it came: "3 times: a wind mark is missing"."""
    return [f"{count} times: {each}" if count > 1 else each for each, count in Counter(problems).items()]


NOTHING = Findings(0.0, ())


def compare(wanted: Sequence[Sheet], found: Sequence[Sheet]) -> Findings:
    """Count, order, pens, words and positions of every shape on every sheet."""
    if len(wanted) != len(found):
        return Findings(0.0, (f"{len(found)} sheets where {len(wanted)} were wanted",))
    total = NOTHING
    for number, (one, other) in enumerate(zip(wanted, found, strict=True), 1):
        total += _sheets(one, other, f"sheet {number}")
    return total


def _sheets(wanted: Sheet, found: Sheet, where: str) -> Findings:
    deviation = max(abs(wanted.width - found.width), abs(wanted.height - found.height))
    problems = []
    if deviation > LIMIT:
        sizes = (f"{sheet.width:.3f} x {sheet.height:.3f} mm" for sheet in (found, wanted))
        problems.append("{}: measures {} where {} was wanted".format(where, *sizes))
    if len(wanted.shapes) != len(found.shapes):
        problems.append(f"{where}: {len(found.shapes)} shapes where {len(wanted.shapes)} were wanted")
    for one, other in zip(wanted.shapes, found.shapes, strict=False):
        if kind := _differs(one, other):
            return Findings(deviation, (*problems, f"{where}: {kind}"))  # from here on nothing would match
        deviation = max(deviation, _apart(one, other))
    if deviation > LIMIT:
        problems.append(f"{where}: something is {deviation * 1000:.1f} micrometres off")
    return Findings(deviation, tuple(problems))


def _differs(wanted: Shape, found: Shape) -> str:
    """How two shapes differ in anything but position; empty if they do not."""
    if type(wanted) is not type(found) or pen_of(wanted) is not pen_of(found):
        return f"a {_named(found)} where a {_named(wanted)} was wanted"
    if isinstance(wanted, Text) and isinstance(found, Text):
        return (
            "" if wanted.words == found.words else f"says {shown(found.words)} where {shown(wanted.words)} was wanted"
        )
    return "" if _outline(wanted) == _outline(found) else f"a {_named(wanted)} of another form than was wanted"


def _named(shape: Shape) -> str:
    kind = {Curve: "line", Region: "region", Text: "word"}[type(shape)]
    return f"{pen_of(shape).value} {kind}"


def _contours(shape: Shape) -> Sequence[Curve]:
    if isinstance(shape, Curve):
        return (shape,)
    return shape.contours if isinstance(shape, Region) else ()


def _outline(shape: Shape) -> list[tuple[bool, list[bool]]]:
    """Which contours are closed, and which of their steps are arcs."""
    return [(path.closed, [step.through is not None for step in path.steps]) for path in _contours(shape)]


def _apart(wanted: Shape, found: Shape) -> float:
    return max(map(_distance, _places(wanted), _places(found)))


def _distance(one: Point, other: Point) -> float:
    """In mm; what is not a number is infinitely far off, since no comparison would notice it."""
    apart = math.dist(one, other)
    return math.inf if math.isnan(apart) else apart


def _places(shape: Shape) -> Iterator[Point]:
    """Every point that fixes a shape; for words, the start of the baseline and one em along it and above it."""
    if isinstance(shape, Text):
        angle, size = math.radians(shape.angle), shape.size
        yield shape.at
        yield Point(shape.at.x + size * math.cos(angle), shape.at.y + size * math.sin(angle))
        return
    for path in _contours(shape):
        yield path.start
        for end, through in path.steps:
            yield end
            if through is not None:
                yield through
