"""The ladder of line widths and the outline of a card on a printer check, from their published sizes alone."""

from __future__ import annotations

import math
from collections.abc import Iterator

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Text
from layout.drawing.sheet import Sheet
from layout.messages.catalogue import Catalogue
from layout.messages.roles import PrinterCheck
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_printer_check import Checked
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding, wrong
from templates_gen.verify.printed.printer_check_places import CARD, LETTERS, WIDTHS

_SMALL = 7.5 * 25.4 / 72
_NEAR = 0.05  # mm: a number whose middle is so close to its line stands at it
_LEG = 3.0  # mm: a line of the ladder of widths is at least so long
_BESIDE = 1.5


def prove_widths(sheet: Sheet, words: Catalogue) -> Iterator[Finding]:
    """Lines of every width, each flat and upright; small sheets may have no room for them."""
    font, texts = metrics(), [shape for shape in sheet.shapes if isinstance(shape, Text)]
    corners = [s for s in sheet.shapes if isinstance(s, Curve) and not s.closed and len(s.steps) == 2]
    corners.sort(key=lambda each: each.steps[0].end.x)
    if len(corners) != len(WIDTHS) and (corners or not _is_small(sheet)):
        yield finding(Checked.WIDTHS, found=len(corners), wanted=len(WIDTHS))
        return
    for width, corner in zip(WIDTHS, corners, strict=False):
        top, turn, end = corner.points()
        high = turn.y - font.cap * _SMALL / 2
        beside = [each.words for each in texts if 0 < each.at.x - end.x < _BESIDE and abs(each.at.y - high) < _NEAR]
        square = abs(top.x - turn.x) <= LIMIT and abs(turn.y - end.y) <= LIMIT
        long = top.y - turn.y >= _LEG and end.x - turn.x >= _LEG
        named = beside == [_in_figures(width, words)]
        if corner.pen.ink.width != width or corner.pen.ink.dash or not (square and long and named):
            yield finding(Checked.WIDTH, width=width)


def _in_figures(width: float, words: Catalogue) -> str:
    said = words.figure(f"{width}")
    return words.say(PrinterCheck.MM, length=said) if width == WIDTHS[-1] else said


def _is_small(sheet: Sheet) -> bool:
    """Whether a sheet may lack what has no room."""
    return sheet.width < 209 or sheet.height < 240


def prove_card(sheet: Sheet) -> Findings:
    """The outline of a card: four straight sides and four round corners."""
    closed = [s for s in sheet.shapes if isinstance(s, Curve) and s.closed and s.pen is Pen.HELP and len(s.steps) > 4]
    if len(closed) != 1:
        return wrong(Checked.CARD)
    wide, high, r = CARD
    points = [at for step in closed[0].steps for at in (step.through, step.end) if at is not None]
    left, low = min(x for x, _ in points), min(y for _, y in points)
    off = max(abs(max(x for x, _ in points) - left - wide), abs(max(y for _, y in points) - low - high))
    start = closed[0].start
    for end, through in closed[0].steps:
        for at in (end, *((through,) if through else ())):
            off = max(off, abs(_inside(at.x - left, at.y - low) - r) if through else 0.0)
        if through is None:
            off = max(off, min(abs(start.x - end.x), abs(start.y - end.y)))
        start = end
    rounds = sum(1 for step in closed[0].steps if step.through)
    return Findings(off, ()) if off <= LIMIT and rounds >= len(LETTERS) else wrong(Checked.CARD)


def _inside(x: float, y: float) -> float:
    """How far a place is from the middle of its corner, from the lower left of the card."""
    wide, high, r = CARD
    return math.hypot(x - (r if x < wide / 2 else wide - r), y - (r if y < high / 2 else high - r))
