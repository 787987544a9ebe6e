"""What is said of every key of a stock file. A phrase goes into the refusal of a key that is missing."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import StockHelp

MESSAGES: dict[Role, str | Plural] = {
    StockHelp.VERSION: "the version of the stock file; this one is 1",
    StockHelp.NAME: "what you call this stock; it stands in the files",
    StockHelp.MATERIAL: "what it is made of",
    StockHelp.THICKNESS: "how thick the sheet is, measured",
    StockHelp.BENDING: "its bending strength along the face grain, in N/mm2",
    StockHelp.SHEET_WIDTH: "the sheet from left to right",
    StockHelp.SHEET_HEIGHT: "the sheet from bottom to top",
    StockHelp.SHEET_GRAIN: (
        "which way the face grain runs: along x (the width), along y (the height), or there is none"
    ),
    StockHelp.CUTTING_KERF: "the full width of the cut",
    StockHelp.CUTTING_KERF_X: "the width of a cut that runs up the sheet",
    StockHelp.CUTTING_KERF_Y: "the width of a cut that runs across the sheet",
    StockHelp.CUTTING_KERF_UNCERTAINTY: "by how much the kerf may be off",
    StockHelp.CUTTING_KERF_DRAWN: "whether the lines are drawn for the kerf; false leaves that to the machine",
    StockHelp.CUTTING_EASE: "what a slot is wider than its yarn",
    StockHelp.CUTTING_TOO_FINE: "what to make where the pitch is too fine for a comb of this stock",
    StockHelp.TRIAL_KERF: (
        "the kerf that the trial cut was drawn for, kept when it is measured; leave it out for a new trial"
    ),
    StockHelp.TRIAL_SLOT: (
        "what is engraved at the slot of the trial cut that holds the yarn; the ease follows from it"
    ),
    StockHelp.SCALE_X: "how much too long the cutter makes what it is given along x; files are drawn against it",
    StockHelp.SCALE_Y: "how much too long it makes what it is given along y",
    StockHelp.SCALE_SKEW: "how far what runs up leans to the right; 0.1 % is 1 mm in a metre",
    StockHelp.SCALE_UNCERTAINTY: "by how much each of the three may be off",
    StockHelp.PRICES_SHEET: "what one sheet costs, in your own money",
    StockHelp.PRICES_MINUTE: "what a minute of the cutter costs, in the same money",
    StockHelp.COLOURS_ENGRAVE: "the colour that shows the cutter what to engrave",
    StockHelp.COLOURS_SCORE: "the colour that shows the cutter what to score",
    StockHelp.COLOURS_CUT: "the colour that shows the cutter what to cut",
    StockHelp.COLOURS_REFERENCE: "the colour that shows the cutter what to reference",
    StockHelp.WIDTHS_ENGRAVE: "the width of lines in the group engrave",
    StockHelp.WIDTHS_SCORE: "the width of lines in the group score",
    StockHelp.WIDTHS_CUT: "the width of lines in the group cut",
    StockHelp.WIDTHS_REFERENCE: "the width of lines in the group reference",
    StockHelp.SPEEDS_ENGRAVE: "how fast the head moves when it runs engrave, in mm/s",
    StockHelp.SPEEDS_SCORE: "how fast the head moves when it runs score, in mm/s",
    StockHelp.SPEEDS_CUT: "how fast the head moves when it runs cut, in mm/s",
}
