"""Roles of what the weaving grid says."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Grid(Role):
    """The weaving grid."""

    CENTRE = "grid.centre"
    PIECE = "grid.piece"
    NUMBERED = "grid.numbered"
    COLUMNS = "grid.columns"
    COLUMNS_MIRRORED = "grid.columns.mirrored"
    ROWS = "grid.rows"
    LESS = "grid.rows.less"
    FROM_FACE = "grid.from.face"
    FROM_BACK = "grid.from.back"
    MIRRORED = "grid.from.mirrored"
    GUESS = "grid.guess"
    STEP_CUT = "grid.step.cut"
    STEP_TAPE = "grid.step.tape"
    STEP_DRAW = "grid.step.draw"
    IS_ONE = "grid.legend.one"
    IS_TEN = "grid.legend.ten"
    IS_LIMIT = "grid.legend.limit"
    IS_CENTRE = "grid.legend.centre"
    IS_CUT = "grid.legend.cut"
    IS_CROSS = "grid.legend.cross"
    IS_UNDER = "grid.legend.under"
    IS_SMALL_CROSS = "grid.legend.small_cross"
