"""The keys of round bars."""

from __future__ import annotations

from layout.frames.kinds.round_bars import RoundBar
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import EndKeys
from layout.messages.roles import KitHelp
from layout.sett.marking_units import WINDS

ROUND_BARS = EndKeys(
    RoundBar,
    (Input("frame.bar_diameter", "length", KitHelp.FRAME_BAR_DIAMETER, '"15 mm"', low=of_mm(4), high=of_mm(120)),),
    {"bar_diameter": "diameter"},
    WINDS,
    strength="bar_bore",
)
