"""The roles of refusals of stock, kerf, sheets and boards."""

from __future__ import annotations

from layout.messages.catalogue import Role


class StockNeed(Role):
    """A stock file."""

    KERF_TWICE = "stockneed.kerf_twice"
    OTHER_KERF = "stockneed.other_kerf"
    NO_KERF = "stockneed.no_kerf"
    SAME_COLOUR = "stockneed.same_colour"
    DRAWN_LARGER = "stockneed.drawn_larger"


class Caliper(Role):
    """Sizes measured on a trial cut."""

    SIZE = "caliper.size"
    IN_PAIRS = "caliper.in_pairs"
    PAIRS = "caliper.pairs"
    HOLE_AND_PART = "caliper.hole_and_part"
    LARGER_HOLE = "caliper.larger_hole"
    IN_MM = "caliper.in_mm"
    KERF = "caliper.kerf"
    OPEN_BY = "caliper.open_by"
    FINER = "caliper.finer"
    WIDER_SLOT = "caliper.wider_slot"
    SLOT = "caliper.slot"


class SheetNeed(Role):
    """What fits on no sheet."""

    NESTED = "sheetneed.nested"
    COPIES = "sheetneed.copies"
    EACH = "sheetneed.each"
    WHOLE = "sheetneed.whole"
    STRAIGHT = "sheetneed.straight"
    DIAGONAL = "sheetneed.diagonal"
    PIECES = "sheetneed.pieces"
    GOT_DRAWING = "sheetneed.got_drawing"
    GOT_WHOLE = "sheetneed.got_whole"
    GOT_LENGTH = "sheetneed.got_length"
    OR = "sheetneed.or"
    STRIP_ROOM = "sheetneed.strip_room"
    STRIP_TOTALS = "sheetneed.strip_totals"
    NO_GRID = "sheetneed.no_grid"
    GRID_NO_PICKS = "sheetneed.grid_no_picks"
    GRID_TOO_FINE = "sheetneed.grid_too_fine"
    GRID_TOO_SMALL = "sheetneed.grid_too_small"
    GRID_TOO_LARGE = "sheetneed.grid_too_large"
