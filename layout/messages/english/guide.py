"""What the spacing guides say, and how they are used."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Guide

_ROD = (
    "For the {0} of the frame as it stands before you, to space a warp on a loose rod there as you begin; its second "
    "heading is woven last, beside the rod. Cut it out, the long edge along a rule, glue it on card, lay it on the "
    "warp beside the frame end, centre on centre, push each end to its mark."
)

MESSAGES: dict[Role, str | Plural] = {
    Guide.TITLE_NEAR: "Spacing guide, near heading",
    Guide.TITLE_FAR: "Spacing guide, far heading",
    Guide.NEAR_FROM_FACE: "near heading, seen from the face",
    Guide.FAR_FROM_FACE: "far heading, seen from the face",
    Guide.ALL_ON_FACE: "every end lies on the face",
    Guide.LAYERS: "long marks: ends on the face; short: behind",
    Guide.LAYERS_BRIEF: "long: face; short: back",
    Guide.BY_THEMSELVES: "the ends lie right by themselves here, within a tenth of the pitch",
    Guide.BY_THEMSELVES_BRIEF: "the ends lie right by themselves here",
    Guide.OFF: "heading {away} from the outer edge: ends up to {off} off",
    Guide.OFF_BRIEF: "{away} from the outer edge: ends up to {off} off",
    Guide.NO_PUSH: "no push needed from {away} on: ends within a tenth of the pitch",
    Guide.NO_PUSH_BRIEF: "no push needed from {away} on",
    Guide.ALWAYS_PUSH: "pushing needed at every height",
    Guide.UNKNOWN_THICKNESS: "the thickness of the warp is not known and left out",
    Guide.USE_BOTTOM: (
        "For the heading at the bottom of the frame as it stands before you. Cut it out, the long edge along a rule, "
        "glue it on card, lay it on the warp below the heading, centre on centre, push each end to its mark."
    ),
    Guide.USE_TOP: (
        "For the heading at the top of the frame as it stands before you. Cut it out, the long edge along a rule, "
        "glue it on card, lay it on the warp above the heading, centre on centre, push each end to its mark."
    ),
    Guide.USE_ROD_BOTTOM: _ROD.format("bottom"),
    Guide.USE_ROD_TOP: _ROD.format("top"),
    Guide.TENTH: "No pushing is needed where ends lie within a tenth of the pitch of their places.",
}
