"""The roles of what the commands print."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Command(Role):
    """Lines of the commands themselves."""

    WROTE_KIT = "screen.command.wrote_kit"
    WROTE_STOCK = "screen.command.wrote_stock"
    STOPPED = "screen.command.stopped"
    INTO = "screen.command.into"
    IN_PLACE = "screen.command.in_place"
    PROGRESS = "screen.command.progress"
    NO_NAME = "screen.command.no_name"
    NO_OUTPUT = "screen.command.no_output"
    NO_OUTPUT_BUT = "screen.command.no_output_but"


class Measure(Role):
    """Numbers with their units."""

    MM = "screen.measure.mm"
    INCH = "screen.measure.inch"
    METRES = "screen.measure.metres"
    YARDS = "screen.measure.yards"
    GRAMS = "screen.measure.grams"
    OUNCES = "screen.measure.ounces"
    NEWTONS = "screen.measure.newtons"
    POUNDS = "screen.measure.pounds"
    PERCENT = "screen.measure.percent"
    MICROMETRES = "screen.measure.micrometres"
    PER_CM = "screen.measure.per_cm"
    PER_INCH = "screen.measure.per_inch"
    SIZE_MM = "screen.measure.size_mm"
    SIZE_INCH = "screen.measure.size_inch"
    BOTH = "screen.measure.both"


class Row(Role):
    """Labels of the rows of a plan, and the remarks beside them."""

    SETT = "screen.row.sett"
    SETT_GIVEN = "screen.row.sett_given"
    SETT_MEASURED = "screen.row.sett_measured"
    SETT_UNDER = "screen.row.sett_under"
    PITCH = "screen.row.pitch"
    PITCH_IS = "screen.row.pitch_is"
    UNIT = "screen.row.unit"
    UNIT_IS = "screen.row.unit_is"
    WEAVING = "screen.row.weaving"
    WEAVING_WINDS = "screen.row.weaving_winds"
    WEAVING_ENDS = "screen.row.weaving_ends"
    ENDS = "screen.row.ends"
    WINDS = "screen.row.winds"
    WINDS_AND_PASS = "screen.row.winds_and_pass"
    COUNT_ENDS = "screen.row.count_ends"
    MARKS = "screen.row.marks"
    MARKS_ARE = "screen.row.marks_are"
    TIED_FAR = "screen.row.tied_far"
    TIED_NEAR = "screen.row.tied_near"
    TIED_NEAR_TOO = "screen.row.tied_near_too"
    YARNS = "screen.row.yarns"
    WHY = "screen.row.why"
    CARE = "screen.row.care"
    ASSUMED = "screen.row.assumed"
    KNOW_MORE = "screen.row.know_more"
    PULL = "screen.row.pull"
    PULL_IS = "screen.row.pull_is"
    BENDING = "screen.row.bending"
    BENDING_UNKNOWN = "screen.row.bending_unknown"
    BENDING_IS = "screen.row.bending_is"


class Amount(Role):
    """Labels of what a plan says about yarns and room, and the remarks beside them."""

    HOW = "screen.amount.how"
    WARP_END = "screen.amount.warp_end"
    TWO_ENDS = "screen.amount.two_ends"
    WARP = "screen.amount.warp"
    WARP_WEIGHT = "screen.amount.warp_weight"
    HEADING = "screen.amount.heading"
    HEIGHT = "screen.amount.height"
    FRINGE_NEAR = "screen.amount.fringe_near"
    FRINGE_FAR = "screen.amount.fringe_far"
    SHED_STICK = "screen.amount.shed_stick"
    LEASHES = "screen.amount.leashes"
    LEASHES_ARE = "screen.amount.leashes_are"
    PICK = "screen.amount.pick"
    PICKS = "screen.amount.picks"
    TAKE_UP = "screen.amount.take_up"
    WEFT = "screen.amount.weft"
    WEFT_WEIGHT = "screen.amount.weft_weight"
    COLOUR = "screen.amount.colour"
    WOVEN = "screen.amount.woven"
    FINISHED = "screen.amount.finished"
    FINISHED_IS = "screen.amount.finished_is"
    THICK = "screen.amount.thick"


class Made(Role):
    """What was made, and what is new in the folder."""

    SHEETS = "screen.made.sheets"
    MARKS = "screen.made.marks"
    CUTS = "screen.made.cuts"
    BOTH = "screen.made.both"
    PROVEN = "screen.made.proven"
    KEPT = "screen.made.kept"
    OTHER_KIT = "screen.made.other_kit"
    FOLDER = "screen.made.folder"
    NEW = "screen.made.new"
    NEW_NAMED = "screen.made.new_named"
    CHANGED = "screen.made.changed"
    CHANGED_NAMED = "screen.made.changed_named"
    SAME = "screen.made.same"
    REMOVED = "screen.made.removed"
    REMOVED_NAMED = "screen.made.removed_named"
    FILES = "screen.made.files"


class CheckLine(Role):
    """What a check of finished files found."""

    RIGHT = "screen.check_line.right"
    WRONG = "screen.check_line.wrong"
    ASKED = "screen.check_line.asked"
    FOUND = "screen.check_line.found"
    DEVIATION = "screen.check_line.deviation"
    COUNTS = "screen.check_line.counts"


class YarnRow(Role):
    """What the command `yarn` says."""

    TEX = "screen.yarn_row.tex"
    BALL = "screen.yarn_row.ball"
    DIAMETER = "screen.yarn_row.diameter"
    SIDE_BY_SIDE = "screen.yarn_row.side_by_side"
    CLASS = "screen.yarn_row.class"
    NO_CLASS = "screen.yarn_row.no_class"
    CLASS_IS = "screen.yarn_row.class_is"
    CLASSES_ARE = "screen.yarn_row.classes_are"
    TWO_THICKNESSES = "screen.yarn_row.two_thicknesses"
