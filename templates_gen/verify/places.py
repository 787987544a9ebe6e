"""Where words and arrows stand on strips and guides."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence

from layout.drawing.shapes import Point
from layout.messages.catalogue import Role
from templates_gen.messages.roles.proof import Words
from templates_gen.verify import LIMIT
from templates_gen.verify.arrows import Arrow, arrows_in
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart

_ROW = 1.5  # the middle of an arrow lies less than so far above the baseline of its words, in mm
_BEFORE = 3.5  # and less than so far before them, where it stands before them
_BESIDE = 1.5  # words at the centre begin at most so far past it
_SAME = 0.01  # two arrows nearer than so, in mm, are one
_LONGEST = 12.0  # words that end beside the centre are no longer, in mm


def arrows_on(pieces: Sequence[FoundPart]) -> list[Arrow]:
    """The arrow heads of all pieces, once where two pieces show the same one."""
    found: list[Arrow] = []
    for arrow in (each for seen in pieces for each in arrows_in(seen.shapes())):
        if all(math.dist(arrow.at, other.at) > _SAME for other in found):
            found.append(arrow)
    return found


def misplaced(left: Point | None, right: Point | None, centre: Point | None) -> Iterator[Finding]:
    """Left at the left, right at the right, the centre beside its line."""
    if left and right and not left.x < 0 < right.x:
        yield finding(Words.SIDES)
    if centre and not -_LONGEST < centre.x < _BESIDE:
        yield finding(Words.CENTRE)


def astray(
    asked: Sequence[tuple[Role, str]], places: Mapping[Role, Point], arrows: Sequence[Arrow], words: Sequence[Point]
) -> Iterator[Finding]:
    """Each message with an arrow beside it that points its way: behind the words to the right, else before them."""
    for role, way in asked:
        at = places[role]
        row = [arrow for arrow in arrows if 0 < arrow.at.y - at.y < _ROW]
        if way == "right":
            others = [word.x for word in words if abs(word.y - at.y) < LIMIT and word.x > at.x]
            found = [a for a in row if at.x < a.at.x < min(others, default=a.at.x + 1)]
        else:
            found = [arrow for arrow in row if 0 < at.x - arrow.at.x < _BEFORE]
        if [arrow.way for arrow in found] != [way]:
            yield finding(Words.ARROW, words=role, way=way)
