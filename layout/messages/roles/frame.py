"""The roles of what is said of a frame: of the strength of its ends, and of the keys of its ends together."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Beam(Role):
    """How hard the warp pulls at a frame end, and how far that bends."""

    MODULUS = "beam.modulus"
    MODULUS_STATED = "beam.modulus_stated"
    HANDBOOK = "beam.source.handbook"
    MDF = "beam.source.mdf"
    MEMORY = "beam.source.memory"
    ALLOWED = "beam.allowed"
    MONTHS = "beam.months"
    TENSION = "beam.tension"
    TENSION_BY_HAND = "beam.tension.by_hand"
    TENSION_TIGHTENED = "beam.tension.tightened"
    TENSION_DIP = "beam.tension.dip"
    TENSION_PLUCK = "beam.tension.pluck"
    TENSION_RANGE = "beam.tension.range"
    STIFFNESS = "beam.stiffness"
    TEX_OFF = "beam.tex_off"
    SPAN = "beam.span"
    PULLS_DIFFER = "beam.pulls_differ"
    SLACK = "beam.slack"
    PULL = "beam.pull"
    FORMULA = "beam.formula"
    BENT = "beam.bent"
    BENDS_TOO_FAR = "beam.bends_too_far"
    MAY_BEND_TOO_FAR = "beam.may_bend_too_far"
    STRESS = "beam.stress"
    STRESSED = "beam.stressed"
    STORES_ENERGY = "beam.stores_energy"
    GIVE_MATERIAL = "beam.give_material"
    GIVE_WIDTH = "beam.give_width"
    GIVE_BOTH = "beam.give_both"
    NAIL_BENDS = "beam.nail_bends"


class EndNeed(Role):
    """Refusals of what belongs to one kind of frame end, or not to it."""

    GIVEN = "endneed.given"
    LEFT_OUT = "endneed.left_out"
    LEFT_OUT_STRAIGHT = "endneed.left_out_straight"
    NOTCHES_IN_WIDTH = "endneed.notches_in_width"
    PEGS_IN_WIDTH = "endneed.pegs_in_width"
    NAILS_IN_WIDTH = "endneed.nails_in_width"
    EDGE_RADIUS = "endneed.edge_radius"
    BORE = "endneed.bore"
    DIP = "endneed.dip"
    WEIGHED_WARP = "endneed.weighed_warp"


class Travel(Role):
    """A frame whose height can be adjusted."""

    NEEDS = "travel.needs"
    BEDDING = "travel.bedding"
    TAKEN_UP = "travel.taken_up"
    TWO_HEIGHTS = "travel.two_heights"
    SHORT = "travel.short"
    MAY_BE_SHORT = "travel.may_be_short"
    LEFT_OUT = "travel.left_out"
    TENSIONER = "travel.tensioner"
