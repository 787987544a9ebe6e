"""What goes wrong outside the kit, as one sentence: files, folders, disks."""

from __future__ import annotations

import errno
from pathlib import Path

from layout.values.errors import LayoutError, shown_path
from templates_gen.messages.language import message
from templates_gen.messages.roles.disk import After, Fault, Reason

_REASONS = {
    errno.ENOSPC: Reason.FULL,
    errno.EDQUOT: Reason.QUOTA,
    errno.EFBIG: Reason.TOO_LARGE,
    errno.EACCES: Reason.FORBIDDEN,
    errno.EPERM: Reason.FORBIDDEN,
    errno.EROFS: Reason.READ_ONLY,
    errno.ENOTDIR: Reason.NO_FOLDER,
    errno.EEXIST: Reason.FILE_THERE,
    errno.EISDIR: Reason.FOLDER_THERE,
    errno.ENAMETOOLONG: Reason.LONG_NAME,
    errno.EBUSY: Reason.BUSY,
    errno.ELOOP: Reason.LINK,
    errno.ENOLCK: Reason.NO_LOCKS,
    errno.ENOENT: Reason.NO_PLACE,
}
_HELD = (32, 33)
"""What Windows says of a file that another program holds open (Microsoft, System Error Codes, from memory)."""


class FaultError(LayoutError):
    """Something outside the kit stands in the way; what was there before is still there."""


def fault(doing: Fault, path: Path, error: OSError | ValueError, *, after: str | None = None) -> FaultError:
    """A sentence for what a system said while `doing` something with `path`, and how things stand `after`.

    Without `after` nothing was changed; where it is empty, nothing is said of it.
    """
    role = _role(error)
    if doing is Fault.REPLACE and role is Reason.FORBIDDEN:  # some systems say so of a file that is only open elsewhere
        role = Reason.FORBIDDEN_OR_OPEN
    said = message(doing, path=shown_path(path), why=message(role) if role else reason(error))
    after = message(After.UNCHANGED) if after is None else after
    return FaultError(message(Fault.AND_NOW, fault=said, after=after) if after else said)


def reason(error: OSError | ValueError) -> str:
    """Why a system could not do something, in plain words; its own where we have none."""
    role = _role(error)
    return message(role) if role else getattr(error, "strerror", None) or message(Reason.UNKNOWN)


def _role(error: OSError | ValueError) -> Reason | None:
    if not isinstance(error, OSError):
        return Reason.BAD_NAME
    if getattr(error, "winerror", None) in _HELD:
        return Reason.OPEN
    return _REASONS.get(error.errno or 0)
