"""The two heading rows and the knots of a winding picture."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.shapes import Point
from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.printed.picture import DrawnPass, Picture

_AT_END = 0.2  # a knot lies at most this share of the frame's height within its end

_BESIDE = 0.1  # seen from the right, a knot on a rod lies at most this share of it from the rod's height


def wrong_rows(picture: Picture, *, wound: bool) -> Iterator[Finding]:
    """Two rows beside the near end, each over and under the ends by turns, and against each other.

    Round a frame the first row takes up what lies on the face and runs over what lies behind.
    """
    drawn = sorted((y for y, _, _ in picture.rows), key=lambda y: abs(y - picture.near))
    heights = [y for k, y in enumerate(drawn) if k == 0 or abs(y - drawn[k - 1]) > LIMIT]
    if len(heights) != 2 or any(abs(y - picture.near) > abs(y - picture.far) for y in heights):
        yield finding(Passes.ROWS, rows=len(heights))
        return
    for number, y in enumerate(heights):
        hidden = [not _covered(picture, one, y) for one in picture.passes]
        first = picture.passes[0].face if wound else True
        asked = [(first != (k % 2 == 1)) == (number == 0) for k in range(len(hidden))]
        if hidden != asked:
            yield finding(Passes.ROW, number=number + 1)


def _covered(picture: Picture, one: DrawnPass, y: float) -> bool:
    """Whether a row at `y` is seen where it crosses a pass."""
    share = (y - picture.near) / (picture.far - picture.near)
    x = picture.toward * (one.near + share * one.lean)
    return any(abs(height - y) <= 2 * LIMIT and low <= x <= high for height, low, high in picture.rows)


def wrong_knots(picture: Picture, ends_far: bool) -> Iterator[Finding]:
    """One knot where the first pass begins, one where the last leads to, and the tie-on seen from the right."""
    first, last = picture.passes[0], picture.passes[-1]
    wanted = [(first.near, False), (last.far if ends_far else last.near, ends_far)]
    found = [(picture.toward * at.x, picture.is_far(at)) for at in picture.knots]
    met = [[far == there and abs(x - place) <= LIMIT for x, far in found] for place, there in wanted]
    each = all(map(any, met)) and all(map(any, zip(*met, strict=True)))
    if len(found) != len(wanted) or not each or not all(_at_an_end(picture, at.y) for at in picture.knots):
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
    if not placed or abs(heights[0] - heights[1]) > LIMIT or any(_at_an_end(picture, y) for y in heights):
        yield finding(Passes.ROD_KNOTS)
        return
    face, high = min(picture.side_arrows, default=None), abs(picture.far - picture.near)
    beside = [
        at for at in picture.side_knots if face and at.x > face.x + 1 and abs(at.y - heights[0]) <= _BESIDE * high
    ]
    if len(picture.side_knots) != 1 or len(beside) != 1:
        yield finding(Passes.SIDE_ROD_KNOT)
