"""The roles of what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskKits(Role):
    """Kits opened, kept, compared and made."""

    CHANGED = "desk_kits.changed"
    GONE = "desk_kits.gone"
    NO_SUCH = "desk_kits.no_such"
    NO_PLACE = "desk_kits.no_place"
    NO_FREE_NAME = "desk_kits.no_free_name"
    NO_FOLDER = "desk_kits.no_folder"
    OTHER_FILE = "desk_kits.other_file"
    COPY_OF = "desk_kits.copy_of"
    COPY_NUMBER = "desk_kits.copy_number"
    WITHIN = "desk_kits.within"
    MORE = "desk_kits.more"
    LESS = "desk_kits.less"
    NO_NUMBER = "desk_kits.no_number"
    NUMBERS = "desk_kits.numbers"
    FILES_PROVEN = "desk_kits.files_proven"
    FILES_NOT_MADE = "desk_kits.files_not_made"


class DeskMaking(Role):
    """Files that are made, stopped, proven."""

    PROVEN = "desk_making.proven"
    MARKS = "desk_making.marks"
    CUTS = "desk_making.cuts"
    MARKS_AND_CUTS = "desk_making.marks_and_cuts"
    MICROMETRES = "desk_making.micrometres"
    BUSY = "desk_making.busy"
    STOPPED = "desk_making.stopped"
    TOO_LONG = "desk_making.too_long"
    ENDED = "desk_making.ended"
    NO_JOB = "desk_making.no_job"
    NO_FILE = "desk_making.no_file"
    NO_FOLDER = "desk_making.no_folder"
