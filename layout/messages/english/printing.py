"""What goes wrong between a file and its print, and the sheet that shows it."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import PrinterCheck, PrintMistake

MESSAGES: dict[Role, str | Plural] = {
    PrintMistake.FITTED: 'fitted to the printable area ("fit", "shrink to fit")',
    PrintMistake.A4_ON_LETTER: "an A4 page fitted to Letter paper",
    PrintMistake.LETTER_ON_A4: "a Letter page fitted to A4 paper",
    PrintMistake.A4_QUEUED_LETTER: "an A4 page in a print queue that is set to Letter",
    PrintMistake.LETTER_QUEUED_A4: "a Letter page in a print queue that is set to A4",
    PrintMistake.BROWSER_WIDE: "a drawing wider than the paper, printed from a browser",
    PrintMistake.PIXELS: "a drawing whose pixels a program takes for 72, 90 or 96 to the inch",
    PrintMistake.TWO_ON_ONE: "two pages on one sheet, or one size of paper smaller",
    PrintMistake.TO_LARGER: "enlarged by one size of paper",
    PrintMistake.UNIT: "a drawing in another unit: inches, centimetres or millimetres",
    PrinterCheck.PAGE: "Page: {paper}",
    PrinterCheck.STEP_PRINT: (
        "Print at 100 %, never fitted to the page, on the paper you work with. Let the sheet lie for an hour."
    ),
    PrinterCheck.STEP_MEASURE: (
        "Lay a steel rule from A to B, from fine line to fine line. Read it to a quarter of a millimetre."
    ),
    PrinterCheck.STEP_OTHERS: "Do the same from C to D, from E to F and from G to H.",
    PrinterCheck.STEP_OTHERS_CROSS: (
        "Do the same from C to D, E to F, G to H. With a short rule: to the cross in the middle, and on from there."
    ),
    PrinterCheck.STEP_SETTING: (
        "More than 1 % too long or too short? Look for a print setting first, and print the sheet again."
    ),
    PrinterCheck.STEP_STORE: (
        "Run: templates-gen printer-check --paper {paper} --store NAME, with each length behind its option."
    ),
    PrinterCheck.SPAN: "{one} to {other}: {length} mm",
    PrinterCheck.MM: "{length} mm",
    PrinterCheck.INCH: "{length} in",
    PrinterCheck.MEASURED: "Measured, in mm",
    PrinterCheck.ACROSS: "A to B, across",
    PrinterCheck.UP: "C to D, up",
    PrinterCheck.RISING: "E to F, rising",
    PrinterCheck.FALLING: "G to H, falling",
    PrinterCheck.PRINTER: "Printer",
    PrinterCheck.PAPER: "Paper",
    PrinterCheck.RULE: "Rule",
    PrinterCheck.DATE: "Date",
    PrinterCheck.CARD: "No rule at hand?",
    PrinterCheck.CARD_LAY: "Lay a bank card here. It covers the line all round, and no white shows beside it.",
    PrinterCheck.CARD_SHOWS: "It finds a wrong print setting. For a few tenths of a per cent, take the rule.",
    PrinterCheck.CARD_SIZE: "{wide} x {high} mm, ISO/IEC 7810 ID-1",
    PrinterCheck.WIDTHS: "Line widths",
    PrinterCheck.MARGINS: (
        "At the edges: lines 3 to 12 mm from the edge of the page. Those that are missing your printer cannot reach. "
        "Nothing is measured from them, since a page may float on its paper."
    ),
}
