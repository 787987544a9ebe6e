"""Pegs and the thread between them, from the kit alone: where they stand, and how a thread touches two of them."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.kit.kit import Kit
from templates_gen.verify.search import root

Spot = tuple[float, float]


def end_thickness(kit: Kit) -> float | None:
    """How thick an end lies on its pegs in mm: as wrapped, else as its weight and fibre say; None if not known.

    Two threads in one end lie as one round thread of twice the area.
    """
    warp = kit.amounts.warp
    thread = warp.soft or warp.compressed
    area = None if thread is None else math.pi * thread.mm**2 / 4 * (2 if kit.weaving.doubled_warp else 1)
    return None if area is None else 2 * math.sqrt(area / math.pi)


def peg_centres(ends: PeggedEnd, marks: Sequence[float]) -> list[Spot]:
    """The x of every peg and how far within the outer edge it stands, in the order of `marks`.

    The first, on which the warp is tied, stands nearest to the weaving; from there the pegs step out and in by turns.
    """
    step = float(ends.row_distance.mm)
    depth, found = float(ends.edge_distance.mm) + step, list[Spot]()
    for x in marks:
        found.append((x, depth))
        step = -step
        depth += step
    return found


def touching(low: Spot, high: Spot, radius: float, *, right: bool) -> Callable[[float], float]:
    """The x at every height of the straight thread that leaves the peg at `low` on its `right` side (or its left) and
    comes to the peg at `high` on the other side, its middle line `radius` from both centres.

    It is turned about the lower peg from lying flat to lying flat the other way until it touches the upper one.
    """
    side = 1 if right else -1

    def beyond(lean: float) -> float:
        """How far the upper peg's centre lies further than it should on the line's far side."""
        across = (high[0] - low[0]) * math.cos(lean) - (high[1] - low[1]) * math.sin(lean)
        return side * across - 2 * radius

    lean = root(beyond, -math.pi / 2, math.pi / 2)
    at = (low[0] + side * radius * math.cos(lean), low[1] - side * radius * math.sin(lean))
    return lambda height: at[0] + (height - at[1]) * math.tan(lean)
