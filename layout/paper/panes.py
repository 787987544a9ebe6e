"""A drawing larger than the paper, cut both ways: positions stay where they were, joints show the same crosses twice.

Every piece goes on past its joints. Its left and lower edges, where there is a neighbour, are trimmed and laid over
that neighbour, which is grey there, so that the last piece laid hides nothing that the others do not show. The first
sheet says what is to be done; where it has no room for that, a sheet of words comes before it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, product
from typing import NamedTuple

from layout.drawing.pane import OnSheet, Pane, Paned
from layout.drawing.shapes import Placing, Point
from layout.drawing.sheet import Part, Piece
from layout.kit.kit import Paper
from layout.messages.catalogue import Figure, Message
from layout.messages.roles import SheetNeed
from layout.paper.choice import Furnish, Laying
from layout.paper.laying import lying, standing
from layout.values.errors import FieldError

OVERLAP = 3.0
"""Each piece goes on about this far past its joints, in mm."""

Span = tuple[float, float]
Cuts = tuple[list[float], list[float]]
"""The x and the y at which a drawing is cut, its outer edges included."""

MOST_SHEETS = 120
"""A drawing is not cut into more sheets than this."""

_PARTS = (0.1, 0.45, 0.95)  # of a joint, where its crosses stand: unlike, so that a turned piece never meets
_FEW = (0.25, 0.8)  # the same of a short one
_INSET, _SHORT = 5.0, 20.0
_LEAST, _CLOSER = 2.6, 0.25  # from a joint to an edge of a piece at least, and in what steps it is looked for
_LOWER = (
    1.0,
    0.92,
    0.84,
    0.76,
    0.68,
    0.6,
)  # how high the lowest row is, in rows, where words stand over its first piece
_FROM_MIDDLE, _STEP, _TRIES = OVERLAP + 1.0, 1.0, 24


class _Try(NamedTuple):
    """So many pieces, the lowest row so high in rows; `bare` where a sheet of words comes before them."""

    across: int
    up: int
    lower: float
    turned: bool
    bare: bool

    def on(self, number: int) -> OnSheet:
        """How a piece stands on its sheet."""
        return OnSheet(number, self.across, self.up, self.turned, says=not self.bare and number == 1)


def lay_in_panes(paned: Paned, paper: Paper, furnish: Furnish) -> Laying:
    """How the drawing lies on `paper`: whole if it can, straight or standing, else in the fewest pieces.

    FieldError where it would need more than MOST_SHEETS.
    """
    base = paned.draw(paned.whole, None)
    too_large: dict[tuple[bool, bool], list[Span]] = {}
    for tried in _tries():
        if laying := _laid(paned, base, tried, furnish, too_large.setdefault((tried.turned, tried.bare), [])):
            return laying
    raise _refusal(base, paper)


def _tries() -> Iterator[_Try]:
    """Everything that can be tried, the fewest sheets first, what is said on the first sheet before what is not."""
    for sheets in range(1, MOST_SHEETS + 2):
        for bare in (False, True):
            pieces = sheets - bare
            counts = [(across, pieces // across) for across in range(1, pieces + 1) if pieces % across == 0]
            for across, up in sorted(counts, key=sum) if pieces <= MOST_SHEETS else ():
                lowers = _LOWER if up > 1 and not bare else (1.0,)
                yield from (_Try(across, up, lower, turned, bare) for turned in (False, True) for lower in lowers)


def _laid(paned: Paned, base: Part, tried: _Try, furnish: Furnish, too_large: list[Span]) -> Laying | None:
    """The drawing in pieces, each as high up on its sheet as it can lie; None where one does not fit.

    No piece that is not the first can be larger than those that are known to be `too_large`.
    """
    sides = paned.whole.width / tried.across, paned.whole.height / (tried.up - 1 + tried.lower)
    free = furnish(base, bare=True)
    if sides[tried.turned] > free.width or sides[not tried.turned] > free.height:
        return None  # nearly always
    panes = list(_panes(paned, _cuts(paned, tried)))
    largest = max(pane.width for pane in panes[-1:] + panes[:1]), max(pane.height for pane in panes[-tried.across :])
    if any(largest[0] >= width and largest[1] >= height for width, height in too_large):
        return None
    place = standing if tried.turned else lying
    placings: list[Placing] = []
    for number in (len(panes), *range(1, len(panes))):  # the last one first: it is as large as any but the first row
        on = tried.on(number)
        frame = replace(base, shapes=(), datum=(), box=paned.box(panes[number - 1], on))
        frame = paned.words(frame, on) if number == 1 and not tried.bare else frame
        placing = place(frame, furnish(frame, bare=tried.bare))
        if placing is None:
            if not on.says:
                too_large.append((panes[number - 1].width, panes[number - 1].height))
            return None
        placings.append(placing)
    placings = [*placings[1:], placings[0]]
    drawn = [paned.draw(pane, tried.on(number)) for number, pane in enumerate(panes, 1)]
    sheets = tuple((Piece(part, placing),) for part, placing in zip(drawn, placings, strict=True))
    first = paned.words(base, tried.on(1))
    way = "tiles" if len(panes) > 1 else "straight"
    return Laying(way, first, sheets, (), tried.bare, once=True)


def _cuts(paned: Paned, tried: _Try) -> Cuts:
    """The edges of all columns and rows of pieces, joints where crosses stand clear of the lines and of the middle."""
    whole, middle = paned.whole, paned.middle
    row = whole.height / (tried.up - 1 + tried.lower)
    xs = [
        _joint(whole.left + whole.width * k / tried.across, middle.x, lambda x: paned.snap(Point(x, middle.y)).x)
        for k in range(1, tried.across)
    ]
    ys = [
        _joint(whole.bottom + row * (k - 1 + tried.lower), middle.y, lambda y: paned.snap(Point(middle.x, y)).y)
        for k in range(1, tried.up)
    ]
    return [whole.left, *xs, whole.right], [whole.bottom, *ys, whole.top]


def _joint(at: float, middle: float, snap: Callable[[float], float]) -> float:
    """The place for a joint that is nearest to `at` and keeps off the `middle`."""
    for k in range(_TRIES):
        for place in (snap(at - k * _STEP), snap(at + k * _STEP)):
            if abs(place - middle) >= _FROM_MIDDLE:
                return place
    return snap(at)


def _spans(paned: Paned, cuts: Cuts) -> tuple[list[Span], list[Span]]:
    """From where to where each column and each row of pieces goes: past its joints, not past the limits."""
    xs, ys = cuts
    middle = paned.middle
    return (
        list(_overlapped(xs, lambda x: paned.clear(Point(x, middle.y)).x)),
        list(_overlapped(ys, lambda y: paned.clear(Point(middle.x, y)).y)),
    )


def _overlapped(edges: Sequence[float], clear: Callable[[float], float]) -> Iterator[Span]:
    last = len(edges) - 2
    for k, (low, high) in enumerate(pairwise(edges)):
        yield _past(low, -1, clear) if k else low, _past(high, 1, clear) if k < last else high


def _past(joint: float, way: int, clear: Callable[[float], float]) -> float:
    """An edge that lies clear of all lines, and beyond the crosses of the joint."""
    edges = (clear(joint + way * (OVERLAP + k * _CLOSER)) for k in range(_TRIES))
    return next(edge for edge in edges if way * (edge - joint) >= _LEAST)


def _panes(paned: Paned, cuts: Cuts) -> Iterator[Pane]:
    """The pieces from the lower left on, row by row."""
    across, up = _spans(paned, cuts)
    for row, column in product(range(len(up)), range(len(across))):
        (left, right), (low, high) = across[column], up[row]
        trimmed = tuple(name for name, cut in (("left", column), ("bottom", row)) if cut)
        crosses = dict.fromkeys(map(paned.snap, _crosses(cuts, column, row)))
        under_right = across[column + 1][0] if column + 1 < len(across) else None
        under_top = up[row + 1][0] if row + 1 < len(up) else None
        yield Pane(left, low, right, high, trimmed, tuple(crosses), under_right, under_top)


def _crosses(cuts: Cuts, column: int, row: int) -> Iterator[Point]:
    """Where the crosses of a piece should stand: along each of its joints, the same as on the neighbour's side."""
    xs, ys = cuts
    for k in (column, column + 1):
        if 0 < k < len(xs) - 1:
            yield from (Point(xs[k], y) for y in _along(ys[row], ys[row + 1]))
    for k in (row, row + 1):
        if 0 < k < len(ys) - 1:
            yield from (Point(x, ys[k]) for x in _along(xs[column], xs[column + 1]))


def _along(low: float, high: float) -> list[float]:
    """Where crosses stand along a joint from `low` to `high`: a short one has room for two only."""
    start, run = low + _INSET, high - low - 2 * _INSET
    if run < _SHORT:
        return [low + (high - low) * part for part in _FEW]
    return [start + run * part for part in _PARTS]


def _refusal(whole: Part, paper: Paper) -> FieldError:
    sides = {"length": whole.length, "height": whole.height, "width": paper.width, "up": paper.height}
    size = {name: Figure(f"{mm:.0f}") for name, mm in sides.items()}
    got = Message(SheetNeed.GOT_DRAWING, {"part": whole.title, **size})
    return FieldError("paper.size", SheetNeed.EACH, got, 'size = "600 x 3000 mm"', most=MOST_SHEETS)
