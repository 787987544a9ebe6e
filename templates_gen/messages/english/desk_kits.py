"""English: what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_kits import DeskKits, DeskMaking

MESSAGES: dict[Role, str | Plural] = {
    DeskKits.CHANGED: "{file} was changed elsewhere after you opened it here. Keep yours, take theirs, or keep yours "
    "as a new file.",
    DeskKits.GONE: "{file} is no longer in the folder. Keep yours there again, or as a new file.",
    DeskKits.NO_SUCH: "This kit is no longer in the list. Open My kits again.",
    DeskKits.NO_PLACE: "{file} is written in a way that these changes cannot be put into. Nothing was written; keep "
    "yours as a new file.",
    DeskKits.NO_FREE_NAME: "The folder has too many files called {file}. Give the kit another name.",
    DeskKits.NO_FOLDER: "The folder of kits cannot be read: {why}.",
    DeskKits.OTHER_FILE: "{file} is a TOML file, but neither a kit, a range nor a stock file.",
    DeskKits.COPY_OF: "{name}, copy",
    DeskKits.COPY_NUMBER: "{name}, copy {number}",
    DeskKits.WITHIN: "{outer}: {inner}",
    DeskKits.MORE: "{mm} mm, {difference} mm more",
    DeskKits.LESS: "{mm} mm, {difference} mm less",
    DeskKits.NO_NUMBER: "not known",
    DeskKits.NUMBERS: "Numbers",
    DeskKits.FILES_PROVEN: Plural("files", "proven, {files} file", "proven, {files} files"),
    DeskKits.FILES_NOT_MADE: "not made yet",
    DeskMaking.PROVEN: Plural(
        "files",
        "Proven: {files} file read back, {counts}, largest deviation {deviation}.",
        "Proven: {files} files read back, {counts}, largest deviation {deviation}.",
    ),
    DeskMaking.MARKS: "{marks} marks",
    DeskMaking.CUTS: Plural("cuts", "{cuts} outline to cut", "{cuts} outlines to cut"),
    DeskMaking.MARKS_AND_CUTS: Plural(
        "cuts", "{marks} marks, {cuts} outline to cut", "{marks} marks, {cuts} outlines to cut"
    ),
    DeskMaking.MICROMETRES: "{number:.2f} micrometres",
    DeskMaking.BUSY: "Other files are being made. Wait until they are done, or stop them.",
    DeskMaking.STOPPED: "Stopped; nothing new was made.",
    DeskMaking.TOO_LONG: "Making took longer than {seconds} s and was stopped; nothing new was made. Make fewer sheets "
    "at once, or use the command line: templates-gen make.",
    DeskMaking.ENDED: "Making ended before it was done; nothing new was made. Try again.",
    DeskMaking.NO_JOB: "These files are no longer kept here. Make them again.",
    DeskMaking.NO_FILE: "There is no file of that name among those that were made.",
    DeskMaking.NO_FOLDER: "There is no room to make files in: {why}.",
}
