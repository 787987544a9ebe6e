"""The drilling jig for a pegged frame end: a hole over every peg, in two staggered rows, and an edge to lay it by.

It is drawn with the outer edge of the frame up, as the notched bars are: that of the bottom end turned half round.
"""

from __future__ import annotations

import math
from math import floor

from layout.cutting.parts.blank import Blank, cut_part
from layout.cutting.parts.end_bars import way_up
from layout.cutting.parts.outline import boxed, outline
from layout.cutting.stock.kerf import Kerf, too_wide
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import LEAST, looser, too_thin
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, circle, line
from layout.drawing.sheet import Care, Part
from layout.drawing.typeset import LEAD, wrap
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.messages.roles import CutNeed, CutNote, CutWord
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_fixed, say_number
from layout.warps.pegged import in_outer_row
from layout.warps.warp import End

_THINNEST = 1.0  # mm: the thinnest pegs that a kit may have
_BELOW, _CORNER, _SIDE, _ARM = 16.0, 1.5, 8.0, 4.0


def peg_jig(plan: Plan, end: End, stock: Stock, metrics: FontMetrics) -> Part:
    """The jig of one frame end. FieldError where the wood between holes would break, or the jig does not fit."""
    ends = _pegged(plan)
    centres, radius = _centres(plan, ends, end), float(ends.peg_diameter.mm) / 2
    between = _check(plan, centres, radius, stock)
    half = float(plan.kit.frame.outer_width.mm) / 2
    deepest = max(-y for _, y in centres) + radius
    low = -deepest - _BELOW
    on_it = plan.words.say(CutWord.ON_JIG_NEAR if end == "near" else CutWord.ON_JIG_FAR, kit=plan.kit.name)
    words, *_ = wrap(on_it, LEAD, 2 * half - 4 * _SIDE, metrics, Pen.ENGRAVE)
    blank = Blank(
        f"peg-jig-{end}",
        plan.words.say(CutWord.JIG_NEAR if end == "near" else CutWord.JIG_FAR),
        outline(boxed(-half, low, half, 0.0, _CORNER)),
        (Point(-half + _ARM, low + _ARM), Point(half - _ARM, low + _ARM), Point(-half + _ARM, -_ARM)),
        holes=tuple(circle(centre, radius, Pen.THROUGH) for centre in centres),
        scores=(_centre_line(low),),
        words=(Text(Point(-half + 2 * _SIDE, low + _SIDE - 2.0), LEAD, words, pen=Pen.ENGRAVE),),
        notes=(_use(plan, end), *_care(plan, between, stock)),
        grain="x",
    )
    return cut_part(blank, stock, plan.words)


def _pegged(plan: Plan) -> PeggedEnd:
    ends = plan.kit.frame.ends
    if not isinstance(ends, PeggedEnd):
        raise FieldError("frame.ends", CutNeed.PEGGED, ends.name, 'ends = "pegged ends"')
    return ends


def _centres(plan: Plan, ends: PeggedEnd, end: End) -> list[Point]:
    outer, apart, flip = float(ends.edge_distance.mm), float(ends.row_distance.mm), way_up(plan, end)
    return [
        Point(flip * float(x), -outer - (0.0 if in_outer_row(number) else apart))
        for number, x in enumerate(plan.warp.marks(end))
    ]


def _check(plan: Plan, centres: list[Point], radius: float, stock: Stock) -> float:
    """The least wood in mm between two holes, or a hole and the edge."""
    kerf = Kerf(stock.kerf_x, stock.kerf_y)
    if max(kerf.x, kerf.y) >= 2 * radius:
        raise too_wide(kerf, CutNeed.KERF_HOLE, 2 * radius, say_number(2 * radius))
    apart = [math.dist(one, other) for k in (1, 2) for one, other in zip(centres, centres[k:], strict=False)]
    between = min([*(distance - 2 * radius for distance in apart), *(-y - radius for _, y in centres)])
    if between < LEAST:
        raise too_thin("frame.peg_diameter", CutNeed.WOOD, between, _works(plan, between + 2 * radius, radius))
    return between


def _works(plan: Plan, room: float, radius: float) -> str:
    """Pegs that are thin enough where `room` mm lie between two centres, or else a sett that leaves room."""
    thin = floor(10 * min(room - LEAST, float(_pegged(plan).edge_distance.mm) * 2 - 2 * LEAST)) / 10
    return f'peg_diameter = "{thin:g} mm"' if thin >= _THINNEST else looser(plan, 2 * radius + LEAST)


def _centre_line(low: float) -> Curve:
    return line(Point(0.0, low + 2.0), Point(0.0, low + 6.0), Pen.SCORE)


def _use(plan: Plan, end: End) -> str:
    return plan.words.say(CutNote.CLAMP_BOTTOM if way_up(plan, end) < 0 else CutNote.CLAMP_TOP)


def _care(plan: Plan, between: float, stock: Stock) -> list[str]:
    if between >= stock.thickness:
        return []
    return [
        Care(plan.words.say(CutNote.NARROW_HOLES, between=say_fixed(between, 2), thick=say_number(stock.thickness)))
    ]
