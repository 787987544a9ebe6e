"""The roles of refusals of tables and of keys together."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Table(Role):
    """Keys and tables of a file."""

    TABLE = "table.table"
    LIST = "table.list"
    MISSING = "table.missing"
    IN_ITS_TABLE = "table.in_its_table"
    UNKNOWN = "table.unknown"
    UNKNOWN_MEANT = "table.unknown_meant"
    KEYS = "table.keys"
    READING = "table.reading"
    ORDER_ALONE = "table.order_alone"
    PLIES_TWICE = "table.plies_twice"
    PLIES = "table.plies"
    THREAD = "table.thread"
    DRAWN_PICK = "table.drawn_pick"
    WASHED = "table.washed"
    BEADS_AND_PICKS = "table.beads_and_picks"
    COLOUR_TWICE = "table.colour_twice"
    STRANDS = "table.strands"
    FOLDED_COUNT = "table.folded_count"
    ROWS_HITCHED = "table.rows_hitched"


class WindingNeed(Role):
    """What the winding must be to the other inputs of a kit."""

    WOUND_ONLY = "windingneed.wound_only"
    CROSSED_SLANT = "windingneed.crossed_slant"
    ROD_ONLY = "windingneed.rod_only"
    ROD_OR_EIGHT = "windingneed.rod_or_eight"
    ROD_UPRIGHT = "windingneed.rod_upright"
    ROD_TIED = "windingneed.rod_tied"


class Cross(Role):
    """What the inputs of a kit must be to one another."""

    SHRINKAGE_TWICE = "cross.shrinkage_twice"
    MIRRORED = "cross.mirrored"
    GIVEN_AND_READINGS = "cross.given_and_readings"
    READINGS_ONLY = "cross.readings_only"
    AS_MEASURED_ON_NOTCHES = "cross.as_measured_on_notches"
    NO_SETT = "cross.no_sett"
    READING_LIMITS = "cross.reading_limits"
    SIDES_AND_MARGINS = "cross.sides_and_margins"
    FRAME_WIDER = "cross.frame_wider"
    WEAVING_WIDTH = "cross.weaving_width"
    FRAME_HIGHER = "cross.frame_higher"
    WEAVING_HEIGHT = "cross.weaving_height"
