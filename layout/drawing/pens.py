"""The pens: each is a purpose. This one table alone knows line width, dash and grey.

Line widths come from the ISO 128 series (0.18, 0.25, 0.35, 0.5, 0.7 mm); the check bars take a width between two of
them, since no two lines may look alike: a reader tells from the ink which pen drew a line. Solid regions and words are
both black; a file keeps them apart by their kind. The order of the table is the order of painting.
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
    `face`; other pens draw areas and lines, and letters only as outlines.
    """

    width: float
    grey: float = 0.0
    dash: tuple[float, ...] = ()
    face: Face = Face.REGULAR
    words: bool = False

    @property
    def fills(self) -> bool:
        """Whether it fills a region instead of drawing a line."""
        return self.width == 0


class Pen(Enum):
    """What a line or a region is for. `pen.ink` says how it looks, `pen.value` is its name in files."""

    TINT = "tint"  # a band of help under the marks
    HELP = "help"  # grey lines that are looked at, not measured
    RULE = "rule"  # check bars and their ticks
    CUT = "cut"  # where the knife goes
    FOLD = "fold"  # where the paper bends
    CENTRE = "centre"  # the centre of the weaving
    REGISTER = "register"  # face, outermost and back lines; crosses by which a part is found again
    MARK = "mark"  # one wind
    TEN = "ten"  # every tenth wind
    UNIT = "unit"  # each marking unit
    EDGE = "edge"  # limits of the weaving, bold edges
    THREAD_BACK = "thread behind"  # warp that runs behind the frame, in pictures
    THREAD = "thread"  # warp on the face, in pictures
    SOLID = "solid"  # arrow heads, knots
    ENGRAVE = "engrave"  # areas that a laser engraves
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


_INKS = {
    Pen.TINT: Ink(0, grey=0.9),
    Pen.HELP: Ink(0.18, grey=0.5),
    Pen.RULE: Ink(0.3),
    Pen.CUT: Ink(0.25, dash=(3.0, 1.5)),
    Pen.FOLD: Ink(0.25, dash=(1.0, 1.0)),
    Pen.CENTRE: Ink(0.25, dash=(4.0, 0.8, 0.8, 0.8)),
    Pen.REGISTER: Ink(0.18),
    Pen.MARK: Ink(0.25),
    Pen.TEN: Ink(0.5),
    Pen.UNIT: Ink(0.35),
    Pen.EDGE: Ink(0.7),
    Pen.THREAD_BACK: Ink(0.35, grey=0.4, dash=(1.6, 1.0)),
    Pen.THREAD: Ink(0.5, grey=0.1),
    Pen.SOLID: Ink(0),
    Pen.ENGRAVE: Ink(0, grey=0.3),
    Pen.SCORE: Ink(0.25, grey=0.5),
    Pen.THROUGH: Ink(0.35, grey=0.2),
    Pen.REFERENCE: Ink(0.18, grey=0.6, dash=(2.0, 1.0)),
    Pen.TEXT: Ink(0, words=True),
    Pen.STRONG: Ink(0, face=Face.STRONG, words=True),
    Pen.ON_BLACK: Ink(0, grey=1.0, face=Face.STRONG, words=True),
}

PAINTING_ORDER = {pen: index for index, pen in enumerate(Pen)}
