"""What the head and the foot of a printed sheet say: its name, what it is for, how it is checked."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Scale, SheetName, Titles

MESSAGES: dict[Role, str | Plural] = {
    SheetName.NAME_START_HERE: "Start here",
    SheetName.PURPOSE_START_HERE: "The whole work, in its order.",
    SheetName.NAME_FRAME_CHECK: "Frame check",
    SheetName.PURPOSE_FRAME_CHECK: "Measure the empty frame, mark its middle, write down what you find.",
    SheetName.NAME_PULL_CHECK: "Pull check",
    SheetName.PURPOSE_PULL_CHECK: "How far the frame bends once it is warped.",
    SheetName.NAME_WRAP_GAUGE: "Wrap gauge",
    SheetName.PURPOSE_WRAP_GAUGE: "Only for a new yarn: wind it, and see whether the sett fits.",
    SheetName.NAME_STRIPS: "Marking strips",
    SheetName.PURPOSE_STRIPS: "The place of every wind.",
    SheetName.PURPOSE_STRIPS_ENDS: "The place of every end.",
    SheetName.NAME_STRIP_NEAR: "Near marking strip",
    SheetName.NAME_STRIP_FAR: "Far marking strip",
    SheetName.NAME_NOTCHES: "Notch templates",
    SheetName.PURPOSE_NOTCHES: "Saw a notch for every end.",
    SheetName.NAME_NOTCHES_NEAR: "Near notch template",
    SheetName.NAME_NOTCHES_FAR: "Far notch template",
    SheetName.NAME_PEGS: "Peg templates",
    SheetName.PURPOSE_PEGS: "Drill a hole for every peg.",
    SheetName.NAME_PEGS_NEAR: "Near peg template",
    SheetName.NAME_PEGS_FAR: "Far peg template",
    SheetName.NAME_NAILS: "Nail templates",
    SheetName.PURPOSE_NAILS: "The place of every nail.",
    SheetName.NAME_NAILS_NEAR: "Near nail template",
    SheetName.NAME_NAILS_FAR: "Far nail template",
    SheetName.NAME_WINDING: "Winding",
    SheetName.PURPOSE_WINDING: "One thread, round and round, from knot to knot.",
    SheetName.NAME_GUIDES: "Spacing guides",
    SheetName.PURPOSE_GUIDES: "Bring every end to its place.",
    SheetName.NAME_GRID: "Weaving grid",
    SheetName.PURPOSE_GRID: "A column to every end, a row to every bead of two picks.",
    SheetName.NAME_JOB: "Laser job",
    SheetName.PURPOSE_JOB: Plural("boards", "One board of {stock}.", "{boards} boards of {stock}."),
    Scale.CHECK: "Check first: both scales must be true to a ruler.",
    Scale.CHECK_AND_PRINT: "Check first: both scales must be true to a ruler. Print at 100 %.",
    Scale.MILLIMETRES: "{length} mm",
    Scale.INCHES: "{length} in",
    Titles.GUIDES: "all guides",
    Titles.BOARD: "board {number} of {total}",
    Titles.JOB: "cutting job",
}
