"""English: what is said of a square check that was measured."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.square import SquareLine, SquareNeed

MESSAGES: dict[Role, str | Plural] = {
    SquareNeed.MEASURED: needs("a size measured on the square check; all six are needed"),
    SquareNeed.BAND: needs("the band beside the window, about {band:g} mm, not the span of {span:g} mm"),
    SquareNeed.GOT_BAND: "a band of {band} mm on a span of {span} mm",
    SquareNeed.FIT: needs("diagonals that are together as long as X and Y together, as on any cutter; measure again"),
    SquareNeed.GOT_FIT: "{diagonals} mm for A and B, {sides} mm for X and Y",
    SquareNeed.WITHIN: needs(
        "spans of {span:g} mm that came out within {most} %, since no cutter is further off: open the file at its "
        "size, in mm, and cut again"
    ),
    SquareNeed.SQUARE: needs("a cutter that is within {most} % of square: set its axes square and cut again"),
    SquareNeed.GOT_LONG: "{share} too long",
    SquareNeed.GOT_SHORT: "{share} too short",
    SquareNeed.GOT_LEAN: "{share} off square",
    SquareNeed.GOT_CAUSED: "{off} (as from {causes})",
    SquareLine.X: "Along x",
    SquareLine.Y: "Along y",
    SquareLine.SQUARE: "Square",
    SquareLine.LONG: "{name} {share} too long, within {within}: {long} mm come out {out} mm",
    SquareLine.SHORT: "{name} {share} too short, within {within}: {long} mm come out {out} mm",
    SquareLine.RIGHT: "{name} right as far as the readings show, within {within}",
    SquareLine.LEANS_RIGHT: "{name} leans {share} to the right, within {within}: {out} mm on {long} mm up",
    SquareLine.LEANS_LEFT: "{name} leans {share} to the left, within {within}: {out} mm on {long} mm up",
    SquareLine.IMPORT: (
        "More than {most} % off: a file that was not opened at its size is likelier than such a cutter. Measure the "
        "50 mm square in the program first."
    ),
    SquareLine.LEANING: "More than {most} % off square: set the axes of the machine square first.",
    SquareLine.CAUSES: "Known to do this: {causes}.",
    SquareLine.POINTLESS: "No more off than the readings may be: there is nothing that correcting would make better.",
    SquareLine.NOT_STORED: "Not stored; give --stock FILE to put it into a stock file.",
    SquareLine.STORED: "Stored in {file}: {entries}",
    SquareLine.REPLACED: "It stands for what was stored before, since the check is drawn without any scale.",
    SquareLine.REMOVED: "The scale that {file} had is taken out.",
}
