"""Roles of what the weaving grid says."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Grid(Role):
    """The weaving grid."""

    TITLE = "grid.title"
    CENTRE = "grid.centre"
    CELLS = "grid.cells"
    CELLS_LESS = "grid.cells.less"
    USE = "grid.use"
    USE_MIRRORED = "grid.use.mirrored"
    FROM_FACE = "grid.from.face"
    FROM_BACK = "grid.from.back"
    MIRRORED = "grid.from.mirrored"
    GUESS = "grid.guess"
    JOIN_LEFT = "grid.join.left"
    JOIN_BELOW = "grid.join.below"
    JOIN_BOTH = "grid.join.both"
