"""The way of warping on every kind of frame end, by the kind's name, and by how the thread is wound."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import FrameEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Winding
from layout.warps.crossed import CrossedBars, CrossedBoards
from layout.warps.loose_rod import FromRod
from layout.warps.nailed import NailedEnds
from layout.warps.notched import NotchedEnds
from layout.warps.pegged import PeggedEnds
from layout.warps.way import Way
from layout.warps.wound import FlatEnds, RoundBars

WAYS: ByKind[Way[Any]] = ByKind(
    "warping",
    {
        RoundBar.name: RoundBars(),
        FlatEnd.name: FlatEnds(),
        NotchedEnd.name: NotchedEnds(),
        PeggedEnd.name: PeggedEnds(),
        NailEnd.name: NailedEnds(),
    },
)
CROSSED: ByKind[Way[Any]] = ByKind("figure eight", {RoundBar.name: CrossedBars(), FlatEnd.name: CrossedBoards()})
FROM_ROD: ByKind[Way[Any]] = ByKind(
    "loose rod", {RoundBar.name: FromRod(RoundBars()), FlatEnd.name: FromRod(FlatEnds())}
)
_BY_WINDING: Mapping[Winding, ByKind[Way[Any]]] = {"round": WAYS, "figure eight": CROSSED, "loose rod": FROM_ROD}


def way_of(ends: FrameEnd, winding: Winding) -> Way[Any]:
    """The way of warping on these frame ends, wound like that."""
    return _BY_WINDING[winding].of(ends)
