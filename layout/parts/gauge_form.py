"""The shape of the folded card of a wrap gauge: where its windows lie, and where notches catch the yarn.

x runs along the card from its left edge, y up from the fold; the front lies above the fold, the back below it. A bold
edge lies outside its window: the window is what is free between two inks, from the tip of one notch to the other.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, filled, line, polygon
from layout.values.units import Length

INCH = Length(Fraction(127, 5), "in")
TWO_INCHES = Length(Fraction(254, 5), "in")
FIVE_CM = Length(Fraction(50), "cm")
INK = Pen.EDGE.ink.width
NOTCH_WIDE, NOTCH_DEEP = 1.6, 3.2
"""Of a V notch in an outer edge, in mm; on the fold it is a diamond, the two halves of one notch."""

_SHORT = 9.0  # the bold edges of a window that takes half of the front only
_NARROW_MARGIN, _NARROW_GAP = 3.0, 4.0


class Window(NamedTuple):
    """`length` to count in, from `start` on; its bold edges stand from `low` up to `high`."""

    length: Length
    start: float
    low: float
    high: float

    @property
    def stop(self) -> float:
        """Where it ends."""
        return self.start + float(self.length.mm)

    @property
    def edges(self) -> tuple[float, float]:
        """Where the middles of its bold edges stand."""
        return self.start - INK / 2, self.stop + INK / 2


class Form(NamedTuple):
    """A card `length` long and, folded, `half` high; `wide` where its windows stand in one row."""

    length: float
    half: float
    windows: tuple[Window, ...]
    wide: bool


def wide_form(half: float) -> Form:
    """All windows in one row, each as high as the front."""
    length, lengths = 166.0, (INCH, TWO_INCHES, FIVE_CM)
    between = (length - sum(float(each.mm) + 2 * INK for each in lengths)) / (len(lengths) + 1)
    windows: list[Window] = []
    at = 0.0
    for each in lengths:
        windows.append(Window(each, at + between + INK, NOTCH_DEEP, half - NOTCH_DEEP))
        at = windows[-1].stop + INK
    return Form(length, half, tuple(windows), wide=True)


def narrow_form() -> Form:
    """1 in and 2 in at the fold, 5 cm at the outer edge; it begins where 2 in does, so that one winding fills both."""
    half, first = 46.0, _NARROW_MARGIN + INK
    second = first + float(INCH.mm) + INK + _NARROW_GAP + INK
    fold, edge = (NOTCH_DEEP, NOTCH_DEEP + _SHORT), (half - NOTCH_DEEP - _SHORT, half - NOTCH_DEEP)
    windows = Window(INCH, first, *fold), Window(TWO_INCHES, second, *fold), Window(FIVE_CM, second, *edge)
    return Form(89.0, half, windows, wide=False)


def edges_of(form: Form) -> Iterator[Shape]:
    """The bold edges of all windows."""
    for window in form.windows:
        for x in window.edges:
            yield line(Point(x, window.low), Point(x, window.high), Pen.EDGE)


def notches_of(form: Form) -> Iterator[Curve]:
    """A notch where a bold edge begins or ends: in both layers, since what is folded is cut as one."""
    for x, y in _tips(form):
        if y == 0.0:
            yield polygon(_diamond(x), Pen.CUT)
        else:
            for edge, way in ((form.half, -1), (-form.half, 1)):
                left, tip, right = _vee(x, edge, way)
                yield Curve(left, (Step(tip), Step(right)), Pen.CUT)


def fold_of(form: Form) -> Iterator[Curve]:
    """The fold, left out where a notch is cut."""
    half = NOTCH_WIDE / 2
    at = 0.0
    for x in sorted(x for x, y in _tips(form) if y == 0.0):
        yield line(Point(at, 0.0), Point(x - half, 0.0), Pen.FOLD)
        at = x + half
    yield line(Point(at, 0.0), Point(form.length, 0.0), Pen.FOLD)


def ground_of(form: Form) -> Iterator[Shape]:
    """The grey of the front: all that is no window, where windows stand in one row."""
    if not form.wide:
        return
    edges = [x for window in form.windows for x in window.edges]
    for left, right in zip([None, *edges[1::2]], [*edges[::2], None], strict=True):
        before = [Point(0, 0), Point(0, form.half)] if left is None else _beside(left, form.half, 1)
        after = [Point(form.length, form.half), Point(form.length, 0)]
        yield filled([*before, *(after if right is None else _beside(right, form.half, -1)[::-1])], Pen.TINT)


def _beside(x: float, half: float, way: int) -> list[Point]:
    """Up along a bold edge, and round the notches at its ends on the side of `way`."""
    out = x + way * NOTCH_WIDE / 2
    return [Point(out, 0), Point(x, NOTCH_DEEP), Point(x, half - NOTCH_DEEP), Point(out, half)]


def _tips(form: Form) -> Iterator[Point]:
    """Where notches stand: on the fold, or at the outer edge."""
    for window in form.windows:
        for x in window.edges:
            if window.low == NOTCH_DEEP:
                yield Point(x, 0.0)
            if window.high == form.half - NOTCH_DEEP:
                yield Point(x, form.half)


def _diamond(x: float) -> list[Point]:
    half, deep = NOTCH_WIDE / 2, NOTCH_DEEP
    return [Point(x, deep), Point(x + half, 0.0), Point(x, -deep), Point(x - half, 0.0)]


def _vee(x: float, edge: float, way: int) -> tuple[Point, Point, Point]:
    half = NOTCH_WIDE / 2
    return Point(x - half, edge), Point(x, edge + way * NOTCH_DEEP), Point(x + half, edge)
