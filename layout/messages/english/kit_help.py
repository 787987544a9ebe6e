"""What is said of every key of a kit file. A phrase goes into the refusal of a key that is missing."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import KitHelp

MESSAGES: dict[Role, str | Plural] = {
    KitHelp.VERSION: "the version of the kit file; this one is 1",
    KitHelp.NAME: "the name of the kit; it is on every sheet",
    KitHelp.YARNS_WARP: "the warp yarn, as you call it",
    KitHelp.YARNS_WEFT: "the weft yarn, or the bundle of yarns woven as one",
    KitHelp.SETT_READINGS: "wrap readings: warp and weft wrapped side by side; several are used together",
    KitHelp.SETT_READINGS_PAIRS: "whole pairs of one warp and one weft thread, 1 to 10,000",
    KitHelp.SETT_READINGS_WINDOW: "the width of the window they fit in",
    KitHelp.SETT_READINGS_MEASURE: "what so many pairs measure",
    KitHelp.SETT_GIVEN: "the sett itself, instead of readings; it is used as it is",
    KitHelp.SETT_MARKING_UNIT: (
        "the distance between the long numbered marks, which holds whole winds, pegs, nails or single warp ends; "
        "left out, a usual one is chosen"
    ),
    KitHelp.SETT_LOOSEST: "use the smallest reading alone, where readings contradict each other",
    KitHelp.SETT_AS_MEASURED: "use the sett as measured, even if it does not divide evenly into a marking unit",
    KitHelp.WEAVING_WIDTH: "how wide to weave",
    KitHelp.WEAVING_HEIGHT: "how high to weave",
    KitHelp.WEAVING_NEAR_END: "the frame end where the warp is tied on, as the frame stands before you",
    KitHelp.WEAVING_SLANT: "whether face and back share the slant of a wind, or the face stands straight",
    KitHelp.WEAVING_START: "the side where winding begins, seen from the face as the frame stands before you",
    KitHelp.WEAVING_FIRST_PASS: "whether the first pass runs over the face or behind the back",
    KitHelp.WEAVING_WINDING: "whether the thread goes round both frame ends, or crosses between them",
    KitHelp.WEAVING_NEAR_HOLD: "what holds the warp: both frame ends, or a rod that lies loose behind the frame",
    KitHelp.WEAVING_ROD_DIAMETER: "how thick the loose rod is; left out, 8 mm are assumed",
    KitHelp.WEAVING_TIE_OFF: (
        "the frame end where the warp is tied off: near after an even number of warp ends, far after an odd one"
    ),
    KitHelp.WEAVING_DOUBLED_SELVEDGES: "how many outer warp ends at each side are doubled, for a firm selvedge",
    KitHelp.WEAVING_DOUBLED_WARP: "whether every warp end has two threads",
    KitHelp.WEAVING_WOVEN_FROM: "which side of the weaving faces you while you weave",
    KitHelp.WEAVING_CARTOON: "whether the weaving grid is mirrored, for a piece woven from its back",
    KitHelp.PAPER_SIZE: "the sheet to draw for; a size of your own is rounded to whole points of 1/72 in",
    KitHelp.PAPER_LAY: "how a part lies on the sheet; auto tries straight, then diagonal, then tiles",
    KitHelp.PAPER_LANGUAGE: "the language of the sheets and of the words on cut parts, by its code or its name",
    KitHelp.PAPER_FOR: "who prints: the buyer of a download, or you, for a box with the kit in it",
    KitHelp.CUT_COMB: "which warp ends get a slot in a comb that is cut; this goes before too_fine in the stock file",
    KitHelp.FRAME_ENDS: "what carries the warp at the top and bottom of the frame",
    KitHelp.FRAME_OUTER_WIDTH: "the whole frame from side to side",
    KitHelp.FRAME_OUTER_HEIGHT: "the whole frame from bottom to top",
    KitHelp.FRAME_SIDE_WIDTH: "how wide each side piece is, seen from the face",
    KitHelp.FRAME_MARGIN: (
        "what stays free between a side piece and the weaving; what is tied outside the limit lies in it"
    ),
    KitHelp.FRAME_SIDE_THICKNESS: (
        "how thick the side pieces are, from face to back; left out, as thick as the frame ends"
    ),
    KitHelp.FRAME_TENSION: "how hard one thread of the warp pulls; left out, 1 to 8 N are assumed, mostly 3 N",
    KitHelp.FRAME_TENSIONER: "what tightens the warp once it is wound",
    KitHelp.FRAME_TRAVEL: (
        "how much higher the frame can be made to tighten the warp, whose outer_height is then its lowest"
    ),
    KitHelp.FRAME_DIP_LOAD: "a weight hung at the middle of one thread of the finished warp",
    KitHelp.FRAME_DIP_LENGTH: "how long that thread is free between the bars",
    KitHelp.FRAME_DIP_DEPTH: "how far the weight pulls it aside, at most a sixtieth of its length",
    KitHelp.FRAME_PLUCK_HERTZ: "the pitch of one plucked thread of the finished warp, in hertz",
    KitHelp.FRAME_PLUCK_LENGTH: "how long that thread is free between the bars",
    KitHelp.FRAME_MATERIAL: "what the frame ends are made of",
    KitHelp.FRAME_MODULUS: "their modulus of elasticity in N/mm2, if you know it; it goes before that of the material",
    KitHelp.FRAME_BAR_BORE: "how wide round bars that are tubes are inside",
    KitHelp.FRAME_END_WIDTH: "how wide frame ends that are boards are, from their outer edge toward the weaving",
    KitHelp.FRAME_LEFT_WARPED: "how long the frame stays under tension; in months wood and plastic bend further",
    KitHelp.FRAME_THICKNESS: "how thick frame ends that are boards are, from face to back",
    KitHelp.FRAME_BAR_DIAMETER: "how thick round bars are",
    KitHelp.FRAME_EDGE_RADIUS: "how far the edges of flat ends are rounded; left out, they are square",
    KitHelp.FRAME_NOTCH_WIDTH: "how wide the notches of notched ends are",
    KitHelp.FRAME_NOTCH_DEPTH: "how deep the notches are, from the outer edge",
    KitHelp.FRAME_NOTCH_DENSITY: (
        "how close the notches of a bar are that is there already; left out, the bar is still to be notched"
    ),
    KitHelp.FRAME_PEG_DIAMETER: "how thick the pegs are",
    KitHelp.FRAME_ROW_DISTANCE: "from the inner row of pegs to the outer one, centre to centre",
    KitHelp.FRAME_NAIL_DIAMETER: "how thick the nails are",
    KitHelp.FRAME_EDGE_DISTANCE: (
        "from the outer edge of a frame end to the centres of its nails, or of its outer row of pegs"
    ),
    KitHelp.FRAME_NAIL_LENGTH: "how far the nails stand out of the board; left out, whether they bend is not checked",
    KitHelp.WARP_STRETCH: "by how much the warp stretches under tension",
    KitHelp.WARP_SPARE: "warp thread to spare",
    KitHelp.WARP_KNOT: "thread for one knot",
    KitHelp.WARP_TAIL: "the tail at the start of the heading rows",
    KitHelp.WEFT_STRANDS: "the strands that are woven together as one weft",
    KitHelp.WEFT_STRANDS_NUMBER: "how many strands of this yarn",
    KitHelp.WEFT_STRANDS_COLOUR: "its colour, if it has one of its own",
    KitHelp.WEFT_BEAT: "how hard the weft is beaten, from 0 for soft to 1 for hard; 0.5 is medium",
    KitHelp.WEFT_PICK_STRAIGHT: "the length of a pick pulled out of a sample, laid straight",
    KitHelp.WEFT_PICK_WOVEN: "the width of that pick in the cloth",
    KitHelp.WEFT_SPARE: (
        "weft to spare: about 5 % for large areas, 10 % as a rule, 20 % for many small colours, 0 % for none"
    ),
    KitHelp.WEFT_TAIL: "a tail at each end of every length of weft",
    KitHelp.WEFT_COLOURS: "the colours and their shares of the woven area",
    KitHelp.WEFT_COLOURS_NAME: "the name of the colour",
    KitHelp.WEFT_COLOURS_SHARE: "its share of the area; all together make 100 or 1",
    KitHelp.WEFT_COLOURS_LENGTHS: "how many lengths of it are woven in",
    KitHelp.WEFT_SAMPLE_GRAMS: "the weft that a sample took, in grams",
    KitHelp.WEFT_SAMPLE_WIDTH: "how wide the sample is",
    KitHelp.WEFT_SAMPLE_HEIGHT: "how high the sample is",
    KitHelp.WEAVING_DRAW_IN: "by how much the width draws in while weaving",
    KitHelp.WEAVING_SHRINKAGE: "by how much the piece shrinks when it is taken off and washed",
    KitHelp.WEAVING_WASHED_BEFORE: "how long a sample was before washing",
    KitHelp.WEAVING_WASHED_AFTER: "how long it is afterwards",
    KitHelp.WEAVING_HEM: "waste or a hem woven with the weft at each end of the piece",
    KitHelp.ROOM_HEADING: (
        "how high the heading at each end of the weaving is; left out, 1.5 mm for every heading row"
    ),
    KitHelp.ROOM_HEADING_ROWS: "how many heading rows are woven at each end; left out, 2",
    KitHelp.ROOM_WORKED: "how you open the shed and pass the weft, which sets the room for the hand: 80 mm or 40 mm",
    KitHelp.ROOM_HAND: "open warp for hand, shed stick and shed, if you know it; it goes before worked",
    KitHelp.ROOM_SLOPE: "how steeply face and back layer may come together: rise over run",
    KitHelp.ROOM_STICK_PAST: "how far the shed stick passes each side",
    KitHelp.ROOM_LEASH_REACH: "how far a leash reaches to its rod",
    KitHelp.ROOM_LEASH_KNOT: "cord for the knot of a leash",
    KitHelp.YARN_COUNT: "the count of the singles, or of the yarn if plies are left out",
    KitHelp.YARN_SYSTEM: "the system that the count is in",
    KitHelp.YARN_PLIES: "how many singles are folded into the yarn",
    KitHelp.YARN_ORDER: 'what is what in a count such as "8/2"',
    KitHelp.YARN_GRAMS: "what a ball weighs, in grams",
    KitHelp.YARN_LENGTH: "how long the thread of that weight is",
    KitHelp.YARN_WRAP_TURNS: "how many turns of it fill the window",
    KitHelp.YARN_WRAP_WINDOW: "the window that they fill",
    KitHelp.YARN_WRAP_HOW: ("how the turns lie: pushed together until the window takes no more, or laid side by side"),
    KitHelp.YARN_WEIGHED: "whether you weighed that length yourself",
    KitHelp.YARN_THREADS: "unlike threads folded into one yarn",
    KitHelp.YARN_FIBRE: "what it is spun of; with the weight it gives the thickness",
    KitHelp.YARN_MAKE: "how it is made: a hard cord, a firm yarn or a soft one; it gives the range of its thickness",
    KitHelp.YARN_BALL: "what a ball that you can buy weighs, in grams; left out, its grams if it is sold by the ball",
    KitHelp.YARN_OVER: "the height that they were counted over",
    KitHelp.WEFT_PICKS_NUMBER: "picks counted on a sample",
    KitHelp.WEFT_BEADS_NUMBER: "beads counted along one warp end of a sample, two picks each",
}
