"""What the wrap gauge says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Gauge

MESSAGES: dict[Role, str | Plural] = {
    Gauge.TITLE: "Wrap gauge",
    Gauge.ANY: "For any warp and weft; the table says what pairs counted in {window} make",
    Gauge.NOTE: (
        "Cut it out, fold it at the short dashes over a strip of stiff board, glue it down, and cut the six slits, "
        "which hold the tails. Wind the yarn round the card, across the bold edges."
    ),
    Gauge.WIND: (
        "Warp and weft: weft first, against a bold line; then by turns, side by side: they touch, and they are not "
        "squeezed."
    ),
    Gauge.ALONE: "One yarn: push turns together until the window takes no more.",
    Gauge.COUNT: "Count whole pairs: a last warp without its weft is not counted.",
    Gauge.WARP: "Warp",
    Gauge.WEFT: "Weft",
    Gauge.PAIRS: "pairs in\n{window}",
    Gauge.TO_UNIT: "to {unit}",
    Gauge.EPI: "epi",
    Gauge.PER_CM: "per cm",
    Gauge.WINDS: "winds",
    Gauge.PEGS: "pegs",
    Gauge.NAILS: "nails",
    Gauge.ENDS: "ends",
}
