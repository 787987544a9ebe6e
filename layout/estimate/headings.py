"""Where the two headings lie in the frame."""

from __future__ import annotations

from layout.estimate.room_left import apart_at, end_width
from layout.kit.kit import Kit
from layout.values.quantity import Quantity
from layout.warps.warp import End
from layout.yardage.heading import heading_of


def heading_height(kit: Kit, woven: Quantity, end: End) -> float:
    """How high in mm above the outer edge of the near end the outer side of a heading lies.

    The near heading begins where face and back layer have come together; then follow the weaving, `woven` mm high, and
    the far heading.
    """
    near = end_width(kit).value + apart_at(kit).value
    heading = heading_of(kit.amounts.room).height.value
    if end == "far" and kit.weaving.how_wound == "loose rod":  # laid at the far end as the warp is begun
        return float(kit.frame.tightened.outer_height.mm) - near
    return near if end == "near" else near + 2 * heading + woven.value
