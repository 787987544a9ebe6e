"""The small pictures of the card of help and finish: 28 x 12 mm for what went wrong, 40 x 17 mm for taking off."""

from __future__ import annotations

from collections.abc import Sequence

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Shape, Step, circle, filled, line, polygon
from layout.drawing.signs import scissors, small_arrow
from layout.drawing.symbols import block, knot
from layout.parts.cards.band import band

HELP_WIDE, HELP_HIGH = 28.0, 12.0
FINISH_WIDE, FINISH_HIGH = 40.0, 17.0
MIDDLE = FINISH_WIDE / 2

_OTHERS = (4.0, 8.0, 16.0, 20.0, 24.0)
_BROKEN = 12.0
_UPRIGHTS = (4.0, 8.5, 13.0, 17.7, 22.3, 27.0, 31.5, 36.0)
_CLOTH, _TOP = 5.0, 14.4
_HAND = (
    (40, 4), (24, 3.2), (12, 3.4), (12, 5.2), (22, 5.4), (10.6, 5.8), (10.6, 7.6), (22, 7.6), (11, 8.2), (11, 10),
    (22, 9.8), (13, 10.8), (13.4, 12.4), (24, 12.2), (27, 14.6), (29, 14), (28, 11.8), (40, 12.4),
)  # fmt: skip


def _up(x: float, low: float, high: float) -> Curve:
    return line(Point(x, low), Point(x, high), Pen.THREAD)


def _way(*points: tuple[float, float], pen: Pen = Pen.THREAD) -> Curve:
    start, *others = points
    return Curve(Point(*start), tuple(Step(Point(*at)) for at in others), pen)


def _picks(left: float, right: float, ys: Sequence[float]) -> list[Shape]:
    return [line(Point(left, y), Point(right, y), Pen.WEFT) for y in ys]


def slack() -> list[Shape]:
    """One end among others hangs in a bend."""
    bent = _way((_BROKEN, 0), (_BROKEN, 3), (10.6, 5.5), (13.4, 9), (_BROKEN, HELP_HIGH))
    return [*block(0, 0, HELP_WIDE, 3, Pen.OUTLINE), *(_up(x, 0, HELP_HIGH) for x in _OTHERS), bent]


def broken() -> list[Shape]:
    """A new end beside one with a gap, tied to the frame, and a pin in the cloth."""
    shapes = [*block(0, 9.6, HELP_WIDE, HELP_HIGH, Pen.OUTLINE), *_picks(1, 27, (0.6, 2.3))]
    shapes += [_up(x, 2.9, HELP_HIGH) for x in _OTHERS]
    shapes += [_up(_BROKEN, 7.4, HELP_HIGH), _up(_BROKEN, 2.9, 5.0), _up(13.9, 2.9, 9.6), knot(Point(13.9, 9.6))]
    return [*shapes, line(Point(12.6, 0.9), Point(17.4, 4), Pen.OUTLINE), circle(Point(18.1, 4.5), 0.8, Pen.OUTLINE)]


def pulling_in() -> list[Shape]:
    """Ends that come together at a cloth that is too narrow, with an arrow at either side."""
    shapes = _picks(8, 20, (0.7, 2.3, 3.9))
    shapes += [_way((14 + k * 2.4, 4.6), (14 + k * 3, 7.2), (14 + k * 4.6, HELP_HIGH)) for k in (-2, -1, 0, 1, 2)]
    return [*shapes, *small_arrow(Point(6.4, 2.3), Point(1, 0)), *small_arrow(Point(21.6, 2.3), Point(-1, 0))]


def showing() -> list[Shape]:
    """Weft so loose that the warp is seen."""
    return band(2, 26, 0, HELP_HIGH, 6)


def new_weft() -> list[Shape]:
    """Two wefts that end inside the piece, their tails behind it."""
    shapes = [*(_up(x, 0, HELP_HIGH - 1) for x in (*_OTHERS, _BROKEN)), *_picks(1, 13.4, (3,)), *_picks(18.4, 27, (3,))]
    tails = (((13.4, 3), (14.2, 10.4)), ((18.4, 3), (17.6, 10.4)))
    return [*shapes, *(_way(*tail, pen=Pen.THREAD_BACK) for tail in tails)]


