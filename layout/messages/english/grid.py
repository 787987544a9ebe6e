"""What the weaving grid says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Grid

MESSAGES: dict[Role, str | Plural] = {
    Grid.CENTRE: "centre",
    Grid.PIECE: "Piece {number} of {total}",
    Grid.NUMBERED: "Numbered from the lower left.",
    Grid.COLUMNS: Plural(
        "columns", "{columns} column of {wide}, ends from the left.", "{columns} columns of {wide}, ends from the left."
    ),
    Grid.COLUMNS_MIRRORED: Plural(
        "columns",
        "{columns} column of {wide}, ends from the right.",
        "{columns} columns of {wide}, ends from the right.",
    ),
    Grid.ROWS: Plural(
        "rows",
        "{rows} bead ({picks} picks) of {high}, rows from below.",
        "{rows} beads ({picks} picks) of {high}, rows from below.",
    ),
    Grid.LESS: "{less} less than the height asked for.",
    Grid.FROM_FACE: "Woven from its face: you see what is drawn.",
    Grid.FROM_BACK: "Woven from its back: the face will be the mirror image of what is drawn.",
    Grid.MIRRORED: (
        "Woven from its back, and mirrored: numbers run as on the face, whose first column is at the right here."
    ),
    Grid.GUESS: "The picks are a guess: weave a sample, count the beads up one end, and print the grid again.",
    Grid.STEP_CUT: "Cut each piece along its cut lines, and lay it over the grey of the others.",
    Grid.STEP_TAPE: "Tape the {count} pieces: the small crosses at the corners are {wide} x {high} mm apart.",
    Grid.STEP_DRAW: "Draw on it, or lay it under the warp. Begin at the lowest line.",
    Grid.IS_ONE: "every one",
    Grid.IS_TEN: "every ten",
    Grid.IS_LIMIT: "limit",
    Grid.IS_CENTRE: "centre line",
    Grid.IS_CUT: "cut here",
    Grid.IS_CROSS: "lay crosses on crosses",
    Grid.IS_UNDER: "under the next piece",
    Grid.IS_SMALL_CROSS: "small cross: to measure",
}
