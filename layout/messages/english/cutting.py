"""What is said of parts that are cut: words on them, notes on their sheets, refusals of them and of their stock."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import CutNeed, CutNote, CutWord

_BOTTOM, _TOP = "bottom", "top"
_LINES = "Long scored lines are the limits of the weaving, shorter ones the marking units"
_LAY = _LINES + ", the shortest its centre."
_BETWEEN_TEETH = "Lay it on the warp, teeth between the ends, and slide every end into its slot. "
_BAR = "It goes to the {} of the frame, notches outward, words to the face; ease every edge by sanding."
_FASTEN = (
    "Fasten it to the face of the frame's {} as it stands before you, teeth up and words to you; every wind lies in "
    "the next slot"
)
_OUTER = " (the outer slots hold the tie-on and the tie-off)"
_CLAMP = (
    "Clamp it on the face of the frame's {}, the edge beside the holes flush with the outer edge and both short edges "
    "with the sides; drill every hole upright, with a stop. Clamp the work, keep fingers and hair clear of the drill "
    "and wear eye protection. The scored line is the centre."
)
_NARROW = (
    "Take care: teeth {tooth} mm wide are narrower than the stock is thick ({thick} mm) and break easily; stock of at "
    "most {thin} mm"
)
_BREAKS = "Pushed sideways at its tip, a tooth breaks at about {newtons} N, as a cantilever"
_TEETH = "a pitch that leaves the teeth of a comb at least {least} mm"
_DOT = " \N{MIDDLE DOT} "

MESSAGES: dict[Role, str | Plural] = {
    CutWord.COMB: "Comb",
    CutWord.COMB_EVERY: "comb for every end" + _DOT + "{sett}",
    CutWord.COMB_SECOND: "comb for every second end" + _DOT + "{sett}",
    CutWord.WINDING_COMB_NEAR: "Winding comb, near end",
    CutWord.WINDING_COMB_FAR: "Winding comb, far end",
    CutWord.ON_WINDING_COMB_NEAR: "winding comb, near end" + _DOT + "{sett}",
    CutWord.ON_WINDING_COMB_FAR: "winding comb, far end" + _DOT + "{sett}",
    CutWord.BAR_NEAR: "Notched bar, near end",
    CutWord.BAR_FAR: "Notched bar, far end",
    CutWord.ON_BAR_NEAR: "{kit}" + _DOT + "near end",
    CutWord.ON_BAR_FAR: "{kit}" + _DOT + "far end",
    CutWord.JIG_NEAR: "Drilling jig, near end",
    CutWord.JIG_FAR: "Drilling jig, far end",
    CutWord.ON_JIG_NEAR: "{kit}" + _DOT + "pegs, near end",
    CutWord.ON_JIG_FAR: "{kit}" + _DOT + "pegs, far end",
    CutWord.GAUGE: "Wrap gauge",
    CutWord.ON_GAUGE: "{kit}" + _DOT + "wrap gauge",
    CutWord.GAUGE_HOW: (
        "Weft first, at a shoulder; then by turns, touching, not squeezed. Count whole pairs. "
        "One yarn: push turns together until no more fit."
    ),
    CutWord.GAUGE_PAIRS: "pairs in {window}",
    CutWord.GAUGE_PER_CM: "ends per cm",
    CutWord.GAUGE_EPI: "ends per inch",
    CutWord.GAUGE_WINDS: "winds to {unit}",
    CutWord.GAUGE_PEGS: "pegs to {unit}",
    CutWord.GAUGE_NAILS: "nails to {unit}",
    CutWord.GAUGE_ENDS: "ends to {unit}",
    CutWord.GUIDE: "Spacing guide",
    CutWord.ON_GUIDE_NEAR: "{kit}" + _DOT + "spacing guide, near heading" + _DOT + "{sett}",
    CutWord.ON_GUIDE: "{kit}" + _DOT + "spacing guide" + _DOT + "{sett}",
    CutWord.STICK: "Shed stick",
    CutWord.ON_STICK: "{kit}" + _DOT + "shed stick",
    CutWord.SQUARE: "Reference square",
    CutWord.TRIAL: "Trial cut",
    CutWord.ON_TRIAL: "slots: ease, drawn for kerf {kerf}" + _DOT + "plugs: kerf",
    CutWord.CHECK: "Square check",
    CutWord.ON_CHECK: (
        "{stock}" + _DOT + "X, Y, A, B: {span} mm from flat to flat" + _DOT + "bands: {band} mm" + _DOT + "no scale "
        "drawn in"
    ),
    CutNote.DRAWING: (
        "A drawing at exact scale of the cutter's files. Laser: trained people only, always watched, shop rules first."
    ),
    CutNote.DRAWING_SCALED: (
        "A drawing at the exact scale of the part; the cutter's files are drawn against the cutter's scale. Laser: "
        "trained people only, always watched, shop rules first."
    ),
    CutNote.BROKEN: "Both ends are at exact scale; the plain middle between the zigzag lines is left out.",
    CutNote.SMALL_PART: "Keep small parts and offcuts from children.",
    CutNote.STOCK_DRAWN: "For the stock {stock}: kerf {kerf}, drawn in.",
    CutNote.STOCK_DRAWN_GRAIN: (
        "For the stock {stock}: kerf {kerf}, drawn in; the face grain runs along {grain} of the cutter's files."
    ),
    CutNote.STOCK_LEFT: "For the stock {stock}: kerf {kerf}, left to the machine.",
    CutNote.STOCK_LEFT_GRAIN: (
        "For the stock {stock}: kerf {kerf}, left to the machine; the face grain runs along {grain} of the cutter's "
        "files."
    ),
    CutNote.TWO_KERFS: "{up} mm up the sheet and {across} mm across it",
    CutNote.SLOTS_WRAPPED: "{count} slots {slot} mm wide: the warp's {thick} mm ({kind}) and {ease} mm of ease.",
    CutNote.SLOTS_WEIGHED: (
        "{count} slots {slot} mm wide: the most that the warp may measure by its weight, {thick} mm, and {ease} mm of "
        "ease."
    ),
    CutNote.SLOTS_PITCH: (
        "{count} slots {slot} mm wide: half the pitch and {ease} mm of ease, since the kit does not say how thick the "
        "warp is."
    ),
    CutNote.TOOTH_HOLDS: _BREAKS + ".",
    CutNote.TOOTH_HOLDS_ASSUMED: _BREAKS + "; assumed: {assumed}",
    CutNote.WRAP_FIRST: (
        "Take care: the slots fit the loosest cord of the warp's weight, and may be wider than your warp needs. Wrap "
        "it by hand and tell the kit, as {line} under [warp], first."
    ),
    CutNote.BREAKS: "Take care: its teeth are narrower than the stock is thick, and break easily.",
    CutNote.NARROW_TEETH: _NARROW + " is stronger.",
    CutNote.NARROW_TEETH_SECOND: (
        _NARROW + ' or a comb for every second end (comb = "every second end" under [cut], teeth of {second} mm) is '
        "stronger."
    ),
    CutNote.NARROW_NOTCHES: (
        "Take care: {between} mm between two notches are less than the stock is thick ({thick} mm)."
    ),
    CutNote.NARROW_HOLES: "Take care: {between} mm between holes are less than the stock is thick ({thick} mm).",
    CutNote.USE_COMB: _BETWEEN_TEETH + _LAY,
    CutNote.USE_COMB_TURNED: (
        "It spaces every second end; for the ends between, turn it over, left for right. " + _LAY
    ),
    CutNote.USE_COMB_MOVED: "It spaces every second end; for the ends between, move it on by one pitch. " + _LAY,
    CutNote.FASTEN_BOTTOM: _FASTEN.format(_BOTTOM) + ". " + _LINES + ".",
    CutNote.FASTEN_TOP: _FASTEN.format(_TOP) + ". " + _LINES + ".",
    CutNote.FASTEN_BOTTOM_TIED: _FASTEN.format(_BOTTOM) + _OUTER + ". " + _LINES + ".",
    CutNote.FASTEN_TOP_TIED: _FASTEN.format(_TOP) + _OUTER + ". " + _LINES + ".",
    CutNote.LAYERS: (
        "Cut {count} and glue them, notches in line; they make {glued} mm where the kit has {thick} mm; drawn once, on "
        "the boards {count} times."
    ),
    CutNote.BAR_BOTTOM: _BAR.format(_BOTTOM),
    CutNote.BAR_TOP: _BAR.format(_TOP),
    CutNote.CLAMP_BOTTOM: _CLAMP.format(_BOTTOM),
    CutNote.CLAMP_TOP: _CLAMP.format(_TOP),
    CutNote.USE_GAUGE: (
        "Catch the yarn's tail in a slit, wrap as the board says within a window, count, and read the "
        "sett from the table; a frame is scored round this kit's own row. "
        "Round the edges with sandpaper until no thread catches, but leave the shoulders of the windows as they are."
    ),
    CutNote.GUIDE_CROSSED: (
        "It is for the near heading: at the far heading the ends of the long marks lie behind, the others on the face."
    ),
    CutNote.USE_GUIDE: (
        "Hold its marked edge to the warp and bring every end to its mark: long marks are ends on the face, short ones "
        "are ends behind it, every tenth is numbered in the order of winding. Below them stand the marking units, at "
        "both sides the limits of the weaving."
    ),
    CutNote.USE_GUIDE_FACE: (
        "Hold its marked edge to the warp and bring every end to its mark; all lie on the face, and every tenth has a "
        "longer mark with its number in the order of winding. Below them stand the marking units, at both sides the "
        "limits of the weaving."
    ),
    CutNote.USE_STICK: (
        "Turned on edge behind every second end it opens the first shed. Before you use it, sand all edges and both "
        "faces smooth, along the grain, until no thread catches; its ends are round and stay so."
    ),
    CutNote.STICK_LENGTH: "{length} mm long: {reason}",
    CutNote.TRIAL_CUT: (
        "Cut it along its lines as they are drawn, the machine's own kerf compensation off, at the settings that the "
        "parts will be cut with. Keep plugs and holes together."
    ),
    CutNote.TRIAL_KERF: (
        "With a caliper: measure holes and the plugs that came out of them, across and up, and give the sizes to "
        "templates-gen trial-cut. Without one: the plug that just goes into the hole of plug 0 shows the kerf."
    ),
    CutNote.TRIAL_EASE: (
        "Lay the yarn into the slots: the one that holds it without squeezing it shows the ease. The slots were drawn "
        "for a kerf of {kerf} mm."
    ),
    CutNote.CHECK_CUT: (
        "Cut it at the settings of the parts, as it lies in the file, so that X runs along x. Its edges are sharp; do "
        "not sand them before it is measured. It is always drawn without the scale of the stock."
    ),
    CutNote.CHECK_MEASURE: (
        "Wipe off the soot. With a caliper of 150 mm, jaws closed lightly, measure from flat to flat along X, Y, A and "
        "B, each {span} mm, and the bands between the windows and their flats, at X and at Y, each {band} mm. Give the "
        "six sizes to templates-gen square-check."
    ),
    CutNote.BENDING_ASSUMED: (
        "a bending strength of 30 N/mm2 along the face grain, from memory and low for birch plywood."
    ),
    CutNote.BENDING: "a bending strength of {strength} N/mm2, as the stock says.",
    CutNote.CANTILEVER: "A cantilever {length} mm long, {width} by {thick} mm.",
    CutNeed.WIDER_SHEET: needs("at least {size} mm for this part: {part}"),
    CutNeed.WIDER_SHEET_GRAIN: needs("at least {size} mm for a part whose grain has to lie along {grain}: {part}"),
    CutNeed.TEETH: needs(_TEETH),
    CutNeed.TEETH_LOOSEST: (
        "needs " + _TEETH + ", got {got}, for the loosest cord of the warp's weight (warp.wrap tells how thick it is); "
        "for example {example}"
    ),
    CutNeed.TEETH_SECOND: ("needs " + _TEETH + ", got {got} ({second} mm for every second end); for example {example}"),
    CutNeed.TEETH_LOOSEST_SECOND: (
        "needs " + _TEETH + ", got {got}, for the loosest cord of the warp's weight (warp.wrap tells how thick it is) "
        "({second} mm for every second end); for example {example}"
    ),
    CutNeed.WINDING_TEETH: needs("a winding pitch that leaves the teeth of a winding comb at least {least} mm"),
    CutNeed.GOT_TEETH: "teeth of {wide} mm at a pitch of {pitch} mm",
    CutNeed.GOT_SLOTS: "slots of {wide} mm at a pitch of {pitch} mm",
    CutNeed.PRINTED_GUIDE: "the printed spacing guide",
    CutNeed.MARKING_STRIPS: "the marking strips, which carry any pitch",
    CutNeed.KERF_NARROWEST: needs("to be less than the narrowest slot, hole or round that is cut"),
    CutNeed.KERF_SLOT: needs("to be less than a slot of the comb, {room} mm"),
    CutNeed.KERF_NOTCH: needs("to be less than a notch, {room} mm"),
    CutNeed.KERF_HOLE: needs("to be less than a hole for a peg, {room} mm"),
    CutNeed.KERF_SLIT: needs("to be less than a slit of the wrap gauge, {room} mm"),
    CutNeed.LAYERS: needs("a sheet of which at most {most} layers make a bar of {thick} mm"),
    CutNeed.NOTCHED: needs("notched ends that are still to be made"),
    CutNeed.NOTCHES_APART: needs("notches that leave at least {least} mm between them"),
    CutNeed.NOTCH_DEPTH: needs("at most {slender} times what is left between two notches, {most} mm"),
    CutNeed.PEGGED: needs("pegged ends"),
    CutNeed.WOOD: needs("at least {least} mm of wood round every hole of the jig"),
    CutNeed.SMOOTH: "an outline can be cut only where its rounds run smoothly into their neighbours",
    CutNeed.NO_WAY_BACK: "an outline can be cut only where no side runs back along another",
    CutNeed.ROUNDS: "the rounds of a side are {over} mm longer than the side",
}
