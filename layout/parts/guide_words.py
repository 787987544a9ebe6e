"""What the spacing guides and their sheets say, in one place."""

from __future__ import annotations

from layout.drawing.typeset import is_tall
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.reckoning.headings import heading_height
from layout.units import say_number
from layout.warps.fan import fan_of
from layout.warps.warp import End

TENTH = "within a tenth of the pitch"
"""The tolerance of the fan in words."""

UNKNOWN = "the thickness of the warp is not known and left out"
"""Said between pegs, where a thicker thread holds the ends further apart."""

_INCH = 25.4


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a guide; `up` is +1 where the weaving lies above it on the paper, `brief` spares rows."""
    name = [] if brief and is_tall(plan.kit.name) else [Phrase(plan.kit.name, optional=brief)]
    return [
        Phrase("left", "left"),
        Phrase("right", "right"),
        Phrase("centre", "centre"),
        Phrase("this edge to the weaving", arrow="up" if up > 0 else "down"),
        Phrase(f"{end} heading, seen from the face"),
        Phrase(_layers(plan, brief=brief)),
        *(Phrase(words) for words in fan_words(plan, end, brief=brief)),
        Phrase(plan.sett_words, optional=brief),
        *name,
    ]


def _layers(plan: Plan, *, brief: bool) -> str:
    if "back" not in plan.warp.layers:
        return "every end lies on the face"
    return "long: face; short: back" if brief else "long marks: ends on the face; short: behind"


def fan_words(plan: Plan, end: End, *, brief: bool) -> tuple[str, ...]:
    """How far ends lie off their places at this heading, and from where on they need no help.

    Distances are from the outer edge of the frame end that the heading is next to. The `brief` words leave out what
    the sheet says beside them.
    """
    frame, warp = plan.kit.frame, plan.warp
    fan, height = fan_of(frame, warp), heading_height(plan.kit, end)
    free = fan.needs_no_fingers()
    within = "" if brief else TENTH
    left_out = (UNKNOWN,) if warp.kind == "pegged" and warp.thickness is None else ()
    if free and free[0] <= height <= free[1]:
        return (f"the ends lie right by themselves here{within and ', ' + within}", *left_out)
    imperial = warp.sett.unit.imperial
    away = _said(height if end == "near" else fan.high - height, imperial)
    off = f"{'' if brief else 'heading '}{away} from the outer edge: ends up to {_fine(fan.off(height), imperial)} off"
    if free is None:
        return off, "pushing needed at every height", *left_out
    settled = _said(free[0] if end == "near" else fan.high - free[1], imperial)
    return off, f"no push needed from {settled} on{within and ': ends ' + within}", *left_out


def _said(mm: float, imperial: bool) -> str:
    """A height, to the millimetre or the tenth of an inch."""
    return f"{say_number(mm / _INCH, 1)} in" if imperial else f"{say_number(mm, 0)} mm"


def _fine(mm: float, imperial: bool) -> str:
    """A small distance, to the tenth of a millimetre or the hundredth of an inch; ten times finer where it is small."""
    if imperial:
        return f"{say_number(mm / _INCH, 2 if mm >= _INCH / 10 else 3)} in"
    return f"{say_number(mm, 1 if mm >= 1 else 2)} mm"


def notes_for(plan: Plan, end: End, *, brief: bool) -> str:
    """How to use the guide, for the head of its sheet."""
    where = "bottom" if (end == "near") == (plan.kit.weaving.near_end == "bottom") else "top"
    side = {"bottom": "below", "top": "above"}[where]
    more = f" No pushing is needed where ends lie {TENTH} of their places." if brief else ""
    return (
        f"For the heading at the {where} of the frame as it stands before you. Cut it out, the long edge along a rule, "
        f"glue it on card, lay it on the warp {side} the heading, centre on centre, push each end to its mark.{more}"
    )
