"""The inputs of the table [frame]: the ends of every kind, the size of the frame, and how strong it is."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.bar import MODULI
from layout.kit.input import Input
from layout.kit.input import of_mm as _mm
from layout.kit.kinds.all_keys import END_KEYS, end_inputs
from layout.values.units import Length

LONGEST = Length(Fraction(3000), "m")
"""No frame, and nothing woven on it, is longer."""

FRAME_INPUTS = (
    Input(
        "frame.ends",
        "choice",
        "What carries the warp at the top and bottom of the frame.",
        '"round bars"',
        required=True,
        choices=tuple(END_KEYS),
    ),
    *end_inputs(),
    Input(
        "frame.outer_width",
        "length",
        "The whole frame from side to side.",
        '"40 cm"',
        required=True,
        low=_mm(40),
        high=LONGEST,
    ),
    Input(
        "frame.outer_height",
        "length",
        "The whole frame from bottom to top.",
        '"55 cm"',
        required=True,
        low=_mm(40),
        high=LONGEST,
    ),
    Input(
        "frame.side_width",
        "length",
        "How wide each side piece is, seen from the face.",
        '"30 mm"',
        required=True,
        low=_mm(0),
        high=_mm(1500),
    ),
    Input(
        "frame.margin",
        "length",
        "What stays free between a side piece and the weaving; what is tied outside the limit lies in it.",
        '"15 mm"',
        default="10 mm",
        low=_mm(3),
        high=_mm(1500),
    ),
    Input("frame.tension", "force", "How hard one thread of the warp pulls; left out, 1.5 N is assumed.", '"150 g"'),
    Input("frame.material", "choice", "What the frame ends are made of.", '"beech"', choices=tuple(MODULI)),
    Input(
        "frame.bar_bore",
        "length",
        "How wide round bars that are tubes are inside.",
        '"12 mm"',
        low=_mm(0),
        high=_mm(119),
    ),
    Input(
        "frame.end_width",
        "length",
        "How wide frame ends that are boards are, from their outer edge toward the weaving.",
        '"40 mm"',
        low=_mm(4),
        high=_mm(500),
    ),
)
