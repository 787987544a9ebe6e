"""The roles of what the desk says: what is said of a line of the slip while it is filled in."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskHelp(Role):
    """What is said of a line of the slip while it is filled in, by its key."""

    NAME = "desk_help.name"
    SETT_READINGS_EACH_PAIRS = "desk_help.sett.readings[].pairs"
    SETT_READINGS_EACH_HOW = "desk_help.sett.readings[].how"
    SETT_READINGS_EACH_OVER = "desk_help.sett.readings[].over"
    SETT_GIVEN = "desk_help.sett.given"
    SETT_MARKING_UNIT = "desk_help.sett.marking_unit"
    FRAME_ENDS = "desk_help.frame.ends"
    FRAME_BAR_DIAMETER = "desk_help.frame.bar_diameter"
    FRAME_THICKNESS = "desk_help.frame.thickness"
    FRAME_NOTCH_WIDTH = "desk_help.frame.notch_width"
    FRAME_NOTCH_DEPTH = "desk_help.frame.notch_depth"
    FRAME_PEG_DIAMETER = "desk_help.frame.peg_diameter"
    FRAME_OUTER_WIDTH = "desk_help.frame.outer_width"
    FRAME_OUTER_HEIGHT = "desk_help.frame.outer_height"
    FRAME_SIDE_WIDTH = "desk_help.frame.side_width"
    WEAVING_WIDTH = "desk_help.weaving.width"
    WEAVING_HEIGHT = "desk_help.weaving.height"
    YARNS_WARP = "desk_help.yarns.warp"
    YARNS_WEFT = "desk_help.yarns.weft"
    BOX_ALSO = "desk_help.box.also"
    PAPER_SIZE = "desk_help.paper.size"
