"""The weaving grid, as its pieces show it, checked against the kit's numbers alone.

Computed from the limits, the sett and the picks: as many columns as ends and as many rows as beads, all alike; nothing
here calls the layout's grid.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise, product

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region
from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Cells
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.grid_axes import Axis, Span, axes_of
from templates_gen.verify.printed.grid_words import check_grid_words

_LINES = (Pen.HELP, Pen.MARK, Pen.EDGE)
_REACH = {0: 3.5, 1: 1.5}  # a number begins at most so far before its line: half its width, half its height


@dataclass(slots=True)
class _Shown:
    """What one piece shows: lines (place, from, to, pen) along both axes, shaded rectangles, and numbers."""

    lines: tuple[list[tuple[float, float, float, Pen]], ...] = field(default_factory=lambda: ([], []))
    shaded: list[tuple[Span, Span]] = field(default_factory=list)
    numbers: list[tuple[Point, str]] = field(default_factory=list)
    lean: float = 0.0

    def window(self) -> tuple[Span, Span]:
        """What the piece shows of the grid: as wide as its level lines, as high as its upright ones."""
        upright, level = self.lines
        (_, left, right, _), (_, low, high, _) = level[0], upright[0]
        return (left, right), (low, high)


def prove_grid(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of a grid against the kit, and all of them together; numbers are read `on_paper`."""
    axes = axes_of(plan)
    total = NOTHING
    windows: list[tuple[Span, Span]] = []
    numbered: tuple[set[int], set[int]] = (set(), set())
    for seen in pieces:
        shown = _look(seen)
        if not all(shown.lines):
            return Findings(0.0, (finding(Cells.NO_LINES).at(seen.where),))
        window = shown.window()
        windows.append(window)
        found = _lines(axes, shown, window) + _shading(axes, shown, window)
        for axis in (0, 1) if on_paper else ():
            found += _numbers(axes[axis], axis, shown, window, numbered[axis])
        total += found.at(seen.where)
    total += _uncovered(axes, windows)
    return total + _unnumbered(axes, numbered) + check_grid_words(plan, axes, windows, pieces) if on_paper else total


def _look(seen: FoundPart) -> _Shown:
    shown = _Shown()
    for start, ((end, _),), pen, _ in seen.lines():
        if pen in _LINES:
            axis = 0 if abs(start.x - end.x) < abs(start.y - end.y) else 1
            shown.lean = max(shown.lean, abs(start[axis] - end[axis]))
            low, high = sorted((start[1 - axis], end[1 - axis]))
            shown.lines[axis].append(((start[axis] + end[axis]) / 2, low, high, pen))
    for shape in seen.shapes():
        if isinstance(shape, Region) and shape.pen is Pen.TINT:
            xs, ys = zip(*(point for path in shape.contours for point in path.points()), strict=True)
            shown.shaded.append(((min(xs), max(xs)), (min(ys), max(ys))))
    shown.numbers = [(at, words) for at, words in seen.words() if words.isdigit()]
    return shown


def _lines(axes: tuple[Axis, Axis], shown: _Shown, window: tuple[Span, Span]) -> Findings:
    """Count, pens, places and reach of the lines of a piece."""
    total = Findings(shown.lean, () if shown.lean <= LIMIT else (finding(Cells.STRAIGHT),))
    for k, axis in enumerate(axes):
        wanted, found = axis.lines(window[k]), sorted(shown.lines[k])
        if len(wanted) != len(found):
            total += Findings(0.0, (finding(Cells.COUNT, found=len(found), axis=axis.counts, wanted=len(wanted)),))
            continue
        for (at, pen), (there, low, high, other) in zip(wanted, found, strict=True):
            off = max(abs(at - there), abs(low - window[1 - k][0]), abs(high - window[1 - k][1]))
            wrong = [finding(Cells.OFF, axis=axis.counts, micrometres=off * 1000)] if off > LIMIT else []
            wrong += [finding(Cells.PEN, found=other.value, axis=axis.counts, wanted=pen.value)] if pen != other else []
            total += Findings(off, tuple(wrong))
    return total


def _shading(axes: tuple[Axis, Axis], shown: _Shown, window: tuple[Span, Span]) -> Findings:
    """Every second block of ten by ten, as on a chessboard, the lower left one of the whole grid left white."""
    across, up = (list(axis.blocks(span)) for axis, span in zip(axes, window, strict=True))
    wanted = {(i, j): (*wide, *high) for (i, wide), (j, high) in product(across, up) if (i + j) % 2}
    found = {(axes[0].block(wide), axes[1].block(high)): (*wide, *high) for wide, high in shown.shaded}
    if wanted.keys() != found.keys() or len(found) != len(shown.shaded):
        return Findings(0.0, (finding(Cells.BLOCKS, found=len(shown.shaded), wanted=len(wanted)),))
    off = max((abs(a - b) for key, one in wanted.items() for a, b in zip(one, found[key], strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (finding(Cells.SHADING, micrometres=off * 1000),))


def _numbers(axis: Axis, k: int, shown: _Shown, window: tuple[Span, Span], numbered: set[int]) -> Findings:
    """Every number below the piece (or to its left) must be that of its tenth line; `numbered` gains them."""
    wrong = []
    for at, words in shown.numbers:
        if at[1 - k] >= window[1 - k][0] or at[k] < window[k][0] - _REACH[k]:
            continue
        behind = [n for n in range(10, axis.count + 1, 10) if 0 <= axis.at(n) - at[k] <= _REACH[k]]
        if behind == [int(words)]:
            numbered.add(int(words))
        else:
            role = Cells.NUMBER if behind else Cells.NO_NUMBER_HERE
            wrong.append(finding(role, axis=axis.counts, found=words, **({"wanted": behind[0]} if behind else {})))
    return Findings(0.0, tuple(wrong))


def _uncovered(axes: tuple[Axis, Axis], windows: Sequence[tuple[Span, Span]]) -> Findings:
    """Whether all pieces together show the whole grid."""
    cuts = []
    for k, axis in enumerate(axes):
        edges = {axis.at(0), axis.at(axis.count)} | {edge for window in windows for edge in window[k]}
        cuts.append(sorted(edge for edge in edges if axis.at(0) <= edge <= axis.at(axis.count)))
    middles = [[(one + other) / 2 for one, other in pairwise(edges) if other - one > LIMIT] for edges in cuts]
    bare = [
        (x, y)
        for x, y in product(*middles)
        if not any(left <= x <= right and low <= y <= high for (left, right), (low, high) in windows)
    ]
    return Findings(0.0, (finding(Cells.LEFT_OUT),) if bare else ())


def _unnumbered(axes: tuple[Axis, Axis], numbered: tuple[set[int], set[int]]) -> Findings:
    missing = [
        finding(Cells.NO_NUMBER, line=n, axis=axis.counts)
        for axis, there in zip(axes, numbered, strict=True)
        for n in range(10, axis.count + 1, 10)
        if n not in there
    ]
    return Findings(0.0, tuple(missing))
