"""What the spacing guides and their sheet say."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Guide

MESSAGES: dict[Role, str | Plural] = {
    Guide.LEFT: "left",
    Guide.RIGHT: "right",
    Guide.CENTRE: "centre",
    Guide.EDGE: "this edge to the weaving, along the heading",
    Guide.AWAY: "{away} from the outer edge of the frame",
    Guide.NEAR_FROM_FACE: "Near guide, seen from the face",
    Guide.FAR_FROM_FACE: "Far guide, seen from the face",
    Guide.NEAR_PIECE: "Near guide, piece {number} of {total}",
    Guide.FAR_PIECE: "Far guide, piece {number} of {total}",
    Guide.CENTIMETRES: "{number} cm",
    Guide.INCHES: "{number} in",
    Guide.GLUE: (
        "Glue the sheet on card with a glue stick or spray. Cut out both guides, the thick edge last, in one stroke."
    ),
    Guide.LAY: "Once the heading rows are in, lay the thick edge along them, {away} from the outer edge of the frame.",
    Guide.LAY_BOTH: (
        "Once the heading rows are in, lay the thick edge along them: the near guide {near}, the far one {far} from "
        "the outer edge of the frame."
    ),
    Guide.LAY_ROD: (
        "Once the near heading rows are in, lay the near guide along them, {near} from the outer edge of the frame. "
        "The far one lies beside the far frame end as you begin: the heading at the rod is woven last."
    ),
    Guide.PUSH_LEFT: "From the left, push one end to each mark.",
    Guide.PUSH_RIGHT: "From the right, push one end to each mark.",
    Guide.PUSH_LEFT_ODD: "From the left, push one end to each mark. Odd ends come from the face.",
    Guide.PUSH_RIGHT_ODD: "From the right, push one end to each mark. Odd ends come from the face.",
    Guide.PUSH_LEFT_EVEN: "From the left, push one end to each mark. Even ends come from the face.",
    Guide.PUSH_RIGHT_EVEN: "From the right, push one end to each mark. Even ends come from the face.",
    Guide.PUSH_LEFT_MIXED: (
        "From the left, push one end to each mark: ends from the face to full marks, ends from behind to broken ones."
    ),
    Guide.PUSH_RIGHT_MIXED: (
        "From the right, push one end to each mark: ends from the face to full marks, ends from behind to broken ones."
    ),
    Guide.CHECK: "Check the outer ends against the triangles.",
    Guide.BY_THEMSELVES_NEAR: "At the near heading the ends lie right by themselves, within a tenth of the pitch.",
    Guide.BY_THEMSELVES_FAR: "At the far heading the ends lie right by themselves, within a tenth of the pitch.",
    Guide.OFF_NEAR: (
        "At the near heading, {away} from the outer edge, ends lie up to {off} off; from {free} on no push is needed: "
        "they lie within a tenth of the pitch."
    ),
    Guide.OFF_FAR: (
        "At the far heading, {away} from the outer edge, ends lie up to {off} off; from {free} on no push is needed: "
        "they lie within a tenth of the pitch."
    ),
    Guide.ALWAYS_PUSH_NEAR: (
        "At the near heading, {away} from the outer edge, ends lie up to {off} off; they need a push at every height."
    ),
    Guide.ALWAYS_PUSH_FAR: (
        "At the far heading, {away} from the outer edge, ends lie up to {off} off; they need a push at every height."
    ),
    Guide.UNKNOWN_THICKNESS: "The thickness of the warp is not known and left out.",
    Guide.HOW_IT_LIES: "How a guide lies",
    Guide.ROWS: "heading rows",
    Guide.READING: "Reading a guide",
    Guide.FULL_MARK: "full mark: an end from the face",
    Guide.BROKEN_MARK: "broken mark: an end from behind",
    Guide.LIMIT: "limit of the weaving",
    Guide.CENTIMETRE_SCALE: "centimetres, on the edge away from the weaving",
    Guide.HALF_INCHES: "half inches, on the edge away from the weaving",
    Guide.THICK_EDGE: "thick edge: measure with its outer side",
    Guide.CUT: "cut",
    Guide.BEHIND: "behind",
}
