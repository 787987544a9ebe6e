"""The keys of notched ends."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.kinds.notched_ends import NotchedEnd
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import THICKNESS, EndKeys
from layout.sett.marking_units import SINGLY
from layout.values.units import Length

NOTCHED_ENDS = EndKeys(
    NotchedEnd,
    (
        THICKNESS,
        Input(
            "frame.notch_width",
            "length",
            "How wide the notches of notched ends are.",
            '"1.5 mm"',
            low=Length(Fraction(1, 2)),
            high=of_mm(20),
        ),
        Input(
            "frame.notch_depth",
            "length",
            "How deep the notches are, from the outer edge.",
            '"6 mm"',
            low=of_mm(1),
            high=of_mm(60),
        ),
        Input(
            "frame.notch_density",
            "density",
            "How close the notches of a bar are that is there already; left out, the bar is still to be notched.",
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
    inside="notches",
)
