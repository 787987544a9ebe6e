"""The roles of what is printed on parts and above them, one list for each part."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Sheet(Role):
    """The head of a sheet of paper."""

    PART = "sheet.part"
    YARNS = "sheet.yarns"
    NUMBER = "sheet.number"
    FOR_BOTTOM = "sheet.for_bottom"
    FOR_TOP = "sheet.for_top"
    PIECE = "sheet.piece"
    LOW_FORM = "sheet.low_form"
    TOO_TALL = "sheet.too_tall"
    IN_PIECES = "sheet.in_pieces"
    PRINTING = "sheet.printing"
    KNIFE = "sheet.knife"


class Count(Role):
    """The warp in few words: its sett, how many ends, what is doubled."""

    SETT_CM_WINDS = "count.sett.cm.winds"
    SETT_CM_ENDS = "count.sett.cm.ends"
    SETT_INCH_WINDS = "count.sett.inch.winds"
    SETT_INCH_ENDS = "count.sett.inch.ends"
    WINDS = "count.winds"
    WINDS_AND_A_PASS = "count.winds_and_a_pass"
    ENDS = "count.ends"
    DOUBLED = "count.doubled"
    DOUBLED_OUTER = "count.doubled_outer"


class Strip(Role):
    """Marking strips, notch templates and drilling templates."""

    MARKING_NEAR = "strip.title.marking.near"
    MARKING_FAR = "strip.title.marking.far"
    NOTCHING_NEAR = "strip.title.notching.near"
    NOTCHING_FAR = "strip.title.notching.far"
    DRILLING_NEAR = "strip.title.drilling.near"
    DRILLING_FAR = "strip.title.drilling.far"
    LEFT = "strip.left"
    RIGHT = "strip.right"
    TIE_ON_LEFT = "strip.tie_on.left"
    TIE_OFF_LEFT = "strip.tie_off.left"
    TIE_ON_RIGHT = "strip.tie_on.right"
    TIE_OFF_RIGHT = "strip.tie_off.right"
    CENTRE = "strip.centre"
    EDGE_TO_WEAVING = "strip.edge_to_weaving"
    NEAR_FROM_FACE = "strip.near.seen_from_face"
    FAR_FROM_FACE = "strip.far.seen_from_face"
    WAY_FACE_FIRST = "strip.way.face_first"
    WAY_BACK_FIRST = "strip.way.back_first"
    WAY_PEGS = "strip.way.pegs"
    WAY_TEETH = "strip.way.teeth"
    WAY_EVERY_SECOND = "strip.way.every_second_notch"
    WAY_EVERY = "strip.way.every_notch"
    WAY_TWO = "strip.way.two_to_a_notch"
    TOO_THIN = "strip.too_thin"
    CLOSES = "strip.closes_over_itself"
    GLUING_EDGE = "strip.gluing_edge"
    WRAP_BAR = "strip.use.wrap_bar"
    WRAP_EDGE = "strip.use.wrap_edge"
    ALONG_BAR = "strip.use.along_bar"
    ALONG_EDGE = "strip.use.along_edge"
    FLUSH = "strip.use.flush"
    OVER_EDGE = "strip.use.over_edge"
    NOTCH_SIZE = "strip.use.notch_size"
    SAW = "strip.use.saw"
    HELD_EVERY_SECOND = "strip.use.held.every_second_notch"
    HELD_EVERY = "strip.use.held.every_notch"
    HELD_TWO = "strip.use.held.two_to_a_notch"
    EMPTY = "strip.use.empty_notches"
    DRIFT = "strip.use.drift"
    FROM_EDGE = "strip.use.from_edge"
    PEG_SIZE = "strip.use.peg_size"
    DRILL = "strip.use.drill"
