"""How lengths and weights are computed, what is assumed for them, and what is refused."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Assumed, BallsNote, Computed, YardageNeed

_UNSURE = (
    " by its highest figure needs at least a ball more than by its likely one: weave a sample and count its beads, or "
    "weigh its weft, before you buy."
)
_SMALL = " takes less than a third of a ball: a rest, or a smaller ball, may do."

MESSAGES: dict[Role, str | Plural] = {
    Assumed.KNOT: "100 mm of thread for a knot.",
    Assumed.TAIL: "A tail of 150 mm at the start of the heading rows (common practice).",
    Assumed.SPARE: "10 % of warp thread to spare.",
    Assumed.ROW_TAKE_UP: "A heading row takes 15 % more than its width, at most 51 %.",
    Assumed.HITCHED_WIDTHS: (
        "An edge of half hitches takes 3 widths of the weaving (Alpacas Magazine, spring 2010), 2 to 4.5 at most."
    ),
    Assumed.HITCHED: "An edge of half hitches 1.5 mm high at each end of the weaving.",
    Assumed.HEADING_ROWS: Plural(
        "rows",
        "A heading row at each end of the weaving, 1.5 mm high.",
        "{rows} heading rows at each end of the weaving, each 1.5 mm high.",
    ),
    Assumed.NEEDLE: "40 mm of open warp for the needle and the shed.",
    Assumed.STRETCH: "No stretch of the warp under tension; at most 2 %.",
    Assumed.HEADING: "2 heading rows at each end of the weaving, together 3 mm high.",
    Assumed.SLOPE: "Face and back layer come together at a slope of no more than 1 in 4.",
    Assumed.HAND: "80 mm of open warp for the hand, the shed stick and the shed.",
    Assumed.OVERHANG: "The shed stick passes each side of the frame by 40 mm.",
    Assumed.REACH: "A leash reaches 90 mm from the back layer to its rod.",
    Assumed.LEASH_KNOT: "60 mm of cord for the knot of a leash.",
    Assumed.FIRM_OR_SOFT: "A yarn whose make is not stated is a firm or a soft one, likely soft.",
    Assumed.CORD_OR_FIRM: (
        "A warp of cotton, linen, hemp or jute whose make is not stated is a hard cord or a firm yarn, likely a cord."
    ),
    Assumed.ANY_FIBRE: "A yarn whose fibre is not stated is of any, from cotton, the heaviest, to nylon.",
    Assumed.PRESSED_SHARE: "A yarn known by its wraps alone is pressed to about two thirds of that in cloth.",
    Assumed.WEFT_SPARE: "10 % of weft to spare.",
    Assumed.WEFT_SPARE_MANY: "20 % of weft to spare, since there are many colours.",
    Assumed.BEAT: "A medium beat, between soft and hard.",
    Assumed.WARP_SHARE: "An end is {low} to {high} % as thick as the pitch, since nothing is known of the warp.",
    Computed.WINDS: Plural(
        "winds", "{winds} wind of {one} mm, along the slant.", "{winds} winds of {one} mm, along the slant."
    ),
    Computed.PASSES_AND_TEETH: "{passes} passes of {along} mm, {turns} turns of {turn} mm.",
    Computed.PASSES_AND_PEGS: "{passes} passes between pegs and {turns} turns round them, on tangents.",
    Computed.WEIGHT: "{metres} m of {tex} tex.",
    Computed.ROW_TAKE_UP: "The warp thread woven over its own ends (after Peirce 1937).",
    Computed.NO_ROWS: "No heading rows.",
    Computed.HEADING_ROWS: Plural(
        "rows",
        "{rows} row of about {row} mm at each end, round the side pieces, with a tail and a knot.",
        "{rows} rows of about {row} mm each at each end, round the side pieces, with a tail and a knot.",
    ),
    Computed.HITCHED: "On from end to end, and once round each.",
    Computed.HITCHED_EDGES: "Half hitches at each end, {widths} widths of the weaving each, and two tails.",
    Computed.WARP: "Path / (1 + {stretch}), heading rows and {knots} knots, and {spare} % spare.",
    Computed.APART: "Layers {thick} mm apart, brought together.",
    Computed.HEIGHT: "{inner} mm less two headings, two zones of spreading layers, and the hand.",
    Computed.FRINGE: "Open warp {open} mm and half the way round the frame end.",
    Computed.STICK: "{outer} mm and {past} mm past each side.",
    Computed.LEASH: "There and back {reach} mm, and the knot.",
    Computed.LEASHES: Plural("number", "{number} leash.", "{number} leashes."),
    Computed.TAKE_UP: "Straight warp, weft bent round it (after Peirce 1937), D / p = {ratio}.",
    Computed.PICK_DRAWN: "A pick of {straight} mm drawn out of {woven} mm.",
    Computed.PICKS_COUNTED: Plural(
        "picks", "{picks} pick counted in {over} mm.", "{picks} picks counted in {over} mm."
    ),
    Computed.BEADS_COUNTED: Plural(
        "beads",
        "{beads} bead counted up one end in {over} mm, two picks each.",
        "{beads} beads counted up one end in {over} mm, two picks each.",
    ),
    Computed.WEFT: Plural(
        "picks",
        "{picks} pick of {width} mm and {take_up} % take-up.",
        "{picks} picks of {width} mm and {take_up} % take-up.",
    ),
    Computed.TAILS: Plural(
        "lengths",
        "Two tails of {tail} mm at {lengths} length of weft.",
        "Two tails of {tail} mm at {lengths} lengths of weft.",
    ),
    Computed.TAILS_USUAL: Plural(
        "lengths",
        "Two tails of {tail} mm (G. Christie) at {lengths} length of weft.",
        "Two tails of {tail} mm (G. Christie) at {lengths} lengths of weft.",
    ),
    Computed.COLOUR: "{share} % of the weft, and its tails.",
    Computed.SAMPLE: "A weighed sample took {grams} g on {area} cm2; this is {ratio} times as much.",
    Computed.WEIGHED: "Weighed.",
    Computed.BEAD: "By the thickness of the weft, {pressed} mm pressed and {soft} mm soft, and the gap between ends.",
    Computed.BUBBLE: "As high an arc as supplies the take-up: 0.63 times its root.",
    Computed.HEM: "{hem} mm at each end of the piece, woven like the rest.",
    Computed.WITH_SPARE: "The weft, its hem or waste, and {spare} % to spare.",
    Computed.SPARE_WEFT: "{spare} % of the weft and its hem or waste.",
    Computed.SIDE: "A side of the sample.",
    Computed.AREA: "Without its tails.",
    Computed.LEFT: Plural(
        "balls",
        "Of {balls} ball of {grams} g, the spare not used.",
        "Of {balls} balls of {grams} g, the spare not used.",
    ),
    YardageNeed.EDGE_RADIUS: needs("at most half the thickness and half the height ({most} mm)"),
    YardageNeed.CROSSED: needs(
        "frame ends further apart than they are thick, for a figure eight to cross between them"
    ),
    YardageNeed.PEGS: needs("at most two pitches ({most} mm) for peg and thread, and less than the way between"),
    YardageNeed.A_PEG: "a 3 mm peg for a pitch of 4 mm",
    YardageNeed.HEIGHT: needs("at most {most} of height"),
    YardageNeed.DIAMETERS: needs(
        "warp and weft together no thicker than the pitch ({pitch} mm), or the sett cannot hold them"
    ),
    YardageNeed.SHARES: needs("shares that add up to 1 or to 100 %"),
    YardageNeed.SUM: "a sum of {sum}",
    YardageNeed.BEAD_ODD: (
        "A bead stands {share} % of the pitch high, on published weft-faced pieces {low} to {high} %: count beads on a "
        "sample, up one end only."
    ),
    YardageNeed.LIGHT: (
        "The weft comes to {weight} g/m2, less than the {least} g/m2 of a light weft-faced piece: look at the picks, "
        "the strands and the yarn's weight once more."
    ),
    YardageNeed.HEAVY: (
        "The weft comes to {weight} g/m2, more than the {most} g/m2 of a heavy weft-faced rug: look at the picks, the "
        "strands and the yarn's weight once more."
    ),
    BallsNote.UNSURE: "{yarn}" + _UNSURE,
    BallsNote.UNSURE_COLOUR: "{yarn}, {colour}," + _UNSURE,
    BallsNote.SMALL: "{yarn}" + _SMALL,
    BallsNote.SMALL_COLOUR: "{yarn}, {colour}," + _SMALL,
}
