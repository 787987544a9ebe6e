"""A drawing larger than the paper, cut both ways: positions stay where they were, joints show the same crosses twice.

Every piece goes on past its joints. Its left and lower edges, where there is a neighbour, are trimmed and laid over
that neighbour, so that the last piece laid hides nothing that the others do not show.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, product

from layout.drawing.pane import Pane, Paned
from layout.drawing.shapes import Placing, Point
from layout.drawing.sheet import Part, Piece
from layout.kit.kit import Paper
from layout.messages.english import ENGLISH
from layout.messages.roles import Grid, Sheet, SheetNeed
from layout.paper.choice import Furnish, Laying
from layout.paper.laying import straight
from layout.values.errors import FieldError

OVERLAP = 8.0
"""Each piece goes on about this far past its joints, in mm."""

Span = tuple[float, float]
Cuts = tuple[list[float], list[float]]
"""The x and the y at which a drawing is cut, its outer edges included."""

MOST_SHEETS = 120
"""A drawing is not cut into more sheets than this."""

_PARTS = (0.1, 0.45, 0.95)  # of a joint, where its crosses stand: unlike, so that a turned piece never meets
_INSET, _SHORT, _BESIDE = 5.0, 20.0, 3.0


def lay_in_panes(paned: Paned, paper: Paper, furnish: Furnish) -> Laying:
    """How the drawing lies on `paper`: whole if it can, straight or standing, else in the fewest equal pieces.

    FieldError where it would need more than MOST_SHEETS.
    """
    whole = paned.draw(paned.whole)
    if placing := straight(whole, furnish(whole)):
        return Laying("straight", whole, ((Piece(whole, placing),),), whole.notes[1:])
    said = replace(whole, notes=(*whole.notes, _how_to_join(whole, MOST_SHEETS, MOST_SHEETS)))
    area = furnish(said)
    too_large: list[tuple[float, float]] = []
    for across, up in _counts():
        cuts = _cuts(paned, across, up)
        spans = _spans(paned, cuts)
        size = _largest(spans[0]), _largest(spans[1])
        if any(size[0] >= width and size[1] >= height for width, height in too_large):
            continue
        if placing := straight(_frame(whole, paned.whole, *size), area):
            return _in_pieces(paned, whole, cuts, placing)
        too_large.append(size)
    raise _refusal(whole, paper)


def _counts() -> list[tuple[int, int]]:
    """Every number of pieces across and up, the fewest sheets first."""
    numbers = range(1, MOST_SHEETS + 1)
    counts = [(across, up) for across in numbers for up in numbers if 1 < across * up <= MOST_SHEETS]
    return sorted(counts, key=lambda count: (count[0] * count[1], sum(count)))


def _in_pieces(paned: Paned, whole: Part, cuts: Cuts, placing: Placing) -> Laying:
    """The drawing in pieces, each with its lower left corner where `placing` lays that of a frame at (0, 0)."""
    notes = (*whole.notes, _how_to_join(whole, len(cuts[0]) - 1, len(cuts[1]) - 1))
    drawn = [replace(paned.draw(pane), notes=notes) for pane in _panes(paned, cuts)]
    sheets = tuple((Piece(part, _moved(placing, part)),) for part in drawn)
    return Laying("tiles", replace(whole, notes=notes), sheets, notes[1:])


def _cuts(paned: Paned, across: int, up: int) -> Cuts:
    """The edges of so many columns and rows of pieces, joints where crosses stand clear of the lines."""
    whole = paned.whole
    middle = Point((whole.left + whole.right) / 2, (whole.bottom + whole.top) / 2)
    xs = [paned.snap(Point(whole.left + whole.width * k / across, middle.y)).x for k in range(1, across)]
    ys = [paned.snap(Point(middle.x, whole.bottom + whole.height * k / up)).y for k in range(1, up)]
    return [whole.left, *xs, whole.right], [whole.bottom, *ys, whole.top]


def _spans(paned: Paned, cuts: Cuts) -> tuple[list[Span], list[Span]]:
    """From where to where each column and each row of pieces goes: past its joints, not past the limits."""
    xs, ys = cuts
    middle = Point((xs[0] + xs[-1]) / 2, (ys[0] + ys[-1]) / 2)
    return (
        list(_overlapped(xs, lambda x: paned.clear(Point(x, middle.y)).x)),
        list(_overlapped(ys, lambda y: paned.clear(Point(middle.x, y)).y)),
    )


def _overlapped(edges: Sequence[float], clear: Callable[[float], float]) -> Iterator[Span]:
    last = len(edges) - 2
    for k, (low, high) in enumerate(pairwise(edges)):
        yield clear(low - OVERLAP) if k else low, clear(high + OVERLAP) if k < last else high


def _largest(spans: Sequence[Span]) -> float:
    return max(high - low for low, high in spans)


def _panes(paned: Paned, cuts: Cuts) -> Iterator[Pane]:
    """The pieces from the lower left on, row by row."""
    across, up = _spans(paned, cuts)
    total = len(across) * len(up)
    for number, (row, column) in enumerate(product(range(len(up)), range(len(across))), 1):
        (left, right), (low, high) = across[column], up[row]
        trimmed = tuple(name for name, cut in (("left", column), ("bottom", row)) if cut)
        crosses = dict.fromkeys(map(paned.snap, _crosses(cuts, column, row)))
        yield Pane(
            left, low, right, high, trimmed, tuple(crosses), ENGLISH.say(Sheet.PIECE, number=number, total=total)
        )


def _crosses(cuts: Cuts, column: int, row: int) -> Iterator[Point]:
    """Where the crosses of a piece should stand: along each of its joints, the same as on the neighbour's side."""
    xs, ys = cuts
    for k in (column, column + 1):
        if 0 < k < len(xs) - 1:
            yield from (Point(xs[k] + off, y) for y, off in _along(ys[row], ys[row + 1]))
    for k in (row, row + 1):
        if 0 < k < len(ys) - 1:
            yield from (Point(x, ys[k] + off) for x, off in _along(xs[column], xs[column + 1]))


