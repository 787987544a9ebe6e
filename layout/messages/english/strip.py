"""What marking strips and templates say, and how they are used."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Strip

_HELD = "Cut it out and tape it to the bar with the long line along the ground of the notches, every mark at a notch: "

MESSAGES: dict[Role, str | Plural] = {
    Strip.MARKING_NEAR: "Marking strip, near end",
    Strip.MARKING_FAR: "Marking strip, far end",
    Strip.NOTCHING_NEAR: "Notch template, near end",
    Strip.NOTCHING_FAR: "Notch template, far end",
    Strip.DRILLING_NEAR: "Drilling template, near end",
    Strip.DRILLING_FAR: "Drilling template, far end",
    Strip.NAILING_NEAR: "Nail template, near end",
    Strip.NAILING_FAR: "Nail template, far end",
    Strip.LEFT: "left",
    Strip.RIGHT: "right",
    Strip.TIE_ON_LEFT: "tie on here \N{MIDDLE DOT} left",
    Strip.TIE_OFF_LEFT: "tie off here \N{MIDDLE DOT} left",
    Strip.TIE_ON_RIGHT: "right \N{MIDDLE DOT} tie on here",
    Strip.TIE_OFF_RIGHT: "right \N{MIDDLE DOT} tie off here",
    Strip.CENTRE: "centre",
    Strip.EDGE_TO_WEAVING: "this edge to the weaving",
    Strip.NEAR_FROM_FACE: "near end, seen from the face",
    Strip.FAR_FROM_FACE: "far end, seen from the face",
    Strip.WAY_PEGS: "on the face, round one peg after the other; the ends go on this way",
    Strip.WAY_NAILS: "on the face, round one nail after the other; the ends go on this way",
    Strip.WAY_TEETH: "on the face, round the teeth; the ends go on this way",
    Strip.WAY_EVERY_SECOND: "on the face, an end in every second notch; the ends go on this way",
    Strip.WAY_EVERY: "on the face, an end in every notch; the ends go on this way",
    Strip.WAY_TWO: "on the face, two ends to a notch; the ends go on this way",
    Strip.FLUSH: (
        "Cut it out and glue it on the face of the board, its edge away from the weaving flush with the outer edge."
    ),
    Strip.OVER_EDGE: (
        "Cut it out, fold the dashed line over the outer edge of the board, and glue it to the face and the edge."
    ),
    Strip.NOTCH_SIZE: "Saw every notch {width} wide and {depth} deep, as it is drawn round its middle line.",
    Strip.SAW: "Clamp the board, saw with fingers clear, and mind the saw as its maker says.",
    Strip.HELD_EVERY_SECOND: _HELD + "an end in every second notch.",
    Strip.HELD_EVERY: _HELD + "an end in every notch.",
    Strip.HELD_TWO: _HELD + "two ends to a notch.",
    Strip.EMPTY: "Short grey lines are notches that stay empty.",
    Strip.DRIFT: "Where marks and notches drift apart, the bar is not as close as was said.",
    Strip.FROM_EDGE: "Cut it out and glue it on the face of the board, the outer row {outer} from the outer edge.",
    Strip.PEG_SIZE: "Prick every cross and drill it for pegs of {peg}; the rows are {apart} apart.",
    Strip.DRILL: "Clamp the board, shield your eyes, and mind the drill as its maker says.",
    Strip.ROW_FROM_EDGE: "Cut it out and glue it on the face of the board, the row {row} from the outer edge.",
    Strip.NAIL_SIZE: "Prick every cross and drive in a nail of {nail} there, its head leaning outward a little.",
    Strip.NAIL_OUT: "Let every nail stand {out} out of the board.",
    Strip.NAIL: "Shield your eyes, hold nails with pliers and not with fingers, and cover their heads when you stop.",
}
