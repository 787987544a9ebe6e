"""Where the two headings lie in the frame."""

from __future__ import annotations

from layout.estimate.room_left import apart_at, end_width
from layout.kit.kit import Kit
from layout.kit.yarn_facts import stated
from layout.messages.roles import Stated
from layout.warps.warp import End
from layout.yardage.weavable import HEADING


def heading_height(kit: Kit, end: End) -> float:
    """How high in mm above the outer edge of the near end the outer side of a heading lies.

    The near heading begins where face and back layer have come together; then follow the weaving and the far heading.
    """
    near = end_width(kit).value + apart_at(kit).value
    heading = stated(kit.amounts.room.heading, HEADING, Stated.HEADING).value
    return near if end == "near" else near + 2 * heading + float(kit.weaving.height.mm)
