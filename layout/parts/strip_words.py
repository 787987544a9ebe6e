"""Which messages the marking strips and templates and their sheets carry."""

from __future__ import annotations

from fractions import Fraction

from layout.drawing.typeset import is_tall
from layout.frames.frame import NotchedEnd, PeggedEnd, RoundBar
from layout.messages.english import ENGLISH
from layout.messages.roles import Sheet, Strip
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.values.units import say_length
from layout.warps.warp import End

_TITLES = {
    "marking": {"near": Strip.MARKING_NEAR, "far": Strip.MARKING_FAR},
    "notching": {"near": Strip.NOTCHING_NEAR, "far": Strip.NOTCHING_FAR},
    "drilling": {"near": Strip.DRILLING_NEAR, "far": Strip.DRILLING_FAR},
}
_SEEN = {"near": Strip.NEAR_FROM_FACE, "far": Strip.FAR_FROM_FACE}
_TIE_ON, _TIE_OFF = (Strip.TIE_ON_LEFT, Strip.TIE_ON_RIGHT), (Strip.TIE_OFF_LEFT, Strip.TIE_OFF_RIGHT)
_IN_NOTCHES = {
    Fraction(1, 2): (Strip.WAY_EVERY_SECOND, Strip.HELD_EVERY_SECOND),
    Fraction(1): (Strip.WAY_EVERY, Strip.HELD_EVERY),
    Fraction(2): (Strip.WAY_TWO, Strip.HELD_TWO),
}
"""By how many ends lie in a notch that is there already: the way of the thread, and how the strip is used."""


def title_of(plan: Plan, end: End) -> str:
    """What the strip is for this kind of frame, and for which end."""
    ends = plan.kit.frame.ends
    kind = "marking"
    if isinstance(ends, PeggedEnd):
        kind = "drilling"
    elif isinstance(ends, NotchedEnd) and ends.density is None:
        kind = "notching"
    return ENGLISH.say(_TITLES[kind][end])


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a strip; `up` is +1 where the weaving lies above it on the paper, `brief` spares rows and room."""
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
    if plan.warp.kind == "wound":
        return Strip.WAY_BACK_FIRST if plan.kit.weaving.first_pass == "back" else Strip.WAY_FACE_FIRST
    if plan.warp.kind == "pegged":
        return Strip.WAY_PEGS
    use = plan.warp.sett.to_a_notch
    return _IN_NOTCHES[use][0] if use else Strip.WAY_TEETH


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
    if isinstance(ends, PeggedEnd):
        use = _drilling(ends, flush=flush)
    elif isinstance(ends, NotchedEnd):
        use = _notching(ends, low=low) if ends.density is None else _choosing(plan)
    else:
        use = [ENGLISH.say(_WRAPPING[isinstance(ends, RoundBar), low])]
    at_bottom = (end == "near") == (plan.kit.weaving.near_end == "bottom")
    return (ENGLISH.paragraph([ENGLISH.say(Sheet.FOR_BOTTOM if at_bottom else Sheet.FOR_TOP), *use]),)


_WRAPPING = {
    (True, True): Strip.ALONG_BAR,
    (True, False): Strip.WRAP_BAR,
    (False, True): Strip.ALONG_EDGE,
    (False, False): Strip.WRAP_EDGE,
}
"""By whether the end is a round bar, and whether the strip is of the low form."""


def _notching(ends: NotchedEnd, *, low: bool) -> list[str]:
    width, depth = say_length(ends.notch_width), say_length(ends.notch_depth)
    size = ENGLISH.say(Strip.NOTCH_SIZE, width=width, depth=depth)
    return [ENGLISH.say(Strip.FLUSH if low else Strip.OVER_EDGE), size, ENGLISH.say(Strip.SAW)]


def _choosing(plan: Plan) -> list[str]:
    use = plan.warp.sett.to_a_notch or Fraction(1)
    empty = [Strip.EMPTY] if use < 1 else []
    return [ENGLISH.say(role) for role in (_IN_NOTCHES[use][1], *empty, Strip.DRIFT)]


def _drilling(ends: PeggedEnd, *, flush: bool) -> list[str]:
    lay = ENGLISH.say(Strip.FLUSH) if flush else ENGLISH.say(Strip.FROM_EDGE, outer=say_length(ends.edge_distance))
    size = ENGLISH.say(Strip.PEG_SIZE, peg=say_length(ends.peg_diameter), apart=say_length(ends.row_distance))
    return [lay, size, ENGLISH.say(Strip.DRILL)]
