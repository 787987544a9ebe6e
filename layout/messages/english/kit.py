"""What is refused of the keys and tables of a file, and of keys together."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Cross, Table, WindingNeed

MESSAGES: dict[Role, str | Plural] = {
    Table.TABLE: needs("to be a table of keys"),
    Table.LIST: needs("a list of {least} to {most} tables"),
    Table.MISSING: needs("to be given ({why})"),
    Table.IN_ITS_TABLE: "{line} in [{table}]",
    Table.UNKNOWN: needs("one of the known keys ({known})"),
    Table.UNKNOWN_MEANT: needs("a key that is known (did you mean {meant}?)"),
    Table.KEYS: needs("{keys}"),
    Table.READING: needs("pairs, and either the window they fit in or what they measure"),
    Table.ORDER_ALONE: needs('a count such as "8/2" beside it'),
    Table.PLIES_TWICE: needs("to be left out where the count has them"),
    Table.PLIES: needs("a whole number of plies from 1 to 100"),
    Table.THREAD: needs("a yarn by count or by weight and length"),
    Table.DRAWN_PICK: needs("at least the width that it lay in the cloth, {width}"),
    Table.WASHED: needs("at most what it was before, {before}"),
    Table.BEADS_AND_PICKS: needs("to be the only one of beads and picks"),
    Table.COLOUR_TWICE: "needs every colour named once, got {got} twice; for example {example}",
    Table.STRANDS: needs("at most {most} strands together"),
    WindingNeed.WOUND_ONLY: needs(
        "round bars or flat ends, which the thread goes round; with {ends} it goes there and back on the face"
    ),
    WindingNeed.CROSSED_SLANT: needs("to be shared in a figure eight, where every end lies on both layers"),
    Table.FOLDED_COUNT: needs("a system that counts the singles of {count}, not the finished yarn"),
    Table.ROWS_HITCHED: needs("to be left out beside a heading of half hitches, which has no rows"),
    Cross.MIRRORED: needs('woven_from = "back" beside it, since only what is woven from its back is mirrored'),
    WindingNeed.ROD_ONLY: needs('to be left out where no loose rod holds the warp (near_hold = "loose rod")'),
    WindingNeed.ROD_OR_EIGHT: needs("to be round with a loose rod, since its thread goes back the way it came"),
    WindingNeed.ROD_UPRIGHT: needs("its usual value with a loose rod, where every end stands upright on the face"),
    WindingNeed.ROD_TIED: needs("to be left out with a loose rod, where both knots are on the rod"),
    Cross.SHRINKAGE_TWICE: needs("to be left out beside washed, which measures it"),
    Cross.GIVEN_AND_READINGS: needs("to be the only one of given and readings"),
    Cross.READINGS_ONLY: needs("readings, and means nothing beside given"),
    Cross.AS_MEASURED_ON_NOTCHES: needs("to be left out with a notch_density, since the notches set what there can be"),
    Cross.NO_SETT: needs("readings, or a sett given"),
    Cross.READING_LIMITS: needs("a count that makes 0.1 to 60 ends per cm"),
    Cross.SIDES_AND_MARGINS: needs(
        "both sides and both margins together to leave room in a frame of at most {longest}"
    ),
    Cross.FRAME_WIDER: needs("more than both sides and both margins together, {together}"),
    Cross.WEAVING_WIDTH: needs("at most the {widest} that the frame leaves between its margins"),
    Cross.FRAME_HIGHER: needs("more than the {taken} that both frame ends take and {least} to weave in, {together}"),
    Cross.WEAVING_HEIGHT: needs("less than the {room} that the frame ends leave"),
}
