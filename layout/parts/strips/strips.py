"""The templates of every kind of frame end that is made by one, by the kind's name, and what is asked of a kind."""

from __future__ import annotations

from typing import Any

from layout.drawing.shapes import Curve
from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.frame_end import FrameEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.parts.strips.bands import Bands, row_height
from layout.parts.strips.nailed import NailedStrip
from layout.parts.strips.notched import NotchedStrip
from layout.parts.strips.pegged import PeggedStrip
from layout.parts.strips.strip_kind import StripKind
from layout.plan import Plan
from layout.warps.warp import End

STRIPS: ByKind[StripKind[Any]] = ByKind(
    "strips",
    {
        NotchedEnd.name: NotchedStrip(),
        PeggedEnd.name: PeggedStrip(),
        NailEnd.name: NailedStrip(),
    },
)


def low_bands(ends: FrameEnd, *, tall: bool = False) -> Bands:
    """The low form of a strip for these frame ends; `tall` words take higher rows."""
    return STRIPS.of(ends).low(ends, row_height(tall=tall))


def full_bands(ends: FrameEnd, *, tall: bool = False) -> Bands:
    """The full form for these frame ends."""
    return STRIPS.of(ends).full(ends, row_height(tall=tall))


def beside(plan: Plan) -> float:
    """How far in mm what is sawn or drilled reaches to each side of its mark."""
    return STRIPS.of(plan.kit.frame.ends).beside(plan.kit.frame.ends)


def outlines(plan: Plan, end: End, up: int) -> list[Curve]:
    """What is sawn or drilled by the strip of `end`; `up` is +1 where the weaving lies above it."""
    return STRIPS.of(plan.kit.frame.ends).outlines(plan.kit.frame.ends, plan, end, up)
