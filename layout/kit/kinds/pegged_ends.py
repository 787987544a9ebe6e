"""The keys of pegged ends."""

from __future__ import annotations

from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import EDGE_DISTANCE, THICKNESS, EndKeys
from layout.messages.roles import EndNeed, KitHelp
from layout.sett.marking_units import PEGS

PEGGED_ENDS = EndKeys(
    PeggedEnd,
    (
        THICKNESS,
        Input("frame.peg_diameter", "length", KitHelp.FRAME_PEG_DIAMETER, '"3 mm"', low=of_mm(1), high=of_mm(25)),
        Input(
            "frame.row_distance",
            "length",
            KitHelp.FRAME_ROW_DISTANCE,
            '"12 mm"',
            low=of_mm(2),
            high=of_mm(200),
        ),
        EDGE_DISTANCE,
    ),
    {key: key for key in ("thickness", "peg_diameter", "row_distance", "edge_distance")},
    PEGS,
    inside=EndNeed.PEGS_IN_WIDTH,
)
