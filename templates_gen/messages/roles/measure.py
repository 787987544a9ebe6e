"""The roles of what is measured on scans: names of marks and rows, the report, the picture, refusals."""

from __future__ import annotations

from layout.messages.catalogue import Role


class MarkName(Role):
    """What a mark is called at the bench."""

    WIND = "measure.mark.wind"
    MARK = "measure.mark.mark"
    NOTCH = "measure.mark.notch"
    PEG = "measure.mark.peg"
    NAIL = "measure.mark.nail"
    END = "measure.mark.end"
    COLUMN = "measure.mark.column"
    ROW = "measure.mark.row"
    LETTER = "measure.mark.letter"
    LEFT_EDGE = "measure.mark.left_edge"
    RIGHT_EDGE = "measure.mark.right_edge"


class RowName(Role):
    """One of several rows of marks of a part."""

    COLUMNS = "measure.row.columns"
    ROWS = "measure.row.rows"
    SPAN = "measure.row.span"
    NEAR = "measure.row.near"
    FAR = "measure.row.far"
    OF_PART = "measure.row.of_part"
    HEADING = "measure.row.heading"
    JOINED = "measure.row.joined"


class Pair(Role):
    """Two targets between which a distance is measured."""

    TOP = "measure.pair.top"
    BOTTOM = "measure.pair.bottom"
    LEFT = "measure.pair.left"
    RIGHT = "measure.pair.right"
    RISING = "measure.pair.rising"
    FALLING = "measure.pair.falling"


class SheetSeen(Role):
    """Which sheet it is."""

    ON_PAGE = "measure.sheet.on_page"
    OF_FILE = "measure.sheet.of_file"
    OF_PARTS = "measure.sheet.of_parts"
    BARE = "measure.sheet.bare"
    CORRECTED = "measure.sheet.corrected"


class ScaleLine(Role):
    """The scale of a sheet."""

    SCALE = "measure.scale.heading"
    ACROSS = "measure.scale.across"
    UP = "measure.scale.up"
    COMES_OUT = "measure.scale.comes_out"
    SHARE = "measure.scale.share"
    AS_SEEN = "measure.scale.as_seen"
    AS_MEASURED = "measure.scale.as_measured"
    NO_SCALE = "measure.scale.none"
    RATIO = "measure.scale.ratio"
    RATIO_LARGER = "measure.scale.ratio_larger"
    RATIO_SMALLER = "measure.scale.ratio_smaller"
    RATIO_SAME = "measure.scale.ratio_same"
    SKEW = "measure.scale.skew"
    SKEW_RIGHT = "measure.scale.skew_right"
    SKEW_LEFT = "measure.scale.skew_left"
    SKEW_NONE = "measure.scale.skew_none"
    SURE_PERCENT = "measure.scale.sure_percent"
    SURE_MM = "measure.scale.sure_mm"
    UNEVENNESS = "measure.scale.unevenness"
    EVEN = "measure.scale.even"
    UNEVEN = "measure.scale.uneven"


class RowLine(Role):
    """What was measured along a row of marks."""

    LENGTH = "measure.line.length"
    WORST = "measure.line.worst"
    OFF = "measure.line.off"
    ALL_PLACES = "measure.line.all_places"
    GAP = "measure.line.gap"
    ALL_GAPS = "measure.line.all_gaps"
    WIDE = "measure.line.wide"
    NARROW = "measure.line.narrow"
    SURE = "measure.line.sure"
    JOINTS = "measure.line.joints"
    COUNTED = "measure.line.counted"
    JOINTS_SEEN = "measure.line.joints_seen"


class After(Role):
    """Sentences under the figures."""

    SCANNER_ERROR = "measure.after.scanner_error"
    RULE_FIRST = "measure.after.rule_first"
    RULE_OTHER = "measure.after.rule_other"
    SKEW_SEEN = "measure.after.skew_seen"
    MISTAKE = "measure.after.mistake"
    MISTAKE_KNOWN = "measure.after.mistake_known"
    TOO_FAR = "measure.after.too_far"
    NOT_EVEN = "measure.after.not_even"
    MARKS_BESIDE = "measure.after.marks_beside"
    NO_KIT = "measure.after.no_kit"
    DAMP = "measure.after.damp"
    STORED = "measure.after.stored"
    STORED_SKEW = "measure.after.stored_skew"
    PICTURE = "measure.after.picture"


class Refused(Role):
    """What is not measured or not stored, and why."""

    ON_SCAN = "measure.refused.on_scan"
    OTHER_SHEET = "measure.refused.other_sheet"
    FEW_MARKS = "measure.refused.few_marks"
    FAR_DISTANCE = "measure.refused.far_distance"


class MeasureOption(Role):
    """Options that cannot be used."""

    DPI = "measure.option.dpi"
    KNOWN = "measure.option.known"
    TWICE = "measure.option.twice"
    DIAGONAL = "measure.option.diagonal"
    WITHIN = "measure.option.within"
    ALONE = "measure.option.alone"
    SCANNER = "measure.option.scanner"
    SCANNER_WITHIN = "measure.option.scanner_within"
    ONE = "measure.option.one"
    PICTURE = "measure.option.picture"
    STORE_SURE = "measure.option.store_sure"
    STORE_SURE_GOT = "measure.option.store_sure_got"
    STORE_ONE = "measure.option.store_one"
    STORE_ONE_GOT = "measure.option.store_one_got"
    STORE_WITHIN = "measure.option.store_within"
    STORE_WITHIN_GOT = "measure.option.store_within_got"
    STORE_MOST = "measure.option.store_most"
    STORE_BARE = "measure.option.store_bare"
    STORE_BARE_GOT = "measure.option.store_bare_got"
    SHARES = "measure.option.shares"


class Shown(Role):
    """Words on the picture of the deviations."""

    DOCUMENT = "measure.shown.document"
    TITLE = "measure.shown.title"
    RULER = "measure.shown.ruler"
    TARGETS = "measure.shown.targets"
    SCALE_OUT = "measure.shown.scale_out"
    NO_SCALE = "measure.shown.no_scale"
    SHARES = "measure.shown.shares"
    ROW = "measure.shown.row"
