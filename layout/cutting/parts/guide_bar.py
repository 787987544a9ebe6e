"""The spacing guide as a cut part: a bar whose scored marks show where every end should lie, to be held to the warp."""

from __future__ import annotations

from layout.cutting.parts.blank import Blank, cut_part
from layout.cutting.parts.comb_body import same_place
from layout.cutting.parts.outline import boxed, outline
from layout.cutting.stock.stock import Stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, line
from layout.drawing.sheet import Part
from layout.drawing.typeset import LEADING, SMALL, wrap
from layout.messages.roles import CutNote, CutWord
from layout.plan import Plan

EDGE = 0.5
"""Marks begin so far inside the long edge, in mm, so that none opens it."""

FACE, BACK, TEN = 5.0, 3.0, 6.5
"""How far from the edge the marks of ends on the face, behind, and of every tenth end reach."""

UNIT = (7.5, 10.5)
"""Unit marks lie in a band of their own, from and to so far from the edge; the limits reach through both bands."""

_CENTRE_TO = 9.0
_NUMBERS, _WORDS_FROM, _PAST, _ROUND, _CROSS, _FOOT = 13.0, 15.2, 9.0, 3.0, 3.5, 3.0


def guide_bar(plan: Plan, stock: Stock, metrics: FontMetrics) -> Part:
    """The bar, its length along the face grain. FieldError where the sheet is too small."""
    half = float(plan.warp.width / 2)
    end, cross = half + _PAST, _CROSS + 1
    layers = plan.warp.layers_at("near")
    crosses = layers != plan.warp.layers_at("far")
    use = CutNote.USE_GUIDE if "back" in layers else CutNote.USE_GUIDE_FACE
    on_it = CutWord.ON_GUIDE_NEAR if crosses else CutWord.ON_GUIDE
    words = plan.words.say(on_it, kit=plan.kit.name, sett=plan.sett_words)
    rows = wrap(words, SMALL, 2 * half, metrics, Pen.ENGRAVE)
    low = -_WORDS_FROM - len(rows) * LEADING * SMALL - _FOOT
    first = -_WORDS_FROM - metrics.ascent * SMALL
    engraved = [
        Text(Point(-half, first - k * LEADING * SMALL), SMALL, row, pen=Pen.ENGRAVE) for k, row in enumerate(rows)
    ]
    blank = Blank(
        "spacing-guide-cut",
        plan.words.say(CutWord.GUIDE),
        outline(boxed(-end, low, end, 0.0, _ROUND)),
        (Point(-end + _CROSS, low + cross), Point(end - _CROSS, low + cross), Point(-end + _CROSS, -cross)),
        scores=(*_ends(plan), *_units(plan, half)),
        words=(*engraved, *_tens(plan, metrics)),
        notes=(plan.words.say(use), *([plan.words.say(CutNote.GUIDE_CROSSED)] if crosses else [])),
    )
    return cut_part(blank, stock, plan.words)


def _numbered(plan: Plan) -> list[tuple[int, float]]:
    """The number of every end in the order of winding, and where it is wanted."""
    xs = [float(x) for x in plan.warp.end_positions]
    return list(enumerate(xs if plan.warp.toward > 0 else xs[::-1], 1))


def _ends(plan: Plan) -> list[Curve]:
    layers = [each.layer for each in plan.warp.passes]
    reach = [
        TEN if number % 10 == 0 else FACE if layers[number - 1] == "face" else BACK for number, _ in _numbered(plan)
    ]
    return [_upright(x, EDGE, far) for (_, x), far in zip(_numbered(plan), reach, strict=True)]


def _units(plan: Plan, half: float) -> list[Curve]:
    """Limits, units and centre, each place once."""
    places = [(x, EDGE, UNIT[1]) for x in (-half, half)]
    units = [(float(x), *UNIT) for x, _ in plan.warp.unit_lines("near")]
    for weaker in (units, [(0.0, UNIT[0], _CENTRE_TO)]):
        places += [place for place in weaker if not any(same_place(place[0], x) for x, _, _ in places)]
    return [_upright(*place) for place in sorted(places)]


def _upright(x: float, near: float, far: float) -> Curve:
    return line(Point(x, -near), Point(x, -far), Pen.SCORE)


def _tens(plan: Plan, metrics: FontMetrics) -> list[Text]:
    """The numbers of every tenth end, or of as many as find room beside each other."""
    pitch = float(plan.warp.pitch)
    wide = metrics.width(str(plan.warp.ends), SMALL, Pen.ENGRAVE) + 1.5
    step = next(step for step in (10, 20, 50, 100, 200, 500, 1000, 5000) if step * pitch >= wide)
    baseline = -_NUMBERS - metrics.cap * SMALL / 2
    return [
        Text(
            Point(x - metrics.width(str(number), SMALL, Pen.ENGRAVE) / 2, baseline), SMALL, str(number), pen=Pen.ENGRAVE
        )
        for number, x in _numbered(plan)
        if number % step == 0
    ]
