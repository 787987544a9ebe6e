"""The picture of every kind of frame end, by the kind's name."""

from __future__ import annotations

from layout.frames.kinds.by_kind import ByKind
from layout.frames.kinds.flat_ends import FlatEnd
from layout.frames.kinds.notched_ends import NotchedEnd
from layout.frames.kinds.pegged_ends import PeggedEnd
from layout.frames.kinds.round_bars import RoundBar
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
    },
)
