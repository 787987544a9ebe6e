"""What the weaving grid says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Grid

_CELLS = "A column to every end, a row to every bead (two picks): {columns} columns of {wide}, {rows} rows of {high}"
_JOIN = (
    "In {count} pieces, {across} across and {up} up, numbered from the lower left: cut each along its dashed lines "
    "and, against a window, lay it over the piece "
)
_MEET = (
    " so that the large crosses meet, then tape it. Joined, the small crosses at its corners are {wide} mm apart "
    "across and {high} mm up."
)

_SHADED = "Shaded in tens, counted from the {side} and from the bottom of the standing frame. "
_DRAW = "Draw on it, or lay it under the warp: bold sides at the limits of the weaving, lowest line where it begins."

MESSAGES: dict[Role, str | Plural] = {
    Grid.TITLE: "Weaving grid",
    Grid.CENTRE: "centre",
    Grid.CELLS: _CELLS + ".",
    Grid.CELLS_LESS: _CELLS + ", {less} less than the height asked for.",
    Grid.USE: _SHADED.format(side="left") + _DRAW,
    Grid.USE_MIRRORED: _SHADED.format(side="right") + _DRAW,
    Grid.FROM_FACE: "Woven from its face: you see what is drawn.",
    Grid.FROM_BACK: "Woven from its back: the face will be the mirror image of what is drawn.",
    Grid.MIRRORED: (
        "Woven from its back, and mirrored: numbers run as on the face, whose first column is at the right here."
    ),
    Grid.GUESS: "The picks are a guess: weave a sample, count the beads up one end, and print the grid again.",
    Grid.JOIN_LEFT: _JOIN + "to its left" + _MEET,
    Grid.JOIN_BELOW: _JOIN + "below it" + _MEET,
    Grid.JOIN_BOTH: _JOIN + "to its left and below it" + _MEET,
}
