"""What must be true, by the name of the kind of frame end."""

from __future__ import annotations

from typing import Any

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Kit
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
    },
)


def truth_of(kit: Kit) -> Truth[Any]:
    """What must be true of the frame ends of a kit."""
    return TRUTHS.of(kit.frame.ends).for_weaving(kit)
