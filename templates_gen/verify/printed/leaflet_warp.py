"""The first five pictures of a leaflet: the frame, its marks, the tie-on, the first passes, the slack."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Shape
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from templates_gen.messages.roles.proof_leaflet import LeafPicture
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import each_once
from templates_gen.verify.arrows import arrows_in
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.leaflet_facts import Facts
from templates_gen.verify.printed.leaflet_lines import (
    HIGH,
    WIDE,
    bent,
    boxes,
    circles,
    discs,
    heads,
    numbers,
    straight,
    uprights,
)
from templates_gen.verify.printed.picture import passes_between
from templates_gen.verify.printed.winding import off_of, wrong_passes

_FIFTH, _MARKS, _NUMBER = 5, 8, 2.7
_ALONE, _SHARED = 6, 8  # so many passes are drawn where each has its mark, and where two share one
_SHAPE, _ROD, _BOTH = 1e-3, 3.0, 2


def frame(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """Four pieces in the frame's proportions, the diagonals of the opening, and a mark over the middle of both ends."""
    wood, size = boxes(shapes), facts.kit.frame
    if len(wood) != 4:
        yield LeafPicture.FRAME
        return
    left, low, right, high = (f(box[k] for box in wood) for k, f in enumerate((min, min, max, max)))
    if abs((right - left) / (high - low) - float(size.outer_width.mm / size.outer_height.mm)) > _SHAPE:
        yield LeafPicture.FRAME
    inner = (sorted(box[2] for box in wood)[0], sorted(box[3] for box in wood)[0])
    corners = {inner, (left + right - inner[0], low + high - inner[1])}
    corners |= {(x, low + high - y) for x, y in corners}
    lines = straight(shapes, Pen.CENTRE)
    ends = [(path.start, path.steps[0].end) for path in lines]
    opposite = all(abs(a.x + b.x - left - right) <= LIMIT and abs(a.y + b.y - low - high) <= LIMIT for a, b in ends)
    at_corners = all(min(abs(at.x - x) + abs(at.y - y) for x, y in corners) <= LIMIT for pair in ends for at in pair)
    if len(lines) != 2 or not opposite or not at_corners or ends[0][0].x == ends[1][1].x:
        yield LeafPicture.DIAGONALS
    ticks = sorted(uprights(shapes, Pen.THREAD), key=lambda each: each.low)
    middle = all(abs(each.x - (left + right) / 2) <= LIMIT for each in ticks)
    if len(ticks) != 2 or not middle or not (ticks[0].low < low < ticks[0].high < ticks[1].low < high < ticks[1].high):
        yield LeafPicture.MIDDLES


