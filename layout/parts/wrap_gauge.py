"""The wrap gauge: a card to wind warp and weft round, folded over stiff board, with windows between bold edges.

On usual paper the card and how it is wound make one part. On small paper they are two, and the card is as large as the
paper allows; its windows are always true.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Placing, Point, Shape, Text, cross, rectangle
from layout.drawing.sheet import Part
from layout.drawing.signs import scissors
from layout.drawing.typeset import FIGURE, LEAD, SMALL, is_tall, leading, wrap
from layout.messages.catalogue import Catalogue
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge, SheetName
from layout.parts.gauge_back import Names, back_of
from layout.parts.gauge_form import (
    FIVE_CM,
    INCH,
    TWO_INCHES,
    Form,
    Window,
    edges_of,
    fold_of,
    ground_of,
    narrow_form,
    notches_of,
    wide_form,
)
from layout.parts.gauge_pictures import Hanging, double_arrow, how_to_wind, sentences, signs_of
from layout.parts.gauge_table import GaugeTable, gauge_table, pairs_of, window_of
from layout.plan import Plan
from layout.values.units import say_length

NAME, HOW = "wrap-gauge", "gauge-how"


_LIES = 203.9  # the width of a field of 160 mm with its furniture
_HALF, _LOW_HALF, _LOWEST_HALF = 44.0, 34.0, 31.0
_CORNER, _ARM, _PAST, _OUTSIDE, _WHITE, _BETWEEN = 0.8, 0.5, 1.95, 2.0, 7.0, 6.0
_UNDER = 1.5  # from the last words to the crosses of their sheet
_ABOVE = 4.0  # more white over the card, where there is room
_USUAL, _LEAST_WHITE = 70.6, 5.0  # how high it is how to wind, with each sentence on one line; the least white over it
_FURNITURE = 43.9 + 2 * _CORNER  # both gutters, and the crosses
_LABEL, _ARROW, _SAID, _OFF_INK = 0.557, 0.432, 0.307, 0.5
_SCISSORS = 0.6


class _Said(NamedTuple):
    """What a gauge says of its kit: the table, the yarns, the sett and the order; without a kit the table alone."""

    table: GaugeTable
    names: Names
    kit: str
    words: Catalogue
    order: str = ""


def wrap_gauge(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The gauge of a kit on usual paper: the card, unfolded, and how it is wound; if `low`, without pictures."""
    return _whole(_said_of(plan), _purpose(plan), metrics, pictures=not low)


def gauge_card(plan: Plan, metrics: FontMetrics) -> Part:
    """The card alone, as a file of its own holds it."""
    return _card_part(_said_of(plan), _purpose(plan), metrics)


def gauge_card_of(table: GaugeTable, purpose: str, metrics: FontMetrics) -> Part:
    """The same with this table, for any kit."""
    return _card_part(_Said(table, Names(), "", ENGLISH), purpose, metrics)


