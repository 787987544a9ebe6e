"""What is said of a sett: what readings say, what is taken, what it loses, what else there could be."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Counted, NotchNote, SettNeed, SettNote, WrapWords

_AGREE = "needs wrap readings that can all be true of one pair of yarns, got reading "
_AGAIN = "; wrap again, or let the smallest stand; for example {example}"
_ODD = "{number} as the odd one out: {got}, where all others say {others}, {gap}, "
_ALONE = "loosest = true lets the smallest reading stand alone: {reading}."

MESSAGES: dict[Role, str | Plural] = {
    Counted.WINDS: Plural("count", "{count} wind", "{count} winds"),
    Counted.PEGS: Plural("count", "{count} peg", "{count} pegs"),
    Counted.NAILS: Plural("count", "{count} nail", "{count} nails"),
    Counted.ENDS: Plural("count", "{count} end", "{count} ends"),
    Counted.WINDS_TO: Plural("count", "{count} wind to {unit}", "{count} winds to {unit}"),
    Counted.PEGS_TO: Plural("count", "{count} peg to {unit}", "{count} pegs to {unit}"),
    Counted.NAILS_TO: Plural("count", "{count} nail to {unit}", "{count} nails to {unit}"),
    Counted.ENDS_TO: Plural("count", "{count} end to {unit}", "{count} ends to {unit}"),
    Counted.NOTHING: "nothing",
    Counted.TRACE: "less than 0.1 %",
    SettNote.TAKEN_GIVEN: "The sett taken is {sett}: {counted}, as it was given.",
    SettNote.TAKEN_MEASURED: "The sett taken is {sett}: {counted}, as it was measured.",
    SettNote.TAKEN_COUNTED: "The sett taken is {sett}: {counted}, the largest that counts off evenly in that unit.",
    SettNote.LOSES_INCH: "It loses {loss} of the sett measured, at least {low} and less than {high} epi.",
    SettNote.LOSES_CM: "It loses {loss} of the sett measured, at least {low} and less than {high} ends per cm.",
    SettNote.OTHER_INCHES: "Counting off evenly, other units in inches would give {offers}.",
    SettNote.OTHER_CM: "Counting off evenly, other units in cm would give {offers}.",
    SettNote.OFFER: "{sett} at {units} (loses {loss})",
    SettNote.NO_WIND: "not one wind at {units}",
    SettNote.NO_PEG: "not one peg at {units}",
    SettNote.NO_NAIL: "not one nail at {units}",
    SettNote.NO_END: "not one end at {units}",
    SettNote.AS_MEASURED: "As measured (as_measured = true) it would be {sett}, {counted}.",
    SettNote.UNEVEN_WINDS: "{counted} is no whole number, so the long marks will fall between winds.",
    SettNote.UNEVEN_PEGS: "{counted} is no whole number, so the long marks will fall between pegs.",
    SettNote.UNEVEN_NAILS: "{counted} is no whole number, so the long marks will fall between nails.",
    SettNote.UNEVEN_ENDS: "{counted} is no whole number, so the long marks will fall between ends.",
    SettNote.UNIT_LOSES: (
        "A marking unit of {unit} loses {loss} of the sett measured; a unit of {other} would lose {less}."
    ),
    SettNote.UNIT_LOSES_ANYHOW: (
        "A marking unit of {unit} loses {loss} of the sett measured; as_measured = true would lose nothing."
    ),
    SettNeed.UNIT_INCHES: needs("to be given, since no usual unit in inches loses at most 12 % of {sett}"),
    SettNeed.UNIT_CM: needs("to be given, since no usual unit in cm loses at most 12 % of {sett}"),
    SettNeed.HOLDS_WIND: needs("a length that holds one wind (2 ends) of {sett}"),
    SettNeed.HOLDS_PEG: needs("a length that holds one peg (2 ends) of {sett}"),
    SettNeed.HOLDS_NAIL: needs("a length that holds one nail (2 ends) of {sett}"),
    SettNeed.HOLDS_END: needs("a length that holds one end of {sett}"),
    SettNeed.UNIT: 'marking_unit = "{unit}" (loses {loss})',
    SettNeed.UNIT_LEAST: 'marking_unit = "{unit}" (loses {loss}, the least)',
    SettNeed.AS_MEASURED: "as_measured = true",
    SettNeed.LOOSEST: "loosest = true in [sett]",
    SettNeed.OR: "{before}, or {after}",
    SettNeed.NOTCHES_ALLOW: needs(
        "a sett that the notches allow: {second} (an end in every second notch), {every} (an end in every notch) or "
        "{two} (two ends to a notch)"
    ),
    SettNeed.NOTCH_DENSITY: needs(
        "at most {most}, so that an end in every second notch is no closer than the sett measured"
    ),
    SettNeed.A_READING: needs("at least one reading"),
    SettNeed.ODD_SQUEEZED: _AGREE + _ODD + "squeezed together or miscounted by {count} (too many)" + _AGAIN,
    SettNeed.ODD_LOOSE: (
        _AGREE + _ODD + "wrapped loosely or stretched apart or miscounted by {count} (too few)" + _AGAIN
    ),
    SettNeed.TWO_APART: (
        _AGREE + "{tight}, {got}, against reading {loose}, {other}, {gap}: reading {tight} squeezed together, "
        "reading {loose} wrapped loosely or stretched apart, or one of them miscounted by {count}" + _AGAIN
    ),
    NotchNote.SECOND_PER_CM: "The sett taken is {sett}: an end in every second notch, of {notches} notches per cm.",
    NotchNote.SECOND_INCH: "The sett taken is {sett}: an end in every second notch, of {notches} notches an inch.",
    NotchNote.EVERY_PER_CM: "The sett taken is {sett}: an end in every notch, of {notches} notches per cm.",
    NotchNote.EVERY_INCH: "The sett taken is {sett}: an end in every notch, of {notches} notches an inch.",
    NotchNote.TWO_PER_CM: "The sett taken is {sett}: two ends to a notch, of {notches} notches per cm.",
    NotchNote.TWO_INCH: "The sett taken is {sett}: two ends to a notch, of {notches} notches an inch.",
    NotchNote.COULD_GIVE: "These notches could also give {one} or {other}.",
    NotchNote.WITH_SECOND: "{sett} with an end in every second notch",
    NotchNote.WITH_EVERY: "{sett} with an end in every notch",
    NotchNote.WITH_TWO: "{sett} with two ends to a notch",
    NotchNote.TOO_CLOSE: "{use} (closer than the sett measured)",
    NotchNote.LOSES_MUCH: (
        "The notches that are there lose {loss} of the sett measured; a bar notched anew would lose less."
    ),
    WrapWords.WINDOW: Plural("pairs", "{pairs} pair in a window of {over}", "{pairs} pairs in a window of {over}"),
    WrapWords.MEASURED: Plural("pairs", "{pairs} pair measuring {over}", "{pairs} pairs measuring {over}"),
    WrapWords.SAID: "{reading} ({span})",
    WrapWords.SPAN_INCH: "{low} to less than {high} epi",
    WrapWords.SPAN_CM: "{low} to less than {high} ends per cm",
    WrapWords.SPAN_OF_BOTH: "{low} to less than {high}",
    WrapWords.TOUCH: "which only touch and do not overlap",
    WrapWords.GAP_SHARE: "a gap of {share}",
    WrapWords.GAP: "a gap of {gap} ({share})",
    WrapWords.LOOSEST_DESPITE: "The readings contradict each other; " + _ALONE,
    WrapWords.LOOSEST: _ALONE + " The readings agree, and without that key they say at least {least}.",
}
