"""The roles of what a proof finds wrong in any file."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Proof(Role):
    """Where something is wrong, and how often."""

    AT = "proof.proof.at"
    TIMES = "proof.proof.times"
    SHEET = "proof.proof.sheet"
    NEAR = "proof.proof.near"
    FAR = "proof.proof.far"


class Compared(Role):
    """A sheet that was read beside the one that was drawn."""

    SHEETS = "proof.compared.sheets"
    SIZE = "proof.compared.size"
    SHAPES = "proof.compared.shapes"
    OFF = "proof.compared.off"
    KIND = "proof.compared.kind"
    SAYS = "proof.compared.says"
    FORM = "proof.compared.form"
    LINE = "proof.compared.line"
    REGION = "proof.compared.region"
    WORD = "proof.compared.word"
    CALLED = "proof.compared.called"
    OPERATIONS = "proof.compared.operations"
    OTHER_KIT = "proof.compared.other_kit"
    OTHER_STOCK = "proof.compared.other_stock"


class Laid(Role):
    """Whether parts are found, and whether their sheet is true to scale."""

    CROSSES = "proof.laid.crosses"
    SCALE = "proof.laid.scale"
    SETT = "proof.laid.sett"
    OPEN_CUT = "proof.laid.open_cut"
    NO_BAR_ACROSS = "proof.laid.no_bar_across"
    NO_BAR_UP = "proof.laid.no_bar_up"
    OUTLINE = "proof.laid.outline"
    MAP = "proof.laid.map"
    MAP_ROWS = "proof.laid.map.rows"
    MAP_GREY = "proof.laid.map.grey"


class Furnished(Role):
    """What every sheet of paper must carry."""

    TILE = "proof.furnished.tile"
    CORNERS = "proof.furnished.corners"
    FEW = "proof.furnished.few"
    TARGET = "proof.furnished.target"
    WHITE = "proof.furnished.white"
    MARGIN = "proof.furnished.margin"
    CAPTION = "proof.furnished.caption"
    SIGN = "proof.furnished.sign"
    STEP = "proof.furnished.step"
    FIGURES = "proof.furnished.figures"


class Words(Role):
    """Words that were read, and where they stand."""

    NOWHERE = "proof.words.nowhere"
    OTHER = "proof.words.other"
    STEP = "proof.words.step"
    SIDES = "proof.words.sides"
    CENTRE = "proof.words.centre"
    ARROW = "proof.words.arrow"
    CENTRES = "proof.words.centres"


class Whole(Role):
    """Files and parts that a whole kit must have."""

    MISSING = "proof.whole.missing"
    SHOWS_TIMES = "proof.whole.shows_times"
    STRAY = "proof.whole.stray"
    MISSING_CUT = "proof.whole.missing_cut"
    MISSING_AS = "proof.whole.missing_as"
    SHOWS = "proof.whole.shows"
    SHOWS_NOTHING = "proof.whole.shows_nothing"
    SQUARES = "proof.whole.squares"
    ON_BOARDS = "proof.whole.on_boards"
    NUMBERS = "proof.whole.numbers"
