"""English: what is said of a printer check."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from templates_gen.messages.roles.printer_check import CheckLine, SpanNeed

MESSAGES: dict[Role, str | Plural] = {
    SpanNeed.MISSING: needs("the span from {one} to {other} as you measured it"),
    SpanNeed.DIAGONAL: needs("a diagonal, from E to F (--across) or from G to H (--across-2)"),
    SpanNeed.LONGER: needs("a length longer than nothing"),
    SpanNeed.WITHIN: needs("how far off a reading may be, more than nothing and at most {most} mm"),
    SpanNeed.NEAR: needs("a span within {most} % of {length} mm on this paper; more is no printer's own error"),
    SpanNeed.NEAR_MISTAKE: (
        "needs a span within {most} % of {length} mm on this paper, got {got}, which is what comes of {mistake}; for "
        "example {example}"
    ),
    SpanNeed.NEAR_TOGETHER: needs("a printer that is at most {most} % off together with what it is corrected for"),
    SpanNeed.AGREES: needs("a diagonal that goes with the other spans, about {length} mm"),
    SpanNeed.PART: "{length} mm, {percent} %",
    CheckLine.NAME_ACROSS: "Across",
    CheckLine.NAME_UP: "Up",
    CheckLine.NAME_SQUARE: "Square",
    CheckLine.COMES_OUT: "{length} mm come out {value} mm long ({low} to {high})",
    CheckLine.PER_CENT: "{percent} %, within {within} %",
    CheckLine.LEANS_RIGHT: "{length} mm up lean {value} mm to the right, within {within} mm",
    CheckLine.LEANS_LEFT: "{length} mm up lean {value} mm to the left, within {within} mm",
    CheckLine.READ_WITHIN: (
        "Each span counts as read within {within} mm. How far off the rule itself is, is not in these figures."
    ),
    CheckLine.COMPOSED: "The sheet was made for {printer}; what it was corrected for is counted in.",
    CheckLine.SETTING: (
        "Take care: {percent} % off is much for a printer. A print setting is the likelier cause; look for it first, "
        "and measure again."
    ),
    CheckLine.SETTING_MAY: "It may be {mistake}.",
    CheckLine.POINTLESS: "Correcting {what} is pointless: it is off by less than the measurement leaves open.",
    CheckLine.ALL_POINTLESS: (
        "Correcting this printer is pointless: it is off by less than the measurement leaves open, in every direction."
    ),
    CheckLine.OF_ACROSS: "lengths across",
    CheckLine.OF_UP: "lengths up",
    CheckLine.OF_SQUARE: "the lean",
    CheckLine.STORED: 'Stored in {file}. Sheets for this printer: templates-gen make KIT --printer "{name}"',
    CheckLine.NOT_STORED: "Not stored; give --store NAME to keep it, for make --printer NAME.",
}
