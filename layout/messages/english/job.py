"""What the job sheet of a kit's boards says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Colour, JobSheet

MESSAGES: dict[Role, str | Plural] = {
    JobSheet.STOCK_IS: "{material}, {thick} mm, {width} x {height} mm",
    JobSheet.ORIGIN: "Origin: x to the right, y up. Nothing runs what is {colour}, {code}.",
    JobSheet.BOARD_IS: "Board {number} of {total}, not to scale. Largest free piece: {width} x {height} mm.",
    JobSheet.FILES: "Files: {file}, .svg or .dxf.",
    JobSheet.GRAIN_ALONG: "The grain runs along {axis}; no part is turned across it.",
    JobSheet.GRAIN_NONE: "Without grain: parts may be turned.",
    JobSheet.SQUARE: "50 mm square, drawn on this board and in the file: measure it first, nothing runs it",
    JobSheet.FREE: "free for the next job",
    JobSheet.PARTS: "Parts",
    JobSheet.SIZES: "sizes in mm, as they are drawn",
    JobSheet.SIZE: "{length} x {height}",
    JobSheet.TIMES: "x {count}",
    JobSheet.WHICH: "{which} of {count}",
    JobSheet.NOT_HERE: "Not here: {why}",
    JobSheet.OF_KIT: "{part}, {kit}",
    JobSheet.CUT_TIMES: "Cut this board {times} times. Amounts and time are those of one.",
    JobSheet.ORDER: "In this order",
    JobSheet.ORDER_IS: "Inner cuts before outlines.",
    JobSheet.HOW_MUCH: "how much",
    JobSheet.POWER: "power",
    JobSheet.SPEED: "speed",
    JobSheet.PASSES: "passes",
    JobSheet.ENGRAVE: "engrave",
    JobSheet.SCORE: "score",
    JobSheet.CUT: "cut",
    JobSheet.COLOUR_IS: "{colour} {code}",
    JobSheet.AREA: "{area} cm2",
    JobSheet.LENGTH: "{length} m",
    JobSheet.TIME_IS: "Time: about {minutes} min, an estimate; moves between lines and slow corners come on top.",
    JobSheet.TIME_UNKNOWN: "Time unknown: add speeds for {operations} to the stock file.",
    JobSheet.STEP_SQUARE: "Measure the 50 mm square in the file: it must be 50 mm both ways.",
    JobSheet.STEP_KERF_DRAWN: "The kerf, {kerf}, is drawn in: switch the machine's own off.",
    JobSheet.STEP_KERF_LEFT: (
        "The kerf, {kerf}, is not drawn in: the machine itself must keep clear of the lines by half of it."
    ),
    JobSheet.STEP_SCALE: ("The cutter's scale is drawn in, x {x} %, y {y} %, skew {skew} %: import the file at 100 %."),
    JobSheet.STEP_SCALE_WITHIN: (
        "The cutter's scale is drawn in, x {x} %, y {y} %, skew {skew} %, each within {within} %: import the file at "
        "100 %."
    ),
    JobSheet.STEP_PEOPLE: "Trained people only. Safety glasses, lid shut, extraction on; stay by it.",
    JobSheet.STEP_MATERIAL: "No other board, never PVC or vinyl. Let it cool, wipe off soot: it stains wool.",
    JobSheet.KERF_ONE: "{kerf} mm",
    JobSheet.KERF_TWO: "{up} mm where a cut runs up the sheet, {across} mm across it",
    JobSheet.CARE_RULES: "Your shop's own rules and the law come first.",
    JobSheet.CARE_FIRE: "Never left alone, a fire extinguisher in reach.",
    JobSheet.CARE_EYES: "Interlocks as they came; nobody looks into the beam.",
    JobSheet.CARE_FUMES: "PVC and vinyl give off hydrogen chloride; no plastic of unknown kind.",
    JobSheet.CARE_PARTS: "Keep hot, sharp and small pieces from children.",
    Colour.DARK: "dark {colour}",
    Colour.LIGHT: "light {colour}",
    Colour.RED: "red",
    Colour.ORANGE: "orange",
    Colour.YELLOW: "yellow",
    Colour.GREEN: "green",
    Colour.CYAN: "cyan",
    Colour.BLUE: "blue",
    Colour.VIOLET: "violet",
    Colour.MAGENTA: "magenta",
    Colour.GREY: "grey",
    Colour.BLACK: "black",
    Colour.WHITE: "white",
    Colour.SAND: "sand",
    Colour.HEATHER: "heather",
    Colour.BARK: "bark",
}
