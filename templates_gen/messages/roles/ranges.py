"""What is said of ranges of kits."""

from __future__ import annotations

from layout.messages.catalogue import Role


class RangeFile(Role):
    """Files that hold several kits."""

    A_RANGE = "ranges.file.a_range"
    WROTE = "ranges.file.wrote"


class RangeOption(Role):
    """Options of commands on ranges."""

    NO_KIT = "ranges.option.no_kit"
    KIT_MEANT = "ranges.option.kit_meant"
    COPIES = "ranges.option.copies"


class From(Role):
    """Where a value of a kit comes from."""

    TITLE = "ranges.from.title"
    TITLE_OF = "ranges.from.title_of"
    RANGE = "ranges.from.range"
    KIT = "ranges.from.kit"
    FILE = "ranges.from.file"
    USUAL = "ranges.from.usual"
    LEFT_OUT = "ranges.from.left_out"
    WITHOUT = "ranges.from.without"
    WITHOUT_TABLE = "ranges.from.without_table"


class Table(Role):
    """The table of a range."""

    TITLE = "ranges.table.title"
    KITS = "ranges.table.kits"
    NUMBER_OF_BOXES = "ranges.table.number_of_boxes"
    KIT = "ranges.table.kit"
    BOXES = "ranges.table.boxes"
    ENDS = "ranges.table.ends"
    WINDS = "ranges.table.winds"
    COST = "ranges.table.cost"
    COST_IN = "ranges.table.cost_in"
    PRICE = "ranges.table.price"
    PRICE_IN = "ranges.table.price_in"
    PACKS = "ranges.table.packs"
    TOGETHER = "ranges.table.together"
    BALL = "ranges.table.ball"
    PACK = "ranges.table.pack"
