"""Which messages the spacing guides and their sheets carry."""

from __future__ import annotations

from layout.drawing.typeset import is_tall
from layout.estimate.headings import heading_height
from layout.messages.english import ENGLISH
from layout.messages.roles import Guide, Strip
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.values.units import say_number
from layout.warps.fan import fan_of
from layout.warps.warp import End

_INCH = 25.4
_TITLES = {"near": Guide.TITLE_NEAR, "far": Guide.TITLE_FAR}
_SEEN = {"near": Guide.NEAR_FROM_FACE, "far": Guide.FAR_FROM_FACE}


def title_of(end: End) -> str:
    """Which guide it is."""
    return ENGLISH.say(_TITLES[end])


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a guide; `up` is +1 where the weaving lies above it on the paper, `brief` spares rows."""
    name = [] if brief and is_tall(plan.kit.name) else [Phrase(plan.kit.name, optional=brief)]
    return [
        Phrase(ENGLISH.say(Strip.LEFT), "left"),
        Phrase(ENGLISH.say(Strip.RIGHT), "right"),
        Phrase(ENGLISH.say(Strip.CENTRE), "centre"),
        Phrase(ENGLISH.say(Strip.EDGE_TO_WEAVING), arrow="up" if up > 0 else "down"),
        Phrase(ENGLISH.say(_SEEN[end])),
        Phrase(ENGLISH.say(_layers(plan, brief=brief))),
        *(Phrase(words) for words in fan_words(plan, end, brief=brief)),
        Phrase(plan.sett_words, optional=brief),
        *name,
    ]


def _layers(plan: Plan, *, brief: bool) -> Guide:
    if "back" not in plan.warp.layers:
        return Guide.ALL_ON_FACE
    return Guide.LAYERS_BRIEF if brief else Guide.LAYERS


def fan_words(plan: Plan, end: End, *, brief: bool) -> tuple[str, ...]:
    """How far ends lie off their places at this heading, and from where on they need no help.

    Distances are from the outer edge of the frame end that the heading is next to. The `brief` words leave out what
    the sheet says beside them.
    """
    frame, warp = plan.kit.frame, plan.warp
    fan, height = fan_of(frame, warp), heading_height(plan.kit, plan.amounts.woven_mm[1], end)
    free = fan.needs_no_fingers()
    unknown = frame.ends.thread_moves_ends and warp.thickness is None
    left_out = (ENGLISH.say(Guide.UNKNOWN_THICKNESS),) if unknown else ()
    if free and free[0] <= height <= free[1]:
        return (ENGLISH.say(Guide.BY_THEMSELVES_BRIEF if brief else Guide.BY_THEMSELVES), *left_out)
    imperial = warp.sett.unit.imperial
    away = _said(height if end == "near" else fan.high - height, imperial)
    off = ENGLISH.say(Guide.OFF_BRIEF if brief else Guide.OFF, away=away, off=_fine(fan.off(height), imperial))
    if free is None:
        return off, ENGLISH.say(Guide.ALWAYS_PUSH), *left_out
    settled = _said(free[0] if end == "near" else fan.high - free[1], imperial)
    return off, ENGLISH.say(Guide.NO_PUSH_BRIEF if brief else Guide.NO_PUSH, away=settled), *left_out


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
    at_bottom = (end == "near") == (plan.kit.weaving.near_end == "bottom")
    sides = (Guide.USE_BOTTOM, Guide.USE_TOP)
    if end == "far" and plan.warp.kind == "rod":
        sides = (Guide.USE_ROD_BOTTOM, Guide.USE_ROD_TOP)
    use = [sides[not at_bottom], *([Guide.TENTH] if brief else [])]
    return ENGLISH.paragraph([ENGLISH.say(role) for role in use])
