"""The table that is engraved on the cut wrap gauge: what pairs counted in its window come to in the kit's own unit."""

from __future__ import annotations

from collections.abc import Sequence
from math import floor

from layout.drawing.metrics import FontMetrics
from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve, Point, Text, line, rectangle
from layout.drawing.typeset import SMALL, longest_word, wrap
from layout.messages.catalogue import Role
from layout.messages.roles import CutWord
from layout.parts.gauge_table import gauge_table, window_of
from layout.plan import Plan
from layout.sett.marking_units import NAILS, PEGS, SINGLY, WINDS, CountedThing
from layout.values.units import say_length

ROW = 3.7
"""From baseline to baseline of the table, in mm."""

MOST = 5
"""So many rows are engraved, where its heads leave room: the kit's own and those next to it."""

_RULE, _BELOW_RULE, _CLEAR, _APART = 1.6, 1.3, 0.9, 2.0
_COUNTED: dict[CountedThing, Role] = {
    WINDS: CutWord.GAUGE_WINDS,
    PEGS: CutWord.GAUGE_PEGS,
    NAILS: CutWord.GAUGE_NAILS,
    SINGLY: CutWord.GAUGE_ENDS,
}


def engraved_table(
    plan: Plan, across: tuple[float, float], down: tuple[float, float], metrics: FontMetrics
) -> tuple[list[Text], list[Curve]]:
    """Heads and rows from side to side and from top to foot, in mm; and what is scored, a rule and a frame.

    The rule lies under the heads, the frame round the row of the kit's own sett. Where the heads leave no room
    for three rows, or one has a word that is wider than its column, there is no table.
    """
    (left, right), (top, foot) = across, down
    table, wide = gauge_table(plan), (right - left) / 3
    heads = [wrap(words, SMALL, wide - _APART, metrics, Pen.ENGRAVE) for words in _heads(plan, table.over)]
    first = top - metrics.cap * SMALL
    rule = first - (max(map(len, heads)) - 1) * ROW - _RULE
    begin = rule + _RULE - _BELOW_RULE - ROW
    count = min(MOST, floor((begin - foot) / ROW) + 1)
    if count < 3 or any(
        longest_word(words, SMALL, metrics, Pen.ENGRAVE) > wide - _APART for words in _heads(plan, table.over)
    ):
        return [], []
    rows = [(each[0], *each[1 + 2 * table.own : 3 + 2 * table.own]) for each in table.rows[:count]]
    lines = [(first - k * ROW, [head[k : k + 1] for head in heads]) for k in range(max(map(len, heads)))]
    lines += [(begin - k * ROW, [[field] for field in row]) for k, row in enumerate(rows)]
    words = [
        _middled(each, Point(left + (column + 0.5) * wide, y), metrics)
        for y, fields in lines
        for column, field in enumerate(fields)
        for each in field
    ]
    scored = [line(Point(left, rule), Point(right, rule), Pen.SCORE)]
    own = [k for k, row in enumerate(rows) if row[0] == _own_count(plan)]
    scored += [_frame(left, right, begin - k * ROW, metrics) for k in own]
    return words, scored


def _heads(plan: Plan, over: str) -> Sequence[str]:
    say, unit = plan.words.say, plan.warp.sett.unit
    return (
        say(CutWord.GAUGE_PAIRS, window=over),
        say(CutWord.GAUGE_EPI if unit.imperial else CutWord.GAUGE_PER_CM),
        say(_COUNTED[plan.warp.sett.by], unit=say_length(unit)),
    )


def _own_count(plan: Plan) -> str:
    """The most whole pairs that the kit's own sett holds in the window."""
    sett = plan.warp.sett
    return str(floor(sett.low * window_of(sett.unit).mm))


def _middled(words: str, at: Point, metrics: FontMetrics) -> Text:
    wide = metrics.width(words, SMALL, Pen.ENGRAVE)
    return Text(Point(at.x - wide / 2, at.y), SMALL, words, pen=Pen.ENGRAVE)


def _frame(left: float, right: float, baseline: float, metrics: FontMetrics) -> Curve:
    """Half way to the rows above and below."""
    return rectangle(left, baseline - _CLEAR, right, baseline + metrics.cap * SMALL + _CLEAR, Pen.SCORE)
