"""Notched bars for the ends of a frame: one notch for every end, as the kit says they are wide and deep.

A bar is drawn with its notches up. The end that stands at the bottom has its notches below, so its bar is drawn turned
half round: what lies to the left on the frame lies to the right on the drawing.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, floor

from layout.cutting.parts.blank import SMALL_PART, Blank, cut_part
from layout.cutting.parts.comb_body import marks, scored_line
from layout.cutting.parts.outline import Corner, outline
from layout.cutting.parts.teeth import toothed_edge
from layout.cutting.stock.kerf import Kerf, too_wide
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.tooth_strength import LEAST, SLENDER, looser
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, circle
from layout.drawing.sheet import Care, Part
from layout.drawing.typeset import LEAD, wrap
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.plan import Plan
from layout.values.errors import FieldError
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
    words, *_ = wrap(f"{plan.kit.name} \N{MIDDLE DOT} {end} end", LEAD, 2 * half - 4 * _SIDE, metrics)
    blank = Blank(
        f"end-bar-{end}",
        f"Notched bar, {end} end",
        outline([Corner(-half, -BODY, _CORNER), Corner(half, -BODY, _CORNER), *edge]),
        (Point(-half + _CROSS, low), Point(half - _CROSS, low), Point(-half + _CROSS, -_CROSS)),
        holes=_screw_holes(plan, stock),
        scores=tuple(scored_line(mark) for mark in marks(0.0, units, (-limit, limit))),
        words=(Text(Point(-metrics.width(words, LEAD) / 2, -_WORDS), LEAD, words, pen=Pen.ENGRAVE),),
        notes=(_use(plan, end, stock), *_care(tooth, stock), SMALL_PART),
        grain="y",
    )
    return cut_part(blank, stock)


def layers(plan: Plan, stock: Stock) -> int:
    """How many bars of the stock, glued, are at least as thick as a frame end of the kit. FieldError beyond sixty."""
    thick = _notched(plan).thickness.mm
    count = ceil(thick / Fraction(stock.thickness).limit_denominator(10**9))
    if count > _MOST:
        needed = f"a sheet of which at most {_MOST} layers make a bar of {float(thick):g} mm"
        raise FieldError("thickness", needed, f"{stock.thickness:g} mm", f'thickness = "{ceil(thick / _MOST)} mm"')
    return count


def way_up(plan: Plan, end: End) -> int:
    """+1 where the outer edge of an end lies above as the frame stands, -1 where it lies below."""
    return -1 if (end == "near") == (plan.kit.weaving.near_end == "bottom") else 1


def _notched(plan: Plan) -> NotchedEnd:
    ends = plan.kit.frame.ends
    if not isinstance(ends, NotchedEnd) or ends.density is not None:
        raise FieldError("frame.ends", "notched ends that are still to be made", ends.name, 'ends = "notched ends"')
    return ends


def _width(plan: Plan) -> float:
    return float(plan.kit.frame.outer_width.mm)


def _check(plan: Plan, tooth: float, notch: float, depth: float, stock: Stock) -> None:
    kerf = Kerf(stock.kerf_x, stock.kerf_y)
    if max(kerf.x, kerf.y) >= notch:
        raise too_wide(kerf, f"a notch, {notch:g} mm", notch)
    if tooth < LEAST:
        needed = f"notches that leave at least {LEAST:g} mm between them"
        raise FieldError("frame.notch_width", needed, f"{tooth:.2f} mm", _looser(plan, notch + LEAST))
    if depth > SLENDER * tooth:
        needed = f"at most {SLENDER:g} times what is left between two notches, {SLENDER * tooth:.1f} mm"
        raise FieldError("frame.notch_depth", needed, f"{depth:g} mm", f'notch_depth = "{int(SLENDER * tooth)} mm"')


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
    thick = float(_notched(plan).thickness.mm)
    count = layers(plan, stock)
    glued = f"they make {count * stock.thickness:g} mm where the kit has {thick:g} mm"
    many = f"Cut {count} and glue them, notches in line; {glued}; drawn once, on the boards {count} times. "
    many = many if count > 1 else ""
    where = "bottom" if way_up(plan, end) < 0 else "top"
    return f"{many}It goes to the {where} of the frame, notches outward, words to the face; ease every edge by sanding."


def _care(tooth: float, stock: Stock) -> list[str]:
    if tooth >= stock.thickness:
        return []
    said = f"Take care: {tooth:.2f} mm between two notches are less than the stock is thick ({stock.thickness:g} mm)."
    return [Care(said)]
