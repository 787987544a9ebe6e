"""English: what is said of printer profiles."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.printers import ForPrinter, PrinterFile, PrinterLine, PrinterNeed

MESSAGES: dict[Role, str | Plural] = {
    PrinterNeed.VERSION: needs("to be {version}, the version of printer files that this program reads"),
    PrinterNeed.TABLE: needs("a table of x, y and skew"),
    PrinterNeed.KEY: needs("to be a key of a printer file ({known})"),
    PrinterNeed.KEY_MEANT: needs("to be a key of a printer file (did you mean {meant}?)"),
    PrinterNeed.SHARE: needs("a number from {least} to {most}, without quotes"),
    PrinterNeed.PAPER: needs("the sheet that was measured"),
    PrinterNeed.DAY: needs("the day of the measurement as year-month-day"),
    PrinterNeed.NO_PATH: needs("a name that can be the name of a file, without / and \\ "),
    PrinterNeed.RESERVED: needs('another name: Windows keeps "{reserved}" for itself'),
    PrinterNeed.NO_LETTER: needs("a name with letters or figures, which names its file"),
    PrinterNeed.OTHER_NAME: needs('the name that its file "{file}" is called by'),
    PrinterNeed.KNOWN: needs("a printer that was stored ({known})"),
    PrinterNeed.KNOWN_MEANT: needs("a printer that was stored ({known}) (did you mean {meant}?)"),
    PrinterNeed.NONE_YET: needs("a printer that was stored; there is none yet"),
    PrinterFile.WRONG: "{file}: {error}",
    PrinterFile.TOO_MANY: "{folder} holds {number} printers, and {most} are the most; forget one first",
    PrinterFile.HEAD: (
        "# A printer as it was measured: 1 mm across comes out x mm, 1 mm up comes out y mm and leans skew mm to the\n"
        "# right. Each is within so much at 95 %. Sheets made for this printer are drawn the other way by as much."
    ),
    ForPrinter.TOO_FAR: needs("a printer that is off by {most} % at most; look for a print setting that scales"),
    ForPrinter.LIKELY_SETTING: (
        "{printer} is off by {off}, and a print setting is the likelier cause: print at 100 %, without fitting to the "
        "page, and measure it again."
    ),
    ForPrinter.OTHER_PAPER: (
        "{printer} was measured on {paper} and these sheets are {size}; on other paper a printer may be off by more or "
        "less."
    ),
    ForPrinter.PER_CENT: "{number} %",
    ForPrinter.NO_ROOM: needs("a larger sheet: one has no room to say for which printer it is corrected"),
    ForPrinter.OTHER: "the file names another printer than it is corrected for",
    ForPrinter.SENTENCE: 'does not say once, in small letters inside the margins: "{words}"',
    PrinterLine.NONE: "No printer is stored yet. Measure one with printer-check, and store it under a name.",
    PrinterLine.SCALE: (
        "100 mm across come out {across:.3f} mm long, within {across_within:.3f}; 100 mm up come out {up:.3f} mm, "
        "within {up_within:.3f}, {slant}"
    ),
    PrinterLine.RIGHT: "and lean {lean:.3f} mm to the right, within {within:.3f}",
    PrinterLine.LEFT: "and lean {lean:.3f} mm to the left, within {within:.3f}",
    PrinterLine.NOT_ASLANT: "and do not lean, within {within:.3f}",
    PrinterLine.MEASURED: "{name}: measured on {day}, on {paper}.",
    PrinterLine.FACTORS: "{scale}, at 95 %.",
    PrinterLine.USE: "To draw for it: templates-gen make --printer {typed}",
    PrinterLine.FORGOTTEN: "Forgot {name}; {file} is gone.",
}
