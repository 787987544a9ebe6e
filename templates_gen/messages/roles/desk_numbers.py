"""The roles of what the desk says: the numbers and drawings beside the slip."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Pointed(Role):
    """An end of the warp that is pointed at, and its marks."""

    WOUND = "desk.pointed.wound"
    ROD = "desk.pointed.rod"
    NOTCHED = "desk.pointed.notched"
    PEGGED = "desk.pointed.pegged"
    NAILED = "desk.pointed.nailed"
    MARKED = "desk.pointed.marked"


class Mark(Role):
    """Where an end lies, and marks with more than a number."""

    ON_FACE = "desk.mark.on_face"
    BEHIND = "desk.mark.behind"
    FACE_TO_BACK = "desk.mark.face_to_back"
    BACK_TO_FACE = "desk.mark.back_to_face"
    TIE_ON = "desk.mark.tie_on"
    TIE_OFF = "desk.mark.tie_off"


class Strips(Role):
    """What the picture of a strip is, for who cannot see it."""

    NEAR = "desk.strips.near"
    FAR = "desk.strips.far"


class FrameWords(Role):
    """What the drawing of the frame is, for who cannot see it."""

    ABOUT = "desk.frame.about"


class Dimension(Role):
    """Measures in the drawing of the frame."""

    BOTH = "desk.dimension.both"
    WEAVE = "desk.dimension.weave"
    THICK = "desk.dimension.thick"
    NOTCH = "desk.dimension.notch"
    PEG = "desk.dimension.peg"
    NAIL = "desk.dimension.nail"


class Row(Role):
    """The names of the rows of the numbers."""

    SETT = "desk.row.sett"
    WINDS = "desk.row.winds"
    ENDS = "desk.row.ends"
    WEAVING = "desk.row.weaving"
    HEIGHT = "desk.row.height"
    BENDING = "desk.row.bending"
    WARP = "desk.row.warp"
    WEFT = "desk.row.weft"
    PICKS = "desk.row.picks"
    WOVEN = "desk.row.woven"
    FINISHED = "desk.row.finished"
    HEADING = "desk.row.heading"
    BUY = "desk.row.buy"
    PULL = "desk.row.pull"
    STICK = "desk.row.stick"
    LEASHES = "desk.row.leashes"
    LEASHES_ODD = "desk.row.leashes_odd"
    LEASHES_EVEN = "desk.row.leashes_even"
    FRINGE_NEAR = "desk.row.fringe_near"
    FRINGE_FAR = "desk.row.fringe_far"


class Shown(Role):
    """Figures in the rows, and sentences on them."""

    PER_CM = "desk.shown.per_cm"
    PER_INCH = "desk.shown.per_inch"
    ABOUT = "desk.shown.about"
    BETWEEN = "desk.shown.between"
    ASSUMED = "desk.shown.assumed"
    POSSIBLE = "desk.shown.possible"
    TAKEN = "desk.shown.taken"
    READ = "desk.shown.read"
    SETT_RANGE = "desk.shown.sett_range"
    APART = "desk.shown.apart"
    ENDS_APART = "desk.shown.ends_apart"
    AND_A_PASS = "desk.shown.and_a_pass"
    MARKS = "desk.shown.marks"
    WHOLE_WINDS = "desk.shown.whole_winds"
    WHOLE_ENDS = "desk.shown.whole_ends"
    FRAME_LEAVES = "desk.shown.frame_leaves"
    WIDE = "desk.shown.wide"
    WANTED = "desk.shown.wanted"
    FREE = "desk.shown.free"
    HEIGHT_RANGE = "desk.shown.height_range"
    PULL = "desk.shown.pull"
    GOOD = "desk.shown.good"
    BENDING_RANGE = "desk.shown.bending_range"
    OF_LENGTH = "desk.shown.of_length"
    CORD = "desk.shown.cord"
    COLOUR = "desk.shown.colour"
    SIZE = "desk.shown.size"
    BALLS = "desk.shown.balls"
    BALLS_OF = "desk.shown.balls_of"
    BALLS_OF_COLOUR = "desk.shown.balls_of_colour"


class Give(Role):
    """Links to the line that changes a number."""

    OWN = "desk.give.own"
    SETT = "desk.give.sett"
    UNIT = "desk.give.unit"
    WIDTH = "desk.give.width"
    ROOM = "desk.give.room"
    TENSION = "desk.give.tension"
    BEADS = "desk.give.beads"
    DRAW_IN = "desk.give.draw_in"
    SHRINKAGE = "desk.give.shrinkage"
    NARROWS = "desk.give.narrows"


class Need(Role):
    """Links to the line that a number lacks."""

    PICKS = "desk.need.picks"
    WARP = "desk.need.warp"
    WEFT = "desk.need.weft"
    MATERIAL = "desk.need.material"
    END_WIDTH = "desk.need.end_width"


class Pile(Role):
    """The names of files whose sheets have none of their own."""

    GUIDES = "desk.pile.guides"
    COMB = "desk.pile.comb"
    WINDING_COMBS = "desk.pile.winding_combs"
    GAUGE_CUT = "desk.pile.gauge_cut"
    GUIDE_CUT = "desk.pile.guide_cut"
    STICK = "desk.pile.stick"
    END_BARS = "desk.pile.end_bars"
    JIGS = "desk.pile.jigs"
    TRIAL = "desk.pile.trial"
    BOARDS = "desk.pile.boards"
    NO_FILE = "desk.pile.no_file"
