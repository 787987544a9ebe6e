"""The keys of notched ends."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import THICKNESS, EndKeys
from layout.messages.roles import EndNeed, KitHelp
from layout.sett.marking_units import SINGLY
from layout.values.units import Length

NOTCHED_ENDS = EndKeys(
    NotchedEnd,
    (
        THICKNESS,
        Input(
            "frame.notch_width",
            "length",
            KitHelp.FRAME_NOTCH_WIDTH,
            '"1.5 mm"',
            low=Length(Fraction(1, 2)),
            high=of_mm(20),
        ),
        Input(
            "frame.notch_depth",
            "length",
            KitHelp.FRAME_NOTCH_DEPTH,
            '"6 mm"',
            low=of_mm(1),
            high=of_mm(60),
        ),
        Input(
            "frame.notch_density",
            "density",
            KitHelp.FRAME_NOTCH_DENSITY,
            '"4 per cm"',
        ),
    ),
    {
        "thickness": "thickness",
        "notch_width": "notch_width",
        "notch_depth": "notch_depth",
        "notch_density": "density",
    },
    SINGLY,
    optional={"notch_density": None},
    inside=EndNeed.NOTCHES_IN_WIDTH,
)
