"""English: what the desk says: the page itself."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_page import DeskPage

MESSAGES: dict[Role, str | Plural] = {
    DeskPage.TITLE: "Desk",
    DeskPage.MY_KITS: "My kits",
    DeskPage.OPEN: "Open…",
    DeskPage.KEEP: "Keep",
    DeskPage.BACK: "Back to the slip",
    DeskPage.UNIT: "Plain numbers are",
    DeskPage.CM: "cm",
    DeskPage.INCHES: "inches",
    DeskPage.LANGUAGES: "Language of this page",
    DeskPage.PAGE_TITLE: "{name} – desk",
    DeskPage.FILE_KEPT: "{file}, kept {time}",
    DeskPage.FILE_CHANGED: "{file}, changed since it was kept",
    DeskPage.FILE_EXAMPLE: "the example, nothing kept yet",
    DeskPage.FILE_NONE: "not kept yet",
    DeskPage.SKIP_TO_SLIP: "To the slip",
    DeskPage.SKIP_TO_STRIP: "To the strip",
    DeskPage.ORDER_OF_WORK: "The order of work",
    DeskPage.STEP_MEASURED: "Measured",
    DeskPage.STEP_FRAME: "Frame",
    DeskPage.STEP_WEAVING: "Weaving",
    DeskPage.STEP_YARNS: "Yarns",
    DeskPage.STEP_BOX: "The box",
    DeskPage.STEP_AWAY: "Take away",
    DeskPage.LINES_FILLED: "{filled} of {lines} lines filled in",
    DeskPage.LINES_WRONG: "{filled} of {lines} lines filled in, {wrong} cannot be read",
    DeskPage.SLIP: "The slip: what you measured and want",
    DeskPage.LEGEND: "What the dots mean",
    DeskPage.FIRST_MINUTE: (
        "These are the numbers of an example frame, so that you can see what happens. Type yours over them, "
        "top to bottom; the sheet beside this changes as you type."
    ),
    DeskPage.DRAW_AGAIN: "Draw again",
    DeskPage.YOURS: "yours",
    DeskPage.EXAMPLE: "from the example",
    DeskPage.ASSUMED: "assumed",
    DeskPage.YOURS_LONG: "your own value",
    DeskPage.EXAMPLE_LONG: "value of the example",
    DeskPage.ASSUMED_LONG: "assumed",
    DeskPage.USUAL: "{choice} (usual)",
    DeskPage.ALSO: "= {length}",
    DeskPage.USE: "use {text}",
    DeskPage.USE_EMPTY: "leave it empty",
    DeskPage.USE_AT: "{label}: use {text}",
    DeskPage.USE_AT_EMPTY: "{label}: leave it empty",
    DeskPage.ON_THE_DESK: "On the desk",
    DeskPage.DRAWING: "drawing",
    DeskPage.HEAD_WORKING: "Working sheet: {sett}",
    DeskPage.HEAD_YARNS: "Warp {warp}, weft {weft}; {counted}",
    DeskPage.CANNOT_BOLD_ONE: "One line on the slip cannot be read.",
    DeskPage.CANNOT_BOLD: "{count} lines on the slip cannot be read.",
    DeskPage.CANNOT_REST: "This is the sheet as it was before.",
    DeskPage.CANNOT_FIRST: "There is no sheet yet.",
    DeskPage.EXAMPLE_BOLD: "Numbers of the example.",
    DeskPage.GO_TO_LINE: "Go to the line",
    DeskPage.HOW_TO_POINT: "Arrow keys step from end to end; the marks of each light up on the strip below.",
    DeskPage.NUMBERS: "What comes out",
    DeskPage.PAIRS: "pairs",
    DeskPage.WHICH_STRIP: "Which strip",
    DeskPage.NEAR_STRIP: "Near strip",
    DeskPage.FAR_STRIP: "Far strip",
    DeskPage.HOW_LARGE: "How large",
    DeskPage.REAL: "Real size",
    DeskPage.ABOUT_REAL: "About real size",
    DeskPage.WHOLE: "Whole",
    DeskPage.POINT: "Point at a thread or a mark.",
    DeskPage.STRIP_PDF: "PDF of this strip",
    DeskPage.THE_STRIP: "The strip",
    DeskPage.LIVE_STRIP: "Near strip, whole",
    DeskPage.PILE: "Everything on the desk",
    DeskPage.WORKING_SHEET: "Working sheet",
    DeskPage.BACK_TO_WORKING: "Back to the working sheet",
    DeskPage.SMALLER: "Smaller",
    DeskPage.LARGER: "Larger",
    DeskPage.PERCENT: "{percent} % of real size",
    DeskPage.OPEN_PDF: "Open the PDF to print",
    DeskPage.SHEET_NUMBER: "Sheet {number}",
    DeskPage.AS_IT_PRINTS: "The sheet as it will print",
    DeskPage.UNMEASURED: "This screen has not been measured: real size may be off.",
    DeskPage.MEASURED: "This screen was measured: {dots} dots to the millimetre.",
    DeskPage.MEASURE_SCREEN: "Measure it with a bank card",
    DeskPage.CARD_TITLE: "How large is a millimetre on this screen?",
    DeskPage.CARD_HOW: (
        "Hold a bank card against the screen and move the slider until the outline is as wide as the card. "
        "All bank cards are 85.60 mm wide."
    ),
    DeskPage.CARD_WIDTH: "Width of the outline (arrow keys move it by a hair)",
    DeskPage.CARD_KEPT: (
        "Kept for this screen and this zoom of the browser. Paper is never printed from here; the PDF does not need it."
    ),
    DeskPage.CARD_FITS: "It fits",
    DeskPage.CARD_LEAVE: "Leave it",
    DeskPage.PRINT_THE_PDF: "Print from the PDF, not from this page: a browser changes sizes.",
    DeskPage.BOX_LIST: "What is made",
    DeskPage.TAKE_AWAY: "Take it away",
    DeskPage.READ_BACK_FIRST: "Every file is read back and measured before you get it.",
    DeskPage.HOW_TO_PRINT: (
        "Print from a PDF viewer at 100 %, “actual size”. Lay a steel rule on the check bars before you cut."
    ),
    DeskPage.CAREFUL: (
        "Blades, lasers and tight cords can hurt: keep fingers clear of the blade, never leave a laser alone,"
        " wind with even pull, and follow the rules of the place where you work. Small parts are not for "
        "small children."
    ),
    DeskPage.SHOW_FIRST: "Show the first",
    DeskPage.RIGHT_AS_IT_IS: "It is right as it is",
    DeskPage.ASK_EXAMPLE: (
        "These lines are still the example’s, not your frame’s. Change them, or say that they are right as they are."
    ),
    DeskPage.LINE_FIRST: "First mend this line: {line}",
    DeskPage.NO_LINE: "Kit name",
    DeskPage.MAKE_ALL: "Make all files",
    DeskPage.ONLY_STRIPS: "Only the two strips",
    DeskPage.STOP: "Stop",
    DeskPage.HOW_FAR: "How far is it?",
    DeskPage.MAKING: "{done} of {total}: {file}",
    DeskPage.MAKING_START: "Starting",
    DeskPage.PROVEN: "Proven.",
    DeskPage.CHANGED_AFTER: "The slip changed after this was made. Make it again to have the change in the files.",
    DeskPage.SAVE_ZIP: "Save {file}",
    DeskPage.ZIP_SIZE: "{size} MB. Or open:",
    DeskPage.CLOSED: (
        "The desk was closed. What you typed is still in this page: save it as a kit file, and open that when"
        " the desk runs again."
    ),
    DeskPage.SAVE_HERE: "Save it as a kit file",
    DeskPage.MORE_NUMBERS: Plural("count", "{count} more number", "{count} more numbers"),
    DeskPage.MORE_EXAMPLES: Plural("count", "{count} more line", "{count} more lines"),
    DeskPage.EXAMPLE_REST: Plural(
        "count",
        "{count} line waits for yours; until then this is not your frame.",
        "{count} lines wait for yours; until then this is not your frame.",
    ),
    DeskPage.EXAMPLE_LEFT: Plural(
        "count", "{count} value is still the example’s: {names}.", "{count} values are still the example’s: {names}."
    ),
    DeskPage.SHEETS: Plural("count", "{count} sheet", "{count} sheets"),
}
