"""A wrap gauge, as its file shows it: the windows by the inner edges of the ink, the table by the kit's own numbers."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction
from functools import partial
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.kit.kit import Kit
from layout.messages.catalogue import Role
from layout.messages.english import ENGLISH
from layout.messages.roles import Gauge
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import Length, say_length
from templates_gen.messages.roles.proof_printed import Card
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.pairs import laid_evenly, laid_of, most_pairs, window_of
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.said import account, check_head, check_heads, words_on

_WINDOWS = {
    (Card.EDGES_FOLD, Card.WINDOW_FOLD): (25.4, 50.8),  # 1 in and 2 in
    (Card.EDGES_LOWER, Card.WINDOW_LOWER): (50.0,),  # 5 cm
}
_LABELS = {25.4: "1 in", 50.8: "2 in", 50.0: "5 cm"}
_LADDER = {True: (12.7, 25.4, 50.8), False: (10.0, 20.0, 40.0, 50.0, 100.0)}
"""The usual marking units in mm by whether they are in inches, said once more on purpose."""
_COLUMNS, _ROWS, _BEFORE = 3, 6, 2
_ONE_ROW = 0.5  # words whose baselines are closer than this, in mm, stand in one row


class Asked(NamedTuple):
    """What the table must hold: a row for each of `counts`, in the system and next to `unit`; what is `counted` and how
    many of it (and how many ends) are `laid` of a sett measured in a unit.
    """

    unit: Length
    counts: Sequence[int]
    counted: Role
    laid: Callable[[Fraction, Fraction], tuple[Fraction, Fraction]]


def prove_gauge(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The one card: windows and outline from its lines; labels and table where words are real (`on_paper`)."""
    kit, sett = plan.kit, plan.warp.sett
    asked = Asked(sett.unit, _counts(kit, sett.unit), truth_of(kit).counted, partial(laid_of, kit))
    total = prove_card(asked, pieces, on_paper=on_paper)
    if total.problems or not on_paper:
        return total
    warp_words = said_of(kit, sett.per_mm, sett.unit)
    return total + check_heads(pieces, ENGLISH.say(Gauge.TITLE), warp_words, [ENGLISH.say(Gauge.NOTE)])


