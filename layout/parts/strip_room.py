"""How long a strip is, and whether its words and totals find room on it."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from layout.drawing.metrics import FontMetrics
from layout.drawing.typeset import SMALL
from layout.messages.roles import SheetNeed
from layout.plan import Plan
from layout.values.errors import FieldError
from layout.values.units import say_length

NUMBER_GAP = 0.8
"""Every running total stands this far from its unit line, inside the unit that it counts."""

_PAST_LIMIT, _PAST_LIMIT_LOW, _PAST_MARK, _OFF_SIDES = 2.0, 0.9, 0.6, 1.0
_FREE = 0.75  # from an upright to the middle of a cross
_SHORTEST = 150.0  # where the frame has room, a strip is at least so long, for its words
_LEAST = 24.0  # no word would fit a shorter one
_LIMIT_LINE = 0.8  # what a bold limit takes off the first unit, with a gap to the total


def reach(plan: Plan, contacts: Sequence[float], *, low: bool, beside: float = 0.0) -> tuple[float, float]:
    """Left and right edge of the paper: past the limits and the outer marks, and long enough for the words.

    As much as `beside` belongs to a mark at each of its sides: a hole, or half a notch.

    A `low` strip must lie on small sheets: where a mark outside a limit makes it longer, it ends closer to the limits.
    """
    frame, half = plan.kit.frame, float(plan.warp.width / 2)
    between_sides = float(frame.outer_width.mm - 2 * frame.side_width.mm) / 2 - _OFF_SIDES
    least = min(_SHORTEST / 2, between_sides)
    past_mark = beside + _PAST_MARK
    longer = max(map(abs, contacts)) + past_mark > half + _PAST_LIMIT
    past = half + (_PAST_LIMIT_LOW if low and longer else _PAST_LIMIT)
    return min(-past, min(contacts) - past_mark, -least), max(past, max(contacts) + past_mark, least)


def free_of(uprights: Sequence[float], first: float, inward: int) -> float:
    """Where a register cross clears all `uprights`: at x = `first`, else midway between the next two that allow it."""
    gaps = pairwise(sorted(uprights, key=lambda x: inward * x))
    midways = ((one + other) / 2 for one, other in gaps if inward * ((one + other) / 2 - first) > 0)
    return next((x for x in (first, *midways) if all(abs(x - upright) >= _FREE for upright in uprights)), first)


def check_length(plan: Plan, length: float) -> None:
    """FieldError where a strip of `length` mm is too short for words."""
    if length < _LEAST:
        frame = plan.kit.frame
        least = f"{_LEAST + 2 * _OFF_SIDES:g}"
        got = f"{float(frame.outer_width.mm - 2 * frame.side_width.mm):g} mm"
        raise FieldError("frame.outer_width", SheetNeed.STRIP_ROOM, got, 'outer_width = "12 cm"', least=least)


def check_room(plan: Plan, length: float, metrics: FontMetrics) -> None:
    """The same, and FieldError where a marking unit is too small for its totals."""
    check_length(plan, length)
    unit = plan.warp.sett.unit
    most = len(plan.warp.far)
    room = metrics.width(str(most), SMALL) + NUMBER_GAP + _LIMIT_LINE
    if plan.warp.width >= unit.mm and float(unit.mm) < room:
        example, values = '"1/2 in"' if unit.imperial else '"1 cm"', {"least": f"{room:.1f}", "most": most}
        got = say_length(unit)
        raise FieldError("sett.marking_unit", SheetNeed.STRIP_TOTALS, got, f"marking_unit = {example}", **values)
