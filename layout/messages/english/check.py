"""What the frame check sheet says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Check

MESSAGES: dict[Role, str | Plural] = {
    Check.TITLE: "Frame check",
    Check.AT_LOWEST: "Its height can be adjusted: measure it at its lowest, {low}.",
    Check.NOTE: "Check the frame before you warp it, and write down what you find.",
    Check.TITLE_PULL: "Pull check",
    Check.NOTE_PULL: "Check the pull when the frame is warped, and write down what you find.",
    Check.CAUTION: (
        "A warped frame stores energy: rods, wedges and cut threads can fly. Wear glasses, keep faces clear of it, "
        "slacken the warp before you untie or cut it, and follow the rules of your workshop."
    ),
    Check.TITLED: "{title}. {sentence}",
    Check.DIAGONALS: "Diagonals",
    Check.DIAGONALS_ARE: "From corner to corner, both {long}; at most {apart} apart.",
    Check.PARALLEL: "Frame ends parallel",
    Check.PARALLEL_ARE: (
        "From outermost line to outermost line, at both sides {high}; at most {apart} apart, half a pitch."
    ),
    Check.CENTRE: "Centre",
    Check.CENTRE_IS: (
        "On each frame end midway between two marks, {half} from the left side and from the right; threads along both "
        "diagonals cross over it. Never take it from a strip."
    ),
    Check.PULL: "Pull of the warp",
    Check.PULL_IS: "{threads} threads of {tension} pull on each bar with {newtons} N, {pounds} lb.",
    Check.PULL_RANGE: (
        "{threads} threads of {tension} pull on each bar with {newtons} N ({least} to {most} N), {pounds} lb "
        "({lightest} to {heaviest} lb)."
    ),
    Check.BENDS: "It bends by {bent} (computed); more than {most} (span / 500) slackens the middle.",
    Check.BENDS_RANGE: (
        "It bends by {bent}, up to {high} (computed); more than {most} (span / 500) slackens the middle."
    ),
    Check.LAY_A_RULE: ("Lay a rule along a bar when it is warped: more than {most} (span / 500) slackens the middle."),
    Check.ONE: "one",
    Check.OTHER: "other",
    Check.LEFT: "left",
    Check.RIGHT: "right",
    Check.BENT_BY: "bent by",
    Check.MEASURE: "Pull of one thread",
    Check.MEASURE_HOW: (
        "Hang a weight at the middle of a thread: the one that makes it dip by a sixtieth of its free length, and no "
        "more, shows its pull. Or pluck it: these pitches are for {length} free; half of that sounds twice as high. "
        "The kit takes both: frame.dip, frame.pluck."
    ),
    Check.MEASURE_UNWEIGHED: (
        "Hang a weight at the middle of a thread and measure the dip, at most a sixtieth of its free length; or pluck "
        "it and read the pitch. From frame.dip or frame.pluck, and the weight of the warp, the kit finds the pull."
    ),
    Check.ROW_PULL: "pull, N",
    Check.ROW_GRAMS: "weight, g",
    Check.ROW_OUNCES: "weight, oz",
    Check.ROW_HERTZ: "pitch, Hz",
    Check.FREE: "free length",
    Check.FOUND: "weight or pitch",
    Check.DIMENSION: "{length} ({other})",
}