def prove_any_gauge(unit: Length, ends: str, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The card without a kit: usual counts, for frame ends of the kind `ends`."""
    counted, each = _OF_ENDS[ends]
    total = prove_card(
        Asked(unit, _USUAL[unit.imperial], counted, partial(laid_evenly, each)), pieces, on_paper=on_paper
    )
    window = "2 in" if unit.imperial else "5 cm"
    head = [ENGLISH.say(Gauge.TITLE), ENGLISH.say(Gauge.ANY, window=window), ENGLISH.say(Gauge.NOTE)]
    return total + check_head(pieces, head) if on_paper else total


_USUAL = {True: range(8, 19, 2), False: range(10, 21, 2)}
_OF_ENDS = {
    "round bars": (Gauge.WINDS, 2),
    "flat ends": (Gauge.WINDS, 2),
    "notched ends": (Gauge.ENDS, 1),
    "pegged ends": (Gauge.PEGS, 2),
    "nails": (Gauge.NAILS, 2),
}
"""What is counted off on each kind of frame end, and how many ends each lays."""


def prove_card(asked: Asked, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The card itself."""
    if len(pieces) != 1:
        return Findings(0.0, (finding(Card.PIECES, pieces=len(pieces)),))
    (seen,) = pieces
    edges = [path for path in seen.lines() if path.pen is Pen.EDGE]
    total = _upright(edges)
    found: dict[float, tuple[float, float]] = {}
    for (where, wanted), y in zip(_WINDOWS.items(), _long_edges(seen), strict=True):
        there = [path for path in edges if any(abs(point.y - y) <= LIMIT for point in path.points())]
        total += _windows(wanted, sorted(there, key=lambda path: path.start.x), where, found)
    if len(edges) != 2 * len(_LABELS):
        total += Findings(0.0, (finding(Card.EDGES, found=len(edges), wanted=2 * len(_LABELS)),))
    if total.problems:
        return total
    off = abs(found[50.8][0] - found[50.0][0])
    total += Findings(off, () if off <= LIMIT else (finding(Card.ONE_LINE),))
    return total + _words(asked, seen, found) if on_paper else total


def _upright(edges: Sequence[Curve]) -> Findings:
    lean = max((abs(path.start.x - path.steps[0].end.x) for path in edges), default=0.0)
    return Findings(lean, () if lean <= LIMIT else (finding(Card.UPRIGHT),))


def _long_edges(seen: FoundPart) -> tuple[float, float]:
    """The y of the fold and of the lower cut edge."""
    folds = [path.start.y for path in seen.lines() if path.pen is Pen.FOLD]
    cuts = [point.y for each in seen.paths(Pen.CUT) for point in each.points()]
    return max(folds, default=float("nan")), min(cuts, default=float("nan"))


def _windows(
    wanted: Sequence[float], edges: Sequence[Curve], where: tuple[Card, Card], found: dict[float, tuple[float, float]]
) -> Findings:
    """Each two neighbouring edges hold a window between their inks, as wide as the pen draws them."""
    if len(edges) != 2 * len(wanted):
        return Findings(0.0, (finding(where[0], found=len(edges), wanted=2 * len(wanted)),))
    total = NOTHING
    for wide, left, right in zip(wanted, edges[0::2], edges[1::2], strict=True):
        inner = left.start.x + left.pen.ink.width / 2, right.start.x - right.pen.ink.width / 2
        found[wide] = inner
        off = abs(inner[1] - inner[0] - wide)
        total += Findings(off, () if off <= LIMIT else (finding(where[1], wide=wide, micrometres=off * 1000),))
    return total


def _words(asked: Asked, seen: FoundPart, found: dict[float, tuple[float, float]]) -> Findings:
    """Whether each label stands in its own window, and every field of the table reads as the kit's numbers make it."""
    wrong = []
    words = list(seen.words())
    for wide, (left, right) in found.items():
        inside = [said for at, said in words if left < at.x < right and said in _LABELS.values()]
        if _LABELS[wide] not in inside:
            wrong.append(finding(Card.LABEL, wide=wide, label=_LABELS[wide]))
    fold, _ = _long_edges(seen)
    rows = _rows(sorted(((at.y, at.x, said) for at, said in words if at.y > fold), reverse=True))
    wanted = list(_table(asked))
    for row, said in zip(wanted, rows[-len(wanted) :], strict=False):
        if row != said:
            wrong.append(finding(Card.TABLE, found=" ".join(said), wanted=" ".join(row)))
    if len(rows) < len(wanted):
        wrong.append(finding(Card.ROWS, found=len(rows), wanted=len(wanted)))
    return Findings(0.0, tuple(wrong)) + _said(seen, [field for row in wanted for field in row], fold)


_BELOW, _ABOVE = (Gauge.TITLE, Gauge.WIND, Gauge.COUNT, Gauge.ALONE), (Gauge.WARP, Gauge.WEFT)


def _said(seen: FoundPart, table: Sequence[str], fold: float) -> Findings:
    """Every message of the card once and nothing else, on its side of the fold."""
    below, above = (list(map(ENGLISH.say, roles)) for roles in (_BELOW, _ABOVE))
    accounted = account(words_on([seen]), [*table, *_LABELS.values(), *below, *above])
    wrong = list(accounted.wrong)
    if not wrong:
        lower, upper = (
            max(accounted.places[said][0].y for said in below),
            min(accounted.places[said][0].y for said in above),
        )
        wrong += [] if lower < fold < upper else [finding(Card.SIDE)]
        warp, weft = (accounted.places[said][0] for said in above)
        wrong += [] if warp.x < weft.x else [finding(Card.LINES)]
    return Findings(0.0, tuple(wrong))


def _rows(words: Sequence[tuple[float, float, str]]) -> list[list[str]]:
    """Words from top to bottom, row by row, each from left to right."""
    rows: list[list[tuple[float, str]]] = []
    last = math.inf
    for y, x, said in words:
        if last - y > _ONE_ROW:
            rows.append([])
        rows[-1].append((x, said))
        last = y
    return [[said for _, said in sorted(row)] for row in rows]


def _counts(kit: Kit, unit: Length) -> range:
    """Around the most pairs that the sett of a kit holds in the window."""
    first = max(1, most_pairs(kit, unit) - _BEFORE)
    return range(first, first + _ROWS)


def _table(asked: Asked) -> Iterator[list[str]]:
    """Both heads and every row of the table."""
    inches, (window, over) = asked.unit.imperial, window_of(asked.unit)
    inch_or_cm = Fraction(127, 5) if inches else Fraction(10)
    units = _units(asked.unit)
    pairs, in_window = ENGLISH.say(Gauge.PAIRS, window=over).split("\n")
    yield [pairs, *(ENGLISH.say(Gauge.TO_UNIT, unit=say_length(each)) for each in units)]
    heads = (Gauge.EPI if inches else Gauge.PER_CM, asked.counted)
    yield [in_window, *map(ENGLISH.say, heads * len(units))]
    for count in asked.counts:
        row = [str(count)]
        for each in units:
            laid, ends = asked.laid(count / window, each.mm)
            row += [say_number(ends / each.mm * inch_or_cm), say_number(laid)] if laid else ["\N{EN DASH}"] * 2
        yield row


def _units(unit: Length) -> list[Length]:
    """The kit's unit and the two usual ones nearest to it: one on each side where there is one."""
    usual = [Length(Fraction(str(mm)), "in" if unit.imperial else "cm") for mm in _LADDER[unit.imperial]]
    below = [each for each in usual if each.mm < unit.mm]
    above = [each for each in usual if each.mm > unit.mm]
    others = [*below[-1:], *above[:1], *above[1:2], *below[-2:-1]][: _COLUMNS - 1]
    return sorted([unit, *others], key=lambda each: each.mm)
