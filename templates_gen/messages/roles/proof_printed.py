"""The roles of what a proof finds wrong on printed parts."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Mark(Role):
    """Names of what is measured."""

    WIND = "proof_printed.mark.wind"
    END = "proof_printed.mark.end"
    TEN = "proof_printed.mark.ten"
    UNIT = "proof_printed.mark.unit"
    CENTRE = "proof_printed.mark.centre"
    HOLE = "proof_printed.mark.hole"
    NAIL = "proof_printed.mark.nail"
    NOTCH = "proof_printed.mark.notch"


class Strips(Role):
    """Marks of strips and guides."""

    TOO_SHORT = "proof_printed.strips.too_short"
    UPRIGHT = "proof_printed.strips.upright"
    COUNT = "proof_printed.strips.count"
    OFF = "proof_printed.strips.off"
    LINES = "proof_printed.strips.lines"
    LINE_OFF = "proof_printed.strips.line_off"
    PAPER = "proof_printed.strips.paper"
    PAPER_ROUND = "proof_printed.strips.paper_round"
    LOST = "proof_printed.strips.lost"
    OUTLINES = "proof_printed.strips.outlines"
    OUTLINE_OFF = "proof_printed.strips.outline_off"


class Wraps(Role):
    """Marking strips for round bars and flat ends."""

    REACH = "proof_printed.wraps.reach"
    NUMBERS = "proof_printed.wraps.numbers"
    ASTRAY = "proof_printed.wraps.astray"
    CENTRE = "proof_printed.wraps.centre"
    TICKS = "proof_printed.wraps.ticks"
    FLAP = "proof_printed.wraps.flap"
    ARROW = "proof_printed.wraps.arrow"
    WAY = "proof_printed.wraps.way"
    NAME = "proof_printed.wraps.name"


class Openings(Role):
    """Templates for notches, pegs and nails."""

    CROSS = "proof_printed.openings.cross"
    PAPER = "proof_printed.openings.paper"
    DOTS = "proof_printed.openings.dots"
    ARROW = "proof_printed.openings.arrow"
    COVERED = "proof_printed.openings.covered"
    ASTRAY = "proof_printed.openings.astray"
    NUMBERS = "proof_printed.openings.numbers"
    NAME = "proof_printed.openings.name"


class Spacing(Role):
    """Spacing guides."""

    EDGE = "proof_printed.spacing.edge"
    UPRIGHT = "proof_printed.spacing.upright"
    AT_EDGE = "proof_printed.spacing.at_edge"
    LENGTHS = "proof_printed.spacing.lengths"
    LIMITS = "proof_printed.spacing.limits"
    THICK_EDGE = "proof_printed.spacing.thick_edge"
    UNITS = "proof_printed.spacing.units"
    TOO_SHORT = "proof_printed.spacing.too_short"
    NUMBER = "proof_printed.spacing.number"
    TENTHS = "proof_printed.spacing.tenths"


class Card(Role):
    """Wrap gauges."""

    PIECES = "proof_printed.card.pieces"
    EDGES = "proof_printed.card.edges"
    ROWS_OF_EDGES = "proof_printed.card.rows_of_edges"
    UPRIGHT = "proof_printed.card.upright"
    WINDOW = "proof_printed.card.window"
    OUTLINE = "proof_printed.card.outline"
    FOLD = "proof_printed.card.fold"
    NOTCH = "proof_printed.card.notch"
    LAYERS = "proof_printed.card.layers"
    CAUGHT = "proof_printed.card.caught"
    LABEL = "proof_printed.card.label"
    TABLE = "proof_printed.card.table"
    HEAD = "proof_printed.card.head"
    ROWS = "proof_printed.card.rows"
    PICKED = "proof_printed.card.picked"
    BOXED = "proof_printed.card.boxed"
    LINES = "proof_printed.card.lines"
    NAMES = "proof_printed.card.names"
    HALVES = "proof_printed.card.halves"


class Cells(Role):
    """Weaving grids."""

    NO_LINES = "proof_printed.cells.no_lines"
    STRAIGHT = "proof_printed.cells.straight"
    COUNT = "proof_printed.cells.count"
    OFF = "proof_printed.cells.off"
    PEN = "proof_printed.cells.pen"
    SHADING = "proof_printed.cells.shading"
    CUT = "proof_printed.cells.cut"
    JOINT = "proof_printed.cells.joint"
    MAP = "proof_printed.cells.map"
    NUMBER = "proof_printed.cells.number"
    NO_NUMBER_HERE = "proof_printed.cells.no_number_here"
    LEFT_OUT = "proof_printed.cells.left_out"
    NO_NUMBER = "proof_printed.cells.no_number"
    ENDS = "proof_printed.cells.ends"
    BEADS = "proof_printed.cells.beads"


class Frame(Role):
    """Frame check sheets."""

    SHEET = "proof_printed.frame.sheet"
    NO_FRAME = "proof_printed.frame.no_frame"
    OFF = "proof_printed.frame.off"
    ORDER = "proof_printed.frame.order"
    RINGS = "proof_printed.frame.rings"
    NO_ROW = "proof_printed.frame.no_row"
    ROW = "proof_printed.frame.row"


class First(Role):
    """The first sheet of a kit."""

    TILES = "proof_printed.first.tiles"
    ASIDE = "proof_printed.first.aside"


class Passes(Role):
    """The winding picture."""

    PICTURE = "proof_printed.passes.picture"
    NEAR_END = "proof_printed.passes.near_end"
    GAP = "proof_printed.passes.gap"
    OFF = "proof_printed.passes.off"
    FACE = "proof_printed.passes.face"
    BEHIND = "proof_printed.passes.behind"
    CROSSES_BACK = "proof_printed.passes.crosses_back"
    CROSSES_FACE = "proof_printed.passes.crosses_face"
    ARROW_FAR = "proof_printed.passes.arrow_far"
    ARROW_NEAR = "proof_printed.passes.arrow_near"
    SIDE_ARROWS = "proof_printed.passes.side_arrows"
    SIDE_BOTH = "proof_printed.passes.side_both"
    SIDE_CROSSES = "proof_printed.passes.side_crosses"
    SIDE_UPRIGHT = "proof_printed.passes.side_upright"
    SIDE_WAY = "proof_printed.passes.side_way"
    KNOTS = "proof_printed.passes.knots"
    SIDE_KNOT = "proof_printed.passes.side_knot"
    ROD_KNOTS = "proof_printed.passes.rod_knots"
    SIDE_ROD_KNOT = "proof_printed.passes.side_rod_knot"
    ROD_NAMED = "proof_printed.passes.rod_named"
    ENDS_NAMED = "proof_printed.passes.ends_named"
    SIDES_NAMED = "proof_printed.passes.sides_named"
    SAMPLE = "proof_printed.passes.sample"
    NUMBER_NEAR = "proof_printed.passes.number_near"
    NUMBER_FAR = "proof_printed.passes.number_far"
    NUMBERS = "proof_printed.passes.numbers"
    RINGS = "proof_printed.passes.rings"
    RING_STRAY = "proof_printed.passes.ring_stray"
    RING_ON_THREAD = "proof_printed.passes.ring_on_thread"
    RING_PLACE = "proof_printed.passes.ring_place"
    SHED_DOTS = "proof_printed.passes.shed_dots"
    SHED_RINGS = "proof_printed.passes.shed_rings"
    SHED_STICK = "proof_printed.passes.shed_stick"
    SHED_TILE = "proof_printed.passes.shed_tile"


class Sample(Role):
    """Samples of a legend."""

    FULL = "proof_printed.sample.full"
    BROKEN = "proof_printed.sample.broken"
    KNOT = "proof_printed.sample.knot"
    OTHER = "proof_printed.sample.other"


class SheetCode(Role):
    """The code of a sheet."""

    COUNT = "proof_printed.code.count"
    STRAY = "proof_printed.code.stray"
    UNREADABLE = "proof_printed.code.unreadable"
    OFF = "proof_printed.code.off"
    OTHER = "proof_printed.code.other"
    NUMBER = "proof_printed.code.number"
    RECTANGLE = "proof_printed.code.rectangle"
