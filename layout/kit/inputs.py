"""Every input of a kit, once: its key, kind, limits, default, help and an example. All limits are our own choice.

A key of `[]` stands for each entry of a list. Examples are written as they would stand in the kit file.
"""

from __future__ import annotations

from fractions import Fraction

from layout.kit.frame_inputs import FRAME_INPUTS, LONGEST
from layout.kit.input import Input
from layout.kit.input import of_mm as _mm
from layout.kit.yarn_inputs import YARN_INPUTS

AS_WIDE_AS_FITS = "as wide as fits"
AS_THE_STOCK_SAYS = "as the stock says"
VERSION = 1

POINT = Fraction(127, 360)
"""One PDF unit in mm, exactly (ISO 32000: 1/72 in)."""

PAPERS = {"common": (595, 790), "a4": (595, 842), "letter": (612, 792), "a3": (842, 1191), "11x17": (792, 1224)}
"""Sheets in whole PDF units (1/72 in). `common` prints unscaled on A4 and on Letter."""
LEAST_PAPER, MOST_PAPER = (420, 595), 9921
"""An own sheet in PDF units: at least 148 x 210 mm either way round, at most 3,500 mm along a side."""

LEAST_SETT, MOST_SETT = Fraction(1, 100), Fraction(6)
"""Setts in ends per mm: 0.1 to 60 ends per cm."""

LEAST_TENSION, MOST_TENSION = Fraction(1, 100), Fraction(100)
"""The pull of one end in newtons."""


INPUTS = (
    Input("version", "version", "The version of the kit file; this one is 1.", "1", required=True),
    Input("name", "name", "The name of the kit; it is on every sheet.", '"Willow frame, small"', required=True),
    Input("yarns.warp", "name", "The warp yarn, as you call it.", '"seine twine 12/9"', required=True),
    Input(
        "yarns.weft",
        "name",
        "The weft yarn, or the bundle of yarns woven as one.",
        '"two strands of wool"',
        required=True,
    ),
    Input(
        "sett.readings",
        "tables",
        "Wrap readings: warp and weft wrapped side by side; several are used together.",
        '[{pairs = 13, window = "5 cm"}]',
    ),
    Input(
        "sett.readings[].pairs",
        "whole",
        "Whole pairs of one warp and one weft thread, 1 to 10,000.",
        "13",
        required=True,
    ),
    Input(
        "sett.readings[].window", "length", "The width of the window they fit in.", '"5 cm"', low=_mm(1), high=LONGEST
    ),
    Input("sett.readings[].measure", "length", "What so many pairs measure.", '"10 cm"', low=_mm(1), high=LONGEST),
    Input("sett.given", "sett", "The sett itself, instead of readings; it is used as it is.", '"6 epi"'),
    Input(
        "sett.marking_unit",
        "length",
        "The distance between the long numbered marks, which holds whole winds, pegs or single warp ends; left out, a "
        "usual one is chosen.",
        '"4 cm"',
        low=_mm(1),
        high=_mm(1000),
    ),
    Input(
        "sett.loosest",
        "flag",
        "Use the smallest reading alone, where readings contradict each other.",
        "true",
        default=False,
    ),
    Input(
        "sett.as_measured",
        "flag",
        "Use the sett as measured, even if it does not divide evenly into a marking unit.",
        "true",
        default=False,
    ),
    *FRAME_INPUTS,
    Input(
        "weaving.width",
        "width",
        "How wide to weave.",
        '"24 cm"',
        default=AS_WIDE_AS_FITS,
        low=_mm(1),
        high=LONGEST,
    ),
    Input("weaving.height", "length", "How high to weave.", '"34 cm"', required=True, low=_mm(1), high=LONGEST),
    Input(
        "weaving.near_end",
        "choice",
        "The frame end where the warp is tied on, as the frame stands before you.",
        '"bottom"',
        default="bottom",
        choices=("bottom", "top"),
    ),
    Input(
        "weaving.slant",
        "choice",
        "Whether face and back share the slant of a wind, or the face stands straight.",
        '"shared"',
        default="shared",
        choices=("shared", "face straight"),
    ),
    Input(
        "weaving.start",
        "choice",
        "The side where winding begins, seen from the face as the frame stands before you.",
        '"left"',
        default="left",
        choices=("left", "right"),
    ),
    Input(
        "weaving.first_pass",
        "choice",
        "Whether the first pass runs over the face or behind the back.",
        '"face"',
        default="face",
        choices=("face", "back"),
    ),
    Input(
        "weaving.tie_off",
        "choice",
        "The frame end where the warp is tied off: near after an even number of warp ends, far after an odd one.",
        '"near end"',
        choices=("near end", "far end", "either end"),
    ),
    Input(
        "weaving.doubled_selvedges",
        "whole",
        "How many outer warp ends at each side are doubled, for a firm selvedge.",
        "1",
        default=0,
        least=Fraction(0),
        most=Fraction(10),
    ),
    Input("weaving.doubled_warp", "flag", "Whether every warp end has two threads.", "true", default=False),
    Input(
        "paper.size",
        "size",
        "The sheet to draw for; a size of your own is rounded to whole points of 1/72 in.",
        '"a4"',
        default="common",
        choices=tuple(PAPERS),
    ),
    Input(
        "paper.lay",
        "choice",
        "How a part lies on the sheet; auto tries straight, then diagonal, then tiles.",
        '"auto"',
        default="auto",
        choices=("auto", "straight", "diagonal", "tiles"),
    ),
    Input(
        "cut.comb",
        "choice",
        "Which warp ends get a slot in a comb that is cut; this goes before too_fine in the stock file.",
        '"every second end"',
        default=AS_THE_STOCK_SAYS,
        choices=(AS_THE_STOCK_SAYS, "every end", "every second end"),
    ),
    *YARN_INPUTS,
)

BY_KEY = {spec.key: spec for spec in INPUTS}
