"""Which messages a spacing guide carries, and what is known of the ends where it lies."""

from __future__ import annotations

from typing import NamedTuple

from layout.drawing.pens import Pen
from layout.estimate.headings import heading_height
from layout.messages.roles import Guide
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.values.units import in_unit, say_number
from layout.warps.fan import fan_of
from layout.warps.warp import End

_INCH = 25.4
SEEN = {"near": Guide.NEAR_FROM_FACE, "far": Guide.FAR_FROM_FACE}
ENDS: tuple[End, End] = ("near", "far")


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a guide; `up` is +1 where the weaving lies above it on the paper, a `brief` one spares rows."""
    say = plan.words.say
    return [
        Phrase(say(Guide.LEFT), "left"),
        Phrase(say(Guide.RIGHT), "right"),
        Phrase(say(Guide.CENTRE), "centre"),
        Phrase(say(SEEN[end]), pen=Pen.STRONG),
        Phrase(say(Guide.EDGE), arrow="up" if up > 0 else "down", optional=brief),
        Phrase(say(Guide.AWAY, away=lies(plan, end).away), optional=True),
    ]


class Lie(NamedTuple):
    """How the ends lie at a heading, lengths in words.

    `away` is how far it is from the outer edge of its frame end, `off` how far ends are off their places there, empty
    where they lie right by themselves; `free` from how far on they do, None where they do nowhere.
    """

    away: str
    off: str
    free: str | None


def lies(plan: Plan, end: End) -> Lie:
    """How the ends lie at the heading of `end`."""
    warp, fan = plan.warp, fan_of(plan.kit.frame, plan.warp)
    height, imperial = heading_height(plan.kit, plan.amounts.woven_mm[1], end), warp.sett.unit.imperial
    away = _said(height if end == "near" else fan.high - height, imperial)
    free = fan.needs_no_fingers()
    if free and free[0] <= height <= free[1]:
        return Lie(away, "", away)
    off = _fine(fan.off(height), imperial)
    return Lie(away, off, _said(free[0] if end == "near" else fan.high - free[1], imperial) if free else None)


def leaves_thickness_out(plan: Plan) -> bool:
    """Whether where ends lie depends on a thickness of the warp that nobody said."""
    return plan.kit.frame.ends.thread_moves_ends and plan.warp.thickness is None


def _said(mm: float, imperial: bool) -> str:
    """A height, to the millimetre or the tenth of an inch."""
    return in_unit(say_number(mm / _INCH, 1), "in") if imperial else in_unit(say_number(mm, 0), "mm")


def _fine(mm: float, imperial: bool) -> str:
    """A small distance, to the tenth of a millimetre or the hundredth of an inch; ten times finer where it is small."""
    if imperial:
        return in_unit(say_number(mm / _INCH, 2 if mm >= _INCH / 10 else 3), "in")
    return in_unit(say_number(mm, 1 if mm >= 1 else 2), "mm")
