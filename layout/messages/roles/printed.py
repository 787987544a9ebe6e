"""The roles of what is printed on parts and above them, one list for each part."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Sheet(Role):
    """The head of a sheet of paper."""

    NUMBER = "sheet.number"
    PIECE = "sheet.piece"
    LOW_FORM = "sheet.low_form"
    TOO_TALL = "sheet.too_tall"
    IN_PIECES = "sheet.in_pieces"
    JOIN = "sheet.join"
    KNIFE = "sheet.knife"
    FOR_PRINTER = "sheet.for_printer"


class KeyMap(Role):
    """The small map of a part in pieces: their order, and on which sheet each of them is."""

    TITLE = "key_map.title"
    HERE = "key_map.here"
    NEAR = "key_map.near"
    FAR = "key_map.far"
    SHEET = "key_map.sheet"


class Count(Role):
    """The warp in few words: its sett, how many ends, what is doubled."""

    SETT_CM_WINDS = "count.sett.cm.winds"
    SETT_CM_ENDS = "count.sett.cm.ends"
    SETT_CM_PEGS = "count.sett.cm.pegs"
    SETT_CM_NAILS = "count.sett.cm.nails"
    SETT_INCH_PEGS = "count.sett.inch.pegs"
    SETT_INCH_NAILS = "count.sett.inch.nails"
    SETT_INCH_WINDS = "count.sett.inch.winds"
    SETT_INCH_ENDS = "count.sett.inch.ends"
    WINDS = "count.winds"
    WINDS_AND_A_PASS = "count.winds_and_a_pass"
    ENDS = "count.ends"
    DOUBLED = "count.doubled"
    DOUBLED_OUTER = "count.doubled_outer"


class Guide(Role):
    """Spacing guides and what stands beside them."""

    LEFT = "guide.left"
    RIGHT = "guide.right"
    CENTRE = "guide.centre"
    EDGE = "guide.edge"
    AWAY = "guide.away"
    NEAR_FROM_FACE = "guide.near.seen_from_face"
    FAR_FROM_FACE = "guide.far.seen_from_face"
    NEAR_PIECE = "guide.near.piece"
    FAR_PIECE = "guide.far.piece"
    CENTIMETRES = "guide.centimetres"
    INCHES = "guide.inches"
    GLUE = "guide.step.glue"
    LAY = "guide.step.lay"
    LAY_BOTH = "guide.step.lay.both"
    LAY_ROD = "guide.step.lay.rod"
    PUSH_LEFT = "guide.step.push.left"
    PUSH_RIGHT = "guide.step.push.right"
    PUSH_LEFT_ODD = "guide.step.push.left.odd"
    PUSH_RIGHT_ODD = "guide.step.push.right.odd"
    PUSH_LEFT_EVEN = "guide.step.push.left.even"
    PUSH_RIGHT_EVEN = "guide.step.push.right.even"
    PUSH_LEFT_MIXED = "guide.step.push.left.mixed"
    PUSH_RIGHT_MIXED = "guide.step.push.right.mixed"
    CHECK = "guide.step.check"
    BY_THEMSELVES_NEAR = "guide.fan.by_themselves.near"
    BY_THEMSELVES_FAR = "guide.fan.by_themselves.far"
    OFF_NEAR = "guide.fan.off.near"
    OFF_FAR = "guide.fan.off.far"
    ALWAYS_PUSH_NEAR = "guide.fan.always_push.near"
    ALWAYS_PUSH_FAR = "guide.fan.always_push.far"
    UNKNOWN_THICKNESS = "guide.unknown_thickness"
    HOW_IT_LIES = "guide.picture"
    ROWS = "guide.picture.rows"
    READING = "guide.reading"
    FULL_MARK = "guide.reading.full"
    BROKEN_MARK = "guide.reading.broken"
    LIMIT = "guide.reading.limit"
    CENTIMETRE_SCALE = "guide.reading.centimetres"
    HALF_INCHES = "guide.reading.half_inches"
    THICK_EDGE = "guide.reading.thick_edge"
    CUT = "guide.legend.cut"
    BEHIND = "guide.legend.behind"
