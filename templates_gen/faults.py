"""What goes wrong outside the kit, said in one sentence: files, folders, disks."""

from __future__ import annotations

import errno
from pathlib import Path

from layout.errors import LayoutError, ascii_safe

_REASONS = {
    errno.ENOSPC: "the disk is full",
    errno.EDQUOT: "the disk quota is used up",
    errno.EFBIG: "the file would be larger than this system allows",
    errno.EACCES: "there is no permission to write there",
    errno.EPERM: "there is no permission to write there, or the file is open in another program",
    errno.EROFS: "the disk can only be read",
    errno.ENOTDIR: "a part of that path is a file, not a folder",
    errno.EEXIST: "a file of that name is in the way",
    errno.EISDIR: "a folder of that name is in the way",
    errno.ENAMETOOLONG: "the name is too long",
    errno.EBUSY: "it is in use by another program",
    errno.ENOENT: "that place does not exist",
}


class FaultError(LayoutError):
    """Something outside the kit stands in the way; what was there before is still there."""


def fault(doing: str, path: Path, error: OSError) -> FaultError:
    """A sentence for what an operating system said while `doing` something with `path`."""
    reason = _REASONS.get(error.errno or 0, error.strerror or "the system gave no reason")
    return FaultError(f"could not {doing} {ascii_safe(str(path))}: {reason}; nothing was changed there")
