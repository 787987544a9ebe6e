"""Which messages the templates and their sheets carry."""

from __future__ import annotations

from layout.drawing.typeset import is_tall
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet, Strip
from layout.parts.phrases import Phrase
from layout.parts.strips.strips import STRIPS
from layout.plan import Plan
from layout.warps.warp import End

_SEEN = {"near": Strip.NEAR_FROM_FACE, "far": Strip.FAR_FROM_FACE}
_TIE_ON, _TIE_OFF = (Strip.TIE_ON_LEFT, Strip.TIE_ON_RIGHT), (Strip.TIE_OFF_LEFT, Strip.TIE_OFF_RIGHT)


def title_of(plan: Plan, end: End) -> str:
    """What the strip is for this kind of frame, and for which end."""
    ends = plan.kit.frame.ends
    return ENGLISH.say(STRIPS.of(ends).titles(ends)[end])


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a template; `up` is +1 where the weaving lies above it on the paper, `brief` spares room."""
    forward = plan.warp.toward > 0
    name = [] if brief and is_tall(plan.kit.name) else [Phrase(plan.kit.name, optional=brief)]
    return [
        *_sides(plan, end, forward=forward),
        Phrase(ENGLISH.say(Strip.CENTRE), "centre"),
        Phrase(ENGLISH.say(Strip.EDGE_TO_WEAVING), arrow="up" if up > 0 else "down"),
        Phrase(ENGLISH.say(_SEEN[end])),
        Phrase(ENGLISH.say(_way(plan)), arrow="right" if forward else "left"),
        Phrase(plan.sett_words, optional=brief),
        *map(Phrase, plan.doubled),
        *name,
    ]


def _way(plan: Plan) -> Strip:
    """How the thread goes."""
    return STRIPS.of(plan.kit.frame.ends).way(plan)


def _sides(plan: Plan, end: End, *, forward: bool) -> list[Phrase]:
    """Left and right, with the tie-on and the tie-off where they are: an odd warp is tied off at the far end."""
    first = end == "near"
    last = (end == "far") == bool(plan.warp.ends % 2)
    starts, ends = (0, 1) if forward else (1, 0)
    tied: list[Strip | None] = [None, None]
    if first:
        tied[starts] = _TIE_ON[starts]
    if last:
        tied[ends] = _TIE_OFF[ends]
    left, right = tied
    return [
        Phrase(ENGLISH.say(left or Strip.LEFT), "left", "left" if left else ""),
        Phrase(ENGLISH.say(right or Strip.RIGHT), "right", "right" if right else ""),
    ]


def notes_for(plan: Plan, end: End, *, low: bool, flush: bool) -> tuple[str, ...]:
    """How to use the strip, for the head of its sheet; `flush` where its edge lies at the frame's outer edge."""
    ends = plan.kit.frame.ends
    use = STRIPS.of(ends).use(ends, plan, low=low, flush=flush)
    at_bottom = (end == "near") == (plan.kit.weaving.near_end == "bottom")
    return (ENGLISH.paragraph([ENGLISH.say(Sheet.FOR_BOTTOM if at_bottom else Sheet.FOR_TOP), *use]),)
