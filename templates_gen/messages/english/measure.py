"""English: what is measured on scans."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.measure import (
    After,
    MarkName,
    MeasureOption,
    Pair,
    Refused,
    RowLine,
    RowName,
    ScaleLine,
    SheetSeen,
    Shown,
)

MESSAGES: dict[Role, str | Plural] = {
    MarkName.WIND: "wind {number}",
    MarkName.MARK: "mark {number}",
    MarkName.NOTCH: "notch {number}",
    MarkName.PEG: "peg {number}",
    MarkName.NAIL: "nail {number}",
    MarkName.END: "end {number}",
    MarkName.COLUMN: "line {number}",
    MarkName.ROW: "row {number}",
    MarkName.LETTER: "{letter}",
    MarkName.LEFT_EDGE: "{window}, left edge",
    MarkName.RIGHT_EDGE: "{window}, right edge",
    RowName.COLUMNS: "lines between ends",
    RowName.ROWS: "lines between rows",
    RowName.SPAN: "Span {first} to {second}",
    RowName.NEAR: "near",
    RowName.FAR: "far",
    RowName.OF_PART: "{part}, {row}",
    RowName.HEADING: "{part}: {found} of {count} marks, from {first} to {last}",
    RowName.JOINED: "{part}, all {pieces} pieces together: {found} of {count} marks, from {first} to {last}",
    Pair.TOP: "the two at the top",
    Pair.BOTTOM: "the two at the bottom",
    Pair.LEFT: "the two at the left",
    Pair.RIGHT: "the two at the right",
    Pair.RISING: "the one at the bottom left and the one at the top right",
    Pair.FALLING: "the one at the top left and the one at the bottom right",
    SheetSeen.ON_PAGE: "{scan}, page {page}",
    SheetSeen.OF_FILE: "{scan}: sheet {number} of {total} of {file}, {kit}",
    SheetSeen.OF_PARTS: "{sheet} ({parts})",
    SheetSeen.BARE: "{scan}: sheet {number} of {total} of a file with the digest {digest}",
    SheetSeen.CORRECTED: "This file was made for a printer: the scale is what its correction has left over.",
    ScaleLine.SCALE: "Scale",
    ScaleLine.ACROSS: "Across",
    ScaleLine.UP: "Up",
    ScaleLine.COMES_OUT: "{nominal} mm come out {low} to {high} mm long",
    ScaleLine.SHARE: "{share} %, sure to {within} %, {basis}",
    ScaleLine.AS_SEEN: "as this scanner sees it",
    ScaleLine.AS_MEASURED: "the scanner's own error taken out",
    ScaleLine.NO_SCALE: "not known: the scan does not say its resolution",
    ScaleLine.RATIO: "Ratio",
    ScaleLine.RATIO_LARGER: "across is {percent} % larger than up",
    ScaleLine.RATIO_SMALLER: "across is {percent} % smaller than up",
    ScaleLine.RATIO_SAME: "across and up are alike",
    ScaleLine.SKEW: "Skew",
    ScaleLine.SKEW_RIGHT: "leans {mm} mm to the right in 100 mm up",
    ScaleLine.SKEW_LEFT: "leans {mm} mm to the left in 100 mm up",
    ScaleLine.SKEW_NONE: "upright",
    ScaleLine.SURE_PERCENT: "sure to {within} %, {basis}",
    ScaleLine.SURE_MM: "sure to {within} mm, {basis}",
    ScaleLine.UNEVENNESS: "Evenness",
    ScaleLine.EVEN: "even: {um} micrometres are left that no scale explains",
    ScaleLine.UNEVEN: "not even: {um} micrometres are left that no scale explains",
    RowLine.LENGTH: "Length",
    RowLine.WORST: "Worst mark",
    RowLine.OFF: "{mark} is {mm} mm off its place, toward {toward}",
    RowLine.ALL_PLACES: "every mark is at its place to 0.01 mm",
    RowLine.GAP: "Worst gap",
    RowLine.ALL_GAPS: "from every mark to the next it is right to 0.01 mm",
    RowLine.WIDE: "from {first} to {second} is {mm} mm too wide",
    RowLine.NARROW: "from {first} to {second} is {mm} mm too narrow",
    RowLine.SURE: "sure to {within} mm",
    RowLine.JOINTS: "Joints",
    RowLine.COUNTED: Plural(
        "joints",
        "{joints} joint counted as {tolerance} mm, which usual care keeps to",
        "{joints} joints counted as {tolerance} mm together, which usual care keeps to",
    ),
    RowLine.JOINTS_SEEN: Plural(
        "seen", "{seen} joint seen glued, and measured", "{seen} joints seen glued, and measured"
    ),
    After.SCANNER_ERROR: (
        "As this scanner sees it: the scanner's own error is in this scale, and is not known; 0.1 to 0.5 % is usual, "
        "and not alike across and along the bed."
    ),
    After.RULE_FIRST: (
        "To know the print itself, lay a steel rule from the middle of one target to that of another: {pair}, drawn "
        "{distance} mm apart. Give what it shows: {example}"
    ),
    After.RULE_OTHER: (
        "One distance says nothing of the other direction; for that measure {pair}, drawn {distance} mm apart: "
        "{example}"
    ),
    After.SKEW_SEEN: "The skew has in it how square the scanner is. Two diagonals would tell: {example}",
    After.MISTAKE: "More than {percent} % off: a print setting is the likelier cause than the printer.",
    After.MISTAKE_KNOWN: "More than {percent} % off: a print setting is the likelier cause. It fits this: {what}",
    After.TOO_FAR: "More than {percent} % off is never corrected: print again at 100 %, without scaling.",
    After.NOT_EVEN: (
        "The sheet is not even: the printer's feed slipped, the page did not lie flat, or the scanner jumped. Scan it "
        "again; if the same marks are off again, print it again."
    ),
    After.MARKS_BESIDE: "How far marks are off is said beside the scale: the sheet's own scale is taken out first.",
    After.NO_KIT: "With {example} its marks are measured too.",
    After.DAMP: "Paper moves with damp: these are its sizes on the day of the scan.",
    After.STORED: "Stored as {name} in {file}.",
    After.STORED_SKEW: "Its skew is stored as none: how square the scanner is, is not known.",
    After.PICTURE: "Drew {file}.",
    Refused.ON_SCAN: "{scan}: {why}",
    Refused.OTHER_SHEET: (
        "sheet {number} of {total} with the digest {digest} is not of {kit} as that is now: it is of another kit, or "
        "of a former version of this one"
    ),
    Refused.FEW_MARKS: (
        "{scan}: of {part}, fewer than four in five of its {count} marks can be read, so nothing is said of them; see "
        "that none is covered, and scan at 300 dpi"
    ),
    Refused.FAR_DISTANCE: needs(
        "the distance of {pair}, middle to middle, which is {distance} mm on the drawing and {seen} mm on the scan"
    ),
    MeasureOption.DPI: needs("the dots per inch of the scan, from {least} to {most}"),
    MeasureOption.KNOWN: needs("a length, after one of {pairs} where it is not that of the two targets at the top"),
    MeasureOption.TWICE: needs("each pair of targets once"),
    MeasureOption.DIAGONAL: needs("a distance across and one up the sheet beside a diagonal"),
    MeasureOption.WITHIN: needs("how far off the rule may be read, from 0.01 mm to 2 mm"),
    MeasureOption.ALONE: needs("{other} beside it"),
    MeasureOption.SCANNER: needs(
        "what the scanner shows of 1 mm across and along its bed, two numbers from {least} to {most}"
    ),
    MeasureOption.SCANNER_WITHIN: needs("how far off these two numbers may be, in %, from 0.001 to 1"),
    MeasureOption.ONE: needs("either distances on the paper or the scanner's own scale, not both"),
    MeasureOption.PICTURE: needs("a file that ends in .pdf or .png"),
    MeasureOption.STORE_SURE: needs(
        "a scale that is free of the scanner's own error across and up, by two distances on the paper or by the "
        "scanner's own scale"
    ),
    MeasureOption.STORE_SURE_GOT: "a scale as this scanner sees it",
    MeasureOption.STORE_ONE: needs("one sheet on the scans"),
    MeasureOption.STORE_ONE_GOT: "{count} sheets",
    MeasureOption.STORE_WITHIN: needs("a scale that is sure to {most} % or better"),
    MeasureOption.STORE_WITHIN_GOT: "one that is sure to {within} %",
    MeasureOption.STORE_MOST: needs("a scale within {most} % of 1: print again at 100 %, without scaling"),
    MeasureOption.STORE_BARE: needs(
        "a sheet that was not made for a printer: its scale is what a correction left over"
    ),
    MeasureOption.STORE_BARE_GOT: "{file}, which was",
    MeasureOption.SHARES: "{x} % across and {y} % up",
    Shown.DOCUMENT: "Deviations of printed sheets",
    Shown.TITLE: "How far marks are off: {sheet}",
    Shown.RULER: "{mm} mm off its place is as long as this ruler: deviations are drawn {times} times as large",
    Shown.TARGETS: "The targets of the sheet, and which way each was found to be off",
    Shown.SCALE_OUT: "The sheet's own scale is taken out first: {scale}",
    Shown.NO_SCALE: "its size is not known, only its ratio and its skew",
    Shown.SHARES: "{x} % across, {y} % up, and {skew} mm to the right for each 100 mm up",
    Shown.ROW: "{row}: upward is toward {last}, downward toward {first}; short bars show how sure each mark is",
}
