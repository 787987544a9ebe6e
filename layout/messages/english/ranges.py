"""What is said of a range of kits, and of what lies in a box."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles.ranges import BoughtIn, BoxNeed, ClassSheet, RangeHelp, RangeNeed

_NAMES = "names of what can lie in a box ({names})"

MESSAGES: dict[Role, str | Plural] = {
    BoughtIn.BEATER: "beater",
    BoughtIn.NEEDLE: "tapestry needle",
    BoughtIn.ROD: "rod for the leashes",
    BoxNeed.NAMES: needs(_NAMES),
    BoxNeed.NAMES_MEANT: needs(_NAMES + "; {meant} is meant"),
    BoxNeed.NAME_TWICE: needs("each name once: in every box, or once in a run"),
    BoxNeed.CARD: needs('{names} or a size such as "90 x 60 mm"'),
    BoxNeed.CARD_BETWEEN: needs("a card of at least 40 x 30 mm and at most {most} mm along a side"),
    BoxNeed.CARD_ON_SHEET: needs("a card that fits on its sheet, at most {width} x {height} mm"),
    BoxNeed.SIDES: needs("three sides with their unit"),
    BoxNeed.SIDES_BETWEEN: needs("three sides, each from {low} to {high}"),
    BoxNeed.MASS: needs("a weight in grams, or with its unit (g, kg, oz or lb), from {least} to {most} g"),
    BoxNeed.LINK: needs("an address that begins with https:// or http://, without spaces"),
    BoxNeed.LINK_LONG: (
        "needs an address of at most {most} characters, got {got} ({count} characters); for example {example}"
    ),
    BoxNeed.TEXT: needs("a text of at most {most} characters in one line"),
    BoxNeed.TEXT_LONG: (
        "needs a text of at most {most} characters in one line, got {got} ({count} characters); for example {example}"
    ),
    BoxNeed.LINES: needs("a list of at most {most} lines of text"),
    BoxNeed.ITEM: needs("a name, and if you like a number and grams"),
    BoxNeed.ITEM_TWICE: needs("each thing once"),
    RangeHelp.COPIES: "how many boxes of each kit are made in a run",
    RangeHelp.KITS: "the kits of a range, each over the values that stand above them",
    RangeHelp.KITS_NAME: "the name of the kit; its files lie in a folder of that name",
    RangeHelp.KITS_COPIES: "how many boxes of this kit are made",
    RangeHelp.KITS_WITHOUT: "keys that stand above the kits and that this kit does not take",
    RangeNeed.OF_KIT: '{field} of "{kit}"',
    RangeNeed.OF_NUMBER: "{field} of kit {kit}",
    RangeNeed.KITS: needs("a list of 1 to {most} kits"),
    RangeNeed.ABOVE: needs("to stand above the kits, once for all"),
    RangeNeed.NAME: needs("a name"),
    RangeNeed.NO_PATH: needs("a name that can be the name of a folder, without / and \\ "),
    RangeNeed.RESERVED: needs('another name: Windows keeps "{reserved}" for itself'),
    RangeNeed.NO_LETTER: needs("a name with letters or figures, which names its folder"),
    RangeNeed.SAME: needs('another name than kit {number} has ("{name}"; both would lie in {folder})'),
    RangeNeed.WITHOUT: needs("keys that the range says above its kits"),
    ClassSheet.NAME: "Class sheet",
    ClassSheet.PURPOSE: "People: {people}. Tables: {tables}.",
    ClassSheet.FOR_EACH: "{kit}: on the table for each person",
    ClassSheet.FOR_ALL: "{kit}: one for all",
    ClassSheet.CUT: "Cut before the class",
    ClassSheet.TIMES: "{amount}, {people} times",
    ClassSheet.LESSON: "The lesson",
    ClassSheet.TIME: "Time",
    ClassSheet.WHAT: "What we do",
    ClassSheet.REMARKS: "Remarks",
    ClassSheet.NAMES: "Names",
}
