"""The roles of what a proof finds wrong on a leaflet."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Leaf(Role):
    """The sheet: its folds, the order of its steps, and what stands beside each."""

    FOLDS = "proof_leaflet.folds"
    ACROSS = "proof_leaflet.across"
    UPRIGHT = "proof_leaflet.upright"
    ORDER = "proof_leaflet.order"
    BLOCK = "proof_leaflet.block"
    FULL = "proof_leaflet.full"
    ASIDE = "proof_leaflet.aside"
    STRAY = "proof_leaflet.stray"
    SAMPLE = "proof_leaflet.sample"
    STEP = "proof_leaflet.step"


class LeafPicture(Role):
    """What is wrong in the picture of a step."""

    NOTHING = "proof_leaflet.picture.nothing"
    FRAME = "proof_leaflet.picture.frame"
    DIAGONALS = "proof_leaflet.picture.diagonals"
    MIDDLES = "proof_leaflet.picture.middles"
    MARKS = "proof_leaflet.picture.marks"
    NUMBERS = "proof_leaflet.picture.numbers"
    CENTRE = "proof_leaflet.picture.centre"
    TIED = "proof_leaflet.picture.tied"
    HITCHES = "proof_leaflet.picture.hitches"
    PASSES = "proof_leaflet.picture.passes"
    OFF = "proof_leaflet.picture.off"
    TIE_ON = "proof_leaflet.picture.tie_on"
    SLACK = "proof_leaflet.picture.slack"
    TIE_OFF = "proof_leaflet.picture.tie_off"
    STICK = "proof_leaflet.picture.stick"
    LIFTED = "proof_leaflet.picture.lifted"
    ROWS = "proof_leaflet.picture.rows"
    CROSSING = "proof_leaflet.picture.crossing"
    SPACED = "proof_leaflet.picture.spaced"
    LOOPS = "proof_leaflet.picture.loops"
    ARC = "proof_leaflet.picture.arc"
    BEATEN = "proof_leaflet.picture.beaten"
    SHEDS = "proof_leaflet.picture.sheds"
    CUT = "proof_leaflet.picture.cut"
    OUTWARD = "proof_leaflet.picture.outward"
    DRAWN = "proof_leaflet.picture.drawn"
