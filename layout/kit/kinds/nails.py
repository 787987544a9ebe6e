"""The keys of frame ends with nails."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.kinds.nails import NailEnd
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import EDGE_DISTANCE, THICKNESS, EndKeys
from layout.messages.roles import EndNeed, KitHelp
from layout.sett.marking_units import NAILS
from layout.values.units import Length

NAIL_ENDS = EndKeys(
    NailEnd,
    (
        THICKNESS,
        Input(
            "frame.nail_diameter",
            "length",
            KitHelp.FRAME_NAIL_DIAMETER,
            '"1.4 mm"',
            low=Length(Fraction(1, 2)),
            high=of_mm(10),
        ),
        EDGE_DISTANCE,
        Input("frame.nail_length", "length", KitHelp.FRAME_NAIL_LENGTH, '"10 mm"', low=of_mm(2), high=of_mm(60)),
    ),
    {key: key for key in ("thickness", "nail_diameter", "edge_distance", "nail_length")},
    NAILS,
    optional={"nail_length": None},
    inside=EndNeed.NAILS_IN_WIDTH,
)
