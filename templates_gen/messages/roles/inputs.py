"""The roles of what people write: options, trial measurements, TOML files."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Only(Role):
    """What `--only` may name."""

    A_FILE = "inputs.only.a_file"
    GOT_SINCE = "inputs.only.got_since"
    A_PART = "inputs.only.a_part"
    A_PART_MEANT = "inputs.only.a_part_meant"
    OF_RUN = "inputs.only.of_run"


class Readings(Role):
    """Wrap readings given as options."""

    PAIRED = "inputs.readings.paired"
    COUNTS = "inputs.readings.counts"
    OF_READING = "inputs.readings.of_reading"
    LEAVE_OUT = "inputs.readings.leave_out"
    UNIT = "inputs.readings.unit"
    UNIT_LEAST = "inputs.readings.unit_least"
    BOTH = "inputs.readings.both"


class File(Role):
    """Kit files and stock files that cannot be used or written."""

    UNNAMED = "inputs.file.unnamed"
    NO_PLACE = "inputs.file.no_place"
    NOT_YET = "inputs.file.not_yet"
    NOT_ONE = "inputs.file.not_one"
    TOO_DEEP = "inputs.file.too_deep"
    THERE = "inputs.file.there"
    NOT_WRITTEN = "inputs.file.not_written"
    NOT_READ = "inputs.file.not_read"
    TOO_LARGE = "inputs.file.too_large"
    NOT_TEXT = "inputs.file.not_text"
    LINE_LIMITS = "inputs.file.line_limits"
    LONG_LINE = "inputs.file.long_line"
    NO_SUCH = "inputs.file.no_such"
    FOLDER = "inputs.file.folder"
    MAY_NOT_READ = "inputs.file.may_not_read"
    MAY_NOT_WRITE = "inputs.file.may_not_write"
    KIT = "inputs.file.kit"
    STOCK = "inputs.file.stock"
    PRINTER = "inputs.file.printer"


class Toml(Role):
    """What is wrong in the text of a TOML file."""

    AT = "inputs.toml.at"
    AT_LIKE = "inputs.toml.at_like"
    AT_WRITE = "inputs.toml.at_write"
    BRACKET_THEN = "inputs.toml.bracket_then"
    TWICE_AT = "inputs.toml.twice_at"
    TWICE = "inputs.toml.twice"
    BRACKET_OPEN = "inputs.toml.bracket_open"
    COMMA_BETWEEN = "inputs.toml.comma_between"
    COMMA_BEHIND = "inputs.toml.comma_behind"
    BRACKET_BEFORE = "inputs.toml.bracket_before"
    STRAIGHT_QUOTES = "inputs.toml.straight_quotes"
    TABLE_BETWEEN = "inputs.toml.table_between"
    TABLE_BRACKETS = "inputs.toml.table_brackets"
    ONE_WORD = "inputs.toml.one_word"
    EQUALS = "inputs.toml.equals"
    KEY_LETTERS = "inputs.toml.key_letters"
    VALUE = "inputs.toml.value"
    FLAG = "inputs.toml.flag"
    POINT = "inputs.toml.point"
    ZEROS = "inputs.toml.zeros"
    INCH_SIGN = "inputs.toml.inch_sign"
    UNIT_INSIDE = "inputs.toml.unit_inside"
    UNIT_QUOTED = "inputs.toml.unit_quoted"
    BRACKET_CLOSED = "inputs.toml.bracket_closed"
    QUOTE_INSIDE = "inputs.toml.quote_inside"
    QUOTES_OPEN = "inputs.toml.quotes_open"
    QUOTES_CLOSED = "inputs.toml.quotes_closed"
    BACKSLASH = "inputs.toml.backslash"
    TEXT_QUOTED = "inputs.toml.text_quoted"


class TrialNeed(Role):
    """Sizes measured on a trial cut."""

    ALONG_X = "inputs.trial_need.along_x"
    MEASURED = "inputs.trial_need.measured"
    TO_KNOW = "inputs.trial_need.to_know"
    NEITHER = "inputs.trial_need.neither"
    NOTHING = "inputs.trial_need.nothing"


class TrialLine(Role):
    """What the command `trial-cut` prints."""

    KERF = "inputs.trial_line.kerf"
    KERF_X = "inputs.trial_line.kerf_x"
    KERF_Y = "inputs.trial_line.kerf_y"
    KERF_IS = "inputs.trial_line.kerf_is"
    EASE = "inputs.trial_line.ease"
    EASE_IS = "inputs.trial_line.ease_is"
    NOT_STORED = "inputs.trial_line.not_stored"
    STORED = "inputs.trial_line.stored"
    KEPT = "inputs.trial_line.kept"
    ONE = "inputs.trial_line.one"
    SEVERAL = "inputs.trial_line.several"


class GuessOption(Role):
    """Options that say two yarns, for a first guess of their sett."""

    WARP = "inputs.guess_option.warp"
    STRANDS = "inputs.guess_option.strands"
    READING_OR_YARNS = "inputs.guess_option.reading_or_yarns"


class YarnOption(Role):
    """Options of the command `yarn`."""

    LABEL_OR_WRAP = "inputs.yarn_option.label_or_wrap"
    ONLY = "inputs.yarn_option.only"
    ONE_YARN = "inputs.yarn_option.one_yarn"
    YARNS = "inputs.yarn_option.yarns"
    ALONE = "inputs.yarn_option.alone"
    LEAVE_OUT = "inputs.yarn_option.leave_out"
    VOLUME_STATED = "inputs.yarn_option.volume_stated"
    NOTHING = "inputs.yarn_option.nothing"
    BOTH = "inputs.yarn_option.both"
    EITHER = "inputs.yarn_option.either"
