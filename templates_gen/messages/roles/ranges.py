"""What is said of ranges of kits."""

from __future__ import annotations

from layout.messages.catalogue import Role


class RangeFile(Role):
    """Files that hold several kits."""

    A_RANGE = "ranges.file.a_range"


class RangeOption(Role):
    """Options of commands on ranges."""

    NO_KIT = "ranges.option.no_kit"
    COPIES = "ranges.option.copies"
