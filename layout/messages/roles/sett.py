"""The roles of what is said of setts."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Counted(Role):
    """How many winds, pegs, nails or ends."""

    WINDS = "counted.winds"
    PEGS = "counted.pegs"
    NAILS = "counted.nails"
    ENDS = "counted.ends"
    WINDS_TO = "counted.winds_to"
    PEGS_TO = "counted.pegs_to"
    NAILS_TO = "counted.nails_to"
    ENDS_TO = "counted.ends_to"
    NOTHING = "counted.nothing"
    TRACE = "counted.trace"


class SettNote(Role):
    """Notes and warnings on the sett taken."""

    TAKEN_GIVEN = "settnote.taken_given"
    TAKEN_MEASURED = "settnote.taken_measured"
    TAKEN_COUNTED = "settnote.taken_counted"
    LOSES_INCH = "settnote.loses_inch"
    LOSES_CM = "settnote.loses_cm"
    OTHER_INCHES = "settnote.other_inches"
    OTHER_CM = "settnote.other_cm"
    OFFER = "settnote.offer"
    NO_WIND = "settnote.no_wind"
    NO_PEG = "settnote.no_peg"
    NO_NAIL = "settnote.no_nail"
    NO_END = "settnote.no_end"
    AS_MEASURED = "settnote.as_measured"
    UNEVEN_WINDS = "settnote.uneven_winds"
    UNEVEN_PEGS = "settnote.uneven_pegs"
    UNEVEN_NAILS = "settnote.uneven_nails"
    UNEVEN_ENDS = "settnote.uneven_ends"
    UNIT_LOSES = "settnote.unit_loses"
    UNIT_LOSES_ANYHOW = "settnote.unit_loses_anyhow"


class SettNeed(Role):
    """Refusals of setts, marking units and readings."""

    UNIT_INCHES = "settneed.unit_inches"
    UNIT_CM = "settneed.unit_cm"
    HOLDS_WIND = "settneed.holds_wind"
    HOLDS_PEG = "settneed.holds_peg"
    HOLDS_NAIL = "settneed.holds_nail"
    HOLDS_END = "settneed.holds_end"
    UNIT = "settneed.unit"
    UNIT_LEAST = "settneed.unit_least"
    OR = "settneed.or"
    LOOSEST = "settneed.loosest"
    AS_MEASURED = "settneed.as_measured"
    NOTCHES_ALLOW = "settneed.notches_allow"
    NOTCH_DENSITY = "settneed.notch_density"
    A_READING = "settneed.a_reading"
    ODD_SQUEEZED = "settneed.odd_squeezed"
    ODD_LOOSE = "settneed.odd_loose"
    TWO_APART = "settneed.two_apart"


class NotchNote(Role):
    """Notes on the sett that the notches of a bar allow."""

    SECOND_PER_CM = "notchnote.second_per_cm"
    SECOND_INCH = "notchnote.second_inch"
    EVERY_PER_CM = "notchnote.every_per_cm"
    EVERY_INCH = "notchnote.every_inch"
    TWO_PER_CM = "notchnote.two_per_cm"
    TWO_INCH = "notchnote.two_inch"
    COULD_GIVE = "notchnote.could_give"
    WITH_SECOND = "notchnote.with_second"
    WITH_EVERY = "notchnote.with_every"
    WITH_TWO = "notchnote.with_two"
    TOO_CLOSE = "notchnote.too_close"
    LOSES_MUCH = "notchnote.loses_much"


class WrapWords(Role):
    """Wrap readings, and what they say together."""

    WINDOW = "wrapwords.window"
    MEASURED = "wrapwords.measured"
    SAID = "wrapwords.said"
    SPAN_INCH = "wrapwords.span_inch"
    SPAN_CM = "wrapwords.span_cm"
    SPAN_OF_BOTH = "wrapwords.span_of_both"
    TOUCH = "wrapwords.touch"
    GAP_SHARE = "wrapwords.gap_share"
    GAP = "wrapwords.gap"
    LOOSEST_DESPITE = "wrapwords.loosest_despite"
    LOOSEST = "wrapwords.loosest"
