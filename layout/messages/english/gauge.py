"""What the wrap gauge says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Gauge

MESSAGES: dict[Role, str | Plural] = {
    Gauge.ANY: "For any warp and weft; the table says what pairs counted in {window} make",
    Gauge.STEP_CUT: "Cut along the outline, fold over stiff board and glue.",
    Gauge.STEP_NOTCHES: "Then cut the notches through all layers.",
    Gauge.STEP_WIND: "Catch the warp in a notch. Wind warp and weft by turns: touching, not squeezed.",
    Gauge.STEP_COUNT: "Count whole pairs in a window, and look them up on the back.",
    Gauge.FRONT: "Front",
    Gauge.BACK: "Back",
    Gauge.TURN: "Turn the card like the leaf of a wall calendar.",
    Gauge.OF_TABLE: "the window of the table",
    Gauge.WARP: "Warp",
    Gauge.WEFT: "Weft",
    Gauge.OTHERS: "Filled as close, {one} holds {first} and {other} holds {second}.",
    Gauge.PAIRS: "pairs in the {window} window",
    Gauge.TO_UNIT: "mark every {unit}",
    Gauge.EPI: "epi",
    Gauge.PER_CM: "per cm",
    Gauge.WINDS: "winds",
    Gauge.PEGS: "pegs",
    Gauge.NAILS: "nails",
    Gauge.ENDS: "ends",
    Gauge.HOW: "How to wind",
    Gauge.SEEN_WARP: "warp",
    Gauge.SEEN_WEFT: "weft",
    Gauge.CATCH: "Catch the warp in a notch.",
    Gauge.WIND: "Wind the two by turns.",
    Gauge.FILL: "Fill it, count the pairs.",
    Gauge.ALONE: "One yarn alone: push its turns together until the window takes no more.",
    Gauge.IS_CUT: "cut",
    Gauge.IS_FOLD: "fold",
    Gauge.IS_WARP: "warp, black",
    Gauge.IS_WEFT: "weft, white",
    Gauge.THIS_KIT: Plural(
        "pairs", "This kit: {pairs} pair in {window}, so {sett}.", "This kit: {pairs} pairs in {window}, so {sett}."
    ),
    Gauge.CAUTION: "Cut along a steel rule, fingers clear. Blades are not for children.",
}
