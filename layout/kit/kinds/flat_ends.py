"""The keys of flat ends."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from layout.frames.kinds.flat_ends import FlatEnd
from layout.kit.input import Input, of_mm
from layout.kit.kinds.end_keys import THICKNESS, EndKeys, Got
from layout.messages.roles import EndNeed, KitHelp
from layout.sett.marking_units import WINDS
from layout.values.errors import FieldError
from layout.values.units import Length, exact_length, say_length


def _check(got: Got) -> Iterator[FieldError]:
    """No edge is rounded further than to the middle of the board."""
    thickness, radius = got.get("frame.thickness"), got.get("frame.edge_radius")
    if thickness and radius and radius.mm > thickness.mm / 2:
        half = Length(thickness.mm / 2, thickness.unit)
        example = f'edge_radius = "{exact_length(half)}"'
        yield FieldError("frame.edge_radius", EndNeed.EDGE_RADIUS, say_length(radius), example, half=say_length(half))


FLAT_ENDS = EndKeys(
    FlatEnd,
    (
        THICKNESS,
        Input(
            "frame.edge_radius",
            "length",
            KitHelp.FRAME_EDGE_RADIUS,
            '"3 mm"',
            low=of_mm(0),
            high=of_mm(60),
        ),
    ),
    {"thickness": "thickness", "edge_radius": "edge_radius"},
    WINDS,
    optional={"edge_radius": Length(Fraction(0))},
    check=_check,
)
