"""A plain stick on paper that is shorter: both its ends at exact scale, the middle left out, its sizes said.

Each end has crosses of its own, so that it is found and measured by itself.
"""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Placing, Point, Shape, Text, cross
from layout.drawing.sheet import Part, Piece, painted
from layout.drawing.signs import dimension
from layout.drawing.symbols import break_line
from layout.messages.catalogue import Catalogue
from layout.messages.roles import CutNote, Unit
from layout.paper.clipping import clipped
from layout.values.numerals import say_number

BREAK = 6.0
"""Between the two ends, in mm."""

_LEAST, _UNDER, _BESIDE, _PAST = 45.0, 7.0, 7.0, 4.0
_ARM, _IN = 1.0, 8.0  # of the crosses, and how far from the break one more stands
_PLAIN = ("shed-stick",)


class BrokenView(NamedTuple):
    """The drawing as one part; and its two ends, each as it is cut, with how it lies in the drawing."""

    drawing: Part
    ends: tuple[Piece, Piece]


def is_plain(part: Part) -> bool:
    """Whether nothing is to be seen of a part between its ends."""
    return part.name in _PLAIN


def broken_view(part: Part, drawing: Part, width: float, words: Catalogue, metrics: FontMetrics) -> BrokenView | None:
    """`drawing`, which is `part` lying along its length, in `width` mm; None where it is no longer, or its ends are."""
    left, low, right, high = drawing.box
    texts = [shape for shape in drawing.shapes if isinstance(shape, Text)]
    said = (text.at.x + metrics.width(text.words, text.size, text.pen) + _PAST for text in texts)
    room = width - BREAK - _BESIDE - 1.0
    first = max(max(said, default=left) - left, room / 2)
    if drawing.length <= width or room - first < _LEAST:
        return None
    stop, begin = left + first, right - (room - first)
    shift = Placing(0, stop + BREAK - begin, 0)
    ends = (_end(drawing, (left, stop), stop - _IN), _end(drawing, (begin, right), begin + _IN))
    end = right + shift.dx
    shapes = [
        *ends[0].shapes,
        *shift.shapes(ends[1].shapes),
        *(break_line(x, low - 1.5, high + 1.5) for x in (stop, stop + BREAK)),
        *_sizes(drawing, end, words, metrics),
    ]
    whole = replace(
        drawing,
        shapes=painted(shapes),
        datum=(*ends[0].datum, *shift.points(ends[1].datum)),
        box=(left, low - _UNDER, end + _BESIDE, high + 1.5),
        notes=(words.say(CutNote.BROKEN), *drawing.notes),
        whole=True,
    )
    back = Placing(90) if part.height > part.length else Placing()
    return BrokenView(whole, (Piece(_as_cut(ends[0], back), Placing()), Piece(_as_cut(ends[1], back), shift)))


def _end(drawing: Part, edges: tuple[float, float], inner: float) -> Part:
    """What is seen of the drawing between two uprights, its crosses first: its own, and one more at x = `inner`."""
    begin, stop = edges
    own = [at for at in drawing.datum if begin < at.x < stop]
    datum = (*own, Point(inner, own[0].y))
    kept: list[Shape] = [hair for at in datum for hair in cross(at, _ARM, Pen.REGISTER)]
    for shape in drawing.shapes:
        if isinstance(shape, Curve) and shape.pen is not Pen.REGISTER:
            kept += clipped(shape, begin, stop)
        elif isinstance(shape, Text) and begin <= shape.at.x < stop:
            kept.append(shape)
    return replace(drawing, shapes=tuple(kept), datum=datum, box=(begin, drawing.box[1], stop, drawing.box[3]))


def _sizes(drawing: Part, end: float, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """Both sizes, as they are drawn, over lines from edge to edge."""
    left, low, _, high = drawing.box
    long, wide = (words.say(Unit.MM, number=say_number(size, 1)) for size in (drawing.length, drawing.height))
    under, beside = low - _UNDER + 1.0, end + _BESIDE - 1.0
    return [
        *dimension(Point(left, under), Point(end, under), long, metrics),
        *dimension(Point(beside, low), Point(beside, high), wide, metrics),
    ]


def _as_cut(end: Part, back: Placing) -> Part:
    """An end in the coordinates of the part as it is cut."""
    return replace(end, datum=tuple(back.points(end.datum)), box=_turned(end.box, back))


def _turned(box: Box, back: Placing) -> Box:
    (x0, y0), (x1, y1) = back.points([Point(*box[:2]), Point(*box[2:])])
    return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)
