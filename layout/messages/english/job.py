"""What the job sheet of a kit's boards says."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import JobSheet

MESSAGES: dict[Role, str | Plural] = {
    JobSheet.TITLE: "Cutting job",
    JobSheet.FACTS: "What is cut, and how",
    JobSheet.SAFETY: "Before the beam goes on",
    JobSheet.MATERIAL: "Material",
    JobSheet.MATERIAL_IS: "{material} ({stock})",
    JobSheet.THICKNESS: "Thickness",
    JobSheet.THICKNESS_IS: "{thick} mm",
    JobSheet.SHEETS: "Sheets",
    JobSheet.SHEETS_ARE: "{count} of {width} x {height} mm; by area at least {least}",
    JobSheet.PARTS: "Parts",
    JobSheet.PARTS_ONCE: "{count}: each once; {waste} % of the sheets is waste, gaps included",
    JobSheet.PARTS_SOME: "{count}: {many}; all others once; {waste} % of the sheets is waste, gaps included",
    JobSheet.PARTS_MANY: "{count}: {many}; {waste} % of the sheets is waste, gaps included",
    JobSheet.TIMES: "{count} x {title}",
    JobSheet.THEN: "{before}; {after}",
    JobSheet.KERF: "Kerf",
    JobSheet.KERF_DRAWN: "{kerf}, drawn in: the machine's own compensation stays off",
    JobSheet.KERF_LEFT: "{kerf}, not drawn in: the machine itself must keep clear of the lines by half of it",
    JobSheet.KERF_ONE: "{kerf} mm",
    JobSheet.KERF_TWO: "{up} mm where a cut runs up the sheet, {across} mm across it",
    JobSheet.GRAIN: "Grain",
    JobSheet.GRAIN_ALONG: "runs along {grain}; no part is turned across it",
    JobSheet.GRAIN_NONE: "none",
    JobSheet.ORDER: "Order",
    JobSheet.ORDER_IS: "one after the other, each in its colour; inner cuts before outlines",
    JobSheet.NUMBERED: "{number}  {what}",
    JobSheet.OPERATION_IS: "{colour}, {code}; {amount}",
    JobSheet.REFERENCE_IS: "{colour}, {code}; nothing runs it",
    JobSheet.TIME: "Time",
    JobSheet.TIME_IS: "about {minutes} min, an estimate; moves between lines and slow corners come on top",
    JobSheet.TIME_UNKNOWN: "unknown: add speeds for {operations} to the stock file",
    JobSheet.NOT_HERE: "Not here",
    JobSheet.AREA: "{area} mm2",
    JobSheet.LENGTH: "{length} m",
    JobSheet.BOARD: "Board {number} of {total}, a picture not to scale",
    JobSheet.BOARD_IS: ("{width} mm across, {height} mm up. Engrave {engrave}, score {score}, cut {cut}. Time {time}."),
    JobSheet.PART: "{title}, {length} x {height} mm",
    JobSheet.RULE_SHOP: (
        "Your shop's own rules and the law where you are come first; only people who were trained on this cutter run "
        "it."
    ),
    JobSheet.RULE_WATCH: (
        "It is never left alone while it runs: somebody watches, a fire extinguisher in reach, ready to stop it."
    ),
    JobSheet.RULE_AIR: ("Extraction runs before the first line and until the smoke is gone. Do not breathe the fumes."),
    JobSheet.RULE_EYES: (
        "Lid shut and interlocks as they came; nobody looks into the beam or its reflections; eyes protected as the "
        "machine's maker asks."
    ),
    JobSheet.RULE_MATERIAL: (
        "Nothing but the material named here. Never PVC or vinyl, which give off hydrogen chloride, and no plastic of "
        "unknown kind."
    ),
    JobSheet.RULE_PARTS: "Parts and offcuts may be hot and sharp; small ones are kept from children.",
}
