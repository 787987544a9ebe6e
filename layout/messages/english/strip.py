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
    Strip.WAY_FACE_FIRST: "first pass on the face; the winds go on this way",
    Strip.WAY_BACK_FIRST: "first pass behind the frame; the winds go on this way",
    Strip.WAY_CROSSED_ODD: "figure eight, odd ends on the face here; the winds go on this way",
    Strip.WAY_CROSSED_EVEN: "figure eight, even ends on the face here; the winds go on this way",
    Strip.WAY_ROD: "once round both frame ends from the loose rod and back; the ends go on this way",
    Strip.WAY_PEGS: "on the face, round one peg after the other; the ends go on this way",
    Strip.WAY_NAILS: "on the face, round one nail after the other; the ends go on this way",
    Strip.WAY_TEETH: "on the face, round the teeth; the ends go on this way",
    Strip.WAY_EVERY_SECOND: "on the face, an end in every second notch; the ends go on this way",
    Strip.WAY_EVERY: "on the face, an end in every notch; the ends go on this way",
    Strip.WAY_TWO: "on the face, two ends to a notch; the ends go on this way",
    Strip.TOO_THIN: "this bar is too thin for a full strip; the low form shows the outermost line only",
    Strip.CLOSES: "a full strip would close over itself on this bar; the low form shows the outermost line only",
    Strip.GLUING_EDGE: "gluing edge",
    Strip.WRAP_BAR: (
        "Cut it out: its edge to the weaving lies at the face of the bar, the middle line along the outermost line of "
        "the bar, the third line at its back; glue the plain edge down behind."
    ),
    Strip.WRAP_EDGE: (
        "Cut it out, fold both dashed lines over the edge, and glue one flap to the face and one to the back."
    ),
    Strip.CROSS: (
        "Wind in a figure eight: from the face of one frame end across to the back of the other, round it to its face, "
        "and across again."
    ),
    Strip.FROM_ROD: (
        "Tie the thread to the loose rod behind the frame, lead it round both frame ends at the first mark of each, "
        "round the rod, and back the same way at the next mark."
    ),
    Strip.ALONG_BAR: "Cut it out and glue it on with the long line along the outermost line of the bar.",
    Strip.ALONG_EDGE: "Cut it out and glue it on with the long line along the middle of the edge.",
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
