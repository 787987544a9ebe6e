"""A wrap gauge, as its file shows it: windows by the inner edges of the ink, notches that begin and end them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import partial

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point
from layout.kit.kit import Kit
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge, SheetName
from layout.plan import Plan
from layout.values.units import Length
from templates_gen.messages.roles.proof_printed import Card
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import each_once
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.heads import About, check_head
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.gauge_fields import Asked, Own, outlines_of, prove_fields
from templates_gen.verify.printed.gauge_words import (
    HOW,
    STEPS,
    check_card_words,
    check_gauge_sheets,
    check_how_words,
    label_in,
)
from templates_gen.verify.printed.pairs import laid_evenly, laid_of, most_pairs

WINDOWS = ((25.4, "1 in"), (50.8, "2 in"), (50.0, "5 cm"))
"""Width in mm and label of each window, from left to right, and in a card of two rows from the fold up."""

_ROWS, _BEFORE = 6, 2
_WIDE, _DEEP = 1.6, 3.2  # of a notch
_SHORTEST = 8.0  # a bold edge is at least so long, in mm
_USUAL = {True: range(8, 19, 2), False: range(10, 21, 2)}
_OF_ENDS = {
    "round bars": (Gauge.WINDS, 2),
    "flat ends": (Gauge.WINDS, 2),
    "notched ends": (Gauge.ENDS, 1),
    "pegged ends": (Gauge.PEGS, 2),
    "nails": (Gauge.NAILS, 2),
}
"""What is counted off on each kind of frame end, and how many ends each lays."""

Spans = dict[str, tuple[Point, Point]]
"""By its label: the lower left and the upper right corner of a window, between the inks."""


def prove_gauge(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The card, or how it is wound where that has a sheet of its own; words where they are real (`on_paper`)."""
    if len(pieces) != 1:
        return Findings(0.0, (finding(Card.PIECES, pieces=len(pieces)),))
    (seen,) = pieces
    if seen.part.name == HOW:
        total = check_how_words(plan, seen) if on_paper else NOTHING
    else:
        total = prove_card(asked_of(plan), seen, on_paper=on_paper)
        if on_paper and not total.problems:
            total += check_card_words(plan, seen)
    if total.problems or not on_paper:
        return total
    return total + check_gauge_sheets(plan, pieces)


def asked_of(plan: Plan) -> Asked:
    """What the table of a kit must hold."""
    kit, sett = plan.kit, plan.warp.sett
    laid = partial(laid_of, kit)
    counts, most = _counts(kit, sett.unit), most_pairs(kit, sett.unit)
    own = Own(most, sett.per_mm)
    return Asked(sett.unit, counts, truth_of(kit).counted, laid, own, plan.words)


