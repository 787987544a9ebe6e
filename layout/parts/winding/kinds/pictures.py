"""The picture of every kind of frame end, by the kind's name, and by how the thread is wound."""

from __future__ import annotations

from collections.abc import Mapping

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.frame_end import FrameEnd
from layout.frames.kinds.nails import NailEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
from layout.kit.kit import Winding
from layout.parts.winding.kinds.crossed import CrossedBarPicture, CrossedBoardPicture
from layout.parts.winding.kinds.loose_rod import BarRodPicture, BoardRodPicture
from layout.parts.winding.kinds.nailed import NailedPicture
from layout.parts.winding.kinds.notched import NotchedPicture
from layout.parts.winding.kinds.pegged import PeggedPicture
from layout.parts.winding.kinds.picture_kind import PictureKind
from layout.parts.winding.kinds.wound import FlatEndPicture, RoundBarPicture

PICTURES: ByKind[PictureKind] = ByKind(
    "picture",
    {
        RoundBar.name: RoundBarPicture(),
        FlatEnd.name: FlatEndPicture(),
        NotchedEnd.name: NotchedPicture(),
        PeggedEnd.name: PeggedPicture(),
        NailEnd.name: NailedPicture(),
    },
)
CROSSED: ByKind[PictureKind] = ByKind(
    "figure-eight picture", {RoundBar.name: CrossedBarPicture(), FlatEnd.name: CrossedBoardPicture()}
)
FROM_ROD: ByKind[PictureKind] = ByKind(
    "loose-rod picture", {RoundBar.name: BarRodPicture(), FlatEnd.name: BoardRodPicture()}
)
_BY_WINDING: Mapping[Winding, ByKind[PictureKind]] = {"round": PICTURES, "figure eight": CROSSED, "loose rod": FROM_ROD}


def picture_of(ends: FrameEnd, winding: Winding) -> PictureKind:
    """What is drawn for these frame ends alone, wound like that."""
    return _BY_WINDING[winding].of(ends)
