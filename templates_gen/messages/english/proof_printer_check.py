"""English: what a proof finds wrong on a printer check."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.proof_printer_check import Checked

MESSAGES: dict[Role, str | Plural] = {
    Checked.MARK: "the end mark {letter} does not stand in its place",
    Checked.MARKS: "{found} bold lines stand at the ends of spans where {wanted} are wanted",
    Checked.LETTER: 'the end mark {letter} does not have "{words}" beside it',
    Checked.CROSS: "the diagonals have no cross in their middle",
    Checked.TICKS: "the rules have {found} lines where {wanted} are wanted",
    Checked.TICK: "a line of a rule is missing at x = {x:.2f}, y = {y:.2f} mm",
    Checked.NUMBER: 'the number "{words}" does not stand at its line, x = {x:.2f}, y = {y:.2f} mm',
    Checked.MARGIN: "the ladder of margins has no line {margin} mm from the {edge} edge with its number inside",
    Checked.WIDTHS: "the ladder of line widths has {found} lines where {wanted} are wanted",
    Checked.WIDTH: "the line of {width} mm is not one flat and one upright line of that width with its number",
    Checked.CARD: "the outline of the card is not 85.60 x 53.98 mm with round corners of 3.18 mm",
    Checked.MAP: "the small map does not show the span from {one} to {other} where it is",
    Checked.ROW: 'the row of the span from {one} to {other} does not say "{words}"',
    Checked.BLANKS: "{found} lines to write on stand there where {wanted} are wanted",
}
