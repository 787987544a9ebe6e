"""The roles of why amounts are what they are, and what to add for more."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Reason(Role):
    """Why an amount is what it is."""

    NO_DRAW_IN = "reason.no_draw_in"
    NO_SHRINKAGE = "reason.no_shrinkage"
    WIDTH = "reason.width"
    PITCH = "reason.pitch"
    HEIGHT = "reason.height"
    WOVEN_ROWS = "reason.woven_rows"
    SHRINKAGE = "reason.shrinkage"
    SHRUNK = "reason.shrunk"
    TO_MAKE = "reason.to_make"
    AS_SIDES = "reason.as_sides"
    ON_FACE = "reason.on_face"
    BAR = "reason.bar"
    END_WIDTH = "reason.end_width"
    HEIGHT_LEFT = "reason.height_left"
    HEIGHT_LEFT_LAYERS = "reason.height_left_layers"
    ONCE_ROUND = "reason.once_round"
    CROSSED = "reason.crossed"
    FROM_ROD = "reason.from_rod"
    ROD_AND_BACK = "reason.rod_and_back"
    ROD = "reason.rod"
    ROD_ASSUMED = "reason.rod_assumed"
    ROD_NO_FRINGE = "reason.rod_no_fringe"
    ROUND_TEETH = "reason.round_teeth"
    ROUND_PEGS = "reason.round_pegs"
    ROUND_NAILS = "reason.round_nails"
    PATH = "reason.path"
    PATH_THREADS = "reason.path_threads"
    WARP_TOTAL = "reason.warp_total"
    NO_TAILS = "reason.no_tails"
    SAMPLE = "reason.sample"
    STRANDS = "reason.strands"
    STRAND = "reason.strand"
    NO_COLOUR = "reason.no_colour"
    NO_THICKNESS = "reason.no_thickness"


class Stated(Role):
    """What a kit states itself."""

    HEADING = "stated.heading"
    HAND = "stated.hand"
    SLOPE = "stated.slope"
    STICK_PAST = "stated.stick_past"
    LEASH_REACH = "stated.leash_reach"
    LEASH_KNOT = "stated.leash_knot"
    KNOT = "stated.knot"
    TAIL = "stated.tail"
    STRETCH = "stated.stretch"
    SPARE = "stated.spare"
    WEFT_SPARE = "stated.weft_spare"
    DRAW_IN = "stated.draw_in"
    SHRINKAGE = "stated.shrinkage"


class Add(Role):
    """What to add to a kit for an amount that is lacking."""

    WARP = "add.warp"
    PICKS = "add.picks"
    TAKE_UP = "add.take_up"
    STRANDS = "add.strands"
    COLOURS = "add.colours"


class Pairing(Role):
    """What there is to say of warp and weft together."""

    GUESS_GIVEN = "pairing.guess_given"
    GUESS_WRAPPED = "pairing.guess_wrapped"
    GIVEN_CLOSER = "pairing.given_closer"
    WRAP_CLOSER = "pairing.wrap_closer"


class Room(Role):
    """Refusals of the room that is left to weave in."""

    HIGHER = "room.higher"
    LEAVE = "room.leave"
    TAKEN = "room.taken"
    AT_MOST = "room.at_most"
    AT_MOST_BY_HAND = "room.at_most_by_hand"
    PEGS = "room.pegs"


class Narrow(Role):
    """Measurements that would narrow a figure."""

    BEADS = "narrow.beads"
    PICK = "narrow.pick"
    WRAP_WEFT = "narrow.wrap_weft"
    WRAP_WARP = "narrow.wrap_warp"
    DRAW_IN = "narrow.draw_in"
    SAMPLE = "narrow.sample"
