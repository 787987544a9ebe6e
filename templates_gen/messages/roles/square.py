"""The roles of what is said of a square check that was measured."""

from __future__ import annotations

from layout.messages.catalogue import Role


class SquareNeed(Role):
    """Sizes measured on a square check."""

    MEASURED = "square.need.measured"
    BAND = "square.need.band"
    GOT_BAND = "square.need.got_band"
    FIT = "square.need.fit"
    GOT_FIT = "square.need.got_fit"
    WITHIN = "square.need.within"
    SQUARE = "square.need.square"
    GOT_LONG = "square.need.got_long"
    GOT_SHORT = "square.need.got_short"
    GOT_LEAN = "square.need.got_lean"
    GOT_CAUSED = "square.need.got_caused"


class SquareLine(Role):
    """What the command `square-check` prints."""

    X = "square.line.x"
    Y = "square.line.y"
    SQUARE = "square.line.square"
    LONG = "square.line.long"
    SHORT = "square.line.short"
    RIGHT = "square.line.right"
    LEANS_RIGHT = "square.line.leans_right"
    LEANS_LEFT = "square.line.leans_left"
    IMPORT = "square.line.import"
    LEANING = "square.line.leaning"
    CAUSES = "square.line.causes"
    POINTLESS = "square.line.pointless"
    NOT_STORED = "square.line.not_stored"
    STORED = "square.line.stored"
    REPLACED = "square.line.replaced"
    REMOVED = "square.line.removed"
