"""English: what the desk says: what is said of a line of the slip while it is filled in."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_helps import DeskHelp

MESSAGES: dict[Role, str | Plural] = {
    DeskHelp.NAME: "Stands on every sheet.",
    DeskHelp.SETT_READINGS_EACH_PAIRS: "Whole pairs, touching, not squeezed.",
    DeskHelp.SETT_READINGS_EACH_HOW: '"In": a window that you filled. "Are": you measured the pairs.',
    DeskHelp.SETT_READINGS_EACH_OVER: "The width of the window, or what the pairs measure.",
    DeskHelp.SETT_GIVEN: "Instead of readings; taken as it is.",
    DeskHelp.SETT_MARKING_UNIT: "Left empty, a usual one is chosen.",
    DeskHelp.FRAME_ENDS: "What carries the warp at both ends.",
    DeskHelp.FRAME_BAR_DIAMETER: "Across the bar. A strip of paper once round, divided by 3.14, is surest.",
    DeskHelp.FRAME_THICKNESS: "From face to back.",
    DeskHelp.FRAME_NOTCH_WIDTH: "Measured at the mouth of the notch.",
    DeskHelp.FRAME_NOTCH_DEPTH: "From the outer edge to the bottom of the notch.",
    DeskHelp.FRAME_PEG_DIAMETER: "Measured across a peg.",
    DeskHelp.FRAME_OUTER_WIDTH: "Outer edge to outer edge.",
    DeskHelp.FRAME_OUTER_HEIGHT: "Outermost line to outermost line.",
    DeskHelp.FRAME_SIDE_WIDTH: "Seen from the face.",
    DeskHelp.WEAVING_WIDTH: "Left empty: as wide as fits.",
    DeskHelp.WEAVING_HEIGHT: 'How high you want to weave, or "as high as fits".',
    DeskHelp.YARNS_WARP: "As you call it.",
    DeskHelp.YARNS_WEFT: "The yarn, or the bundle that you weave with.",
    DeskHelp.BOX_ALSO: "Left out, a beater, a tapestry needle and a rod for the leashes lie in the box.",
    DeskHelp.PAPER_SIZE: "The paper in your printer.",
}
