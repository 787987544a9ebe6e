"""What goes wrong between a file and its print, in English."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import PrintMistake

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
}
