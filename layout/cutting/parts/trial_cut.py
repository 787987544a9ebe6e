"""The trial cut: a plate whose holes, plugs and slots tell a cutter's kerf, and the ease that a yarn needs.

Its windows are drawn as they stand, so each leaves a hole a kerf larger and a plug a kerf smaller. One hole is engraved
0; the plugs beside it are drawn twice a kerf larger than that hole, for a ladder of kerfs, so that the plug that just
goes into it says the kerf. The slots are drawn for the kerf that the stock has so far, for a ladder of eases. Once it
is measured, the stock keeps the kerf that its trial was drawn for, and a trial made again is drawn for the same.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from layout.cutting.parts.blank import ARM, check_fits, small_part
from layout.cutting.parts.outline import Corner, outline
from layout.cutting.parts.teeth import slot_for
from layout.cutting.stock.kerf import Kerf, drawn
from layout.cutting.stock.stock import Stock
from layout.drawing.boxes import box_of
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Point, Shape, Text, cross, rectangle
from layout.drawing.sheet import Part
from layout.drawing.typeset import SMALL
from layout.messages.catalogue import Catalogue
from layout.messages.roles import CutNote, CutWord
from layout.plan import Plan
from layout.values.numerals import say_fixed, say_number

HOLE = (12.0, 20.0)
"""Width and height in mm of the hole that is engraved 0."""

STEPS = 7
"""So many kerfs, and one more ease, are tried."""

_USUAL, _FINEST, _EASE = Fraction("0.2"), Fraction("0.01"), Fraction("0.05")
_WEB, _FOOT, _WORDS, _LABEL, _SLOT, _TOP, _ROUND, _CROSS = 6.0, 5.0, 4.5, 6.0, 12.0, 4.0, 3.0, 3.0


def kerfs(stock: Stock) -> list[Fraction]:
    """The kerfs that plugs are drawn for, in mm: the stock's own (or a usual one) in the middle."""
    middle = round(Fraction(stock.trial_drawn_for), 2) or _USUAL
    step = max(_FINEST, round(middle / 10, 2))
    return [max(_FINEST, middle - STEPS // 2 * step) + k * step for k in range(STEPS)]


def eases(stock: Stock) -> list[Fraction]:
    """The eases that slots are drawn for, in mm: from well under the stock's own to well over it."""
    first = max(Fraction(), round(Fraction(stock.ease), 2) - STEPS // 2 * _EASE)
    return [first + k * _EASE for k in range(STEPS + 1)]


def trial_cut(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The plate as it lies on the stock, never turned, so that both ways of the cutter are measured apart.

    Raises FieldError where the kerf closes a slot or the sheet is too small.
    """
    wide, high = HOLE
    widths = [wide, *(wide + 2 * float(kerf) for kerf in kerfs(stock))]
    slots = _slot_widths(plan, stock)
    web, column = max(_WEB, 2 * stock.thickness), max(widths[-1], slots[-1])
    middles = [web + column / 2 + k * (column + web) for k in range(len(widths))]
    foot = _FOOT + 2 * _WORDS
    windows = [
        rectangle(x - width / 2, foot, x + width / 2, foot + high, Pen.THROUGH)
        for x, width in zip(middles, widths, strict=True)
    ]
    right, root = middles[-1] + column / 2 + web, foot + high + _TOP + _LABEL
    plate = outline(_corners(middles, slots, right, root))
    cuts = [*windows, *drawn(plate, (), _kerf(stock))]
    top = root + _SLOT
    datum = (Point(_CROSS, _CROSS), Point(right - _CROSS, _CROSS), Point(_CROSS, top - _CROSS))
    hairs = [hair for point in datum for hair in cross(point, ARM, Pen.REFERENCE)]
    words = [*_labels(stock, middles, (foot, root), metrics), *_names(stock, web, plan.words)]
    shapes: tuple[Shape, ...] = (*words, *cuts, *hairs)
    part = Part(
        "trial-cut",
        plan.words.say(CutWord.TRIAL),
        shapes,
        datum,
        box_of(cuts[-1]),
        _notes(stock, plan.words),
        whole=True,
    )
    check_fits(part, stock)
    return part


def _kerf(stock: Stock) -> Kerf:
    """What the plate is drawn for; across the slots the trial's own kerf."""
    across = stock.trial_drawn_for
    return Kerf(across, across if stock.kerf_x == stock.kerf_y else stock.kerf_y)


def _slot_widths(plan: Plan, stock: Stock) -> list[float]:
    """How wide the slots are wanted, before the kerf: as those of a comb, with every ease."""
    return [slot_for(plan, replace(stock, ease=float(ease)))[0] for ease in eases(stock)]


def _corners(middles: Sequence[float], slots: Sequence[float], right: float, root: float) -> list[Corner]:
    """The plate, counter-clockwise from its lower left corner; slots run down from the upper edge and end round."""
    top = root + _SLOT
    corners = [Corner(0, 0, _ROUND), Corner(right, 0, _ROUND), Corner(right, top, _ROUND)]
    for middle, width in reversed(list(zip(middles, slots, strict=True))):
        half, radius = width / 2, min(width, _SLOT) / 2  # a wide slot keeps straight walls to measure between
        corners += [Corner(middle + half, top), Corner(middle + half, root, radius)]
        corners += [Corner(middle - half, root, radius), Corner(middle - half, top)]
    return [*corners, Corner(0, top, _ROUND)]


def _labels(
    stock: Stock, middles: Sequence[float], floors: tuple[float, float], metrics: FontMetrics
) -> Iterator[Text]:
    """The kerf on every plug, 0 on the one whose hole they are tried in, and the ease below every slot."""
    foot, root = floors
    plugs = ["0", *(say_fixed(float(kerf), 2) for kerf in kerfs(stock))]
    below = [say_fixed(float(ease), 2) for ease in eases(stock)]
    for words, y in ((plugs, foot + (HOLE[1] - metrics.cap * SMALL) / 2), (below, root - _LABEL + 1.5)):
        for label, x in zip(words, middles, strict=True):
            yield Text(Point(x - metrics.width(label, SMALL, Pen.ENGRAVE) / 2, y), SMALL, label, pen=Pen.ENGRAVE)


def _names(stock: Stock, left: float, words: Catalogue) -> list[Text]:
    rows = (words.say(CutWord.ON_TRIAL, kerf=say_number(stock.trial_drawn_for)), stock.name)
    return [Text(Point(left, _FOOT + k * _WORDS), SMALL, row, pen=Pen.ENGRAVE) for k, row in enumerate(rows)]


def _notes(stock: Stock, words: Catalogue) -> tuple[str, ...]:
    ease = words.say(CutNote.TRIAL_EASE, kerf=say_number(stock.trial_drawn_for))
    return words.say(CutNote.TRIAL_CUT), words.say(CutNote.TRIAL_KERF), ease, small_part(words)
