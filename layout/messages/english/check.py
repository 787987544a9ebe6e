"""What the frame check sheet says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Check

MESSAGES: dict[Role, str | Plural] = {
    Check.TITLE: "Frame check",
    Check.NOTE: "Check the frame before you warp it, and write down what you find.",
    Check.CAUTION: ("A warped frame is under tension: keep your face clear of it when you cut or untie the warp."),
    Check.TITLED: "{title}. {sentence}",
    Check.DIAGONALS: "Diagonals",
    Check.DIAGONALS_ARE: "From corner to corner, both {long}; at most {apart} apart.",
    Check.PARALLEL: "Ends parallel",
    Check.PARALLEL_ARE: (
        "From outermost line to outermost line, at both sides {high}; at most {apart} apart, half a pitch."
    ),
    Check.CENTRE: "Centre",
    Check.CENTRE_IS: (
        "On each end midway between two marks, {half} from the left side and from the right; threads along both "
        "diagonals cross over it. Never take it from a strip."
    ),
    Check.PULL: "Pull of the warp",
    Check.PULL_IS: "{threads} threads of {tension} pull at each frame end with {newtons} N, {pounds} lb.",
    Check.PULL_ASSUMED: (
        "{threads} threads of {tension} (assumed) pull at each frame end with {newtons} N, {pounds} lb."
    ),
    Check.BENDS: "It bends by {bent} (computed); more than {most} (span / 500) slackens the middle.",
    Check.LAY_A_RULE: (
        "Lay a rule along a frame end when it is warped: more than {most} (span / 500) slackens the middle."
    ),
    Check.ONE: "one",
    Check.OTHER: "other",
    Check.LEFT: "left",
    Check.RIGHT: "right",
    Check.BENT_BY: "bent by",
    Check.DIMENSION: "{length} ({other})",
}
