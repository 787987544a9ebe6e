"""The leaves of a leaflet as they lie on their sheets: folded in the middle, or trimmed to a block and folded there."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point, Region, Shape, Text
from layout.plan import Plan
from templates_gen.messages.roles.proof_leaflet import Leaf
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_around, box_of
from templates_gen.verify.finding import Finding, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.picture import Ring, split_words

_GUTTER, _HALF, _FOLDED_HIGH, _MOST = 22.0, 82.0, 250.0, 3
_BLOCK, _MARK, _FROM_CORNER = (210.0, 297.0), 3.0, 1.0
_LARGE, _TALL_HEAD = (
    (234.0, 368.5),
    40.0,
)  # from so large a sheet on there is room, where its head is not so much higher
_WHOLE = 0.95
LINE = 10.0
"""How long a sample in the legend is, in mm."""


class OneLeaf(NamedTuple):
    """A leaf: its piece, its rings, the middle of its sheet or block, and whether it is folded upright and across.

    One that is trimmed has the `block` that is left.
    """

    seen: FoundPart
    rings: list[Ring]
    middle: Point
    upright: bool
    across: bool
    block: Box | None = None

    def panel(self, at: Point) -> tuple[int, int]:
        """The row and the column of a place, from the upper left."""
        row = int(self.across and at.y < self.middle.y)
        return row, int(self.upright and at.x > self.middle.x)


def leaf_of(plan: Plan, seen: FoundPart) -> OneLeaf:
    """What one leaf is, by the paper of the kit and the marks at its corners."""
    rings, _ = split_words(seen.shapes(), list(seen.words()))
    paper, marks = plan.kit.paper, _marks(seen)
    if marks:
        xs, ys = [x for path in marks for x, _ in path.points()], [y for path in marks for _, y in path.points()]
        past = _MARK + _FROM_CORNER
        block = min(xs) + past, min(ys) + past, max(xs) - past, max(ys) - past
        middle = Point((block[0] + block[2]) / 2, (block[1] + block[3]) / 2)
        return OneLeaf(seen, rings, middle, True, True, block)
    upright = paper.width / 2 - _GUTTER >= _HALF
    middle = seen.lie.back(Point(seen.sheet.width / 2, seen.sheet.height / 2))
    return OneLeaf(seen, rings, middle, upright, upright and paper.height >= _FOLDED_HIGH)


def _marks(seen: FoundPart) -> list[Curve]:
    return [path for path in seen.paths(Pen.HELP) if not path.closed and abs(sum(size_of(path)) - _MARK) <= LIMIT]


def wrong_folds(plan: Plan, leaf: OneLeaf) -> Iterator[Finding]:
    """A fold in the middle each way that the sheet is folded, nothing across it, three steps in a panel at most."""
    one, other, upper = leaf.seen.part.datum
    wide, high = other.x - one.x, upper.y - other.y
    folds = [path for path in leaf.seen.paths(Pen.FOLD) if max(size_of(path)) > 2 * LINE]
    up = [path.start.x for path in folds if size_of(path)[0] <= LIMIT and size_of(path)[1] > _WHOLE * high]
    across = [path.start.y for path in folds if size_of(path)[1] <= LIMIT and size_of(path)[0] > _WHOLE * wide]
    placed = all(abs(x - leaf.middle.x) <= LIMIT for x in up) and all(abs(y - leaf.middle.y) <= LIMIT for y in across)
    if not placed or (len(up), len(across), len(folds)) != (leaf.upright, leaf.across, leaf.upright + leaf.across):
        yield finding(Leaf.FOLDS)
    others = [shape for shape in leaf.seen.shapes() if shape not in folds and not isinstance(shape, Text)]
    if any(_meets(leaf, shape) for shape in others):
        yield finding(Leaf.ACROSS)
    if any(isinstance(shape, Text) and shape.angle for shape in leaf.seen.shapes()):
        yield finding(Leaf.UPRIGHT)
    if leaf.upright:
        most = max(Counter(leaf.panel(ring.at) for ring in leaf.rings).values(), default=0)
        if most > _MOST:
            yield finding(Leaf.FULL, found=most)
    if not _is_block(plan, leaf):
        yield finding(Leaf.BLOCK)


def _is_block(plan: Plan, leaf: OneLeaf) -> bool:
    """Whether larger paper, and no other, has the marks of four panels with all that is drawn between them."""
    wide, high = plan.kit.paper.width + LIMIT, plan.kit.paper.height + LIMIT
    if leaf.block is None:
        return wide < _LARGE[0] or high < _LARGE[1] + _TALL_HEAD
    left, low, right, top = leaf.block
    near, far = _FROM_CORNER, _FROM_CORNER + _MARK
    wanted = [(x, low - far, x, low - near) for x in (left, right)] + [
        (x, top + near, x, top + far) for x in (left, right)
    ]
    wanted += [(left - far, y, left - near, y) for y in (low, top)] + [
        (right + near, y, right + far, y) for y in (low, top)
    ]
    marks = _marks(leaf.seen)
    found = [
        (*map(min, zip(*path.points(), strict=True)), *map(max, zip(*path.points(), strict=True))) for path in marks
    ]
    at_corners = len(found) == len(wanted) and all(
        max(abs(a - b) for a, b in zip(one, other, strict=True)) <= LIMIT
        for one, other in zip(sorted(found), sorted(wanted), strict=True)
    )
    size = abs(right - left - _BLOCK[0]) <= LIMIT and abs(top - low - _BLOCK[1]) <= LIMIT
    rest = [
        at
        for shape in leaf.seen.shapes()
        if not isinstance(shape, Text) and shape not in marks
        for at in points_of(shape)
    ]
    within = all(left < at.x < right and low < at.y < top for at in rest)
    return at_corners and size and within and wide >= _LARGE[0] and high >= _LARGE[1]


def points_of(shape: Shape) -> list[Point]:
    """The points of a shape; of words where they begin."""
    if isinstance(shape, Text):
        return [shape.at]
    return [point for path in (shape.contours if isinstance(shape, Region) else (shape,)) for point in path.points()]


def size_of(path: Curve) -> tuple[float, float]:
    """How wide and how high a line is."""
    left, low, right, high = box_of(path)
    return right - left, high - low


def _meets(leaf: OneLeaf, shape: Shape) -> bool:
    left, low, right, high = box_around(points_of(shape))
    upright = leaf.upright and left < leaf.middle.x < right
    return upright or (leaf.across and low < leaf.middle.y < high)
