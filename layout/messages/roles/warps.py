"""The roles of what is said of a warp on its frame."""

from __future__ import annotations

from layout.messages.catalogue import Role


class WarpNote(Role):
    """Notes on how a warp lies, and warnings."""

    WINDS_ASKED = "warpnote.winds_asked"
    WINDS_FIT = "warpnote.winds_fit"
    WINDS_FIT_TIED = "warpnote.winds_fit_tied"
    ENDS_ASKED = "warpnote.ends_asked"
    ENDS_FIT = "warpnote.ends_fit"
    ENDS_FIT_TIED = "warpnote.ends_fit_tied"
    STRAIGHT = "warpnote.straight"
    STRAIGHT_ON_OUT = "warpnote.straight_on_out"
    STRAIGHT_OFF_OUT = "warpnote.straight_off_out"
    STRAIGHT_BOTH_OUT = "warpnote.straight_both_out"
    PAIRS = "warpnote.pairs"
    CROSSED_ODD = "warpnote.crossed_odd"
    CROSSED_EVEN = "warpnote.crossed_even"
    ROD = "warpnote.rod"
    PEG_WIDE = "warpnote.peg_wide"
    PEG_AND_THREAD_WIDE = "warpnote.peg_and_thread_wide"
    NAILED = "warpnote.nailed"
    NAIL_AND_THREAD_WIDE = "warpnote.nail_and_thread_wide"


class Spacing(Role):
    """What lies from one mark of a frame end to the next: its name, and what it is."""

    MARKS = "spacing.marks"
    MARKS_ARE = "spacing.marks_are"
    WINDS = "spacing.winds"
    WINDS_ARE = "spacing.winds_are"
    WINDS_CROSS = "spacing.winds_cross"
    FROM_ROD = "spacing.from_rod"
    FROM_ROD_ARE = "spacing.from_rod_are"
    NOTCHES = "spacing.notches"
    NOTCHES_ARE = "spacing.notches_are"
    PEGS = "spacing.pegs"
    PEGS_ARE = "spacing.pegs_are"
    NAILS = "spacing.nails"
    NAILS_ARE = "spacing.nails_are"


class WarpNeed(Role):
    """Refusals of a warp that its frame cannot hold, and what to write instead."""

    TIED_OUTSIDE = "warpneed.tied_outside"
    ROOM = "warpneed.room"
    ROOM_IN_FRAME = "warpneed.room_in_frame"
    ROOM_BESIDE = "warpneed.room_beside"
    ONE_WIND = "warpneed.one_wind"
    MARKS = "warpneed.marks"
    DOUBLED = "warpneed.doubled"
    NOTCH = "warpneed.notch"
    NOTCH_AND_TOOTH = "warpneed.notch_and_tooth"
    PEGS_THICK = "warpneed.pegs_thick"
    PEGS_APART = "warpneed.pegs_apart"
    NAILS_THICK = "warpneed.nails_thick"
    NAIL_AND_THREAD = "warpneed.nail_and_thread"
    SETT_LINE = "warpneed.sett_line"
    WIDTH_LINE = "warpneed.width_line"
