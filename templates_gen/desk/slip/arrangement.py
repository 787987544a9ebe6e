"""Where each field stands on the slip: its step, and under which "+" of it."""

from __future__ import annotations

from typing import Literal, NamedTuple

from layout.messages.catalogue import Role
from templates_gen.desk.slip.fields import RUN_PREFIX, SPECS, STOCK_PREFIX
from templates_gen.messages.roles.desk_slip import DeskSlip

_DETAILS = ("frame.edge_radius", "frame.notch_density", "frame.nail_length")
"""Of the keys of a kind of frame ends: those that may be left out."""


class Place(NamedTuple):
    """A group of a step: its `summary` (None for what stands first) and its fields and lists, by name with `[]`."""

    summary: Role | None
    names: tuple[str, ...]


class Part(NamedTuple):
    """A step with its groups."""

    id: Literal["measured", "frame", "weaving", "yarns", "box"]
    title: Role
    intro: Role
    places: tuple[Place, ...]


def _under(*starts: str, but: tuple[str, ...] = ()) -> tuple[str, ...]:
    """Fields that begin so, but for entries of lists, which stand in their tables."""
    return tuple(name for name in SPECS if name.startswith(starts) and "[]" not in name and name not in but)


_FIRST_OF_FRAME = (
    "frame.ends",
    "frame.bar_diameter",
    "frame.thickness",
    "frame.notch_width",
    "frame.notch_depth",
    "frame.peg_diameter",
    "frame.row_distance",
    "frame.nail_diameter",
    "frame.edge_distance",
    "frame.outer_width",
    "frame.outer_height",
    "frame.side_width",
)
_FRAME = ("frame.margin", *_DETAILS, "frame.side_thickness", "frame.tensioner", "frame.travel", "frame.left_warped")
_SIZE = ("weaving.width", "weaving.height")
_ROOM = ("weaving.draw_in", "weaving.shrinkage", "weaving.washed.before", "weaving.washed.after", "weaving.hem")
_CUT = ("stock/name", "stock/material", "stock/thickness", "stock/bending", "stock/sheet.", "stock/prices.")

ARRANGEMENT = (
    Part(
        "measured",
        DeskSlip.TITLE_MEASURED,
        DeskSlip.INTRO_MEASURED,
        (
            Place(None, ("name", "sett.readings")),
            Place(DeskSlip.MORE_SETT, _under("sett.", but=("sett.readings",))),
        ),
    ),
    Part(
        "frame",
        DeskSlip.TITLE_FRAME,
        DeskSlip.INTRO_FRAME,
        (
            Place(None, _FIRST_OF_FRAME),
            Place(DeskSlip.MORE_FRAME, _FRAME),
            Place(DeskSlip.MORE_STRENGTH, _under("frame.", but=(*_FIRST_OF_FRAME, *_FRAME))),
        ),
    ),
    Part(
        "weaving",
        DeskSlip.TITLE_WEAVING,
        DeskSlip.INTRO_WEAVING,
        (
            Place(None, _SIZE),
            Place(DeskSlip.MORE_WINDING, _under("weaving.", but=(*_SIZE, *_ROOM))),
            Place(DeskSlip.MORE_ROOM, (*_ROOM, *_under("room."))),
        ),
    ),
    Part(
        "yarns",
        DeskSlip.TITLE_YARNS,
        DeskSlip.INTRO_YARNS,
        (
            Place(None, ("yarns.warp", "yarns.weft")),
            Place(DeskSlip.MORE_WARP, _under("warp.")),
            Place(DeskSlip.MORE_STRANDS, ("weft.strands",)),
            Place(DeskSlip.MORE_WEFT, _under("weft.", but=("weft.strands",))),
        ),
    ),
    Part(
        "box",
        DeskSlip.TITLE_BOX,
        DeskSlip.INTRO_BOX,
        (
            Place(DeskSlip.MORE_PAPER, _under("paper.")),
            Place(DeskSlip.MORE_BOX, _under("box.")),
            Place(DeskSlip.MORE_LEGAL, _under("legal.")),
            Place(DeskSlip.MORE_ORDER, _under("order.")),
            Place(DeskSlip.MORE_STOCK, ("cut.comb", *_under(*_CUT))),
            Place(DeskSlip.MORE_CUTTER, _under(STOCK_PREFIX, but=("stock/version", *_under(*_CUT)))),
            Place(DeskSlip.MORE_RUN, ("run/copies", *_under("run/class."))),
            Place(DeskSlip.MORE_BUY, _under(RUN_PREFIX, but=("run/copies", *_under("run/class.")))),
        ),
    ),
)
"""The steps in the order of the work. Files are taken away in one more, which has no lines."""

ADDS: dict[str, Role] = {
    "sett.readings": DeskSlip.ADD_READINGS,
    "warp.threads": DeskSlip.ADD_THREADS,
    "weft.strands": DeskSlip.ADD_STRANDS,
    "weft.strands[].threads": DeskSlip.ADD_THREADS,
    "weft.colours": DeskSlip.ADD_COLOURS,
    "box.also": DeskSlip.ADD_ALSO,
    "run/buy.colours": DeskSlip.ADD_SOLD,
    "run/buy.also": DeskSlip.ADD_ALSO,
    "run/sell.quantities": DeskSlip.ADD_QUANTITIES,
}
"""What adds a row to each list."""
