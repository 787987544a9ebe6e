"""English: what is said of finished files."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.files import (
    Boards,
    Carried,
    Check,
    Left,
    Refused,
)

_FREE = "The largest free piece is {wide} x {high} mm, on board {board}."
_TAKEN = f"of {{width:g}} x {{height:g}} mm, by area at least {{least}}. {_FREE} {{time}}"
_ONE, _MORE = f"Boards: {{sheets}} sheet {_TAKEN}", f"Boards: {{sheets}} sheets {_TAKEN}"
_PRICE = " About {cost:.2f} in the money of the stock file"
_NO_TIME = f"{_PRICE}, the cutter's time left out"

MESSAGES: dict[Role, str | Plural] = {
    Check.MIXED: "its files are of more than one kit; make them all again from one",
    Check.NO_MANIFEST: "the folder is incomplete: it holds no {manifest}, which is written last",
    Check.FOREIGN_MANIFEST: "{manifest} is not one that was written here",
    Check.MISSING: "missing, though {manifest} lists it",
    Check.OTHER_FILE: "is not the file that {manifest} lists",
    Check.TOO_LARGE: "could not read {file}: it is larger than {size} MB",
    Check.NO_ENDING: "no ending",
    Check.ENDING: "needs a file that ends in one of {endings}, got {got}",
    Check.OTHER_NAME: "was made as {made}, not as {listed}",
    Check.UNLISTED: "is not in {manifest}: it was not made with the others; move it away or delete it",
    Check.BUSY: "a run is at work in it now; check it again when that has ended",
    Check.STOPPED: (
        "a run was stopped in it and left {names}; make into this folder again: that puts back what was "
        "there before, or removes what is no longer needed"
    ),
    Refused.NOT_KEPT: "{file} was not kept, since it did not come back as it was drawn",
    Refused.OTHER_INPUTS: "the inputs it carries are not those it was given",
    Refused.NOT_WHOLE: "nothing was kept, since the kit would not be whole",
    Refused.PROBLEMS: "{what}: {problems}. {advice}",
    Refused.AND: "{before}; {after}",
    Refused.MORE: "and {number} more",
    Refused.NO_VERSION: "not installed",
    Refused.REPORT: (
        "This is a mistake of the program, not of the kit: keep the kit file as it is, and report it "
        "together with the version (templates-gen {version})."
    ),
    Carried.NO_INPUTS: "the file does not carry the inputs of its drawing",
    Carried.NO_KIT: "a wrap gauge without a kit was proven when it was made, and carries no kit to check it against",
    Boards.NOTE: Plural("sheets", _ONE, _MORE),
    Boards.PRICED: Plural("sheets", f"{_ONE}{_PRICE}.", f"{_MORE}{_PRICE}."),
    Boards.PRICED_SHEETS: Plural("sheets", f"{_ONE}{_NO_TIME}.", f"{_MORE}{_NO_TIME}."),
    Left.OF_PART: "{part}: {note}",
    Left.NOT_MADE: "{name} is not made: {why}",
    Left.NOT_DRAWN: "{name} is not drawn on paper: {why}",
    Left.LEFT_OUT: "{name} is left out: {why}.",
    Left.NOT_IN_BOX: "{name} is not in the box, nor on any sheet that says what is: {why}",
    Left.NO_WINDS: "it keeps winds apart, and this warp has none.",
    Left.AS_SAID: "{why}.",
    Left.NONE_OF: "says that it is {file}, which is none of {files}",
    Left.ONE_FILE: needs("the name of one file, with its form"),
    Left.SEVERAL: "{name}, which is {count} files",
}
