"""What to mind when a frame is warped."""

from __future__ import annotations

from collections.abc import Iterator

from layout.drawing.sheet import OnScreen
from layout.drawing.typeset import LEAD, SMALL
from layout.messages.roles import Winding
from layout.plan import Plan
from layout.values.units import say_length


def cautions(plan: Plan) -> Iterator[tuple[float, str]]:
    """The warp's tension, a rod that is drawn, a frame whose height can be adjusted: how large, and what is said."""
    say, frame = plan.words.say, plan.kit.frame
    yield LEAD, say(Winding.TENSION)
    if plan.warp.kind == "rod":
        yield LEAD, say(Winding.DRAW_ROD)
    if frame.travel is not None:
        yield SMALL, _tighten(plan)


def before_it_is_made(plan: Plan) -> tuple[OnScreen, ...]:
    """What a person should know of a tensioner before anything is printed; its sheets say it too."""
    return () if plan.kit.frame.travel is None else (OnScreen(_tighten(plan)),)


def _tighten(plan: Plan) -> str:
    frame = plan.kit.frame
    low, high = (say_length(each.outer_height) for each in (frame, frame.tightened))
    return plan.words.say(Winding.TIGHTEN, low=low, tight=high)
