"""Notched bars for the ends of a frame: one notch for every end, as the kit says they are wide and deep.

A bar is drawn with its notches up. The end that stands at the bottom has its notches below, so its bar is drawn turned
half round: what lies to the left on the frame lies to the right on the drawing.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor

from layout.cutting.parts.blank import Blank, cut_part, small_part
from layout.cutting.parts.comb_body import marks, scored_line
from layout.cutting.parts.outline import Corner, outline
from layout.cutting.parts.teeth import toothed_edge
from layout.cutting.stock.kerf import Kerf, too_wide
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import LEAST, SLENDER, looser, too_thin
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, circle
from layout.drawing.sheet import Care, Part
from layout.drawing.typeset import LEAD, wrap
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.messages.catalogue import Message
from layout.messages.roles import CutNeed, CutNote, CutWord, Unit
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.numerals import say_fixed, say_number
from layout.warps.warp import End

BODY = 30.0
"""How wide a bar is below the ground of its notches, in mm."""

_NARROWEST = 0.5  # mm: the narrowest notch that a kit may have
_MOST = 60  # layers: more are not glued by hand
_HOLE, _CORNER, _CROSS, _WORDS, _SIDE = 2.0, 5.0, 4.0, 16.0, 8.0


def end_bar(plan: Plan, end: End, stock: Stock, metrics: FontMetrics) -> Part:
    """The bar of one frame end, its teeth along the face grain. FieldError where they would break or do not fit."""
    ends = _notched(plan)
    depth, notch, half = (float(mm) for mm in (ends.notch_depth.mm, ends.notch_width.mm, _width(plan) / 2))
    tooth = float(plan.warp.spacing) - notch
    _check(plan, tooth, notch, depth, stock)
    flip = way_up(plan, end)
    edge = toothed_edge(sorted(flip * float(x) for x in plan.warp.marks(end)), notch, (-half, half), depth)
    limit = float(plan.warp.width / 2)
    units = [flip * float(x) for x, _ in plan.warp.unit_lines(end)]
    low = -BODY + _CORNER + 1.0
    on_it = plan.words.say(CutWord.ON_BAR_NEAR if end == "near" else CutWord.ON_BAR_FAR, kit=plan.kit.name)
    words, *_ = wrap(on_it, LEAD, 2 * half - 4 * _SIDE, metrics, Pen.ENGRAVE)
    blank = Blank(
        f"end-bar-{end}",
        plan.words.say(CutWord.BAR_NEAR if end == "near" else CutWord.BAR_FAR),
        outline([Corner(-half, -BODY, _CORNER), Corner(half, -BODY, _CORNER), *edge]),
        (Point(-half + _CROSS, low), Point(half - _CROSS, low), Point(-half + _CROSS, -_CROSS)),
        holes=_screw_holes(plan, stock),
        scores=tuple(scored_line(mark) for mark in marks(0.0, units, (-limit, limit))),
        words=(Text(Point(-metrics.width(words, LEAD, Pen.ENGRAVE) / 2, -_WORDS), LEAD, words, pen=Pen.ENGRAVE),),
        notes=(_use(plan, end, stock), *_care(plan, tooth, stock), small_part(plan.words)),
        grain="y",
    )
    return cut_part(blank, stock, plan.words)


def layers(plan: Plan, stock: Stock) -> int:
    """How many bars of the stock, glued, are at least as thick as a frame end of the kit. FieldError beyond sixty."""
    thick = _notched(plan).thickness.mm
    count = ceil(thick / Fraction(stock.thickness).limit_denominator(10**9))
    if count > _MOST:
        example, values = f'thickness = "{ceil(thick / _MOST)} mm"', {"most": _MOST, "thick": say_number(float(thick))}
        raise FieldError("thickness", CutNeed.LAYERS, _mm(say_number(stock.thickness)), example, **values)
    return count


def way_up(plan: Plan, end: End) -> int:
    """+1 where the outer edge of an end lies above as the frame stands, -1 where it lies below."""
    return -1 if (end == "near") == (plan.kit.weaving.near_end == "bottom") else 1


def _notched(plan: Plan) -> NotchedEnd:
    ends = plan.kit.frame.ends
    if not isinstance(ends, NotchedEnd) or ends.density is not None:
        raise FieldError("frame.ends", CutNeed.NOTCHED, ends.name, 'ends = "notched ends"')
    return ends


def _width(plan: Plan) -> float:
    return float(plan.kit.frame.outer_width.mm)


def _check(plan: Plan, tooth: float, notch: float, depth: float, stock: Stock) -> None:
    kerf = Kerf(stock.kerf_x, stock.kerf_y)
    if max(kerf.x, kerf.y) >= notch:
        raise too_wide(kerf, CutNeed.KERF_NOTCH, notch, say_number(notch))
    if tooth < LEAST:
        raise too_thin("frame.notch_width", CutNeed.NOTCHES_APART, tooth, _looser(plan, notch + LEAST))
    if depth > SLENDER * tooth:
        values = {"slender": say_number(SLENDER), "most": say_fixed(SLENDER * tooth, 1)}
        example = f'notch_depth = "{int(SLENDER * tooth)} mm"'
        raise FieldError("frame.notch_depth", CutNeed.NOTCH_DEPTH, _mm(say_number(depth)), example, **values)


def _mm(number: str) -> Message:
    return Message(Unit.MM, {"number": number})


def _looser(plan: Plan, spacing: float) -> str:
    """A notch that is narrow enough for the spacing there is, or else a sett that leaves `spacing` mm."""
    notch = floor(10 * (float(plan.warp.spacing) - LEAST)) / 10
    return f'notch_width = "{notch:g} mm"' if notch >= _NARROWEST else looser(plan, spacing)


def _screw_holes(plan: Plan, stock: Stock) -> tuple[Curve, ...]:
    """One over the middle of each side piece, where that leaves enough wood round it."""
    side = float(plan.kit.frame.side_width.mm)
    if side / 2 - _HOLE < max(stock.thickness, _CORNER):
        return ()
    out = (_width(plan) - side) / 2
    return tuple(circle(Point(x, -BODY / 2), _HOLE, Pen.THROUGH) for x in (-out, out))


def _use(plan: Plan, end: End, stock: Stock) -> str:
    place = plan.words.say(CutNote.BAR_BOTTOM if way_up(plan, end) < 0 else CutNote.BAR_TOP)
    count = layers(plan, stock)
    if count == 1:
        return place
    thick = {"glued": say_number(count * stock.thickness), "thick": say_number(float(_notched(plan).thickness.mm))}
    return plan.words.paragraph((plan.words.say(CutNote.LAYERS, count=count, **thick), place))


def _care(plan: Plan, tooth: float, stock: Stock) -> list[str]:
    if tooth >= stock.thickness:
        return []
    return [
        Care(plan.words.say(CutNote.NARROW_NOTCHES, between=say_fixed(tooth, 2), thick=say_number(stock.thickness)))
    ]
