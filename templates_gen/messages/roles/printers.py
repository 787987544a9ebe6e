"""The roles of what is said of printer profiles."""

from __future__ import annotations

from layout.messages.catalogue import Role


class PrinterNeed(Role):
    """What a printer profile may hold, and what it may be called."""

    VERSION = "printers.need.version"
    TABLE = "printers.need.table"
    KEY = "printers.need.key"
    KEY_MEANT = "printers.need.key_meant"
    SHARE = "printers.need.share"
    PAPER = "printers.need.paper"
    DAY = "printers.need.day"
    NO_PATH = "printers.need.no_path"
    RESERVED = "printers.need.reserved"
    NO_LETTER = "printers.need.no_letter"
    OTHER_NAME = "printers.need.other_name"
    KNOWN = "printers.need.known"
    KNOWN_MEANT = "printers.need.known_meant"
    NONE_YET = "printers.need.none_yet"


class PrinterFile(Role):
    """Where a profile lies, and what is written there."""

    WRONG = "printers.file.wrong"
    TOO_MANY = "printers.file.too_many"
    HEAD = "printers.file.head"


class PrinterLine(Role):
    """What the command `printers` prints."""

    NONE = "printers.line.none"
    SCALE = "printers.line.scale"
    RIGHT = "printers.line.right"
    LEFT = "printers.line.left"
    NOT_ASLANT = "printers.line.not_aslant"
    MEASURED = "printers.line.measured"
    FACTORS = "printers.line.factors"
    USE = "printers.line.use"
    FORGOTTEN = "printers.line.forgotten"


class ForPrinter(Role):
    """What is said of sheets that are drawn for a printer."""

    TOO_FAR = "printers.for.too_far"
    LIKELY_SETTING = "printers.for.likely_setting"
    OTHER_PAPER = "printers.for.other_paper"
    PER_CENT = "printers.for.per_cent"
    NO_ROOM = "printers.for.no_room"
    OTHER = "printers.for.other"
    SENTENCE = "printers.for.sentence"
