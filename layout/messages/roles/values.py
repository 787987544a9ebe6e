"""The roles of refusals of one number, length or word."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Value(Role):
    """Numbers and units, wherever they are read."""

    LENGTH = "value.length"
    SETT = "value.sett"
    SIZE = "value.size"
    SHORTER = "value.shorter"
    PULL = "value.pull"
    OVER_ZERO = "value.over_zero"
    PROPER = "value.proper"
    ONE_WAY = "value.one_way"
    DIGITS = "value.digits"
    ABOVE_ZERO = "value.above_zero"
    ABOVE_ZERO_WITHIN = "value.above_zero_within"
    WHOLE = "value.whole"
    FAR_TOO_LARGE = "value.far_too_large"
    NOT_SHOWN = "value.not_shown"


class Unit(Role):
    """Numbers with their unit."""

    MM = "unit.mm"
    CM = "unit.cm"
    DM = "unit.dm"
    METRE = "unit.metre"
    INCH = "unit.inch"
    FOOT = "unit.foot"
    YARD = "unit.yard"
    NEWTON = "unit.newton"
    CENTINEWTON = "unit.centinewton"
    GRAM = "unit.gram"
    KILOGRAM = "unit.kilogram"
    OUNCE = "unit.ounce"
    POUND = "unit.pound"
    PER_CENT = "unit.per_cent"


class Known(Role):
    """How a number is known."""

    MEASURED = "known.measured"
    COMPUTED = "known.computed"
    ASSUMED = "known.assumed"


class SettUnit(Role):
    """Setts and how close notches are, with their unit."""

    EPI = "settunit.epi"
    PER_INCH = "settunit.per_inch"
    PER_CM = "settunit.per_cm"
    PER_10_CM = "settunit.per_10_cm"
    BOTH = "settunit.both"
    NOTCHES_PER_INCH = "settunit.notches_per_inch"
    NOTCHES_PER_CM = "settunit.notches_per_cm"
    NOTCHES_PER_10_CM = "settunit.notches_per_10_cm"


class Entry(Role):
    """What one key of a file may hold."""

    VERSION = "entry.version"
    LENGTH_BETWEEN = "entry.length_between"
    LENGTH_BETWEEN_MEANT = "entry.length_between_meant"
    EASE_BETWEEN = "entry.ease_between"
    WIDTH = "entry.width"
    WIDTH_BETWEEN = "entry.width_between"
    WIDTH_BETWEEN_MEANT = "entry.width_between_meant"
    SETT_BETWEEN = "entry.sett_between"
    PULL_BETWEEN = "entry.pull_between"
    DENSITY = "entry.density"
    DENSITY_BETWEEN = "entry.density_between"
    FLAG = "entry.flag"
    CHOICE = "entry.choice"
    CHOICE_MEANT = "entry.choice_meant"
    PAPER = "entry.paper"
    PAPER_MEANT = "entry.paper_meant"
    LANGUAGE = "entry.language"
    LANGUAGE_MEANT = "entry.language_meant"
    PAPER_BETWEEN = "entry.paper_between"
    NUMBER = "entry.number"
    COLOUR = "entry.colour"
    WHOLE = "entry.whole"
    AMOUNT = "entry.amount"
    SHARE = "entry.share"
    DEVIATION = "entry.deviation"
    COUNT = "entry.count"
    NAME = "entry.name"
    NAME_LONG = "entry.name_long"
    NAME_SEEN = "entry.name_seen"
    NAME_LEFT_TO_RIGHT = "entry.name_left_to_right"
    NAME_ACCENTS = "entry.name_accents"
    NAME_FONT = "entry.name_font"
    SIGN_IN_NAME = "entry.sign_in_name"
