"""English: what is said of printer profiles."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.printers import PrinterFile, PrinterNeed

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
}
