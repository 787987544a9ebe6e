"""The weaving grid, as its pieces show it, checked against the kit's numbers alone.

Computed from the limits, the sett and the picks: as many columns as ends and as many rows as beads, all alike; nothing
here calls the layout's grid.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise, product

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region
from layout.plan import Plan
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_printed import Cells
from templates_gen.verify import LIMIT
from templates_gen.verify.boxes import box_around
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.grid_axes import Axis, Span, axes_of
from templates_gen.verify.printed.grid_words import check_grid_words

_LINES = (Pen.GRID, Pen.GRID_TEN, Pen.LIMIT, Pen.CENTRE)
_BESIDE, _AT_LINE = 8.0, 0.5  # a number begins so near to its piece, and its middle lies so near to its line, in mm
_SMALL_PIECE = 40.0  # pieces less long than this in mm may be joined anywhere
_SMALL, _CAP = 7.5 * 25.4 / 72, 0.714  # the size of the letters, and the height of figures in ems


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
        return _usual(level), _usual(upright)


def prove_grid(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of a grid against the kit, and all of them together; numbers are read `on_paper`."""
    axes = axes_of(plan)
    total = NOTHING
    windows: list[tuple[Span, Span]] = []
    numbered: tuple[set[int], set[int]] = (set(), set())
    tints: list[list[tuple[Span, Span]]] = []
    for seen in pieces:
        shown = _look(seen)
        if not all(shown.lines):
            return Findings(0.0, (finding(Cells.NO_LINES).at(seen.where),))
        window = shown.window()
        windows.append(window)
        tints.append(shown.shaded)
        found = _lines(axes, shown, window)
        for axis in (0, 1) if on_paper else ():
            found += _numbers(axes[axis], axis, shown, window, numbered[axis])
        total += found.at(seen.where)
    total += _uncovered(axes, windows)
    for seen, window, shaded in zip(pieces, windows, tints, strict=True):
        over = [other for other in windows if lies_over(other, window)]
        total += (_shading(window, over, shaded) + _trims(seen, window, windows)).at(seen.where)
        total += _off_centre(axes, window, over).at(seen.where)
    return total + _unnumbered(axes, numbered) + check_grid_words(plan, axes, windows, pieces) if on_paper else total


def _look(seen: FoundPart) -> _Shown:
    shown = _Shown()
    for start, ((end, _),), pen, _ in seen.lines():
        if pen in _LINES:
            axis = 0 if abs(start.x - end.x) < abs(start.y - end.y) else 1
            shown.lean = max(shown.lean, abs(start[axis] - end[axis]))
            low, high = sorted((start[1 - axis], end[1 - axis]))
            shown.lines[axis].append(((start[axis] + end[axis]) / 2, low, high, pen))
    for lines in shown.lines:
        low, high = _usual(lines) if lines else (0.0, 0.0)
        lines[:] = [one for one in lines if one[1] < high and one[2] > low]  # the legend shows lines beside the piece
    for shape in seen.shapes():
        if isinstance(shape, Region) and shape.pen is Pen.TINT:
            left, low, right, high = box_around(point for path in shape.contours for point in path.points())
            shown.shaded.append(((left, right), (low, high)))
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


def _usual(lines: Sequence[tuple[float, float, float, Pen]]) -> Span:
    """From where to where most of the lines reach."""
    spans = Counter((round(low, 2), round(high, 2)) for _, low, high, _ in lines)
    most, _ = spans.most_common(1)[0]
    return next((low, high) for _, low, high, _ in lines if (round(low, 2), round(high, 2)) == most)


def lies_over(one: tuple[Span, Span], other: tuple[Span, Span]) -> bool:
    """Whether a piece is laid over another: it begins further to the right or further up, and they share a strip."""
    if one == other or any(a[1] <= b[0] or b[1] <= a[0] for a, b in zip(one, other, strict=True)):
        return False
    return one[0][0] > other[0][0] + LIMIT or one[1][0] > other[1][0] + LIMIT


