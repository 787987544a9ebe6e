"""The knots of a winding picture, and the section with shed stick and heading rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import dist

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Region, Shape
from layout.kit.kit import Kit
from layout.messages.catalogue import Catalogue
from layout.messages.roles import Shed
from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.picture import Picture, Ring, split_words

_AT_END = 0.25  # a knot lies at most this share of the frame's height within its end

_BESIDE = 0.1  # seen from the right, a knot on a rod lies at most this share of it from the rod's height

_USUAL_ROWS, _MOST_DOTS = 2, 3
_DOT = 0.76, 0.01  # the radius of a heading row in a section, in mm, and by how much it may differ


def wrong_knots(picture: Picture, ends_far: bool) -> Iterator[Finding]:
    """One knot where the first pass begins, one where the last leads to, and the tie-on seen from the right.

    Where the thread lies behind, it comes round the end to its knot.
    """
    first, last = picture.passes[0], picture.passes[-1]
    knots = sorted(picture.knots, key=lambda at: picture.toward * at.x)
    if len(knots) == 2 and knots[0].x == knots[1].x:  # two ends in one notch
        knots.sort(key=picture.is_far)
    off = (last.far_face, last.far, True) if ends_far else (last.face, last.near, False)
    wanted = ((first, first.face, first.near, False), (last, *off))
    right = len(knots) == 2 and all(
        picture.is_far(at) == far
        and abs(at.x - (one.at(at.y) if face else picture.toward * place)) <= LIMIT
        and _at_an_end(picture, at.y)
        for at, (one, face, place, far) in zip(knots, wanted, strict=True)
    )
    if not right:
        yield finding(Passes.KNOTS)
    if len(picture.side_knots) != 1 or not _tied_on_face(picture, picture.side_knots[0]):
        yield finding(Passes.SIDE_KNOT)


def _tied_on_face(picture: Picture, knot: Point) -> bool:
    """Whether a knot seen from the right lies at the near end, on the face: in line with the pass there, or, where the
    passes cross, further from the middle than they are between the ends.
    """
    face = min(picture.side_arrows, default=None)
    if face is None or picture.is_far(knot) or not _at_an_end(picture, knot.y):
        return False
    return knot.x < face.x if face.slope > LIMIT else abs(knot.x - face.x) <= LIMIT


def _at_an_end(picture: Picture, y: float) -> bool:
    high = abs(picture.far - picture.near)
    return min(abs(y - picture.near), abs(y - picture.far)) <= _AT_END * high


def wrong_rod_knots(picture: Picture) -> Iterator[Finding]:
    """Both knots on a rod between the frame ends, where the first and the last pass lie, and one behind the frame."""
    first, last = picture.passes[0], picture.passes[-1]
    found = sorted(picture.toward * at.x for at in picture.knots)
    heights = [at.y for at in picture.knots]
    placed = len(found) == 2 and abs(found[0] - first.near) <= LIMIT and abs(found[1] - last.near) <= LIMIT
    near_end = _AT_END * abs(picture.far - picture.near) - LIMIT
    between = all(min(abs(y - picture.near), abs(y - picture.far)) > near_end for y in heights)
    if not placed or abs(heights[0] - heights[1]) > LIMIT or not between:
        yield finding(Passes.ROD_KNOTS)
        return
    face, high = min(picture.side_arrows, default=None), abs(picture.far - picture.near)
    beside = [
        at for at in picture.side_knots if face and at.x > face.x + 1 and abs(at.y - heights[0]) <= _BESIDE * high
    ]
    if len(picture.side_knots) != 1 or len(beside) != 1:
        yield finding(Passes.SIDE_ROD_KNOT)


def shed_words(kit: Kit, words: Catalogue) -> list[str]:
    """Everything that stands with shed stick and heading rows, its title left out."""
    truth, said = truth_of(kit), words.say
    near, far = truth.faces(kit, 0)
    crosses = near != far
    ends = (Shed.FRONT_ENDS if crosses else Shed.FACE_ENDS) if truth.winds else Shed.SECOND_ENDS
    stick = (Shed.STICK_FRONT if crosses else Shed.STICK_FACE) if truth.winds else Shed.STICK_SECOND
    every = [said(role) for role in (Shed.NEAR_BAR, Shed.FAR_BAR, Shed.SIDE_PIECE, ends, stick)]
    if _hitched(kit):
        return [*every, said(Shed.HITCHED_ROD if truth.on_rod else Shed.HITCHED)]
    rows = _rows(kit)
    return [*every, *([said(Shed.ROWS_ROD if truth.on_rod else Shed.ROWS, rows=rows)] if rows else [])]


def _hitched(kit: Kit) -> bool:
    return isinstance(kit.amounts.room.heading, str)


def _rows(kit: Kit) -> int:
    asked = kit.amounts.room.heading_rows
    return _USUAL_ROWS if asked is None else asked


def wrong_shed(kit: Kit, seen: FoundPart, below: float, *, lettered: bool) -> Iterator[Finding]:
    """In the section under y = `below`: a dot for each row at each heading, and the stick by the far bar; where it is
    `lettered`, rings beside these.
    """
    shapes = [shape for shape in seen.shapes() if not isinstance(shape, Region) or shape.pen is Pen.SOLID]
    rings, _ = split_words(shapes, list(seen.words()))
    rings = [ring for ring in rings if ring.at.y < below]
    dots = [at for at in _dots(shapes) if at.y < below]
    headings = (1 if truth_of(kit).on_rod else 2) if _hitched(kit) or _rows(kit) else 0
    wanted = headings * (1 if _hitched(kit) else min(_rows(kit), _MOST_DOTS))
    if len(dots) != wanted:
        yield finding(Passes.SHED_DOTS, found=len(dots), wanted=wanted)
    sticks = [shape for shape in shapes if isinstance(shape, Curve) and _is_stick(shape)]
    places = [(_middle_of(stick), max(point.y for point in stick.points())) for stick in sticks]
    if len(places) != 1 or (dots and min(dots, key=lambda at: abs(at.x - places[0][0])).x < places[0][0]):
        yield finding(Passes.SHED_STICK)
    elif lettered:
        yield from _wrong_letters(rings, dots, places[0], headings)


def _wrong_letters(
    rings: Sequence[Ring], dots: Sequence[Point], stick: tuple[float, float], headings: int
) -> Iterator[Finding]:
    """One ring a over the stick, one ring b under each heading, and both in the list."""
    for letter, count in (("a", 2), ("b", headings + 1 if headings else 0)):
        found = sum(1 for ring in rings if ring.words == letter)
        if found != count:
            yield finding(Passes.SHED_RINGS, words=letter, found=found, wanted=count)
            return
    x, top = stick
    if not any(ring.words == "a" and abs(ring.at.x - x) <= LIMIT and ring.at.y > top for ring in rings):
        yield finding(Passes.SHED_STICK)
    under = [min(abs(ring.at.x - at.x) for ring in rings if ring.words == "b") for at in dots]
    if any(off > _MOST_DOTS for off in under):
        yield finding(Passes.SHED_RINGS, words="b", found=0, wanted=headings)


def _middle_of(path: Curve) -> float:
    xs = [point.x for point in path.points()]
    return (min(xs) + max(xs)) / 2


def _dots(shapes: Sequence[Shape]) -> Iterator[Point]:
    radius, apart = _DOT
    for shape in shapes:
        if isinstance(shape, Region) and len(shape.contours[0].steps) == 8:
            points = shape.contours[0].points()[:-1]
            middle = Point(sum(p.x for p in points) / len(points), sum(p.y for p in points) / len(points))
            if abs(dist(points[0], middle) - radius) < apart:
                yield middle


_STICK = 1.6, 2.0, 5.0  # how wide it is at least and at most, and how high at least, in mm


def _is_stick(path: Curve) -> bool:
    if path.pen is not Pen.OUTLINE or not path.closed or len(path.steps) != 3:
        return False
    xs, ys = [at.x for at in path.points()], [at.y for at in path.points()]
    least, most, high = _STICK
    return least < max(xs) - min(xs) < most and max(ys) - min(ys) > high
