"""What is said of a warp on its frame: how it lies, and what cannot be laid."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Spacing, WarpNeed, WarpNote

_WINDS = "The weaving is {taken} wide, in whole winds; {whole} "
_ENDS = "The weaving is {taken} wide, in whole ends; {whole} "
_ASKED = "were asked for, {less} more."
_FIT = "fit between the margins, {less} more"
_TIED = ", room for what is tied outside the limits."
_STRAIGHT = "The ends on the face stand straight"
_ROOM = "room for {what}, {room} at this sett"
_CROSSED = (
    "In a figure eight every end crosses from one layer to the other at half height: the {0} ends, counted from the "
    "tie-on, are in front at the near end and behind at the far end, the {1} ends the other way round. Weave from the "
    "near end: the first rows hold both layers, and the {1} ends are in front for the rest of the way, so tie leashes "
    "to the {0} ends. To weave from the other end, turn the frame round and leash the others."
)
_PAIRED = ", so the ends lie in pairs instead of parallel; take a thinner {} or a looser sett."
_IN_PAIRS = _PAIRED.format("peg")

MESSAGES: dict[Role, str | Plural] = {
    WarpNote.WINDS_ASKED: _WINDS + _ASKED,
    WarpNote.WINDS_FIT: _WINDS + _FIT + ".",
    WarpNote.WINDS_FIT_TIED: _WINDS + _FIT + _TIED,
    WarpNote.ENDS_ASKED: _ENDS + _ASKED,
    WarpNote.ENDS_FIT: _ENDS + _FIT + ".",
    WarpNote.ENDS_FIT_TIED: _ENDS + _FIT + _TIED,
    WarpNote.STRAIGHT: _STRAIGHT + ".",
    WarpNote.STRAIGHT_ON_OUT: _STRAIGHT + "; the tie-on lies half a pitch outside the limit.",
    WarpNote.STRAIGHT_OFF_OUT: _STRAIGHT + "; the tie-off lies half a pitch outside the limit.",
    WarpNote.STRAIGHT_BOTH_OUT: _STRAIGHT + "; the tie-on and the tie-off lie half a pitch outside the limit.",
    WarpNote.PAIRS: (
        "With two ends to a notch the ends stand in pairs at the notches and even at half height; the last far notch "
        "may lie half a pitch outside the limit."
    ),
    WarpNote.CROSSED_ODD: _CROSSED.format("odd", "even"),
    WarpNote.CROSSED_EVEN: _CROSSED.format("even", "odd"),
    WarpNote.ROD: (
        "Tie the thread to the loose rod behind the frame. It goes down round the near end, up the face, over the far "
        "end and down behind to the rod from above, round the rod, and back the way it came to the rod from below; and "
        "so on, every turn at the next mark, with loops on the rod by turns from above and from below. Tie it off on "
        "the rod. All ends lie in one layer on the face: a shed stick opens one shed, leashes on every second end the "
        "other. Slide the warp round both ends as the weaving grows. A warp under tension stores energy: slacken it "
        "before you take it off, hold the rod, then draw it out sideways; loops close both edges."
    ),
    Spacing.MARKS: "Spacing",
    Spacing.MARKS_ARE: "from one mark to the next",
    Spacing.WINDS: "Winding pitch",
    Spacing.WINDS_ARE: "a wind lays two ends, one on the face and one behind",
    Spacing.WINDS_CROSS: "a wind lays two ends, which cross at half height",
    Spacing.FROM_ROD: "Ends",
    Spacing.FROM_ROD_ARE: "from one end to the next; each goes once round both frame ends",
    Spacing.NOTCHES: "Notches",
    Spacing.NOTCHES_ARE: "from one used notch to the next",
    Spacing.PEGS: "Pegs",
    Spacing.PEGS_ARE: "from one peg to the next; each turns two ends",
    WarpNote.PEG_WIDE: "A peg ({peg} mm) exceeds the pitch ({pitch} mm)" + _IN_PAIRS,
    WarpNote.PEG_AND_THREAD_WIDE: "Peg and thread together ({both} mm) exceed the pitch ({pitch} mm)" + _IN_PAIRS,
    Spacing.NAILS: "Nails",
    Spacing.NAILS_ARE: "from one nail to the next; each turns two ends",
    WarpNote.NAILED: (
        "Between nails all ends lie in one layer: a shed stick opens one shed, and leashes on every second end open "
        "the other. When the piece is woven, its loops are lifted off the nails."
    ),
    WarpNote.NAIL_AND_THREAD_WIDE: (
        "Nail and thread together ({both} mm) exceed the pitch ({pitch} mm)" + _PAIRED.format("nail")
    ),
    WarpNeed.TIED_OUTSIDE: needs(
        "the {between} between the margins to hold the weaving and {half} more at both sides, for a thread that is "
        "tied outside its limit"
    ),
    WarpNeed.ROOM: needs(_ROOM),
    WarpNeed.ROOM_IN_FRAME: needs(_ROOM + ", in a frame of at most {longest}"),
    WarpNeed.ROOM_BESIDE: needs(_ROOM + ", beside both sides and both margins"),
    WarpNeed.ONE_WIND: "one wind",
    WarpNeed.MARKS: needs("at most {most} marks a strip"),
    WarpNeed.DOUBLED: needs("at most half of the {ends} ends doubled at each side"),
    WarpNeed.NOTCH: needs("a notch to fit in the {apart} from one notch to the next"),
    WarpNeed.NOTCH_AND_TOOTH: needs("a notch and a tooth of {tooth} to fit in the {apart} from one notch to the next"),
    WarpNeed.PEGS_THICK: needs("pegs at most {most} thick, for a peg every {apart}"),
    WarpNeed.PEGS_APART: needs("pegs farther apart than {apart}, to leave wood between their holes"),
    WarpNeed.NAILS_THICK: needs("nails at most as thick as the pitch, {pitch}"),
    WarpNeed.NAIL_AND_THREAD: needs("nail and thread together no thicker than two pitches, {most} mm"),
    WarpNeed.SETT_LINE: 'given = "{sett}" in [sett]',
    WarpNeed.WIDTH_LINE: 'outer_width = "{width}" in [frame]',
}
