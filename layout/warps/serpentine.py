"""There and back on the face, round one peg or nail after the other: each turns two ends.

The near ones stand at -W/2 + j P and the far ones at -W/2 + (j + 1/2) P, with P twice the pitch. A pass touches two of
them on the sides that face each other, its middle line half the thickness of peg and thread together off both centres.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from fractions import Fraction

from layout.frames.frame import Frame
from layout.warps.layout_result import LayoutResult
from layout.warps.warp import Pass, Warp
from layout.warps.way import Course


def laid_between(ends: int, pitch: Fraction, half: Fraction) -> LayoutResult:
    """Centres and passes of `ends` ends at `pitch` mm, each pass `half` mm inside its centres."""
    near = tuple(2 * j * pitch - ends * pitch / 2 for j in range(ends // 2 + 1))
    far = tuple((2 * j + 1) * pitch - ends * pitch / 2 for j in range((ends + 1) // 2))
    passes = tuple(
        Pass(near[(k + 1) // 2] - half, far[k // 2] + half, "face", "down")
        if k % 2
        else Pass(near[k // 2] + half, far[k // 2] - half, "face", "up")
        for k in range(ends)
    )
    return LayoutResult(near, far, passes, 2 * pitch)


def courses_between(
    frame: Frame, warp: Warp, across: float, depth: Callable[[int], Fraction], period: int
) -> Iterator[Course]:
    """The courses of the first `period` passes, as wound from left to right: all later ones repeat them.

    Peg or nail and thread are `across` mm thick together; `depth` says how far within the outer edge each centre lies.
    The tangent from the right side of one to the left side of another that stands dx further on and dy higher leans by
    atan2(dx, dy) - asin(D / c) from upright, with c from centre to centre, and leaves the first D / (2 cos lean) beside
    its centre. On the way back all is mirrored.
    """
    high = frame.outer_height.mm
    for k in range(min(warp.ends, period)):
        low, up, side = (k + 1) // 2, k // 2, -1 if k % 2 else 1
        bottom = float(depth(low))
        rise = float(high - depth(up)) - bottom
        from_centre, to_centre = (warp.toward * float(x) for x in (warp.near[low], warp.far[up]))
        along = side * (to_centre - from_centre)
        lean = math.atan2(along, rise) - math.asin(across / math.hypot(along, rise))
        at_half = from_centre + side * (across / 2 / math.cos(lean) + (float(high) / 2 - bottom) * math.tan(lean))
        wanted = float((k + Fraction(1, 2)) * warp.pitch - warp.width / 2)
        yield at_half - wanted, side * math.tan(lean)
