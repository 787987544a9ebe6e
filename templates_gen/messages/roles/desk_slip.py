"""The roles of what the desk says: titles of the steps of the slip, what opens the rest, what adds a row."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskSlip(Role):
    """Titles of the steps of the slip, what opens the rest, what adds a row."""

    TITLE_MEASURED = "desk_slip.title.measured"
    TITLE_FRAME = "desk_slip.title.frame"
    TITLE_WEAVING = "desk_slip.title.weaving"
    TITLE_YARNS = "desk_slip.title.yarns"
    TITLE_BOX = "desk_slip.title.box"
    INTRO_MEASURED = "desk_slip.intro.measured"
    INTRO_FRAME = "desk_slip.intro.frame"
    INTRO_WEAVING = "desk_slip.intro.weaving"
    INTRO_YARNS = "desk_slip.intro.yarns"
    INTRO_BOX = "desk_slip.intro.box"
    MORE_SETT = "desk_slip.more.sett"
    MORE_FRAME = "desk_slip.more.frame"
    MORE_STRENGTH = "desk_slip.more.strength"
    MORE_WINDING = "desk_slip.more.winding"
    MORE_ROOM = "desk_slip.more.room"
    MORE_WARP = "desk_slip.more.warp"
    MORE_STRANDS = "desk_slip.more.strands"
    MORE_WEFT = "desk_slip.more.weft"
    MORE_PAPER = "desk_slip.more.paper"
    MORE_BOX = "desk_slip.more.box"
    MORE_LEGAL = "desk_slip.more.legal"
    MORE_STOCK = "desk_slip.more.stock"
    MORE_CUTTER = "desk_slip.more.cutter"
    MORE_RUN = "desk_slip.more.run"
    MORE_BUY = "desk_slip.more.buy"
    ADD_READINGS = "desk_slip.add.readings"
    ADD_THREADS = "desk_slip.add.threads"
    ADD_STRANDS = "desk_slip.add.strands"
    ADD_COLOURS = "desk_slip.add.colours"
    ADD_ALSO = "desk_slip.add.also"
    ADD_SOLD = "desk_slip.add.sold"
    ADD_QUANTITIES = "desk_slip.add.quantities"
    ROW = "desk_slip.row"
    LEFT_OUT = "desk_slip.left_out"
