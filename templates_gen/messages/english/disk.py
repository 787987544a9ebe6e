"""English: what goes wrong with files and folders."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.disk import (
    After,
    Fault,
    Reason,
    Recovery,
    Zip,
)

MESSAGES: dict[Role, str | Plural] = {
    Reason.FORBIDDEN: "there is no permission to do that",
    Reason.OPEN: "it is open in another program, which must close it first",
    Reason.FORBIDDEN_OR_OPEN: (
        "there is no permission to do that, or it is open in another program, which must close it first"
    ),
    Reason.FULL: "the disk is full",
    Reason.QUOTA: "the disk quota is used up",
    Reason.TOO_LARGE: "the file would be larger than this system allows",
    Reason.READ_ONLY: "the disk can only be read",
    Reason.NO_FOLDER: "a part of that path is a file, not a folder",
    Reason.FILE_THERE: "a file of that name is in the way",
    Reason.FOLDER_THERE: "a folder of that name is in the way",
    Reason.LONG_NAME: "the name is too long",
    Reason.BUSY: "it is in use by another program",
    Reason.LINK: "a link is in the way",
    Reason.NO_LOCKS: "that disk has no locks for files",
    Reason.NO_PLACE: "that place does not exist",
    Reason.BAD_NAME: "the name holds a character that no file name can hold",
    Reason.UNKNOWN: "the system gave no reason",
    Reason.DEVICE: "it is a pipe or a device, not a file",
    Reason.DEVICE_THERE: "a pipe or a device of that name is in the way",
    Fault.MAKE_FOLDER: "could not make the folder {path}: {why}",
    Fault.WRITE_INTO: "could not write into {path}: {why}",
    Fault.WRITE: "could not write {path}: {why}",
    Fault.READ: "could not read {path}: {why}",
    Fault.REPLACE: "could not replace {path}: {why}",
    Fault.LOCK: "could not lock {path}: {why}",
    Fault.PUT_BACK: "could not put back {path}: {why}",
    Fault.PUT_BACK_LEFT: "could not put back what a stopped run left in {path}: {why}",
    Fault.AND_NOW: "{fault}; {after}",
    After.UNCHANGED: "nothing was changed there",
    After.HIDDEN: "what was there is now in {files}; the next run into this folder puts it back",
    After.LIES_IN: "it is now in {file}",
    After.OTHER_RUN: "another run is changing {changed}; wait for it to end, then try again",
    Zip.NONE: "{file} is not a zip; check takes a zip of a folder that make or the desk made",
    Zip.DAMAGED: "{file} is a damaged zip; save or send it again",
    Zip.TOO_LARGE: "{file} is larger than {size} MB; a zip of made files is not",
    Zip.TOO_LARGE_INSIDE: "{file} holds more than {size} MB; a zip of made files does not",
    Zip.TOO_MANY: "{file} holds more than {most} files; a zip of made files does not",
    Zip.LARGE_FORM: "{file} is a zip in the form for very large files; pack it again as a plain zip",
    Zip.BAD_NAME: "{file} holds {name}, which is no name of a file inside a folder; nothing was unpacked",
    Zip.NO_FILE: "{file} holds {name}, which is a link or a device, not a file; nothing was unpacked",
    Zip.LOCKED: "{file} holds {name}, which is encrypted; pack it again without a password",
    Zip.PACKED: "{file} holds {name}, packed in a way that is not read here; pack it again as a plain zip",
    Zip.LARGE_FILE: "{file} holds {name}, which is larger than {size} MB; no made file is",
    Zip.RATIO: "{file} holds {name}, packed to less than 1/{most} of its size; no made file is",
    Zip.TWICE: "{file} holds {name} twice; nothing was unpacked",
    Recovery.NO_JOURNAL: "{folder} looks like what a stopped run leaves, but holds no journal; it was left alone.",
    Recovery.HIDDEN: (
        "An earlier run into {folder} was stopped and left hidden files that nobody needs; they were removed."
    ),
    Recovery.SPENT: (
        "An earlier run into {folder} was stopped when all its files were in place; the files from before, "
        "no longer needed, were removed."
    ),
    Recovery.MOVED: "An earlier run into {folder} was stopped while it moved files; nothing had to be put back.",
    Recovery.BACK: "An earlier run into {folder} was stopped while it moved files; {back} put back.",
    Recovery.AWAY: "An earlier run into {folder} was stopped while it moved files; {away} taken away.",
    Recovery.BACK_AND_AWAY: (
        "An earlier run into {folder} was stopped while it moved files; {back} put back and {away} taken away."
    ),
    Recovery.ASIDE: "{name} was changed since then and stays; what was there before is now {other}.",
    Recovery.STAYS: "{folder} could not be removed; nothing in it is needed.",
    Recovery.FILES: "{number} files",
}
