"""Where the two headings lie in the frame."""

from __future__ import annotations

from layout.amounts.weavable import HEADING
from layout.kit.kit import Kit
from layout.reckoning.known import stated
from layout.reckoning.room import apart_at, end_width
from layout.warps.warp import End


def heading_height(kit: Kit, end: End) -> float:
    """How high in mm above the outer edge of the near end the outer side of a heading lies.

    The near heading begins where face and back layer have come together; then follow the weaving and the far heading.
    """
    near = end_width(kit).value + apart_at(kit).value
    heading = stated(kit.amounts.room.heading, HEADING, "The heading").value
    return near if end == "near" else near + 2 * heading + float(kit.weaving.height.mm)
