"""The roles of what goes wrong with files and folders."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Reason(Role):
    """Why a system could not do something."""

    FORBIDDEN = "disk.reason.forbidden"
    OPEN = "disk.reason.open"
    FORBIDDEN_OR_OPEN = "disk.reason.forbidden_or_open"
    FULL = "disk.reason.full"
    QUOTA = "disk.reason.quota"
    TOO_LARGE = "disk.reason.too_large"
    READ_ONLY = "disk.reason.read_only"
    NO_FOLDER = "disk.reason.no_folder"
    FILE_THERE = "disk.reason.file_there"
    FOLDER_THERE = "disk.reason.folder_there"
    LONG_NAME = "disk.reason.long_name"
    BUSY = "disk.reason.busy"
    LINK = "disk.reason.link"
    NO_LOCKS = "disk.reason.no_locks"
    NO_PLACE = "disk.reason.no_place"
    BAD_NAME = "disk.reason.bad_name"
    UNKNOWN = "disk.reason.unknown"
    DEVICE = "disk.reason.device"
    DEVICE_THERE = "disk.reason.device_there"


class Fault(Role):
    """What could not be done."""

    MAKE_FOLDER = "disk.fault.make_folder"
    WRITE_INTO = "disk.fault.write_into"
    WRITE = "disk.fault.write"
    READ = "disk.fault.read"
    REPLACE = "disk.fault.replace"
    LOCK = "disk.fault.lock"
    PUT_BACK = "disk.fault.put_back"
    PUT_BACK_LEFT = "disk.fault.put_back_left"
    AND_NOW = "disk.fault.and_now"


class After(Role):
    """How things stand after that."""

    UNCHANGED = "disk.after.unchanged"
    HIDDEN = "disk.after.hidden"
    LIES_IN = "disk.after.lies_in"
    OTHER_RUN = "disk.after.other_run"


class Zip(Role):
    """Why a zip is not unpacked."""

    NONE = "disk.zip.none"
    DAMAGED = "disk.zip.damaged"
    TOO_LARGE = "disk.zip.too_large"
    TOO_LARGE_INSIDE = "disk.zip.too_large_inside"
    TOO_MANY = "disk.zip.too_many"
    LARGE_FORM = "disk.zip.large_form"
    BAD_NAME = "disk.zip.bad_name"
    NO_FILE = "disk.zip.no_file"
    LOCKED = "disk.zip.locked"
    PACKED = "disk.zip.packed"
    LARGE_FILE = "disk.zip.large_file"
    RATIO = "disk.zip.ratio"
    TWICE = "disk.zip.twice"


class Recovery(Role):
    """What was put right after a run that was stopped."""

    NO_JOURNAL = "disk.recovery.no_journal"
    HIDDEN = "disk.recovery.hidden"
    SPENT = "disk.recovery.spent"
    MOVED = "disk.recovery.moved"
    BACK = "disk.recovery.back"
    AWAY = "disk.recovery.away"
    BACK_AND_AWAY = "disk.recovery.back_and_away"
    ASIDE = "disk.recovery.aside"
    STAYS = "disk.recovery.stays"
    FILES = "disk.recovery.files"
