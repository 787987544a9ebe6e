"""The pens: each is a purpose. This one table alone knows line width, dash and grey.

Every line is black. Its width and its dash say what it means: thin lines help, dashed ones are folded, lie behind or
run through the centre, and a solid one of medium width is cut along. A reader tells from the ink which pen drew a line,
so no two look quite alike: two purposes that want one width are a hundredth of a millimetre apart. Solid regions and
words are both black; a file keeps them apart by their kind. The order of the table is the order of painting.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from functools import cached_property


class Face(Enum):
    """The two cuts of the print font, by the names of their files."""

    REGULAR = "OpenSans-Regular"
    STRONG = "OpenSans-SemiBold"


@dataclass(frozen=True, slots=True)
class Ink:
    """How a pen leaves the house: `width` and `dash` (mm drawn, mm left out, ...) in mm, `grey` 0 black to 1 white.

    A `width` of 0 means that the pen fills a region instead of drawing a line. `words` are read, in the letters of
    `face`; other pens draw areas and lines, and letters only as outlines. The pen of an `operation` fills with the
    colour that a shop's cutter knows it by, where a file can hold one.
    """

    width: float
    grey: float = 0.0
    dash: tuple[float, ...] = ()
    face: Face = Face.REGULAR
    words: bool = False
    operation: str = ""

    @property
    def fills(self) -> bool:
        """Whether it fills a region instead of drawing a line."""
        return self.width == 0


class Pen(Enum):
    """What a line or a region is for. `pen.ink` says how it looks, `pen.value` is its name in files."""

    TINT = "tint"  # bars, glue, notches, parts to cut: areas that mean something
    HELD = "held"  # the one piece of a map that the reader holds; a flap seen from its side
    SWATCH_ENGRAVE = "swatch of engraving"  # the signs of a cutter's operations, in the colours of its files
    SWATCH_SCORE = "swatch of scoring"
    SWATCH_CUT = "swatch of cutting"
    GRID = "grid"  # single lines of a grid
    HELP = "help"  # leaders, rules, what is looked at and not measured
    RULE = "rule"  # check scales: outline and ticks
    FOLD = "fold"  # where the paper bends
    CENTRE = "centre"  # the centre of the weaving, diagonals
    CENTRE_SHORT = "short centre"  # the same where only a few millimetres show
    SMALL_WARP = "small warp"  # the ends of the small warp in the head
    REGISTER = "register"  # face, outermost and back lines; crosses by which a part is found again
    TARGET = "target"  # rings by which a scan is measured
    HOLE = "hole"  # where a peg or a nail goes
    RING = "ring"  # round the number of an action
    OUTLINE = "outline"  # things in pictures, large rings
    CUT = "cut"  # where scissors or a knife go
    MARK = "mark"  # one wind
    GRID_TEN = "tens of a grid"  # every tenth line of a grid
    END_MARK = "end mark"  # one end on the face
    END_MARK_BACK = "end mark behind"  # one end behind
    HALF = "half a millimetre"  # a line to compare others with
    TEN = "ten"  # heavy marks: winds and ends that are counted by
    TEN_BACK = "ten behind"  # the same of an end behind
    UNIT = "unit"  # small scale of units
    LIMIT = "limit"  # limits of the weaving, the outline of a board
    EDGE = "edge"  # bold edges that are measured between
    THREAD_BACK = "thread behind"  # warp that runs behind the frame, in pictures
    PAPER = "paper"  # white: what lies over it is seen alone
    THREAD = "thread"  # warp on the face, in pictures
    PICK = "pick"  # heading rows and picks, in pictures
    WEFT = "weft"  # weft yarn, in pictures
    SOLID = "solid"  # arrow heads, knots, tiles, blocks
    ENGRAVE = "engrave"  # areas that a laser engraves, words in semibold letters, whose strokes hold on wood
    SCORE = "score"  # lines that a laser scores
    THROUGH = "cut through"  # outlines that a laser cuts, inner ones first
    REFERENCE = "reference"  # what no laser runs: squares and crosses to measure by
    TEXT = "text"  # words
    STRONG = "strong text"  # headings and names: words in semibold letters
    ON_BLACK = "text on black"  # numbers on the tiles, white

    @cached_property
    def ink(self) -> Ink:
        """Width, grey and dash."""
        return _INKS[self]


_BEHIND, _CENTRE = (1.2, 0.9), (2.4, 0.8, 0.6, 0.8)
_INKS = {
    Pen.TINT: Ink(0, grey=0.9),
    Pen.HELD: Ink(0, grey=0.75),
    Pen.SWATCH_ENGRAVE: Ink(0, grey=0.64, operation="engrave"),
    Pen.SWATCH_SCORE: Ink(0, grey=0.47, operation="score"),
    Pen.SWATCH_CUT: Ink(0, grey=0.2, operation="cut"),
    Pen.GRID: Ink(0.1),
    Pen.HELP: Ink(0.2),
    Pen.RULE: Ink(0.21),
    Pen.FOLD: Ink(0.3, dash=(2.4, 1.4)),
    Pen.CENTRE: Ink(0.25, dash=_CENTRE),
    Pen.CENTRE_SHORT: Ink(0.25, dash=(1.7, 0.5, 0.4, 0.5)),
    Pen.SMALL_WARP: Ink(0.26),
    Pen.REGISTER: Ink(0.18),
    Pen.TARGET: Ink(0.6),
    Pen.HOLE: Ink(0.25),
    Pen.RING: Ink(0.3),
    Pen.OUTLINE: Ink(0.34),
    Pen.CUT: Ink(0.35),
    Pen.MARK: Ink(0.31),
    Pen.GRID_TEN: Ink(0.36),
    Pen.END_MARK: Ink(0.4),
    Pen.END_MARK_BACK: Ink(0.4, dash=(1.1, 0.7)),
    Pen.HALF: Ink(0.5),
    Pen.TEN: Ink(0.7),
    Pen.TEN_BACK: Ink(0.7, dash=(1.4, 0.6)),
    Pen.UNIT: Ink(0.22),
    Pen.LIMIT: Ink(0.71),
    Pen.EDGE: Ink(0.9),
    Pen.THREAD_BACK: Ink(0.35, dash=_BEHIND),
    Pen.PAPER: Ink(0, grey=1.0),
    Pen.THREAD: Ink(0.8),
    Pen.PICK: Ink(0.92),
    Pen.WEFT: Ink(1.1),
    Pen.SOLID: Ink(0),
    Pen.ENGRAVE: Ink(0, grey=0.3, face=Face.STRONG),
    Pen.SCORE: Ink(0.27),
    Pen.THROUGH: Ink(0.37),
    Pen.REFERENCE: Ink(0.17, dash=(2.0, 1.0)),
    Pen.TEXT: Ink(0, words=True),
    Pen.STRONG: Ink(0, face=Face.STRONG, words=True),
    Pen.ON_BLACK: Ink(0, grey=1.0, face=Face.STRONG, words=True),
}

PAINTING_ORDER = {pen: index for index, pen in enumerate(Pen)}
