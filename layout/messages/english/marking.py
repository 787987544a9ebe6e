"""What marking strips and their sheets say."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Marking

MESSAGES: dict[Role, str | Plural] = {
    Marking.NEAR: "Near bar, seen from the face",
    Marking.FAR: "Far bar, seen from the face",
    Marking.NEAR_BRIEF: "near bar",
    Marking.FAR_BRIEF: "far bar",
    Marking.NEAR_PIECE: "Near bar, piece {number} of {total}",
    Marking.FAR_PIECE: "Far bar, piece {number} of {total}",
    Marking.LEFT: "left",
    Marking.RIGHT: "right",
    Marking.ON_LEFT: "left, tie on at {number}",
    Marking.ON_RIGHT: "right, tie on at {number}",
    Marking.OFF_LEFT: "left, tie off at {number}",
    Marking.OFF_RIGHT: "right, tie off at {number}",
    Marking.CENTRE: "centre",
    Marking.WINDS_GO: "winds go on this way",
    Marking.ENDS_GO: "ends go on this way",
    Marking.ODD: "odd ends on the face",
    Marking.EVEN: "even ends on the face",
    Marking.TOO_THIN: "this bar is too thin for a full strip; the low form shows the outermost line only",
    Marking.STEP_CUT: "Cut out every strip along its full lines.",
    Marking.STEP_WRAP_BAR: "Wrap a strip round its bar: its weaving edge along the face, the grey flap behind.",
    Marking.STEP_WRAP_EDGE: "Fold a strip over its board: its weaving edge on the face, the grey flap behind.",
    Marking.STEP_ALONG_BAR: "Lay a strip on its bar, its long line along the outermost line of the bar.",
    Marking.STEP_ALONG_EDGE: "Lay a strip on its board, its long line along the middle of the edge.",
    Marking.STEP_SLIDE: "Slide it along until its centre meets your pencil mark.",
    Marking.STEP_GLUE: "Fix the flap behind with a glue stick or tape. Wet glue stretches paper.",
    Marking.STEP_GLUE_ALONG: "Fix it with a glue stick or tape. Wet glue stretches paper.",
    Marking.READING: "Reading a strip",
    Marking.A_MARK: "a mark to every wind, every fifth one heavy",
    Marking.A_MARK_END: "a mark to every end, every fifth one heavy",
    Marking.A_NUMBER: "number of the wind, beside its own mark",
    Marking.A_NUMBER_END: "number of the end, beside its own mark",
    Marking.A_CENTRE: "centre: lay it on your pencil mark",
    Marking.AN_ARROW: "this edge on the face, towards the weaving",
    Marking.A_SCALE: "small scale on the flap: {small} and {unit}",
    Marking.CROSSES: "small crosses: to measure the print by",
    Marking.CUT: "cut",
    Marking.FOLDED: "fold",
    Marking.GLUED: "glue here",
    Marking.CAUTION_KNIFE: "Cut on a mat along a steel rule, fingers clear of the blade.",
    Marking.CAUTION_CHILDREN: "Blades are not for children.",
}