def marks(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """The first marks of the near end, equally far apart the way of the winding, every fifth and the first numbered."""
    ends, first = facts.kit.frame.ends, facts.marks.first_near
    wrapped = not isinstance(ends, NotchedEnd | PeggedEnd | NailEnd) or not facts.has("strips")
    if wrapped:
        drawn = uprights(shapes, Pen.MARK, Pen.TEN)
        found = each_once(each.x for each in drawn)
        heavy = {each.x for each in drawn if each.pen is Pen.TEN}
    else:
        found = each_once(at.x for at, _ in circles(shapes, Pen.HOLE)) or _notches(shapes)
        heavy = set()
    found = found[:: facts.toward]
    wanted = [k for k in range(len(found)) if k == 0 or (first + k) % _FIFTH == 0]
    steps = [other - one for one, other in pairwise(found)]
    if len(found) != min(_MARKS, len(facts.marks.near)) or any(abs(step - steps[0]) > LIMIT for step in steps):
        yield LeafPicture.MARKS
        return
    if wrapped and heavy != {found[k] for k in wanted}:
        yield LeafPicture.MARKS
    shown = {number: at.x for at, number in numbers(shapes)}
    beside = all(0 < found[k] - shown.get(first + k, WIDE) < _NUMBER for k in wanted)
    if len(shown) != len(wanted) or not beside:
        yield LeafPicture.NUMBERS
    middles = [each.at.x for each in heads(shapes) if each.way == "up"]
    middles += [each.x for each in uprights(shapes, Pen.THREAD)]
    if wrapped and (len(middles) != _BOTH or any(abs(x - WIDE / 2) > LIMIT for x in middles)):
        yield LeafPicture.CENTRE


def _notches(shapes: Sequence[Shape]) -> list[float]:
    """The middles of the notches in the upper edge of a board."""
    outlines = [s for s in shapes if isinstance(s, Curve) and s.closed and s.pen is Pen.OUTLINE and len(s.steps) > 3]
    found = []
    for outline in outlines:
        for one, other in pairwise(outline.points()):
            inside = abs(one.y - other.y) <= LIMIT and min(p.y for p in outline.points()) < one.y
            found += [(one.x + other.x) / 2] if inside and one.y < max(p.y for p in outline.points()) - 1 else []
    return each_once(found)


def tie_on(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """At the first mark of the near end, on the side where the winding begins, with two half hitches."""
    (left, _, right, top), *_ = boxes(shapes) or [(0.0, 0.0, 0.0, 0.0)]
    lines = uprights(shapes, Pen.THREAD)
    stem = [each for each in lines if each.low < top - 1 and each.high < top + 1]
    shown = list(numbers(shapes))
    at_side = len(stem) == 1 and (stem[0].x < (left + right) / 2) == (facts.toward > 0)
    if truth_of(facts.kit).on_rod:
        named = not shown
    else:
        wanted = facts.marks.at_near(facts.passes[0]).number
        named = [number for _, number in shown] == [wanted]
        named = named and all(at.x < left if facts.toward > 0 else at.x > right for at, _ in shown)
    if not at_side or not named:
        yield LeafPicture.TIED
        return
    pieces = [each for each in lines if abs(each.x - stem[0].x) <= LIMIT and each.high > top + 1]
    under = [path for path in shapes if isinstance(path, Curve) and path.pen is Pen.THREAD and _stops(path, stem[0].x)]
    if len(pieces) != _HITCHES + 1 or len(under) < _HITCHES:
        yield LeafPicture.HITCHES


_HITCHES = 2


def _stops(path: Curve, x: float) -> bool:
    """Whether a strand ends just beside the thread at x, which passes over it there."""
    ends = (path.points()[0], path.points()[-1])
    return any(0.5 < abs(at.x - x) < 1.2 for at in ends) and max(abs(p.x - x) for p in path.points()) > 1.2


def winding(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """The first passes of the warp: place, lean, layer and direction of each, and the knot at the first."""
    toward, below = facts.toward, facts.kit.weaving.near_end == "bottom"
    near, far = (0.0, HIGH) if below else (HIGH, 0.0)
    lines = straight(shapes, Pen.THREAD, Pen.THREAD_BACK)
    drawn = sorted(passes_between(lines, near, far, list(arrows_in(shapes)), toward), key=lambda one: one.middle)
    near_marks = facts.marks.near
    alone = len(near_marks) > 1 and abs(near_marks[1] - near_marks[0]) == 1 / facts.sett
    wanted = facts.passes[: min(_ALONE if alone else _SHARED, len(facts.passes))]
    if len(drawn) != len(wanted) or any(wrong_passes(drawn, wanted)):
        yield LeafPicture.PASSES
        return
    if len(drawn) > 1 and off_of(drawn, wanted, float(1 / facts.sett)) > LIMIT:
        yield LeafPicture.OFF
    knots, first = discs(shapes, 1.2), drawn[0]
    if len(knots) != 1:
        yield LeafPicture.TIE_ON
        return
    (at,) = knots
    away = abs(at.y - (0.0 if below else HIGH))
    on_it = abs(at.x - (first.at(at.y) if first.face else toward * first.near)) <= LIMIT
    if not on_it or (away < HIGH / 2) == truth_of(facts.kit).on_rod:
        yield LeafPicture.TIE_ON


def tension(facts: Facts, shapes: Sequence[Shape]) -> Iterator[LeafPicture]:
    """One slack end, an arrow from it the way of the winding, and the knot at the last end, where it is tied off."""
    toward = facts.toward
    ends = [each.x for each in uprights(shapes, Pen.THREAD) if each.low <= LIMIT and each.high >= HIGH - LIMIT]
    ends = ends[::toward]
    slack, arrows, knots = bent(shapes, Pen.THREAD), heads(shapes), discs(shapes, 1.2)
    if len(slack) != 1 or len(arrows) != 1 or len(ends) < 3:
        yield LeafPicture.SLACK
        return
    x, (arrow,) = slack[0].start.x, arrows
    between = toward * ends[0] < toward * x < toward * ends[1]
    if not between or arrow.way != ("right" if toward > 0 else "left") or toward * arrow.at.x < toward * ends[1]:
        yield LeafPicture.SLACK
    rods = [box for box in boxes(shapes) if box[3] - box[1] < _ROD]
    if len(knots) != 1 or abs(knots[0].x - ends[-1]) > LIMIT or bool(rods) != truth_of(facts.kit).on_rod:
        yield LeafPicture.TIE_OFF
        return
    y = knots[0].y
    if rods:
        wrong = not rods[0][1] < y < rods[0][3]
    else:
        wrong = (y > HIGH / 2) != (facts.far_off == (facts.kit.weaving.near_end == "bottom"))
    if wrong:
        yield LeafPicture.TIE_OFF
