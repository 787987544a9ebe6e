"""English: what is said of runs of several kits and copies."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.run import Lessons, Overview, Run, RunCheck, RunLine

MESSAGES: dict[Role, str | Plural] = {
    Run.PARTLY: "{fault}; the new files are in place in {folders} already, so run it again",
    Run.OTHER_FOLDERS: "Of another run, and left as they are: {folders}.",
    Run.OF_KIT: "{name}: {note}",
    RunLine.PRINT: "Print: {files}, at 100 %. Read the run list first: it begins {first}.",
    RunLine.ONCE: Plural("sheets", "{file} ({sheets} sheet, once)", "{file} ({sheets} sheets, once)"),
    RunLine.TIMES: Plural(
        "sheets", "{file} ({sheets} sheet, {times} times)", "{file} ({sheets} sheets, {times} times each)"
    ),
    RunLine.TOGETHER: Plural(
        "sheets",
        "Together {sheets} sheet of paper; each set by itself would take {singly}.",
        "Together {sheets} sheets of paper; each set by itself would take {singly}.",
    ),
    RunLine.AREA: "By area at least {least}; {waste} % of the placed sheets is waste.",
    RunLine.FOLDERS: Plural(
        "kits",
        "Boxes need no other prints: the folder of the kit has the same sheets one by one, to try the kit.",
        "Boxes need no other prints: the folders of the kits have the same sheets one by one, to try a kit.",
    ),
    RunLine.BESIDE: "Only there, for yourself: {files}.",
    RunLine.OTHERS: "For shop and class: {files}.",
    RunLine.MAKERS: "For you alone: {files}.",
    RunLine.BUY_LIST: "Kit by kit, and for a class: {file}.",
    RunLine.FILL_IN: (
        "Fill in: {keys} on every legal card, by hand or under [legal] in the file. What must stand there is for you "
        "and your local rules to say."
    ),
    RunLine.FILL_IN_OF: (
        "Fill in: {keys} on the legal card of {kits}, by hand or under [legal] in the file. What must stand there is "
        "for you and your local rules to say."
    ),
    RunLine.KIT: "{folder}: {boxes}",
    RunLine.BOXES: Plural("number", "{number} box", "{number} boxes"),
    RunLine.TRIAL: (
        "First make the trial cut in the folder of a kit. Single cut parts there are spares, or lie in no box."
    ),
    RunCheck.RIGHT: "right  {file}  {rows}",
    RunCheck.ROWS: "{number} rows, every cell computed again",
    RunCheck.ROWS_READ: "{number} rows can be read; --kit with the range computes them again",
    RunCheck.NO_FOLDER: "is missing, though {manifest} lists it",
    RunCheck.OTHER_MANIFEST: "is not the folder that {manifest} of the run lists; run it again",
    RunCheck.NO_FILE: "is no file of such a run",
    RunCheck.FILE_MISSING: "lacks {file}",
    Overview.ROW: "row {row} says {got}, not {want}",
    Overview.CELLS: "the row {words!r} stands in no table, or says something else than it must",
    Overview.TABLE: "the table of {titles} is not whole",
    Lessons.TICKS: "{found} boxes to tick instead of {wanted}",
    Lessons.ROW: "the row {row} is not in its place",
}