def _cloth() -> list[Shape]:
    return _picks(2, 38, (0.8, 2.6, 4.4))


def woven() -> list[Shape]:
    """The cloth under the far heading rows."""
    rows = [line(Point(2, y), Point(38, y), Pen.PICK) for y in (11.0, 13.4)]
    return [*_cloth(), *(_up(x, _CLOTH, FINISH_HIGH) for x in _UPRIGHTS), *rows]


def hand() -> list[Shape]:
    """A hand flat on the warp."""
    points = [Point(x, y) for x, y in _HAND]
    shapes = [*_cloth(), *(_up(x, _CLOTH, FINISH_HIGH) for x in _UPRIGHTS if x < 8.6)]
    shapes += [_up(x, 13.6, FINISH_HIGH) for x in _UPRIGHTS if 8.6 < x < 24]
    return [*shapes, filled(points, Pen.PAPER), polygon(points, Pen.OUTLINE)]


def cut() -> list[Shape]:
    """Scissors at the two middle ends, close to the frame."""
    shapes = [*block(0, _TOP, FINISH_WIDE, FINISH_HIGH, Pen.OUTLINE), *_cloth()]
    for k, x in enumerate(_UPRIGHTS):
        if k in (3, 4):
            shapes += [_up(x, _CLOTH, 8.4), _up(x, 12.2, _TOP)]
        else:
            shapes.append(_up(x, _CLOTH, _TOP))
    return [*shapes, *scissors(Point(MIDDLE - 2.4, 10.3))]


def _knotted(x: float) -> list[Shape]:
    """Two ends in a knot about x."""
    legs = [_way((x + side * 2.3, _CLOTH), (x, 8), (x - side * 1.4, 11.4)) for side in (-1, 1)]
    return [*legs, knot(Point(x, 8))]


def knotted() -> list[Shape]:
    """The two in a knot, the others whole."""
    return [*_cloth(), *(_up(x, _CLOTH, FINISH_HIGH) for x in _UPRIGHTS if abs(x - MIDDLE) > 3), *_knotted(MIDDLE)]


def _needled(x: float) -> list[Shape]:
    """Two ends about x turned back into the cloth beside their neighbours."""
    sides = ((x + side * 1.6, x + side * 3.2) for side in (-1, 1))
    return [_way((own, _CLOTH), (own, 8), (other, 8), (other, 1)) for own, other in sides]


def needled() -> list[Shape]:
    """The two turned back, the others whole."""
    return [*_cloth(), *(_up(x, _CLOTH, FINISH_HIGH) for x in _UPRIGHTS if abs(x - MIDDLE) > 3), *_needled(MIDDLE)]


def outward() -> list[Shape]:
    """Arrows from the middle to both sides, the ends between them knotted."""
    return _outward([shape for x in (11.0, MIDDLE, 29.0) for shape in _knotted(x)])


def needled_outward() -> list[Shape]:
    """The same of ends that are turned back."""
    return _outward([shape for x in (11.0, MIDDLE, 29.0) for shape in _needled(x)])


def _outward(done: Sequence[Shape]) -> list[Shape]:
    arrows = [*small_arrow(Point(13, 15), Point(-1, 0)), *small_arrow(Point(27, 15), Point(1, 0))]
    return [*_cloth(), _up(4, _CLOTH, FINISH_HIGH), _up(36, _CLOTH, FINISH_HIGH), *done, *arrows]


def trimmed() -> list[Shape]:
    """The piece with short ends above and below."""
    ends = [_up(x, *ys) for x in (9, 16, 24, 31) for ys in ((0.6, 2.6), (14.4, 16.4))]
    return [*_picks(6, 34, (3.2, 5, 6.8, 8.6, 10.4, 12.2, 13.8)), *ends]


def drawn_out() -> list[Shape]:
    """The rod is drawn out of the loops to the right."""
    loops = [_way((x, _CLOTH), (x, 12), (x + 2.2, 12), (x + 2.2, _CLOTH)) for x in (5.0, 11.0, 17.0, 23.0)]
    rod = block(16, 9.4, 33, 11, Pen.OUTLINE)
    return [*_cloth(), *loops, *rod, *small_arrow(Point(38.6, 10.2), Point(1, 0))]
