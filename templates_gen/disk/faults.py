"""What goes wrong outside the kit, said in one sentence: files, folders, disks."""

from __future__ import annotations

import errno
from pathlib import Path

from layout.values.errors import LayoutError, shown_path

_NO_PERMISSION = "there is no permission to do that"
_REASONS = {
    errno.ENOSPC: "the disk is full",
    errno.EDQUOT: "the disk quota is used up",
    errno.EFBIG: "the file would be larger than this system allows",
    errno.EACCES: _NO_PERMISSION,
    errno.EPERM: _NO_PERMISSION,
    errno.EROFS: "the disk can only be read",
    errno.ENOTDIR: "a part of that path is a file, not a folder",
    errno.EEXIST: "a file of that name is in the way",
    errno.EISDIR: "a folder of that name is in the way",
    errno.ENAMETOOLONG: "the name is too long",
    errno.EBUSY: "it is in use by another program",
    errno.ELOOP: "a link is in the way",
    errno.ENOLCK: "that disk has no locks for files",
    errno.ENOENT: "that place does not exist",
}


class FaultError(LayoutError):
    """Something outside the kit stands in the way; what was there before is still there."""


def fault(
    doing: str, path: Path, error: OSError | ValueError, *, after: str = "nothing was changed there"
) -> FaultError:
    """A sentence for what a system said while `doing` something with `path`, and how things stand `after`."""
    why = reason(error)
    if doing == "replace" and why == _NO_PERMISSION:  # some systems say so of a file that is only open elsewhere
        why += ", or it is open in another program"
    tail = f"; {after}" if after else ""
    return FaultError(f"could not {doing} {shown_path(path)}: {why}{tail}")


def reason(error: OSError | ValueError) -> str:
    """Why a system could not do something, in words of the bench."""
    if not isinstance(error, OSError):
        return "the name holds a character that no file name can hold"
    return _REASONS.get(error.errno or 0) or error.strerror or "the system gave no reason"
