"""The marking strips of every kind of frame end that a warp is wound round, by the kind's name."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.messages.roles import Marking
from layout.parts.marking.levels import Levels, flat_end, on_the_line, round_bar
from layout.parts.marking.strip import marking_strip
from layout.plan import Plan
from layout.values.errors import LayoutError
from layout.warps.warp import End


class Wrapped(NamedTuple):
    """How a strip lies on one kind of frame end; None for `levels` where the end is too thin for the full form."""

    levels: Callable[[Any], Levels | None]


MARKING: ByKind[Wrapped] = ByKind(
    "marking strips",
    {
        RoundBar.name: Wrapped(lambda ends: round_bar(ends.half_turn_mm)),
        FlatEnd.name: Wrapped(lambda ends: flat_end(ends.half_turn_mm)),
    },
)


def wrapped_strip(
    plan: Plan, end: End, metrics: FontMetrics, *, low: bool = False, joints: Sequence[float] = ()
) -> Part:
    """The marking strip of `end`; `low` gives the form with the outermost line only.

    Raises LayoutError where the full form cannot be had on this bar.
    """
    ends = plan.kit.frame.ends
    levels = on_the_line() if low else MARKING.of(ends).levels(ends)
    if levels is None:
        raise LayoutError(Marking.TOO_THIN)
    return marking_strip(plan, end, metrics, levels, joints=joints)
