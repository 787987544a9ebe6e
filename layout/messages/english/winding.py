"""What the winding picture says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Winding

MESSAGES: dict[Role, str | Plural] = {
    Winding.TITLE: "How to wind",
    Winding.NOTE_WOUND: "Not to scale. Full lines run on the face of the frame, broken lines behind it.",
    Winding.NOTE_CROSSED: (
        "Not to scale. Full lines run on the face of the frame, broken lines behind it; every end crosses from one to "
        "the other at half height."
    ),
    Winding.NOTE_ROD: (
        "Not to scale. From the loose rod behind, every end goes once round both frame ends and back to the rod; both "
        "knots are on it. Slacken the warp before you draw the rod."
    ),
    Winding.NOTE_NOTCHED: "Not to scale. All ends lie on the face; every turn goes round a tooth.",
    Winding.NOTE_PEGGED: "Not to scale. All ends lie on the face; every peg turns two of them.",
    Winding.NOTE_NAILED: "Not to scale. All ends lie on the face; every nail turns two of them.",
    Winding.TIGHTEN: (
        "Wind with the frame at its lowest, {low}; then tighten it, to no more than {tight}. It stores energy: rods "
        "and wedges can fly when they slip, so wear glasses and ease it off before you cut or loosen anything."
    ),
    Winding.NEAR_END: "near end",
    Winding.FAR_END: "far end",
    Winding.TIE_ON: "tie on",
    Winding.TIE_OFF: "tie off",
    Winding.MORE_WINDS: Plural("count", "{count} wind more", "{count} winds more"),
    Winding.MORE_ENDS: Plural("count", "{count} end more", "{count} ends more"),
    Winding.ON_FACE: "on the face",
    Winding.BEHIND: "behind",
    Winding.BEHIND_TOOTH: "behind a tooth",
    Winding.KNOT: "knot",
    Winding.ROWS: "two heading rows",
    Winding.NOT_TO_SCALE: "not to scale",
    Winding.SIDE_FACE: "face",
    Winding.SIDE_BEHIND: "behind",
    Winding.ROD: "rod",
    Winding.FROM_RIGHT: "from the right",
}
