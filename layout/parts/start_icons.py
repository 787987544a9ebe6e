"""The pictures of the first sheet: one for each step of the work, 20 mm wide and 13 high, x to the right, y down."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Region, Shape, circle, filled, line, rectangle
from layout.drawing.signs import scissors

WIDE, HIGH = 20.0, 13.0
"""The size of a picture in mm."""

_STICK_LOW, _STICK_HIGH = 3.6, 1.8  # the edges of the shed stick
_FREE = 0.5  # white to each side of what passes over


def icon(name: str) -> list[Shape]:
    """The picture of that name, its upper left corner at (0, 0), y up."""
    return _ICONS[name]()


def _up(xs: Iterable[float], top: float, low: float, pen: Pen = Pen.OUTLINE) -> list[Shape]:
    """Upright lines from `top` down to `low`."""
    return [line(Point(x, -low), Point(x, -top), pen) for x in xs]


def _across(y: float, spans: Iterable[tuple[float, float]], pen: Pen) -> list[Shape]:
    return [line(Point(one, -y), Point(other, -y), pen) for one, other in spans]


def _slanted(ways: Iterable[tuple[float, float, float, float]], pen: Pen = Pen.OUTLINE) -> list[Shape]:
    return [line(Point(x, -y), Point(to_x, -to_y), pen) for x, y, to_x, to_y in ways]


def _box(left: float, top: float, right: float, low: float, pen: Pen = Pen.HELP) -> Shape:
    return rectangle(left, -low, right, -top, pen)


def _grey(left: float, top: float, right: float, low: float) -> Region:
    return filled(rectangle(left, -low, right, -top, Pen.TINT).points(), Pen.TINT)


def _block(left: float, top: float, right: float, low: float) -> list[Shape]:
    return [_grey(left, top, right, low), _box(left, top, right, low)]


def _check() -> list[Shape]:
    bars = [*_block(4, 0, 16, 2), *_block(4, 11, 16, 13), *_block(4, 2, 6, 11), *_block(14, 2, 16, 11)]
    diagonals = _slanted(((4, 0, 16, 13), (16, 0, 4, 13)), Pen.CENTRE_SHORT)
    return [*bars, *diagonals, *_up((10,), -0.5, 2.7, Pen.THREAD), *_up((10,), 10.3, 13.5, Pen.THREAD)]


def _gauge() -> list[Shape]:
    greys = [_grey(1, 2.5, 6.2, 10.5), _grey(13.8, 2.5, 19, 10.5)]
    wefts = [_box(x - 0.3, 2, x + 0.3, 11) for x in (8, 10, 12)]
    return [*greys, _box(1, 2.5, 19, 10.5), *_up((7, 9, 11, 13), 1.8, 11.2, Pen.THREAD), *wefts]


def _strips() -> list[Shape]:
    near, far = [3.25 + 1.5 * k for k in range(11)], [2.5 + 1.5 * k for k in range(11)]
    return [
        *_block(1, 4.5, 19, 5.6),
        _box(1, 0.6, 19, 5.6),
        *_up(near, 0.6, 4.5, Pen.HELP),
        *_block(1, 7.4, 19, 8.5),
        _box(1, 7.4, 19, 12.4),
        *_up(far, 8.5, 12.4, Pen.HELP),
    ]


def _notches() -> list[Shape]:
    shapes: list[Shape] = []
    for edge, inner, ground in ((0.6, 5.4, 2.6), (12.4, 7.6, 10.4)):
        xs = [3.0 + 2 * k for k in range(8)]
        corners = [Point(1, -inner), Point(1, -edge)]
        for x in xs:
            corners += [Point(x - 0.4, -edge), Point(x - 0.4, -ground), Point(x + 0.4, -ground), Point(x + 0.4, -edge)]
        corners += [Point(19, -edge), Point(19, -inner)]
        outline = zip(corners, [*corners[1:], corners[0]], strict=True)
        shapes += [filled(corners, Pen.TINT), *(line(one, other, Pen.HELP) for one, other in outline)]
    return shapes


def _holes(rows: Sequence[Sequence[float]]) -> list[Shape]:
    """Two boards with the same rows of holes, at these depths by turns."""
    shapes = [*_block(1, 0.6, 19, 5.6), *_block(1, 7.4, 19, 12.4)]
    for top in (0.6, 7.4):
        for k in range(8):
            (depth,) = rows[k % len(rows)]
            shapes.append(circle(Point(3 + 2 * k, -top - depth), 0.5, Pen.OUTLINE))
    return shapes


def _pegs() -> list[Shape]:
    return _holes(((1.5,), (3.5,)))


def _nails() -> list[Shape]:
    return _holes(((2.5,),))


def _bars() -> list[Shape]:
    return [*_block(2, 0, 18, 2.2), *_block(2, 10.8, 18, 13)]


def _round() -> list[Shape]:
    face = [(x, 13.0, x + 1.5, 0.0) for x in (4.0, 7.0, 10.0, 13.0)]
    back = [(x + 1.5, 2.2, x + 3.0, 10.8) for x in (4.0, 7.0, 10.0, 13.0)]
    return [*_bars(), *_slanted(face), *_slanted(back, Pen.THREAD_BACK)]


def _eight() -> list[Shape]:
    """Face at the near end and behind at the far one, and the other way round."""
    xs = (4.0, 8.0, 12.0)
    face = [(x, 13.0, x + 1, 6.9) for x in xs] + [(x + 3, 6.1, x + 2, 0.0) for x in xs]
    back = [(x + 1, 6.1, x + 2, 2.2) for x in xs] + [(x + 4, 10.8, x + 3, 6.9) for x in xs]
    return [*_bars(), *_slanted(face), *_slanted(back, Pen.THREAD_BACK)]


def _rod() -> list[Shape]:
    rod = [_box(0.5, 8.4, 19.5, 9.4, Pen.OUTLINE)]
    xs = (4.0, 7.0, 10.0, 13.0, 16.0)
    return [*_bars(), *rod, *_up(xs, 0, 10.8), *_up([x + 1 for x in xs], 2.2, 8.2, Pen.THREAD_BACK)]


def _face() -> list[Shape]:
    xs = [4.0 + 2 * k for k in range(7)]
    ways = [(x, 12.0, x + 2, 1.0) if k % 2 == 0 else (x, 1.0, x + 2, 12.0) for k, x in enumerate(xs[:-1])]
    return [*_bars(), *_slanted(ways)]


def _heading() -> list[Shape]:
    """The stick lies under every second end; the rows pass over and under by turns."""
    odd, even = (3.0, 7.0, 11.0, 15.0), (5.0, 9.0, 13.0, 17.0)
    stick = [_box(0, _STICK_HIGH, 20, _STICK_LOW, Pen.OUTLINE)]
    under = [*_up(even, 0, _STICK_HIGH - 0.2), *_up(even, _STICK_LOW + 0.2, 7.2 - _FREE - 0.3)]
    under += _up(even, 7.2 + _FREE + 0.3, 10.8)
    over = [*_up(odd, 0, 9.0 - _FREE - 0.3), *_up(odd, 9.0 + _FREE + 0.3, 10.8)]
    rows = _across(7.2, _between(odd), Pen.PICK) + _across(9.0, _between(even), Pen.PICK)
    return [*_block(1, 10.8, 19, 13), *stick, *under, *over, *rows]


def _between(ends: Sequence[float]) -> list[tuple[float, float]]:
    """A row that passes under these ends, where it is seen."""
    starts = [1.4, *(x + _FREE for x in ends)]
    stops = [*(x - _FREE for x in ends), 18.6]
    return [(one, other) for one, other in zip(starts, stops, strict=True) if other - one > _FREE]


def _guides() -> list[Shape]:
    xs = [2.6 + 1.6 * k for k in range(10)]
    band = filled(rectangle(1, -6.5, 19, -6.0, Pen.SOLID).points(), Pen.SOLID)
    marks = [*_up(xs[::2], 6.5, 8.9, Pen.HELP), *_up(xs[1::2], 6.5, 8.7, Pen.HELP)]
    return [_box(1, 6, 19, 11.5), band, *_up(xs, 0, 6), *marks]


def _leashes() -> list[Shape]:
    """Loops from a rod round the ends behind."""
    face, back = (3.0, 7.0, 11.0, 15.0), (5.0, 9.0, 13.0, 17.0)
    loops = [_box(x - 0.6, 4.8, x + 0.6, 9.0) for x in back]
    ends = [*_up(face, 0, 2.8), *_up(face, 4.8, 13), *_up(back, 0, 2.8, Pen.THREAD_BACK)]
    return [_box(0, 3, 20, 4.6, Pen.OUTLINE), *loops, *ends, *_up(back, 4.8, 13, Pen.THREAD_BACK)]


def _grid() -> list[Shape]:
    upright = [4 + 1.2 * k for k in range(1, 10) if k != 5]
    level = [1.3 * k for k in range(1, 10) if k != 5]
    lines = [*_up(upright, 0, 13, Pen.GRID), *(_across(y, ((4, 16),), Pen.GRID)[0] for y in level)]
    return [_box(4, 0, 16, 13, Pen.OUTLINE), *lines, *_up((10,), 0, 13), *_across(6.5, ((4, 16),), Pen.OUTLINE)]


def _finish() -> list[Shape]:
    ends, cut = (3, 5, 7, 13, 15, 17), (9, 11)
    rows = [_across(y, ((2, 18),), Pen.THREAD)[0] for y in (0.6, 1.8, 3.0)]
    return [*rows, *_up(ends, 3.4, 13), *_up(cut, 3.4, 6.4), *scissors(Point(10, -12), 90)]


_ICONS: Mapping[str, Callable[[], list[Shape]]] = {
    "check": _check,
    "gauge": _gauge,
    "strips": _strips,
    "notches": _notches,
    "pegs": _pegs,
    "nails": _nails,
    "round": _round,
    "eight": _eight,
    "rod": _rod,
    "face": _face,
    "heading": _heading,
    "guides": _guides,
    "leashes": _leashes,
    "grid": _grid,
    "finish": _finish,
}
