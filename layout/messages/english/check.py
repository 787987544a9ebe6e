"""What the frame check sheet says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Check

MESSAGES: dict[Role, str | Plural] = {
    Check.AT_LOWEST: "Its height can be adjusted: measure it at its lowest, {low}.",
    Check.CAUTION: (
        "A warped frame stores energy: rods, wedges and cut threads can fly. Wear glasses, keep faces clear of it, "
        "slacken the warp before you untie or cut it, and follow the rules of your workshop."
    ),
    Check.TITLED: "{title}. {sentence}",
    Check.DIAGONALS: "Diagonals",
    Check.DIAGONALS_ARE: "Both {long}.",
    Check.AT_MOST: "At most {apart} apart.",
    Check.PARALLEL_BARS: "Bars parallel",
    Check.PARALLEL_BOARDS: "Boards parallel",
    Check.PARALLEL_ARE: "Outermost line to outermost line, both sides {high}.",
    Check.MIDDLE_OF_BARS: "Middle of each bar",
    Check.MIDDLE_OF_BOARDS: "Middle of each board",
    Check.MIDDLE_IS: "{half} from both sides. Mark it in pencil, from the face round to the inner side.",
    Check.BEND: "After winding: the bend",
    Check.STRETCH_BARS: "Stretch a thread along each bar. Measure the gap in the middle.",
    Check.STRETCH_BOARDS: "Stretch a thread along each board. Measure the gap in the middle.",
    Check.EXPECTED: "{bent} is expected.",
    Check.EXPECTED_RANGE: "About {bent} is expected, {high} at most.",
    Check.EXPECTED_LITTLE: "Less than {least} is expected.",
    Check.MOST: "At {most} the warp grows slack.",
    Check.PULL_IS: "{threads} threads of {tension} pull with {newtons} N, {pounds} lb.",
    Check.PULL_RANGE: "{threads} threads of {tension} pull with {newtons} N ({least} to {most} N), {pounds} lb.",
    Check.MEASURE: "After winding: the pull of one thread",
    Check.MEASURE_HOW: (
        "Hang a weight at the middle of one thread until it dips by a sixtieth of its free length, or pluck it, "
        "{length} free. The kit file takes both: frame.dip, frame.pluck."
    ),
    Check.MEASURE_UNWEIGHED: (
        "Hang a weight at the middle of one thread and measure the dip, at most a sixtieth of its free length, or "
        "pluck it and read the pitch: frame.dip, frame.pluck in the kit file."
    ),
    Check.ROW_PULL: "pull, N",
    Check.ROW_GRAMS: "weight, g",
    Check.ROW_OUNCES: "weight, oz",
    Check.ROW_HERTZ: "pitch, Hz",
    Check.ONE: "one",
    Check.OTHER: "other",
    Check.LEFT: "left",
    Check.RIGHT: "right",
    Check.FAR: "far",
    Check.NEAR: "near",
    Check.FREE: "free length",
    Check.FOUND: "weight or pitch",
    Check.CHECKED_BY: "checked by",
    Check.ON: "on",
    Check.BENT_BAR: "near bar, bent",
    Check.BENT_BOARD: "near board, bent",
    Check.GAP: "gap",
    Check.STRETCHED: "stretched thread",
    Check.REMEDIES: "If it is not right",
    Check.ONE_LONGER: "One diagonal longer",
    Check.SQUEEZE: "Squeeze together the two corners of the longer diagonal, then tighten.",
    Check.NOT_PARALLEL_BARS: "Bars not parallel",
    Check.NOT_PARALLEL_BOARDS: "Boards not parallel",
    Check.TURN_BAR: "Turn or pack the looser bar until both sides agree.",
    Check.SHIFT_BOARD: "Loosen one board, shift it until both sides agree, and tighten it.",
    Check.BEND_BARS: "Bars bend",
    Check.BEND_BOARDS: "Boards bend",
    Check.STIFFER_BAR: "Wind with less pull, or take a stiffer bar of the same thickness.",
    Check.STIFFER_BOARD: "Wind with less pull, or take a stiffer board of the same thickness.",
}
