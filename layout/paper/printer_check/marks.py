"""End marks of the spans with their letters, and the rules in mm and sixteenths of an inch."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, degrees

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Placing, Point, Shape, Text, cross, line
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from layout.paper.printer_check.places import NO_CROSS, Places
from layout.values.units import say_number

LETTERS = ("A", "B"), ("C", "D"), ("E", "F"), ("G", "H")
"""What the ends of the spans are called."""

FINE, BOLD = (1.6, 1.0), (3.4, 2.3)
"""An end mark: a fine line so far to both sides of its place, and bold from there on, in mm; smaller in the corners."""

SIXTEENTH = 25.4 / 16
"""The inch is 25.4 mm (international yard and pound agreement of 1959)."""

_CROSS = 3.0
_MM = (10, 4.0), (5, 3.0), (1, 2.0)  # every so many lines a tick so long
_INCH = (16, 4.0), (8, 3.3), (4, 2.6), (2, 2.0), (1, 1.4)
_OFF = 0.6  # from a tick to its number
_CLEAR = 8.0  # from the end D to the last number: other marks stand there
_LETTER_UP, _LETTER_OFF = 1.2, 4.2
_INWARD, _OUTWARD = 0.35, 0.9  # so much higher or lower: C and D stay inside the margins, the others off the head
_ASIDE, _ALONG = 14.0, 42.0  # the words beside the span that stands up: from it, and from the lower edge


def end_marks(places: Places, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """All eight ends, each with its letter, each span with its length beside its first one."""
    shapes: list[Shape] = []
    for (one, other), letters, long in zip(places.ends, LETTERS, _lengths(places), strict=True):
        turn = degrees(atan2(other.y - one.y, other.x - one.x))
        for end in (one, other):
            shapes += Placing(turn, end.x, end.y).shapes(_mark(small=letters not in LETTERS[:2]))
        said = words.say(PrinterCheck.SPAN, one=letters[0], other=letters[1], length=say_number(long))
        upright = abs(other.x - one.x) < abs(other.y - one.y) / 100
        if upright:
            shapes += [
                _lettered(letters[0], one, -1, metrics, _INWARD),
                _lettered(letters[1], other, -1, metrics, -_INWARD),
            ]
            at = Point(one.x + _ASIDE, _ALONG)
            shapes.append(Text(at, LEAD, said, 90, pen=Pen.STRONG))
        else:
            way = _OUTWARD * ((other.y > one.y) - (other.y < one.y))
            shapes += [_lettered(said, one, 1, metrics, -way), _lettered(letters[1], other, -1, metrics, way)]
    if places.spans.diagonal > NO_CROSS:
        shapes += cross(places.middle, _CROSS, Pen.HELP)
    return shapes


def _lengths(places: Places) -> tuple[float, ...]:
    spans = places.spans
    return spans.across, spans.up, spans.diagonal, spans.diagonal


def _mark(*, small: bool) -> Iterator[Shape]:
    """A mark across the x axis, at (0, 0): the fine line is what is measured from."""
    fine, bold = FINE[small], BOLD[small]
    yield line(Point(0, -fine), Point(0, fine), Pen.HELP)
    for side in (-1, 1):
        yield line(Point(0, side * fine), Point(0, side * bold), Pen.EDGE)


def _lettered(words: str, end: Point, side: int, metrics: FontMetrics, higher: float = 0.0) -> Text:
    """Words at the right (`side` 1) or the left of an end, `higher` than it by so much."""
    wide = metrics.width(words, LEAD, Pen.STRONG)
    x = end.x + _LETTER_OFF if side > 0 else end.x - _LETTER_OFF - wide
    return Text(Point(x, end.y - _LETTER_UP + higher), LEAD, words, pen=Pen.STRONG)


def rules(places: Places, words: Catalogue, metrics: FontMetrics) -> list[Shape]:
    """The rule across beside the code, and that from C to D, whose ends are the marks."""
    (begin, long), (low, _) = places.rule, places.ends[1]
    across = _rule(long, words, metrics, turned=False, open_ends=True)
    upward = _rule(places.spans.up, words, metrics, turned=True, open_ends=False)
    return [*Placing(0, begin.x, begin.y).shapes(across), *Placing(90, low.x, low.y).shapes(upward)]


def _rule(long: float, words: Catalogue, metrics: FontMetrics, *, turned: bool, open_ends: bool) -> list[Shape]:
    """A rule from (0, 0) along the x axis: mm above, sixteenths of an inch below, upright numbers.

    Where its ends are not open, marks stand there, and neither ticks nor numbers.
    """
    shapes: list[Shape] = [line(Point(0, 0), Point(long, 0), Pen.RULE)]
    for step, lengths, side, unit in ((1.0, _MM, 1, PrinterCheck.MM), (SIXTEENTH, _INCH, -1, PrinterCheck.INCH)):
        count = int(long / step + 1e-9)
        inside = [k for k in range(count + 1) if open_ends or 1e-9 < k * step < long - 1e-9]
        for k in inside:
            reach = next(reach for every, reach in lengths if k % every == 0)
            shapes.append(line(Point(k * step, 0), Point(k * step, side * reach), Pen.RULE))
        each, longest = lengths[0]
        numbered = [k for k in inside if k % each == 0 and (open_ends or k * step < long - _CLEAR)]
        for k in numbered:
            number = say_number(k * step if side > 0 else k // each)
            said = words.say(unit, length=number) if k == numbered[-1] else number
            shapes.append(_number(said, k * step, side * (longest + _OFF), metrics, turned=turned))
    return shapes


def _number(said: str, x: float, off: float, metrics: FontMetrics, *, turned: bool) -> Text:
    """A number at x, `off` the line on the side of its sign; a rule that is turned to the left has them upright."""
    wide, cap = metrics.width(said, SMALL), metrics.cap * SMALL
    if not turned:
        return Text(Point(x - wide / 2, off if off > 0 else off - cap), SMALL, said)
    return Text(Point(x - cap / 2, off + wide if off > 0 else off), SMALL, said, -90)
