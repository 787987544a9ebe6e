"""The table that is engraved on a cut wrap gauge: every field by the kit's own numbers, the own row in its frame."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction
from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.drawing.shapes import Box, Curve, Point
from layout.messages.catalogue import Role
from layout.messages.roles import CutWord, Gauge
from layout.plan import Plan
from layout.values.numerals import say_number
from layout.values.units import say_length
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.proof_cut import Cut
from templates_gen.verify import LIMIT
from templates_gen.verify.alike import in_rows
from templates_gen.verify.cut_parts.found_cuts import FoundCut, xs, ys
from templates_gen.verify.cut_parts.lettering import SMALL, Area, spot_of
from templates_gen.verify.finding import NOTHING, Finding, Findings, finding
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.pairs import laid_of, most_pairs, window_of

_LEAST, _MOST, _BEFORE = 3, 5, 2  # rows, and how many of them stand before the kit's own: stated again on purpose
_COLUMN = 18.0  # mm: no line of a head is wider
_NONE = "\N{EN DASH}"
_COUNTED: dict[Role, Role] = {
    Gauge.WINDS: CutWord.GAUGE_WINDS,
    Gauge.PEGS: CutWord.GAUGE_PEGS,
    Gauge.NAILS: CutWord.GAUGE_NAILS,
    Gauge.ENDS: CutWord.GAUGE_ENDS,
}


class Field(NamedTuple):
    """Words that were read, and the middle of their baseline."""

    spot: Point
    words: str


def prove_table(plan: Plan, cut: FoundCut, there: Sequence[Area]) -> tuple[Findings, list[Area]]:
    """What is wrong with the table, and all areas that are none of its fields.

    There may be no table only where a head would take more than two lines, or has a word wider than a line.
    """
    scored = cut.paths(Pen.SCORE)
    rules, frames = [p for p in scored if not p.closed], [p for p in scored if p.closed]
    heads = _heads(plan)
    if not scored:
        wide = any(_width(head) > 2 * _COLUMN or max(map(_width, head.split())) > _COLUMN for head in heads)
        return (NOTHING if wide else Findings(0.0, (finding(Cut.NO_TABLE),))), list(there)
    if len(rules) != 1 or len(frames) > 1:
        return Findings(0.0, (finding(Cut.TABLE_LINES, rules=len(rules), frames=len(frames)),)), list(there)
    rows, rest = _read(plan, there, min(xs(rules[0])))
    rule = rules[0].start.y
    wrong = [*_head_fields(heads, [row for row in rows if row[0].spot.y > rule])]
    body = [row for row in rows if row[0].spot.y < rule]
    wrong += [*_body(plan, body), *_columns(rows), *_framed(plan, body, frames, rules[0])]
    return Findings(0.0, tuple(wrong)), rest


def _width(words: str) -> float:
    return metrics().width(words, SMALL, Pen.ENGRAVE)


def _heads(plan: Plan) -> tuple[str, str, str]:
    say, unit = plan.words.say, plan.warp.sett.unit
    counted = _COUNTED[truth_of(plan.kit).counted]
    return (
        say(CutWord.GAUGE_PAIRS, window=say_length(window_of(unit), plan.words)),
        say(CutWord.GAUGE_EPI if unit.imperial else CutWord.GAUGE_PER_CM),
        say(counted, unit=say_length(unit, plan.words)),
    )


def _wanted(plan: Plan) -> Iterator[tuple[str, str, str]]:
    """As many rows as there may be."""
    unit = plan.warp.sett.unit
    window, per = window_of(unit).mm, Fraction(127, 5) if unit.imperial else Fraction(10)
    first = max(1, most_pairs(plan.kit, unit) - _BEFORE)
    for count in range(first, first + _MOST):
        laid, ends = laid_of(plan.kit, count / window, unit.mm)
        figures = (say_number(ends / unit.mm * per), say_number(laid)) if laid else (_NONE, _NONE)
        yield str(count), plan.words.figure(figures[0]), plan.words.figure(figures[1])


def _read(plan: Plan, there: Sequence[Area], left: float) -> tuple[list[list[Field]], list[Area]]:
    """What stands to the right of `left` and reads as a field of the table, row by row; and everything else."""
    known = {field for row in _wanted(plan) for field in row}
    for head in _heads(plan):
        words = head.split()
        known |= {" ".join(words[a:b]) for a in range(len(words)) for b in range(a + 1, len(words) + 1)}
    found, rest = list[Field](), list[Area]()
    for area in there:
        inside = all(point.x >= left for contour in area.contours for point in contour)
        spots = ((spot_of(area, words, SMALL), words) for words in known) if inside else ()
        field = next((Field(spot, words) for spot, words in spots if spot), None)
        if field is None:
            rest.append(area)
        else:
            found.append(field)
    return in_rows(found, lambda field: field.spot), rest


def _head_fields(heads: Sequence[str], rows: Sequence[Sequence[Field]]) -> Iterator[Finding]:
    """Whether the lines of each column, put together, are its head."""
    if not rows or len(rows[0]) != len(heads):
        yield finding(Cut.TABLE_HEADS)
        return
    for top, head in zip(rows[0], heads, strict=True):
        column = [field.words for row in rows for field in row if abs(field.spot.x - top.spot.x) <= LIMIT]
        if " ".join(column) != head:
            yield finding(Cut.NOT_ENGRAVED, words=head)


def _body(plan: Plan, rows: Sequence[Sequence[Field]]) -> Iterator[Finding]:
    """Whether the rows are the first of those that there may be."""
    wanted = list(_wanted(plan))
    if len(rows) < _LEAST:
        yield finding(Cut.TABLE_ROWS, rows=len(rows), least=_LEAST)
    for row, fields in zip(rows, wanted, strict=False):
        if tuple(field.words for field in row) != fields:
            yield finding(Cut.TABLE_ROW, found=" ".join(field.words for field in row), wanted=" ".join(fields))
    if len(rows) > len(wanted):
        yield finding(Cut.TABLE_ROWS, rows=len(rows), least=_LEAST)


def _columns(rows: Sequence[Sequence[Field]]) -> Iterator[Finding]:
    """Whether every field stands under one of the three heads."""
    middles = [field.spot.x for field in rows[0]] if rows else []
    fields = (field for row in rows for field in row)
    if any(all(abs(field.spot.x - x) > LIMIT for x in middles) for field in fields):
        yield finding(Cut.TABLE_COLUMNS)


def _framed(plan: Plan, rows: Sequence[Sequence[Field]], frames: Sequence[Curve], rule: Curve) -> Iterator[Finding]:
    """Whether the frame is round the kit's own row, as wide as the rule, and round no other; without that row, none."""
    own = [row for row in rows if row[0].words == str(most_pairs(plan.kit, plan.warp.sett.unit))]
    boxes = [(min(xs(frame)), min(ys(frame)), max(xs(frame)), max(ys(frame))) for frame in frames]
    sides = sorted(xs(rule))
    right = len(boxes) == len(own) and all(
        abs(box[0] - sides[0]) <= LIMIT
        and abs(box[2] - sides[1]) <= LIMIT
        and [row for row in rows if _inside(row, box)] == own
        and not any(_meets(row, box) for row in rows if row not in own)
        for box in boxes
    )
    if not right:
        yield finding(Cut.TABLE_FRAME)


def _inside(row: Sequence[Field], box: Box) -> bool:
    return box[1] < row[0].spot.y and row[0].spot.y + metrics().cap * SMALL < box[3]


def _meets(row: Sequence[Field], box: Box) -> bool:
    return box[1] < row[0].spot.y + metrics().cap * SMALL and row[0].spot.y < box[3]
