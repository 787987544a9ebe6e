"""What the heads of sheets say, and the warp in few words."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Count, KeyMap, Sheet

MESSAGES: dict[Role, str | Plural] = {
    Sheet.NUMBER: "Sheet {number} of {total}",
    Sheet.PIECE: "piece {number} of {total}",
    Sheet.LOW_FORM: "Low form: {why}.",
    Sheet.TOO_TALL: "Low form: the full one is too tall to lie on this sheet in one piece.",
    Sheet.IN_PIECES: (
        "In {count} pieces: against a window, lay each piece on the next so that the three large crosses meet, and "
        "tape them. The small crosses at its two ends, level with each other, must be {distance} mm apart, to within "
        "{within} mm; if not, take the joints apart and lay the crosses on each other again. Then cut it out."
    ),
    Sheet.JOIN: (
        "Against a window, lay each piece on the next so that the three crosses of their joint meet; tape them. The "
        "end crosses level with each other must be {distance} mm apart, \N{PLUS-MINUS SIGN}{within} mm; if not, join "
        "again. Then cut out."
    ),
    Sheet.KNIFE: "Cut on a mat along a steel rule with a sharp blade, fingers clear; blades are not for children.",
    Sheet.FOR_PRINTER: "Corrected for printer {printer}: x {x}, y {y}, skew {skew}, each within {within}.",
    KeyMap.TITLE: "How the pieces meet",
    KeyMap.HERE: "grey: on this sheet",
    KeyMap.NEAR: "near",
    KeyMap.FAR: "far",
    KeyMap.SHEET: "sheet",
    Count.SETT_CM_WINDS: Plural("count", "{sett}, {count} wind to {unit}", "{sett}, {count} winds to {unit}"),
    Count.SETT_CM_ENDS: Plural("count", "{sett}, {count} end to {unit}", "{sett}, {count} ends to {unit}"),
    Count.SETT_CM_PEGS: Plural("count", "{sett}, {count} peg to {unit}", "{sett}, {count} pegs to {unit}"),
    Count.SETT_INCH_PEGS: Plural("count", "{sett}, {count} peg to {unit}", "{sett}, {count} pegs to {unit}"),
    Count.SETT_CM_NAILS: Plural("count", "{sett}, {count} nail to {unit}", "{sett}, {count} nails to {unit}"),
    Count.SETT_INCH_NAILS: Plural("count", "{sett}, {count} nail to {unit}", "{sett}, {count} nails to {unit}"),
    Count.SETT_INCH_WINDS: Plural("count", "{sett}, {count} wind to {unit}", "{sett}, {count} winds to {unit}"),
    Count.SETT_INCH_ENDS: Plural("count", "{sett}, {count} end to {unit}", "{sett}, {count} ends to {unit}"),
    Count.WINDS: Plural("winds", "{winds} wind, {ends} ends", "{winds} winds, {ends} ends"),
    Count.WINDS_AND_A_PASS: Plural(
        "winds", "{winds} wind and one pass, {ends} ends", "{winds} winds and one pass, {ends} ends"
    ),
    Count.ENDS: Plural("ends", "{ends} end", "{ends} ends"),
    Count.DOUBLED: "every end of two threads",
    Count.DOUBLED_OUTER: Plural(
        "outer", "the outer end at each side doubled", "the outer {outer} ends at each side doubled"
    ),
}
