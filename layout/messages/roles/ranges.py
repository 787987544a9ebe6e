"""Roles of what is said of a range of kits, and of what lies in a box."""

from __future__ import annotations

from layout.messages.catalogue import Role


class BoughtIn(Role):
    """What is bought in for a box where the maker does not say."""

    BEATER = "bought.beater"
    NEEDLE = "bought.needle"
    ROD = "bought.rod"


class BoxNeed(Role):
    """Refusals of what a kit says of its box."""

    NAMES = "box_need.names"
    NAMES_MEANT = "box_need.names_meant"
    NAME_TWICE = "box_need.name_twice"
    CARD = "box_need.card"
    CARD_BETWEEN = "box_need.card_between"
    CARD_ON_SHEET = "box_need.card_on_sheet"
    SIDES = "box_need.sides"
    SIDES_BETWEEN = "box_need.sides_between"
    MASS = "box_need.mass"
    LINK = "box_need.link"
    LINK_LONG = "box_need.link_long"
    TEXT = "box_need.text"
    TEXT_LONG = "box_need.text_long"
    LINES = "box_need.lines"
    ITEM = "box_need.item"
    ITEM_TWICE = "box_need.item_twice"


class RangeHelp(Role):
    """The keys of a range beside those of a kit."""

    COPIES = "range_help.copies"
    KITS = "range_help.kits"
    KITS_NAME = "range_help.kits_name"
    KITS_COPIES = "range_help.kits_copies"
    KITS_WITHOUT = "range_help.kits_without"


class RangeNeed(Role):
    """Refusals of what a range says of its kits."""

    OF_KIT = "range_need.of_kit"
    OF_NUMBER = "range_need.of_number"
    KITS = "range_need.kits"
    ABOVE = "range_need.above"
    NAME = "range_need.name"
    NO_PATH = "range_need.no_path"
    RESERVED = "range_need.reserved"
    NO_LETTER = "range_need.no_letter"
    SAME = "range_need.same"
    WITHOUT = "range_need.without"


class ClassSheet(Role):
    """What the class sheet says."""

    NAME = "class_sheet.name"
    PURPOSE = "class_sheet.purpose"
    FOR_EACH = "class_sheet.for_each"
    FOR_ALL = "class_sheet.for_all"
    CUT = "class_sheet.cut"
    TIMES = "class_sheet.times"
    LESSON = "class_sheet.lesson"
    TIME = "class_sheet.time"
    WHAT = "class_sheet.what"
    REMARKS = "class_sheet.remarks"
    NAMES = "class_sheet.names"


class OverviewSheet(Role):
    """The overview of a range, for the maker alone."""

    NAME = "overview.name"
    PURPOSE = "overview.purpose"
    PURPOSE_IN = "overview.purpose_in"
    KIT = "overview.kit"
    BOXES = "overview.boxes"
    PER_CM = "overview.per_cm"
    PER_INCH = "overview.per_inch"
    ENDS = "overview.ends"
    WINDS = "overview.winds"
    WARP_M = "overview.warp_m"
    WARP_YD = "overview.warp_yd"
    WEFT_G = "overview.weft_g"
    WEFT_OZ = "overview.weft_oz"
    SHEETS = "overview.sheets"
    BOARDS = "overview.boards"
    BETWEEN = "overview.between"
    ALL = "overview.all"
    OF_ONE = "overview.of_one"
    OF_ALL = "overview.of_all"
    COSTS = "overview.costs"
    DIFFERS = "overview.differs"
    SOURCES = "overview.sources"
    KEY = "overview.key"
    RANGE = "overview.range"
    OWN = "overview.own"
    WITHOUT = "overview.without"
    LEFT_OUT = "overview.left_out"
    EVERY = "overview.every"