def _along(low: float, high: float) -> list[tuple[float, float]]:
    """Where crosses stand along a joint from `low` to `high`, and how far off it: a short one has room for two only."""
    start, run = low + _INSET, high - low - 2 * _INSET
    if run < _SHORT:
        return [((low + high) / 2, -_BESIDE), ((low + high) / 2, _BESIDE)]
    return [(start + run * part, 0.0) for part in _PARTS]


def _frame(whole: Part, pane: Pane, width: float, height: float) -> Part:
    """An empty part as large as a piece that shows `width` x `height` mm, its lower left corner at (0, 0)."""
    left, bottom, right, top = whole.box
    across, up = right - left - pane.width, top - bottom - pane.height
    return replace(whole, shapes=(), datum=(), box=(0.0, 0.0, width + across, height + up))


def _moved(placing: Placing, part: Part) -> Placing:
    """`placing` of the frame, moved so that the lower left corner of `part` lies where the frame's does."""
    corner = replace(placing, dx=0.0, dy=0.0).points([Point(part.box[0], part.box[1])])[0]
    return replace(placing, dx=placing.dx - corner.x, dy=placing.dy - corner.y)


def _how_to_join(whole: Part, across: int, up: int) -> str:
    xs, ys = [point.x for point in whole.datum], [point.y for point in whole.datum]
    wide, high = f"{max(xs) - min(xs):.1f}", f"{max(ys) - min(ys):.1f}"
    role = Grid.JOIN_BOTH if min(across, up) > 1 else Grid.JOIN_LEFT if across > 1 else Grid.JOIN_BELOW
    return ENGLISH.say(role, count=across * up, across=across, up=up, wide=wide, high=high)


def _refusal(whole: Part, paper: Paper) -> FieldError:
    part = {"part": whole.title.lower(), "length": f"{whole.length:.0f}", "height": f"{whole.height:.0f}"}
    on = {"width": f"{paper.width:.0f}", "up": f"{paper.height:.0f}"}
    got = ENGLISH.say(SheetNeed.GOT_DRAWING, **part, **on)
    return FieldError("paper.size", SheetNeed.EACH, got, 'size = "600 x 3000 mm"', most=MOST_SHEETS)
