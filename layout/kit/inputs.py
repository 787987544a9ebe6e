"""Every input of a kit, once: its key, kind, limits, default, help and an example. All limits are our own choice.

A key of `[]` stands for each entry of a list. Examples are written as they would stand in the kit file.
"""

from __future__ import annotations

from fractions import Fraction

from layout.kit.box_inputs import BOX_INPUTS
from layout.kit.frame_inputs import FRAME_INPUTS, LONGEST
from layout.kit.input import Input
from layout.kit.input import of_mm as _mm
from layout.kit.languages import LANGUAGES
from layout.kit.order_inputs import ORDER_INPUTS
from layout.kit.paper_size import PAPERS
from layout.kit.yarn_inputs import YARN_INPUTS
from layout.messages.roles import KitHelp

AS_WIDE_AS_FITS, AS_HIGH_AS_FITS = "as wide as fits", "as high as fits"
AS_THE_STOCK_SAYS = "as the stock says"
VERSION = 1

LEAST_PAPER, MOST_PAPER = (420, 595), 9921
"""An own sheet in PDF units: at least 148 x 210 mm either way round, at most 3,500 mm along a side."""

LEAST_SETT, MOST_SETT = Fraction(1, 100), Fraction(6)
"""Setts in ends per mm: 0.1 to 60 ends per cm."""

LEAST_TENSION, MOST_TENSION = Fraction(1, 100), Fraction(100)
"""The pull of one end in newtons."""


INPUTS = (
    Input("version", "version", KitHelp.VERSION, "1", required=True),
    Input("name", "name", KitHelp.NAME, '"Willow frame, small"', required=True),
    Input("yarns.warp", "name", KitHelp.YARNS_WARP, '"seine twine 12/9"', required=True),
    Input(
        "yarns.weft",
        "name",
        KitHelp.YARNS_WEFT,
        '"two strands of wool"',
        required=True,
    ),
    Input(
        "sett.readings",
        "tables",
        KitHelp.SETT_READINGS,
        '[{pairs = 13, window = "5 cm"}]',
    ),
    Input(
        "sett.readings[].pairs",
        "whole",
        KitHelp.SETT_READINGS_PAIRS,
        "13",
        required=True,
    ),
    Input("sett.readings[].window", "length", KitHelp.SETT_READINGS_WINDOW, '"5 cm"', low=_mm(1), high=LONGEST),
    Input("sett.readings[].measure", "length", KitHelp.SETT_READINGS_MEASURE, '"10 cm"', low=_mm(1), high=LONGEST),
    Input("sett.given", "sett", KitHelp.SETT_GIVEN, '"6 epi"'),
    Input(
        "sett.marking_unit",
        "length",
        KitHelp.SETT_MARKING_UNIT,
        '"4 cm"',
        low=_mm(1),
        high=_mm(1000),
    ),
    Input(
        "sett.loosest",
        "flag",
        KitHelp.SETT_LOOSEST,
        "true",
        default=False,
    ),
    Input(
        "sett.as_measured",
        "flag",
        KitHelp.SETT_AS_MEASURED,
        "true",
        default=False,
    ),
    *FRAME_INPUTS,
    Input(
        "weaving.width",
        "width",
        KitHelp.WEAVING_WIDTH,
        '"24 cm"',
        default=AS_WIDE_AS_FITS,
        low=_mm(1),
        high=LONGEST,
        word=AS_WIDE_AS_FITS,
    ),
    Input(
        "weaving.height",
        "height",
        KitHelp.WEAVING_HEIGHT,
        '"34 cm"',
        required=True,
        low=_mm(1),
        high=LONGEST,
        word=AS_HIGH_AS_FITS,
    ),
    Input(
        "weaving.near_end",
        "choice",
        KitHelp.WEAVING_NEAR_END,
        '"bottom"',
        default="bottom",
        choices=("bottom", "top"),
    ),
    Input(
        "weaving.slant",
        "choice",
        KitHelp.WEAVING_SLANT,
        '"shared"',
        default="shared",
        choices=("shared", "face straight"),
    ),
    Input(
        "weaving.start",
        "choice",
        KitHelp.WEAVING_START,
        '"left"',
        default="left",
        choices=("left", "right"),
    ),
    Input(
        "weaving.first_pass",
        "choice",
        KitHelp.WEAVING_FIRST_PASS,
        '"face"',
        default="face",
        choices=("face", "back"),
    ),
    Input(
        "weaving.winding",
        "choice",
        KitHelp.WEAVING_WINDING,
        '"round"',
        default="round",
        choices=("round", "figure eight"),
    ),
    Input(
        "weaving.near_hold",
        "choice",
        KitHelp.WEAVING_NEAR_HOLD,
        '"bar"',
        default="bar",
        choices=("bar", "loose rod"),
    ),
    Input("weaving.rod_diameter", "length", KitHelp.WEAVING_ROD_DIAMETER, '"8 mm"', low=_mm(2), high=_mm(40)),
    Input(
        "weaving.tie_off",
        "choice",
        KitHelp.WEAVING_TIE_OFF,
        '"near end"',
        choices=("near end", "far end", "either end"),
    ),
    Input(
        "weaving.doubled_selvedges",
        "whole",
        KitHelp.WEAVING_DOUBLED_SELVEDGES,
        "1",
        default=0,
        least=Fraction(0),
        most=Fraction(10),
    ),
    Input("weaving.doubled_warp", "flag", KitHelp.WEAVING_DOUBLED_WARP, "true", default=False),
    Input(
        "weaving.woven_from",
        "choice",
        KitHelp.WEAVING_WOVEN_FROM,
        '"back"',
        default="face",
        choices=("face", "back"),
    ),
    Input(
        "weaving.cartoon",
        "choice",
        KitHelp.WEAVING_CARTOON,
        '"as woven"',
        default="as woven",
        choices=("as woven", "mirrored"),
    ),
    Input(
        "paper.size",
        "size",
        KitHelp.PAPER_SIZE,
        '"a4"',
        default="common",
        choices=tuple(PAPERS),
    ),
    Input(
        "paper.lay",
        "choice",
        KitHelp.PAPER_LAY,
        '"auto"',
        default="auto",
        choices=("auto", "straight", "diagonal", "tiles"),
    ),
    Input(
        "paper.for",
        "choice",
        KitHelp.PAPER_FOR,
        '"box"',
        default="download",
        choices=("download", "box"),
    ),
    Input(
        "paper.language",
        "language",
        KitHelp.PAPER_LANGUAGE,
        '"de"',
        default="en",
        choices=tuple(LANGUAGES),
    ),
    Input(
        "cut.comb",
        "choice",
        KitHelp.CUT_COMB,
        '"every second end"',
        default=AS_THE_STOCK_SAYS,
        choices=(AS_THE_STOCK_SAYS, "every end", "every second end"),
    ),
    *YARN_INPUTS,
    *BOX_INPUTS,
    *ORDER_INPUTS,
)

BY_KEY = {spec.key: spec for spec in INPUTS}