def _shading(
    window: tuple[Span, Span], over: Sequence[tuple[Span, Span]], shaded: Sequence[tuple[Span, Span]]
) -> Findings:
    """A piece is grey where others are laid over it, and nowhere else."""
    found = [each for each in shaded if each[0][0] < window[0][1] and each[1][1] > window[1][0]]
    cuts = [sorted({edge for area in (window, *over, *found) for edge in area[k]}) for k in (0, 1)]
    for (left, right), (low, high) in product(pairwise(cuts[0]), pairwise(cuts[1])):
        at = (left + right) / 2, (low + high) / 2
        if min(right - left, high - low) <= LIMIT or not (
            _holds(window, at) or any(_holds(each, at) for each in found)
        ):
            continue
        if (_holds(window, at) and any(_holds(each, at) for each in over)) != any(_holds(each, at) for each in found):
            return Findings(0.0, (finding(Cells.SHADING),))
    return NOTHING


def _holds(area: tuple[Span, Span], at: tuple[float, float]) -> bool:
    return all(low < place < high for (low, high), place in zip(area, at, strict=True))


def _trims(seen: FoundPart, window: tuple[Span, Span], windows: Sequence[tuple[Span, Span]]) -> Findings:
    """A piece is cut along its left and its lower edge where it lies over another, and nowhere else."""
    wanted = [any(other[k][0] < window[k][0] - LIMIT for other in windows) for k in (0, 1)]
    found = [False, False]
    for start, ((end, _),), pen, _ in seen.lines():
        if pen is Pen.CUT:
            k = 0 if abs(start.x - end.x) < abs(start.y - end.y) else 1
            low, high = sorted((start[1 - k], end[1 - k]))
            along = low <= window[1 - k][0] + LIMIT and abs(high - window[1 - k][1]) <= LIMIT
            if max(abs(start[k] - window[k][0]), abs(end[k] - window[k][0])) <= LIMIT and along:
                found[k] = True
            elif _holds(window, ((start.x + end.x) / 2, (start.y + end.y) / 2)):
                return Findings(0.0, (finding(Cells.CUT),))
    return Findings(0.0, () if found == wanted else (finding(Cells.CUT),))


def _off_centre(axes: tuple[Axis, Axis], window: tuple[Span, Span], over: Sequence[tuple[Span, Span]]) -> Findings:
    """No centre line lies in a strip where pieces are joined, if the pieces are large enough to keep off it."""
    for k, axis in enumerate(axes):
        centre = axis.at(axis.count / 2)
        strips = [(other[k][0], window[k][1]) for other in over if other[k][0] > window[k][0] + LIMIT]
        small = window[k][1] - window[k][0] < _SMALL_PIECE
        if not small and any(low <= centre <= high for low, high in strips):
            return Findings(0.0, (finding(Cells.JOINT, axis=axis.counts),))
    return NOTHING


def _numbers(axis: Axis, k: int, shown: _Shown, window: tuple[Span, Span], numbered: set[int]) -> Findings:
    """Every number below the piece (or to its left) must be that of its tenth line; `numbered` gains them.

    On a turned piece words are upright, and so lie across the lines.
    """
    wrong = []
    for at, words in shown.numbers:
        if not 0 < window[1 - k][0] - at[1 - k] < _BESIDE or not _near(at, words, k, window[k], 0.1):
            continue  # one of the other axis may stand at the corner
        there = [n for n in range(10, axis.count + 1, 10) if _near(at, words, k, (axis.at(n), axis.at(n)))]
        if there == [int(words)]:
            numbered.add(int(words))
        else:
            role = Cells.NUMBER if there else Cells.NO_NUMBER_HERE
            wrong.append(finding(role, axis=axis.counts, found=words, **({"wanted": there[0]} if there else {})))
    return Findings(0.0, tuple(wrong))


def _near(at: Point, words: str, k: int, span: Span, off: float = _AT_LINE) -> bool:
    """Whether the middle of words lies in a span, or `off` mm from it, as they stand on a piece or on a turned one."""
    wide, high = metrics().width(words, _SMALL) / 2, _CAP * _SMALL / 2
    middles = (at[k] + (wide, high)[k], at[k] + (high, -wide)[k])
    return any(span[0] - off <= middle <= span[1] + off for middle in middles)


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
