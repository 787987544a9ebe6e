"""What the marking strips and their sheets say, in one place."""

from __future__ import annotations

from layout.drawing.typeset import is_tall
from layout.frames.frame import RoundBar
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.warps.warp import End


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a strip; `up` is +1 where the weaving lies above it on the paper, `brief` spares rows and room."""
    weaving, forward = plan.kit.weaving, plan.warp.toward > 0
    name = [] if brief and is_tall(plan.kit.name) else [Phrase(plan.kit.name, optional=brief)]
    behind = "behind the frame" if weaving.first_pass == "back" else "on the face"
    return [
        *_sides(end, forward=forward),
        Phrase("centre", "centre"),
        Phrase("this edge to the weaving", arrow="up" if up > 0 else "down"),
        Phrase(f"{end} end, seen from the face"),
        Phrase(f"first pass {behind}; the winds go on this way", arrow="right" if forward else "left"),
        Phrase(plan.sett_words, optional=brief),
        *name,
    ]


def _sides(end: str, *, forward: bool) -> list[Phrase]:
    """Left and right, with the tie-on and the tie-off where they are (an even warp has both at the near end)."""
    if end == "far":
        return [Phrase("left", "left"), Phrase("right", "right")]
    first, last = ("tie on here", "tie off here") if forward else ("tie off here", "tie on here")
    return [
        Phrase(f"{first} \N{MIDDLE DOT} left", "left", "left"),
        Phrase(f"right \N{MIDDLE DOT} {last}", "right", "right"),
    ]


def notes_for(plan: Plan, end: End, *, low: bool) -> tuple[str, ...]:
    """How to use the strip, for the head of its sheet."""
    round_bar = isinstance(plan.kit.frame.ends, RoundBar)
    outermost = "outermost line of the bar" if round_bar else "middle of the edge"
    if low:
        wrap = f"Cut it out and glue it on with the long line along the {outermost}."
    elif round_bar:
        wrap = (
            f"Cut it out: its edge to the weaving lies at the face of the bar, the middle line along the {outermost}, "
            "the third line at its back; glue the plain edge down behind."
        )
    else:
        wrap = "Cut it out, fold both dashed lines over the edge, and glue one flap to the face and one to the back."
    where = "bottom" if (end == "near") == (plan.kit.weaving.near_end == "bottom") else "top"
    return (f"For the {where} of the frame as it stands before you. {wrap}",)