def card_alone(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """The card of a kit on small paper; in its `low` form it takes less room."""
    said = _said_of(plan)
    if lies_on(plan):
        form = wide_form(_LOWEST_HALF if low else _LOW_HALF)
        return _part(NAME, said, _purpose(plan), _card(form, said, metrics, outside=False))
    card = _card(narrow_form(), said, metrics, outside=not low)
    return _part(NAME, said, _purpose(plan), card, steps=_steps(said.words))


def winding_alone(plan: Plan, metrics: FontMetrics, *, low: bool = False) -> Part:
    """How the card of a kit is wound, on a sheet of its own; in its `low` form without pictures."""
    said, lies = _said_of(plan), lies_on(plan)
    how = _how(said, plan.kit.paper.width - _FURNITURE, metrics, pictures=not low)
    right, foot = plan.kit.paper.width - _FURNITURE, -how.high - _UNDER
    datum = Point(0, foot), Point(right, foot), Point(right, 0)
    drawn = _Drawn((*how.shapes, *_crosses(datum)), datum, (-_CORNER, foot - _CORNER, right + _CORNER, _CORNER))
    return replace(_part(HOW, said, _purpose(plan), drawn, _steps(said.words) if lies else ()), measured=False)


def lies_on(plan: Plan) -> bool:
    """Whether small paper is so wide that the windows stand in one row; how the card is made then has no room there."""
    return plan.kit.paper.width >= _LIES


def wrap_gauge_of(table: GaugeTable, purpose: str, metrics: FontMetrics) -> Part:
    """The gauge with this table, for any kit."""
    return _whole(_Said(table, Names(), "", ENGLISH), purpose, metrics)


def _said_of(plan: Plan) -> _Said:
    table, words, kit = gauge_table(plan), plan.words, plan.kit
    window = window_of(plan.warp.sett.unit)
    others = [each for each in (INCH, TWO_INCHES, FIVE_CM) if each.mm != window.mm]
    one, other = (say_length(each, words) for each in others)
    first, second = (pairs_of(plan, each) for each in others)
    more = words.say(Gauge.OTHERS, one=one, first=first, other=other, second=second)
    own = table.own_row is not None
    values = {"pairs": pairs_of(plan), "window": table.over, "sett": plan.sett_words}
    this = words.say(Gauge.THIS_KIT, **values) if own else ""
    return _Said(table, Names(kit.warp, kit.weft, more), this, words, plan.ordered)


def _purpose(plan: Plan) -> str:
    return plan.words.say(SheetName.PURPOSE_WRAP_GAUGE)


def _steps(words: Catalogue) -> tuple[str, ...]:
    return tuple(map(words.say, (Gauge.STEP_CUT, Gauge.STEP_NOTCHES, Gauge.STEP_WIND, Gauge.STEP_COUNT)))


class _Drawn(NamedTuple):
    """Shapes, where their crosses stand, the box of it all, and which of the shapes are scissors."""

    shapes: tuple[Shape, ...]
    datum: tuple[Point, Point, Point]
    box: Box
    scissors: tuple[Shape, ...] = ()


def _card_part(said: _Said, purpose: str, metrics: FontMetrics) -> Part:
    return _part(NAME, said, purpose, _card(wide_form(_HALF), said, metrics, outside=True))


def _whole(said: _Said, purpose: str, metrics: FontMetrics, *, pictures: bool = True) -> Part:
    form = wide_form(_HALF)
    card = _card(form, said, metrics, outside=True)
    how = _how(said, form.length, metrics, pictures=pictures)
    longer = max(0.0, how.high - _USUAL)  # what words of more lines take, white gives up
    above = max(0.0, _ABOVE - longer)
    foot = card.box[1] - max(_LEAST_WHITE, _WHITE - (longer - _ABOVE + above))
    shapes = (*card.shapes, *Placing(0, 0, foot).shapes(how.shapes))
    left, _, right, top = card.box
    return _part(
        NAME,
        said,
        purpose,
        _Drawn(shapes, card.datum, (left, foot - how.high, right, top + above), card.scissors),
        _steps(said.words),
    )


def _part(name: str, said: _Said, purpose: str, drawn: _Drawn, steps: tuple[str, ...] = ()) -> Part:
    title = said.words.say(SheetName.NAME_WRAP_GAUGE)
    shown = name, title, drawn.shapes, drawn.datum, drawn.box
    return Part(*shown, whole=True, purpose=purpose, steps=steps, scissors=drawn.scissors)


def _card(form: Form, said: _Said, metrics: FontMetrics, *, outside: bool) -> _Drawn:
    """The card with its fold at y = 0; `outside` with words over and under it."""
    length, half = form.length, form.half
    datum = Point(_CORNER, _CORNER - half), Point(length - _CORNER, _CORNER - half), Point(_CORNER, half - _CORNER)
    shapes: list[Shape] = [*ground_of(form), rectangle(0, -half, length, half, Pen.CUT), *fold_of(form)]
    shapes += [*edges_of(form), *notches_of(form), *_labels(form, said, metrics)]
    shapes += _order(form, said, metrics)
    cut = scissors(Point(length, half * _SCISSORS), -90)
    shapes += [*cut, *_crosses(datum)]
    shapes += back_of(form, said.table, said.names, said.words, metrics)
    low = high = half
    if outside:
        words, low, high = _outside(form, said.words, metrics)
        shapes += words
    return _Drawn(tuple(shapes), datum, (-_PAST, -low, length + _PAST, high), tuple(cut))


def _crosses(datum: Iterable[Point]) -> list[Shape]:
    return [hair for point in datum for hair in cross(point, _ARM, Pen.REGISTER)]


def _labels(form: Form, said: _Said, metrics: FontMetrics) -> Iterator[Shape]:
    """The name of each window in it, a line from ink to ink, and which of them the table is for."""
    for window in form.windows:
        label = say_length(window.length, said.words)
        middle, high = (window.start + window.stop) / 2, window.high + window.low
        wide = metrics.width(label, FIGURE, Pen.STRONG)
        base, arrow = (high * share for share in (_LABEL, _ARROW))
        beneath = _beneath(form, window)
        if not form.wide:  # half as high: the words go beyond the line, towards the middle of the card
            centre = high / 2
            base, arrow = centre - metrics.cap * FIGURE / 2 + 1.2, centre - 3.2
        yield Text(Point(middle - wide / 2, base), FIGURE, label, pen=Pen.STRONG)
        yield from double_arrow(window.start + _OFF_INK, window.stop - _OFF_INK, arrow)
        if label == said.table.over:
            words = said.words.say(Gauge.OF_TABLE)
            yield Text(Point(middle - metrics.width(words, SMALL) / 2, beneath), SMALL, words)


def _beneath(form: Form, window: Window) -> float:
    """The first baseline under the label of a window, towards the middle of the card where that is half as high."""
    if form.wide:
        return (window.high + window.low) * _SAID
    return window.high + 3.0 if window.low < form.half / 2 else window.low - 4.6


def _order(form: Form, said: _Said, metrics: FontMetrics) -> Iterator[Text]:
    """The order in the wide window that the table is not for, line under line."""
    _, *wide = form.windows
    window = next(each for each in wide if say_length(each.length, said.words) != said.table.over)
    rows = wrap(said.order, SMALL, window.stop - window.start - 2 * _OFF_INK, metrics) if said.order else []
    upward = not form.wide and window.low < form.half / 2
    top = _beneath(form, window) + (leading(SMALL) * (len(rows) - 1) if upward else 0.0)
    for k, row in enumerate(rows):
        x = (window.start + window.stop - metrics.width(row, SMALL)) / 2
        yield Text(Point(x, top - leading(SMALL) * k), SMALL, row)


def _outside(form: Form, words: Catalogue, metrics: FontMetrics) -> tuple[list[Shape], float, float]:
    """What the two halves are, and how the card is turned; how far these words reach below and above the fold."""
    up, down = form.half + _OUTSIDE, -form.half - _OUTSIDE - metrics.ascent * SMALL
    back, turn = words.say(Gauge.BACK), words.say(Gauge.TURN)
    shapes: list[Shape] = [
        Text(Point(0, up), SMALL, words.say(Gauge.FRONT), pen=Pen.STRONG),
        Text(Point(0, down), SMALL, back, pen=Pen.STRONG),
    ]
    room = form.length - metrics.width(back, SMALL, Pen.STRONG) - 4
    rows = wrap(turn, SMALL, room, metrics)
    y = down
    for k, row in enumerate(rows):
        y -= leading(SMALL, tall=is_tall(row)) if k else 0.0
        shapes.append(Text(Point(form.length - metrics.width(row, SMALL), y), SMALL, row))
    return shapes, -y - metrics.descent * SMALL, up + metrics.ascent * SMALL


def _how(said: _Said, width: float, metrics: FontMetrics, *, pictures: bool = True) -> Hanging:
    """Pictures, signs, what the kit has, what is done with one yarn alone, and the caution: downward from y = 0."""
    words = said.words
    last = ((said.kit, LEAD), (words.say(Gauge.ALONE), SMALL), (words.say(Gauge.CAUTION), SMALL))
    shapes: list[Shape] = []
    y = 0.0
    for part in (
        *((how_to_wind(width, words, metrics),) if pictures else ()),
        signs_of(width, words, metrics),
        sentences([each for each in last if each[0]], width, metrics),
    ):
        shapes += Placing(0, 0, y).shapes(part.shapes)
        y -= part.high + _BETWEEN
    return Hanging(tuple(shapes), -y - _BETWEEN)
