"""The notches and holes of a template, and ticks at notches that stay empty, held against the kit's numbers alone."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.kit import Kit
from templates_gen.verify import LIMIT
from templates_gen.verify.compare import NOTHING, Findings
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.pegs import peg_centres


class Opening(NamedTuple):
    """A notch, a hole or a tick: the middle of it, and what it measures across and up, in mm."""

    x: float
    y: float
    across: float
    up: float


def prove_openings(kit: Kit, end: str, marks: Sequence[Fraction], pieces: Sequence[FoundPart]) -> Findings:
    """Every opening that stands whole on a piece is there once and right, and each stands whole on some piece."""
    wanted = list(_wanted(kit, end, marks))
    if isinstance(kit.frame.ends, PeggedEnd):
        find, name = _circles, "hole"
    else:
        find, name = _notches if _is_new(kit) else _ticks, "notch"
    total, whole = NOTHING, set[int]()
    for seen in pieces:
        found = sorted(find(seen))
        own = [k for k, each in enumerate(wanted) if _belongs(each, seen.part.box, found)]
        whole.update(own)
        total += _matched([wanted[k] for k in own], found, name, seen.where)
    lost = len(wanted) - len(whole)
    return total + Findings(0.0, (f"{end} end: {lost} {name} outlines stand whole on no piece",) if lost else ())


def _is_new(kit: Kit) -> bool:
    return isinstance(kit.frame.ends, NotchedEnd) and kit.frame.ends.density is None


def _wanted(kit: Kit, end: str, marks: Sequence[Fraction]) -> Iterator[Opening]:
    """From left to right. The weaving lies above the near end of a frame that stands on it, below the far one."""
    ends, to_weaving = kit.frame.ends, 1 if (end == "near") == (kit.weaving.near_end == "bottom") else -1
    found: list[Opening] = []
    if isinstance(ends, PeggedEnd):
        wide = float(ends.peg_diameter.mm)
        found += [Opening(x, to_weaving * deep, wide, wide) for x, deep in peg_centres(ends, list(map(float, marks)))]
    elif isinstance(ends, NotchedEnd) and ends.density is None:
        deep = to_weaving * float(ends.notch_depth.mm)
        found += [Opening(float(x), deep / 2, float(ends.notch_width.mm), abs(deep)) for x in marks]
    elif isinstance(ends, NotchedEnd) and ends.density is not None:
        apart, low = 1 / ends.density.per_mm, min(marks)
        every = {low + k * apart for k in range(int((max(marks) - low) / apart) + 1)}
        found += [Opening(float(x), to_weaving * 0.5, 0.0, 1.0) for x in every - set(marks)]
    yield from sorted(found)


def _belongs(each: Opening, box: tuple[float, float, float, float], found: Sequence[Opening]) -> bool:
    """Whether an opening stands whole on a piece; one that meets an edge of it does where it is drawn there."""
    room = min(each.x - each.across / 2 - box[0], box[2] - each.x - each.across / 2)
    return room > LIMIT or (room >= -LIMIT and any(abs(each.x - other.x) <= LIMIT for other in found))


def _of_points(points: Sequence[Point]) -> Opening:
    xs, ys = zip(*points, strict=True)
    return Opening((min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2, max(xs) - min(xs), max(ys) - min(ys))


def _paths(seen: FoundPart, pen: Pen) -> Iterator[Curve]:
    return (shape for shape in seen.shapes() if isinstance(shape, Curve) and shape.pen is pen)


def _circles(seen: FoundPart) -> Iterator[Opening]:
    """Closed curves whose every point lies equally far from the middle."""
    for path in _paths(seen, Pen.REGISTER):
        if path.closed and all(step.through for step in path.steps):
            found = _of_points(path.points())
            on_it = [*path.points(), *(step.through for step in path.steps if step.through)]
            round_ = all(abs(math.dist(point, (found.x, found.y)) - found.across / 2) <= LIMIT for point in on_it)
            yield found if round_ else found._replace(across=-1.0)


def _notches(seen: FoundPart) -> Iterator[Opening]:
    """Open outlines of four corners, square to the edge, that begin and end at the outer edge."""
    for path in _paths(seen, Pen.REGISTER):
        if len(path.steps) == 3 and not path.closed:
            a, b, c, d = path.points()
            square = max(abs(a.x - b.x), abs(c.x - d.x), abs(b.y - c.y), abs(a.y), abs(d.y)) <= LIMIT
            found = _of_points((a, b, c, d))
            yield found if square else found._replace(across=-1.0)


def _ticks(seen: FoundPart) -> Iterator[Opening]:
    return (_of_points(path.points()) for path in _paths(seen, Pen.HELP))


def _matched(wanted: Sequence[Opening], found: Sequence[Opening], name: str, where: str) -> Findings:
    if len(wanted) != len(found):
        return Findings(0.0, (f"{where}: {len(found)} {name} outlines where the kit asks for {len(wanted)}",))
    pairs = zip(wanted, found, strict=True)
    off = max((abs(a - b) for one, other in pairs for a, b in zip(one, other, strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (f"{where}: a {name} is {off * 1000:.1f} micrometres off",))
