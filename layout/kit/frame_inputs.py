"""The inputs of the table [frame]: the ends of every kind, the size of the frame, and how strong it is."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.materials import MATERIALS
from layout.kit.input import Input
from layout.kit.input import of_mm as _mm
from layout.kit.kinds.all_keys import END_KEYS, end_inputs
from layout.messages.roles import KitHelp
from layout.values.units import Length

LONGEST = Length(Fraction(3000), "m")
"""No frame, and nothing woven on it, is longer."""
_TENTH = Length(Fraction(1, 10))

FRAME_INPUTS = (
    Input(
        "frame.ends",
        "choice",
        KitHelp.FRAME_ENDS,
        '"round bars"',
        required=True,
        choices=tuple(END_KEYS),
    ),
    *end_inputs(),
    Input(
        "frame.outer_width",
        "length",
        KitHelp.FRAME_OUTER_WIDTH,
        '"40 cm"',
        required=True,
        low=_mm(40),
        high=LONGEST,
    ),
    Input(
        "frame.outer_height",
        "length",
        KitHelp.FRAME_OUTER_HEIGHT,
        '"55 cm"',
        required=True,
        low=_mm(40),
        high=LONGEST,
    ),
    Input(
        "frame.side_width",
        "length",
        KitHelp.FRAME_SIDE_WIDTH,
        '"30 mm"',
        required=True,
        low=_mm(0),
        high=_mm(1500),
    ),
    Input(
        "frame.margin",
        "length",
        KitHelp.FRAME_MARGIN,
        '"15 mm"',
        default="10 mm",
        low=_mm(3),
        high=_mm(1500),
    ),
    Input("frame.side_thickness", "length", KitHelp.FRAME_SIDE_THICKNESS, '"20 mm"', low=_mm(1), high=_mm(200)),
    Input("frame.tension", "force", KitHelp.FRAME_TENSION, '"150 g"'),
    Input(
        "frame.tensioner",
        "choice",
        KitHelp.FRAME_TENSIONER,
        '"none"',
        default="none",
        choices=("none", "rods", "wedges"),
    ),
    Input("frame.travel", "length", KitHelp.FRAME_TRAVEL, '"15 mm"', low=_mm(1), high=_mm(300)),
    Input("frame.dip.load", "force", KitHelp.FRAME_DIP_LOAD, '"20 g"'),
    Input("frame.dip.length", "length", KitHelp.FRAME_DIP_LENGTH, '"400 mm"', low=_mm(50), high=LONGEST),
    Input("frame.dip.depth", "length", KitHelp.FRAME_DIP_DEPTH, '"5 mm"', low=_TENTH, high=_mm(50)),
    Input(
        "frame.pluck.hertz",
        "amount",
        KitHelp.FRAME_PLUCK_HERTZ,
        "125",
        least=Fraction(10),
        most=Fraction(2000),
    ),
    Input("frame.pluck.length", "length", KitHelp.FRAME_PLUCK_LENGTH, '"400 mm"', low=_mm(50), high=LONGEST),
    Input("frame.material", "choice", KitHelp.FRAME_MATERIAL, '"beech"', choices=MATERIALS),
    Input(
        "frame.modulus",
        "amount",
        KitHelp.FRAME_MODULUS,
        "12000",
        least=Fraction(100),
        most=Fraction(400_000),
    ),
    Input(
        "frame.bar_bore",
        "length",
        KitHelp.FRAME_BAR_BORE,
        '"12 mm"',
        low=_mm(0),
        high=_mm(119),
    ),
    Input(
        "frame.end_width",
        "length",
        KitHelp.FRAME_END_WIDTH,
        '"40 mm"',
        low=_mm(4),
        high=_mm(500),
    ),
    Input(
        "frame.left_warped",
        "choice",
        KitHelp.FRAME_LEFT_WARPED,
        '"days"',
        default="days",
        choices=("days", "months"),
    ),
)
