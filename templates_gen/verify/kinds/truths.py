"""What must be true, by the name of the kind of frame end, and by how the thread is wound."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit, Winding
from templates_gen.verify.kinds.crossed import CrossedBars, CrossedBoards
from templates_gen.verify.kinds.loose_rod import RodBars, RodBoards
from templates_gen.verify.kinds.nailed import NailEnds
from templates_gen.verify.kinds.notched import NotchedEnds
from templates_gen.verify.kinds.pegged import PeggedEnds
from templates_gen.verify.kinds.truth import Truth
from templates_gen.verify.kinds.wound import FlatEnds, RoundBars

TRUTHS: ByKind[Truth[Any]] = ByKind(
    "proof",
    {
        RoundBar.name: RoundBars(),
        FlatEnd.name: FlatEnds(),
        NotchedEnd.name: NotchedEnds(),
        PeggedEnd.name: PeggedEnds(),
        NailEnd.name: NailEnds(),
    },
)
CROSSED: ByKind[Truth[Any]] = ByKind(
    "figure-eight proof", {RoundBar.name: CrossedBars(), FlatEnd.name: CrossedBoards()}
)
FROM_ROD: ByKind[Truth[Any]] = ByKind("loose-rod proof", {RoundBar.name: RodBars(), FlatEnd.name: RodBoards()})
_BY_WINDING: Mapping[Winding, ByKind[Truth[Any]]] = {"round": TRUTHS, "figure eight": CROSSED, "loose rod": FROM_ROD}


def truth_of(kit: Kit) -> Truth[Any]:
    """What must be true of the frame ends of a kit, wound as it says."""
    return _BY_WINDING[kit.weaving.how_wound].of(kit.frame.ends)