def prove_any_gauge(unit: Length, ends: str, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The card without a kit: usual counts, for frame ends of the kind `ends`."""
    if len(pieces) != 1:
        return Findings(0.0, (finding(Card.PIECES, pieces=len(pieces)),))
    counted, each = _OF_ENDS[ends]
    asked = Asked(unit, _USUAL[unit.imperial], counted, partial(laid_evenly, each), None, ENGLISH)
    total = prove_card(asked, pieces[0], on_paper=on_paper)
    if not on_paper or total.problems:
        return total
    window = "2 in" if unit.imperial else "5 cm"
    purpose = ENGLISH.say(Gauge.ANY, window=window)
    about = About(ENGLISH.say(SheetName.NAME_WRAP_GAUGE), purpose, tuple(map(ENGLISH.say, STEPS)))
    return total + check_card_words(None, pieces[0]) + check_head(pieces, about.said())


def prove_card(asked: Asked, seen: FoundPart, *, on_paper: bool) -> Findings:
    """The card itself: outline, fold, windows, notches, and the fields of its table."""
    edges = [path for path in seen.lines() if path.pen is Pen.EDGE]
    lean = max((abs(path.start.x - path.steps[0].end.x) for path in edges), default=0.0)
    total = Findings(lean, () if lean <= LIMIT else (finding(Card.UPRIGHT),))
    if len(edges) != 2 * len(WINDOWS):
        return total + Findings(0.0, (finding(Card.EDGES, found=len(edges), wanted=2 * len(WINDOWS)),))
    outlines = outlines_of(seen)
    if len(outlines) != 1:
        return total + Findings(0.0, (finding(Card.OUTLINE, found=len(outlines)),))
    ((_, low, _, high),) = outlines
    total += _folded(seen, low, high)
    spans: Spans = {}
    total += _windows(edges, spans) + Findings(0.0, tuple(_notches(seen, edges, low, high)))
    if total.problems or not on_paper:
        return total
    fold = (low + high) / 2
    return total + _labels(seen, spans, fold) + prove_fields(asked, seen)


def _folded(seen: FoundPart, low: float, high: float) -> Findings:
    """The fold lies half way up the outline, so that one half covers the other."""
    middle = (low + high) / 2
    folds = [path for path in seen.lines() if path.pen is Pen.FOLD and low < path.start.y < high]
    off = max((abs(point.y - middle) for path in folds for point in path.points()), default=high - low)
    return Findings(0.0 if off > LIMIT else off, () if off <= LIMIT else (finding(Card.FOLD),))


def _windows(edges: Sequence[Curve], spans: Spans) -> Findings:
    """Each two neighbouring edges hold a window between their inks, as wide as the pen draws them."""
    rows: dict[tuple[float, float], list[float]] = {}
    for path in edges:
        ys = sorted(point.y for point in path.points())
        key = next((row for row in rows if abs(row[0] - ys[0]) < LIMIT and abs(row[1] - ys[1]) < LIMIT), None)
        rows.setdefault(key or (ys[0], ys[1]), []).append(path.start.x)
    pairs = [
        (one, other, row)
        for row in sorted(rows)
        for one, other in zip(sorted(rows[row])[::2], sorted(rows[row])[1::2], strict=False)
    ]
    if len(pairs) != len(WINDOWS) or any(high - low < _SHORTEST for low, high in rows):
        return Findings(0.0, (finding(Card.ROWS_OF_EDGES),))
    total, ink = NOTHING, Pen.EDGE.ink.width / 2
    for (wide, label), (left, right, (low, high)) in zip(WINDOWS, pairs, strict=True):
        spans[label] = Point(left + ink, low), Point(right - ink, high)
        off = abs(right - left - 2 * ink - wide)
        total += Findings(off, () if off <= LIMIT else (finding(Card.WINDOW, wide=wide, micrometres=off * 1000),))
    return total


def _notches(seen: FoundPart, edges: Sequence[Curve], low: float, high: float) -> Iterator[Finding]:
    """Every notch goes through both layers, and every bold edge begins at the tip of one, or lies between two."""
    fold = (low + high) / 2
    cuts = [(path.closed, path.points()) for path in seen.paths(Pen.CUT)]
    vees = [points for closed, points in cuts if not closed and len(points) == 3]
    diamonds = [
        sorted(points, key=_up) for closed, points in cuts if closed and len(each_once(y for _, y in points)) == 3
    ]
    at_edge: tuple[list[float], list[float]] = ([], [])
    tips: list[Point] = []
    for one, tip, other in vees:
        upper = tip.y > fold
        edge = high if upper else low
        good = max(abs(one.y - edge), abs(other.y - edge)) <= LIMIT and abs(abs(one.x - other.x) - _WIDE) <= LIMIT
        good = good and abs((one.x + other.x) / 2 - tip.x) <= LIMIT and abs(abs(tip.y - edge) - _DEEP) <= LIMIT
        if not good or not low < tip.y < high:
            yield finding(Card.NOTCH)
            return
        at_edge[upper].append(tip.x)
        tips.append(tip)
    both = [sorted(there) for there in at_edge]
    if len(both[0]) != len(both[1]) or any(abs(a - b) > LIMIT for a, b in zip(*both, strict=True)):
        yield finding(Card.LAYERS)
    for lowest, one, other, highest in diamonds:
        wanted = [(lowest, fold - _DEEP), (highest, fold + _DEEP), (one, fold), (other, fold)]
        even = abs(lowest.x - highest.x) <= LIMIT and abs(abs(one.x - other.x) - _WIDE) <= LIMIT
        if not even or any(abs(point.y - y) > LIMIT for point, y in wanted):
            yield finding(Card.LAYERS)
            return
        tips.append(highest)
    ends = [[point for point in path.points() if _near_any(point.y, fold + _DEEP, high - _DEEP)] for path in edges]
    caught = all(there and all(_near(end, tips) for end in there) for there in ends)
    all_ends = [end for there in ends for end in there]
    if not caught or any(not _near(tip, all_ends) for tip in tips if tip.y > fold):
        yield finding(Card.CAUGHT)


def _near_any(y: float, *others: float) -> bool:
    return any(abs(y - other) <= LIMIT for other in others)


def _near(at: Point, others: Sequence[Point]) -> bool:
    return any(abs(at.x - x) <= LIMIT and abs(at.y - y) <= LIMIT for x, y in others)


def _up(point: Point) -> float:
    return point.y


def _labels(seen: FoundPart, spans: Spans, fold: float) -> Findings:
    """Each window holds its own label on the front, and no other."""
    wrong = []
    words = [(at, said) for at, said in seen.words() if at.y > fold]
    labels = {label_in(label, seen.spoken) for _, label in WINDOWS}
    for wide, label in WINDOWS:
        (left, low), (right, high) = spans[label]
        inside = [said for at, said in words if left < at.x < right and low < at.y < high]
        if [said for said in inside if said in labels] != [label_in(label, seen.spoken)]:
            wrong.append(finding(Card.LABEL, wide=wide, label=label))
    return Findings(0.0, tuple(wrong))


def _counts(kit: Kit, unit: Length) -> range:
    """Around the most pairs that the sett of a kit holds in the window."""
    first = max(1, most_pairs(kit, unit) - _BEFORE)
    return range(first, first + _ROWS)
