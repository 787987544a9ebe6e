"""The rings of a winding picture: every thing to do has one where it is done, and none lies on a thread."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.messages.catalogue import Catalogue, Role
from layout.messages.roles import Winding
from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import off_step
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.picture import Picture, Ring
from templates_gen.verify.printed.winding_steps import ExpectedStep

_TO_WORDS = 6.0  # from a ring in a list to the words of its step, at most, in mm
_POINTS = 7.0  # from the middle of a ring to the arrow that points from it, at most, in mm


def wrong_rings(
    picture: Picture, seen: FoundPart, steps: Sequence[ExpectedStep], words: Catalogue, *, on_rod: bool
) -> Iterator[Finding]:
    """Which things to do lack their ring, what rings say else, what lies on a thread, and what stands elsewhere."""
    numbers = {str(k): step for k, step in enumerate(steps, 1)}
    numbered = [ring for ring in picture.rings if ring.words in numbers]
    on_frame = [ring for ring in numbered if ring.at.x < picture.right]
    shown = {ring.words for ring in on_frame}
    yield from (finding(Passes.RINGS, number=number) for number in numbers if number not in shown)
    strays = {ring.words for ring in picture.rings} - set(numbers) - {"a", "b"}
    yield from (finding(Passes.RING_STRAY, words=words) for words in sorted(strays))
    threads = [_way(shape) for shape in seen.shapes() if isinstance(shape, Curve) and shape.pen in _THREADS]
    for ring in picture.rings:
        if any(_meet(ring, thread) for thread in threads):
            yield finding(Passes.RING_ON_THREAD, words=ring.words)
    if shown >= set(numbers):
        yield from (
            finding(Passes.RING_PLACE, number=number)
            for number, step in numbers.items()
            if not _in_place(picture, on_frame, number, step.what)
        )
        outside = [ring for ring in numbered if ring.at.x >= picture.right]
        beside = [ring for ring in outside if not _is_listed(picture, ring, numbers[ring.words].said)]
        view = [ring for ring in beside if abs(ring.radius - on_frame[0].radius) <= LIMIT]
        yield from _wrong_side(picture, view, numbers, on_rod=on_rod)
        drawn = [ring for ring in beside if ring not in view]
        yield from _wrong_knots(drawn, list(_captions(picture, words)), numbers)


_THREADS = (Pen.THREAD, Pen.THREAD_BACK)


def _way(thread: Curve) -> list[Point]:
    """Points along a thread, those that arcs pass through included."""
    points = [thread.start]
    for end, through in thread.steps:
        points += [end] if through is None else [through, end]
    return points


def _meet(ring: Ring, thread: Sequence[Point]) -> bool:
    x, radius = ring.at.x, ring.radius
    for one, other in pairwise(thread):
        left, right = (one.x, other.x) if one.x < other.x else (other.x, one.x)
        if left - radius < x < right + radius and off_step(ring.at, one, other) < radius:
            return True
    return False


def _in_place(picture: Picture, rings: Sequence[Ring], number: str, what: str) -> bool:
    """Knots have their rings beside them, turns at their ends, the slack an arrow to the thread, passes a side."""
    mine = [ring for ring in rings if ring.words == number]
    if what == "pull":
        return any(math.dist(ring.at, at) < _POINTS for ring in mine for at in picture.pointers)
    if what in ("on", "off") and len(picture.knots) == _BOTH:
        by_order = sorted(picture.knots, key=lambda at: picture.toward * at.x)
        if by_order[0].x == by_order[1].x:
            return True
        at = by_order[0 if what == "on" else 1]
        return min(rings, key=lambda ring: math.dist(ring.at, at)).words == number
    test = _WHERE.get(what)
    return test is None or all(test(picture, ring.at) for ring in mine)


def _share(picture: Picture, at: Point) -> float:
    """How high a place is, from 0 at the near end to 1 at the far one."""
    return (at.y - picture.near) / (picture.far - picture.near)


def _past(picture: Picture, which: int, at: Point) -> bool:
    """Whether a place lies past a pass, as the winding goes on."""
    one = picture.passes[which]
    return picture.toward * at.x > one.near + (one.far - one.near) * _share(picture, at)


def _inside(picture: Picture, at: Point) -> bool:
    return 0 < _share(picture, at) < 1


_WHERE: Mapping[str, Callable[[Picture, Point], bool]] = {
    "there": lambda picture, at: _inside(picture, at) and not _past(picture, 0, at),
    "far": lambda picture, at: picture.is_far(at) and not _past(picture, 0, at),
    "near": lambda picture, at: _share(picture, at) < 0,
    "onward": lambda picture, at: _inside(picture, at) and _past(picture, 0, at),
    "clip": lambda picture, at: _inside(picture, at) and _past(picture, -1, at),
}


def _is_listed(picture: Picture, ring: Ring, said: str) -> bool:
    """Whether it is the ring of a list, with the words of its step beside it."""
    level = [(at.x - ring.at.x - ring.radius, words) for at, words in picture.words if abs(at.y - ring.at.y) < 2]
    return any(0 < off < _TO_WORDS and said.startswith(words) for off, words in level)


def _wrong_side(
    picture: Picture, view: Sequence[Ring], numbers: Mapping[str, ExpectedStep], *, on_rod: bool
) -> Iterator[Finding]:
    """In the view from the side the first things to do stand where they are done, each once."""
    for ring in view:
        what = numbers[ring.words].what
        right = {
            "on": _is_nearest(picture.side_knots, view, ring),
            "there": _inside(picture, ring.at),
            "far": picture.is_far(ring.at) and not _is_nearest(picture.side_knots, view, ring),
            "near": _share(picture, ring.at) < 0,
        }
        if not right.get(what, False):
            yield finding(Passes.RING_PLACE, number=ring.words)
    seen = [numbers[ring.words].what for ring in view]
    wanted = [number for number, step in numbers.items() if step.what in (_FROM_ROD if on_rod else _FROM_SIDE)]
    yield from (finding(Passes.RINGS, number=number) for number in wanted if seen.count(numbers[number].what) != 1)


_FROM_ROD, _FROM_SIDE = ("on", "there", "far"), ("on", "there", "far", "near")
_KNOTS: Mapping[Role, str] = {Winding.HITCHES: "on", Winding.CLIP: "clip", Winding.BOW: "off"}


def _captions(picture: Picture, words: Catalogue) -> Iterator[tuple[Point, str]]:
    """Where it is said what a picture of a knot shows, and for which thing to do that is."""
    for role, what in _KNOTS.items():
        said = words.say(role)
        lines = [at for at, line in picture.words if at.x > picture.right and (line == said or _begins(said, line))]
        yield from ((at, what) for at in lines[:1])


def _begins(said: str, line: str) -> bool:
    return said.startswith(f"{line} ")


def _wrong_knots(
    rings: Sequence[Ring], captions: Sequence[tuple[Point, str]], numbers: Mapping[str, ExpectedStep]
) -> Iterator[Finding]:
    """Rings beside pictures of knots, from above, that are not those of what the captions under them name."""
    downward = sorted(rings, key=lambda ring: -ring.at.y)
    named = sorted(captions, key=lambda caption: -caption[0].y)
    for ring, (_, what) in zip(downward, named, strict=False):
        if numbers[ring.words].what != what:
            yield finding(Passes.RING_PLACE, number=ring.words)
    if len(downward) != len(named):
        yield finding(Passes.RINGS, number=next((n for n, step in numbers.items() if step.what == "off"), ""))


def _is_nearest(knots: Sequence[Point], rings: Sequence[Ring], mine: Ring) -> bool:
    return any(min(rings, key=lambda ring: math.dist(ring.at, at)) is mine for at in knots)


_BOTH = 2
