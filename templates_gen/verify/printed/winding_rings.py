"""The rings of a winding picture: every thing to do has one where it is done, and none lies on a thread."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region
from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.picture import Picture, Ring
from templates_gen.verify.printed.winding_steps import ExpectedStep

_POINTS = 7.0  # from the middle of a ring to the arrow that points from it, at most, in mm


def wrong_rings(picture: Picture, seen: FoundPart, steps: Sequence[ExpectedStep]) -> Iterator[Finding]:
    """Which things to do lack their ring, what rings say else, what lies on a thread, and what stands elsewhere."""
    numbers = {str(k): step for k, step in enumerate(steps, 1)}
    on_frame = [ring for ring in picture.rings if ring.at.x < picture.right and ring.words in numbers]
    shown = {ring.words for ring in on_frame}
    yield from (finding(Passes.RINGS, number=number) for number in numbers if number not in shown)
    strays = {ring.words for ring in picture.rings} - set(numbers) - {"a", "b"}
    yield from (finding(Passes.RING_STRAY, words=words) for words in sorted(strays))
    threads = [shape for shape in seen.shapes() if not isinstance(shape, Region) and _is_thread(shape)]
    for ring in picture.rings:
        if any(_meet(ring, thread) for thread in threads if isinstance(thread, Curve)):
            yield finding(Passes.RING_ON_THREAD, words=ring.words)
    if shown >= set(numbers):
        yield from (
            finding(Passes.RING_PLACE, number=number)
            for number, step in numbers.items()
            if not _in_place(picture, on_frame, number, step.what)
        )


def _is_thread(shape: object) -> bool:
    return isinstance(shape, Curve) and shape.pen in (Pen.THREAD, Pen.THREAD_BACK)


def _meet(ring: Ring, thread: Curve) -> bool:
    points = [thread.start]
    for end, through in thread.steps:
        points += [end] if through is None else [through, end]
    return any(_off(ring.at, one, other) < ring.radius for one, other in pairwise(points))


def _off(at: Point, one: Point, other: Point) -> float:
    """How far a place is from a line between two points."""
    dx, dy = other.x - one.x, other.y - one.y
    along = min(1.0, max(0.0, ((at.x - one.x) * dx + (at.y - one.y) * dy) / (dx * dx + dy * dy or 1.0)))
    return math.dist(at, (one.x + along * dx, one.y + along * dy))


def _in_place(picture: Picture, rings: Sequence[Ring], number: str, what: str) -> bool:
    """Knots have their rings beside them, turns at their ends, the slack an arrow to the thread."""
    mine = [ring for ring in rings if ring.words == number]
    if what in ("far", "near"):
        return all(picture.is_far(ring.at) == (what == "far") for ring in mine)
    if what == "pull":
        return any(math.dist(ring.at, at) < _POINTS for ring in mine for at in picture.pointers)
    if what in ("on", "off") and len(picture.knots) == _BOTH:
        by_order = sorted(picture.knots, key=lambda at: picture.toward * at.x)
        if by_order[0].x == by_order[1].x:
            return True
        at = by_order[0 if what == "on" else 1]
        return min(rings, key=lambda ring: math.dist(ring.at, at)).words == number
    return True


_BOTH = 2
