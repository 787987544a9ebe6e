"""The roles of what is said of finished files."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Check(Role):
    """What is wrong with files that are checked."""

    MIXED = "files.check.mixed"
    NO_MANIFEST = "files.check.no_manifest"
    FOREIGN_MANIFEST = "files.check.foreign_manifest"
    MISSING = "files.check.missing"
    OTHER_FILE = "files.check.other_file"
    TOO_LARGE = "files.check.too_large"
    NO_ENDING = "files.check.no_ending"
    ENDING = "files.check.ending"
    OTHER_NAME = "files.check.other_name"
    UNLISTED = "files.check.unlisted"
    BUSY = "files.check.busy"
    STOPPED = "files.check.stopped"


class Refused(Role):
    """Why a file was not kept."""

    NOT_KEPT = "files.refused.not_kept"
    OTHER_INPUTS = "files.refused.other_inputs"
    NOT_WHOLE = "files.refused.not_whole"
    PROBLEMS = "files.refused.problems"
    AND = "files.refused.and"
    MORE = "files.refused.more"
    NO_VERSION = "files.refused.no_version"
    REPORT = "files.refused.report"


class Carried(Role):
    """Inputs that a file carries."""

    NO_INPUTS = "files.carried.no_inputs"
    NO_KIT = "files.carried.no_kit"


class Boards(Role):
    """What the boards of a kit take."""

    NOTE = "files.boards.note"
    PRICED = "files.boards.priced"
    PRICED_SHEETS = "files.boards.priced_sheets"


class Left(Role):
    """What was left out of a kit, and what may be asked for alone."""

    NOT_MADE = "files.left.not_made"
    OF_PART = "files.left.of_part"
    NOT_DRAWN = "files.left.not_drawn"
    LEFT_OUT = "files.left.left_out"
    NOT_IN_BOX = "files.left.not_in_box"
    NO_WINDS = "files.left.no_winds"
    AS_SAID = "files.left.as_said"
    NONE_OF = "files.left.none_of"
    ONE_FILE = "files.left.one_file"
    SEVERAL = "files.left.several"
