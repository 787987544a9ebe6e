"""Why the amounts of a kit are what they are, what to add for more, and what is refused of its room."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Add, Narrow, Pairing, Reason, Room, Stated

_GUESS = "A first guess from the two yarns apart would be {first}, and could be {low} to {high}. "
_AGAIN = ": wrap both together once more, since a thread squeezed or a turn miscounted is easily overlooked."
_GIVEN = "The sett given, {sett}, is "
_WRAP = "The wrap of both yarns together, {sett}, is "

MESSAGES: dict[Role, str | Plural] = {
    Reason.NO_DRAW_IN: "The width draws in by at most {most} %, likely not at all.",
    Reason.NO_SHRINKAGE: "The finished piece shrinks by at most {most} %, likely not at all.",
    Reason.WIDTH: "The width of the warp less the draw-in.",
    Reason.PITCH: "The pitch less the draw-in.",
    Reason.HEIGHT: "The height of the kit.",
    Reason.WOVEN_ROWS: Plural("rows", "{rows} whole bead, two picks high.", "{rows} whole beads, each two picks high."),
    Reason.SHRINKAGE: "Shrinkage of a sample that was washed.",
    Reason.SHRUNK: "Less the shrinkage.",
    Reason.TO_MAKE: "Divided by what is left.",
    Reason.AS_SIDES: "The frame ends are as wide as its sides, seen from the face.",
    Reason.ON_FACE: "All ends lie on the face.",
    Reason.BAR: "The bar.",
    Reason.END_WIDTH: "The frame ends as wide as the kit states it.",
    Reason.HEIGHT_LEFT: "{inner} mm less 2 x {heading} mm of heading, {hand} mm for the hand",
    Reason.HEIGHT_LEFT_LAYERS: (
        "{inner} mm less 2 x {heading} mm of heading, 2 x {apart} mm where the layers come together, {hand} mm for the "
        "hand"
    ),
    Reason.ONCE_ROUND: "Once round both frame ends and on by a winding pitch.",
    Reason.CROSSED: "Across between both frame ends and round them, along the slant.",
    Reason.FROM_ROD: "{ends} ends of {once} mm, once round, and {turns} half turns round the loose rod.",
    Reason.ROD_AND_BACK: "Twice once round both frame ends, and twice half round the loose rod.",
    Reason.ROD: "A loose rod of {rod}.",
    Reason.ROD_ASSUMED: "A loose rod {rod} thick.",
    Reason.ROD_NO_FRINGE: "Both edges end in loops where the rod was; nothing is cut.",
    Reason.ROUND_TEETH: "Up and down on the face, and round the back of a tooth at both frame ends.",
    Reason.ROUND_PEGS: "Up and down between pegs, and round a peg at both frame ends.",
    Reason.ROUND_NAILS: "Up and down between nails, and round a nail at both frame ends.",
    Reason.PATH: "{ends} ends, two of them {two} mm",
    Reason.PATH_THREADS: "{ends} ends of {threads} threads, two of them {two} mm",
    Reason.WARP_TOTAL: "{path}; heading rows, {knots} knots, {spare} % spare.",
    Reason.NO_TAILS: "Tails are left out, since the kit does not say how many lengths of weft are put in.",
    Reason.SAMPLE: "From the weight of a sample.",
    Reason.STRANDS: Plural(
        "strands", "{strands} strand of it, every one counted.", "{strands} strands of it, every one counted."
    ),
    Reason.STRAND: "{weft}, strand {strand}",
    Reason.NO_COLOUR: "no colour named",
    Reason.NO_THICKNESS: "The thickness of the warp is left out of its way round the frame ends.",
    Stated.HEADING: "The heading as the kit states it.",
    Stated.HAND: "Room for the hand as the kit states it.",
    Stated.SLOPE: "The slope of the layers as the kit states it.",
    Stated.STICK_PAST: "How far the stick passes a side as the kit states it.",
    Stated.LEASH_REACH: "The reach of a leash as the kit states it.",
    Stated.LEASH_KNOT: "The knot of a leash as the kit states it.",
    Stated.KNOT: "Thread for a knot as the kit states it.",
    Stated.TAIL: "The tail of the heading rows as the kit states it.",
    Stated.STRETCH: "Stretch as the kit states it.",
    Stated.SPARE: "Spare as the kit states it.",
    Stated.WEFT_SPARE: "Weft to spare as the kit states it.",
    Stated.DRAW_IN: "Draw-in as the kit states it.",
    Stated.SHRINKAGE: "Shrinkage as the kit states it.",
    Add.WARP: (
        "For the weight of the warp, say under [warp] how heavy it is: count, system and plies, or grams and length."
    ),
    Add.PICKS: "For the picks, give weft.beads or weft.picks counted on a sample, or wrap the weft (weft.wrap).",
    Add.TAKE_UP: (
        "For the take-up, say how heavy each strand of the weft is, or wrap the weft (weft.wrap), or draw a pick "
        "out of a sample (weft.pick)."
    ),
    Add.STRANDS: "For the weight of the weft, give weft.strands and how heavy each is.",
    Add.COLOURS: "For the weft by colour, give weft.colours, or a colour to each strand.",
    Pairing.GUESS_GIVEN: _GUESS + "What stands is the sett as it was given.",
    Pairing.GUESS_WRAPPED: _GUESS + "What stands is the wrap of both together.",
    Pairing.GIVEN_CLOSER: _GIVEN + "closer than the yarns apart make likely ({low} to {high})" + _AGAIN,
    Pairing.WRAP_CLOSER: _WRAP + "closer than the yarns apart make likely ({low} to {high})" + _AGAIN,
    Room.HIGHER: needs("more than {least}, for both ends, headings, spreading layers and the hand"),
    Room.LEAVE: needs("to leave some height to weave in a frame of at most {longest}"),
    Room.TAKEN: "{taken} mm taken by it in all",
    Room.AT_MOST: needs("at most {most} ({why}; see [room])"),
    Room.AT_MOST_BY_HAND: needs(
        'at most {most} ({why}; see [room]), or {needle} if you write room.worked = "with a needle"'
    ),
    Room.PEGS: needs("peg and thread together no thicker than two pitches, {most} mm"),
    Narrow.BEADS: "counting beads on a sample",
    Narrow.PICK: "pulling a pick out of a sample",
    Narrow.WRAP_WEFT: "wrapping the weft",
    Narrow.WRAP_WARP: "wrapping the warp",
    Narrow.DRAW_IN: "measuring how much a sample draws in",
    Narrow.SAMPLE: "weighing the weft of a sample",
}
