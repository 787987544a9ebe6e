"""The roles of what a proof finds wrong on cut parts."""

from __future__ import annotations

from layout.messages.catalogue import Role


class CutMark(Role):
    """Names of what is measured."""

    NOTCH_WALL = "proof_cut.mark.notch_wall"
    BAR_END = "proof_cut.mark.bar_end"
    NOTCH_DEPTH = "proof_cut.mark.notch_depth"
    SCORED = "proof_cut.mark.scored"
    SCREW = "proof_cut.mark.screw"
    SCREW_SIZE = "proof_cut.mark.screw_size"
    HOLE = "proof_cut.mark.hole"
    HOLE_ROW = "proof_cut.mark.hole_row"
    HOLE_SIZE = "proof_cut.mark.hole_size"
    CENTRE_LINE = "proof_cut.mark.centre_line"
    JIG_END = "proof_cut.mark.jig_end"
    SLOT_WALL = "proof_cut.mark.slot_wall"
    WINDOW = "proof_cut.mark.window"
    LIMIT = "proof_cut.mark.limit"
    END_MARK = "proof_cut.mark.end_mark"
    TENTH = "proof_cut.mark.tenth"
    FACE = "proof_cut.mark.face"
    UNIT = "proof_cut.mark.unit"
    STICK_PAST = "proof_cut.mark.stick_past"
    SQUARE = "proof_cut.mark.square"
    PLUG = "proof_cut.mark.plug"
    SLOT = "proof_cut.mark.slot"
    PLUG_HOLE = "proof_cut.mark.plug_hole"
    KERF = "proof_cut.mark.kerf"
    EASE = "proof_cut.mark.ease"
    CHECK_SPAN = "proof_cut.mark.check_span"
    CHECK_WINDOW = "proof_cut.mark.check_window"


class Cut(Role):
    """Parts that are cut."""

    COUNT = "proof_cut.cut.count"
    OFF = "proof_cut.cut.off"
    NO_NOTCHES = "proof_cut.cut.no_notches"
    NO_PEGS = "proof_cut.cut.no_pegs"
    OTHER_SETT = "proof_cut.cut.other_sett"
    TEETH_NARROW = "proof_cut.cut.teeth_narrow"
    TEETH_LONG = "proof_cut.cut.teeth_long"
    LABEL = "proof_cut.cut.label"
    ENGRAVED = "proof_cut.cut.engraved"
    NOT_ENGRAVED = "proof_cut.cut.not_engraved"
    NO_TABLE = "proof_cut.cut.no_table"
    TABLE_LINES = "proof_cut.cut.table_lines"
    TABLE_HEADS = "proof_cut.cut.table_heads"
    TABLE_ROWS = "proof_cut.cut.table_rows"
    TABLE_ROW = "proof_cut.cut.table_row"
    TABLE_COLUMNS = "proof_cut.cut.table_columns"
    TABLE_FRAME = "proof_cut.cut.table_frame"
    ENDS = "proof_cut.cut.ends"
    SIZE = "proof_cut.cut.size"
    NOT_ROUND = "proof_cut.cut.not_round"
    PLATES = "proof_cut.cut.plates"
    LADDER_ENGRAVED = "proof_cut.cut.ladder_engraved"
    LADDER_UNEVEN = "proof_cut.cut.ladder_uneven"
    LADDER_OUTSIDE = "proof_cut.cut.ladder_outside"


class Board(Role):
    """Pictures of boards on the job sheet."""

    EDGES = "proof_cut.board.edges"
    PICTURE = "proof_cut.board.picture"
    BOARDS = "proof_cut.board.boards"
    FORM = "proof_cut.board.form"
    OVERLAP = "proof_cut.board.overlap"
    PARTS = "proof_cut.board.parts"
    NUMBER = "proof_cut.board.number"
    FILLED = "proof_cut.board.filled"
    SQUARE = "proof_cut.board.square"
    ORIGIN = "proof_cut.board.origin"


class Job(Role):
    """What the job sheet says."""

    SHEET = "proof_cut.job.sheet"
    COPIES = "proof_cut.job.copies"
    OPERATION = "proof_cut.job.operation"
    COLOUR = "proof_cut.job.colour"
    AMOUNT = "proof_cut.job.amount"
    SWATCH = "proof_cut.job.swatch"
    BLANKS = "proof_cut.job.blanks"
    STEP = "proof_cut.job.step"
