"""The roles of how lengths and weights are computed, and of what cannot be."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Assumed(Role):
    """What is assumed where a kit does not say."""

    KNOT = "assumed.knot"
    TAIL = "assumed.tail"
    SPARE = "assumed.spare"
    ROW_TAKE_UP = "assumed.row_take_up"
    HITCHED_WIDTHS = "assumed.hitched_widths"
    HITCHED = "assumed.hitched"
    HEADING_ROWS = "assumed.heading_rows"
    NEEDLE = "assumed.needle"
    STRETCH = "assumed.stretch"
    HEADING = "assumed.heading"
    SLOPE = "assumed.slope"
    HAND = "assumed.hand"
    OVERHANG = "assumed.overhang"
    REACH = "assumed.reach"
    LEASH_KNOT = "assumed.leash_knot"
    FIRM_OR_SOFT = "assumed.firm_or_soft"
    CORD_OR_FIRM = "assumed.cord_or_firm"
    ANY_FIBRE = "assumed.any_fibre"
    PRESSED_SHARE = "assumed.pressed_share"
    BEAT = "assumed.beat"
    WARP_SHARE = "assumed.warp_share"
    WEFT_SPARE = "assumed.weft_spare"
    WEFT_SPARE_MANY = "assumed.weft_spare_many"


class Computed(Role):
    """From what an amount is computed."""

    WINDS = "computed.winds"
    PASSES_AND_TEETH = "computed.passes_and_teeth"
    PASSES_AND_PEGS = "computed.passes_and_pegs"
    WEIGHT = "computed.weight"
    ROW_TAKE_UP = "computed.row_take_up"
    NO_ROWS = "computed.no_rows"
    HEADING_ROWS = "computed.heading_rows"
    HITCHED = "computed.hitched"
    HITCHED_EDGES = "computed.hitched_edges"
    WARP = "computed.warp"
    APART = "computed.apart"
    HEIGHT = "computed.height"
    FRINGE = "computed.fringe"
    STICK = "computed.stick"
    LEASH = "computed.leash"
    LEASHES = "computed.leashes"
    TAKE_UP = "computed.take_up"
    PICK_DRAWN = "computed.pick_drawn"
    PICKS_COUNTED = "computed.picks_counted"
    BEADS_COUNTED = "computed.beads_counted"
    WEFT = "computed.weft"
    TAILS = "computed.tails"
    TAILS_USUAL = "computed.tails_usual"
    COLOUR = "computed.colour"
    SAMPLE = "computed.sample"
    WEIGHED = "computed.weighed"
    BEAD = "computed.bead"
    BUBBLE = "computed.bubble"
    HEM = "computed.hem"
    WITH_SPARE = "computed.with_spare"
    SPARE_WEFT = "computed.spare_weft"
    SIDE = "computed.side"
    AREA = "computed.area"
    LEFT = "computed.left"


class YardageNeed(Role):
    """Refusals of numbers that no amount can be computed from, and notes."""

    CROSSED = "yardageneed.crossed"
    EDGE_RADIUS = "yardageneed.edge_radius"
    PEGS = "yardageneed.pegs"
    A_PEG = "yardageneed.a_peg"
    HEIGHT = "yardageneed.height"
    DIAMETERS = "yardageneed.diameters"
    SHARES = "yardageneed.shares"
    SUM = "yardageneed.sum"
    BEAD_ODD = "yardageneed.bead_odd"
    LIGHT = "yardageneed.light"
    HEAVY = "yardageneed.heavy"


class BallsNote(Role):
    """What is to be said of balls to buy."""

    UNSURE = "ballsnote.unsure"
    UNSURE_COLOUR = "ballsnote.unsure_colour"
    SMALL = "ballsnote.small"
    SMALL_COLOUR = "ballsnote.small_colour"
