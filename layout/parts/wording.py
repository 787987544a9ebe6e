"""What the marking strips and templates and their sheets say, in one place."""

from __future__ import annotations

from layout.drawing.typeset import is_tall
from layout.frames.frame import NotchedEnd, PeggedEnd, RoundBar
from layout.parts.phrases import Phrase
from layout.plan import Plan
from layout.setting.notches import USES
from layout.units import say_length
from layout.warps.warp import End

_FLUSH = "its edge away from the weaving flush with the outer edge"
_SAW = "Clamp the board, saw with fingers clear, and mind the saw as its maker says."
_DRILL = "Clamp the board, shield your eyes, and mind the drill as its maker says."


def title_of(plan: Plan) -> str:
    """What the strip is for this kind of frame."""
    ends = plan.kit.frame.ends
    if isinstance(ends, PeggedEnd):
        return "Drilling template"
    return "Notch template" if isinstance(ends, NotchedEnd) and ends.density is None else "Marking strip"


def phrases_for(plan: Plan, end: End, *, up: int, brief: bool) -> list[Phrase]:
    """The words of a strip; `up` is +1 where the weaving lies above it on the paper, `brief` spares rows and room."""
    forward = plan.warp.toward > 0
    name = [] if brief and is_tall(plan.kit.name) else [Phrase(plan.kit.name, optional=brief)]
    doubled = plan.doubled_words
    return [
        *_sides(plan, end, forward=forward),
        Phrase("centre", "centre"),
        Phrase("this edge to the weaving", arrow="up" if up > 0 else "down"),
        Phrase(f"{end} end, seen from the face"),
        Phrase(f"{_way(plan)} go on this way", arrow="right" if forward else "left"),
        Phrase(plan.sett_words, optional=brief),
        *([Phrase(doubled)] if doubled else []),
        *name,
    ]


def _way(plan: Plan) -> str:
    """How the thread goes, up to the word that an arrow ends."""
    if plan.warp.kind == "wound":
        behind = "behind the frame" if plan.kit.weaving.first_pass == "back" else "on the face"
        return f"first pass {behind}; the winds"
    if plan.warp.kind == "pegged":
        return "on the face, round one peg after the other; the ends"
    use = plan.warp.sett.to_a_notch
    return f"on the face, {USES[use]}; the ends" if use else "on the face, round the teeth; the ends"


def _sides(plan: Plan, end: End, *, forward: bool) -> list[Phrase]:
    """Left and right, with the tie-on and the tie-off where they are: an odd warp is tied off at the far end."""
    first = "tie on here" if end == "near" else ""
    last = "tie off here" if (end == "far") == bool(plan.warp.ends % 2) else ""
    left, right = (first, last) if forward else (last, first)
    dot = " \N{MIDDLE DOT} "
    return [
        Phrase(f"{left}{dot}left", "left", "left") if left else Phrase("left", "left"),
        Phrase(f"right{dot}{right}", "right", "right") if right else Phrase("right", "right"),
    ]


def notes_for(plan: Plan, end: End, *, low: bool) -> tuple[str, ...]:
    """How to use the strip, for the head of its sheet."""
    ends = plan.kit.frame.ends
    if isinstance(ends, PeggedEnd):
        use = _drilling(ends, low=low)
    elif isinstance(ends, NotchedEnd):
        use = _notching(ends, low=low) if ends.density is None else _choosing(plan)
    else:
        use = _wrapping(round_bar=isinstance(ends, RoundBar), low=low)
    where = "bottom" if (end == "near") == (plan.kit.weaving.near_end == "bottom") else "top"
    return (f"For the {where} of the frame as it stands before you. {use}",)


def _wrapping(*, round_bar: bool, low: bool) -> str:
    outermost = "outermost line of the bar" if round_bar else "middle of the edge"
    if low:
        return f"Cut it out and glue it on with the long line along the {outermost}."
    if round_bar:
        return (
            f"Cut it out: its edge to the weaving lies at the face of the bar, the middle line along the {outermost}, "
            "the third line at its back; glue the plain edge down behind."
        )
    return "Cut it out, fold both dashed lines over the edge, and glue one flap to the face and one to the back."


def _notching(ends: NotchedEnd, *, low: bool) -> str:
    lay = (
        f"Cut it out and glue it on the face of the board, {_FLUSH}."
        if low
        else "Cut it out, fold the dashed line over the outer edge of the board, and glue it to the face and the edge."
    )
    size = f"{say_length(ends.notch_width)} wide and {say_length(ends.notch_depth)} deep"
    return f"{lay} Saw every notch {size}, as it is drawn round its middle line. {_SAW}"


def _choosing(plan: Plan) -> str:
    use = plan.warp.sett.to_a_notch
    empty = " Short grey lines are notches that stay empty." if use and use < 1 else ""
    laid = USES[use] if use else ""
    return (
        "Cut it out and tape it to the bar with the long line along the ground of the notches, every mark at a notch: "
        f"{laid}.{empty} Where marks and notches drift apart, the bar is not as close as was said."
    )


def _drilling(ends: PeggedEnd, *, low: bool) -> str:
    outer = say_length(ends.edge_distance)
    where = f"the outer row {outer} from the outer edge" if low else _FLUSH
    lay = f"Cut it out and glue it on the face of the board, {where}."
    apart, wide = say_length(ends.row_distance), say_length(ends.peg_diameter)
    return f"{lay} Prick every cross and drill it for pegs of {wide}; the rows are {apart} apart. {_DRILL}"
