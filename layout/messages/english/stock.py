"""What is refused of a stock, of a kerf that was measured, and of parts that no sheet holds."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Caliper, SheetNeed, StockNeed

_MM = "sizes in mm, since no hole of a trial is under {smallest} mm; a caliper that shows cm has to be read ten times "
_A_HOLE = "a hole of {hole} mm and a part of {part} mm"

MESSAGES: dict[Role, str | Plural] = {
    StockNeed.KERF_TWICE: needs("to be left out beside kerf"),
    StockNeed.OTHER_KERF: needs("to be given beside {other}"),
    StockNeed.NO_KERF: needs("to be given (the full width of the cut, measured or from a table of your material)"),
    StockNeed.SAME_COLOUR: (
        "needs a colour of its own, unlike every other operation, got {got}, which {other} has too; for example "
        "{example}"
    ),
    StockNeed.DRAWN_LARGER: needs("at most {most} mm, since it is drawn larger by the scale of the cutter"),
    Caliper.SIZE: needs("a size as the caliper shows it, in mm or inches"),
    Caliper.IN_PAIRS: "needs one {part} for every {hole}, got {got}; for example {example}",
    Caliper.PAIRS: "{parts} for {holes}",
    Caliper.HOLE_AND_PART: _A_HOLE,
    Caliper.LARGER_HOLE: needs("a hole larger than the part that came out of it"),
    Caliper.IN_MM: needs(_MM + "as large"),
    Caliper.KERF: needs("a kerf of at most {most} mm, (hole - part) / 2"),
    Caliper.OPEN_BY: "readings that leave it open by {open} mm",
    Caliper.FINER: needs("readings fine enough for a kerf of about {kerf} mm"),
    Caliper.WIDER_SLOT: needs("a slot that came out wider than the yarn"),
    Caliper.SLOT: "{slot} mm, cut {narrower} mm narrower than drawn",
    SheetNeed.NESTED: needs("a sheet of at least {width} x {height} mm, edges of {edge} mm included, for {part}"),
    SheetNeed.COPIES: "copies of {part}",
    SheetNeed.EACH: needs("paper on which each part takes at most {most} sheets"),
    SheetNeed.WHOLE: needs("a sheet that holds every part in one piece"),
    SheetNeed.STRAIGHT: needs("a sheet that holds the part straight"),
    SheetNeed.DIAGONAL: needs("a sheet that holds the part in one piece across its diagonal"),
    SheetNeed.PIECES: needs("a part and a sheet that allow pieces of at least {least} mm"),
    SheetNeed.GOT_DRAWING: "{part} of {length} x {height} mm on paper of {width} x {up} mm",
    SheetNeed.GOT_WHOLE: "{part} of {length} x {height} mm on paper of {width} x {up} mm",
    SheetNeed.GOT_LENGTH: "a part {length} mm long on paper of {width} x {up} mm",
    SheetNeed.OR: "{before} or {after}",
    SheetNeed.STRIP_ROOM: needs("at least {least} mm between the sides, room for the words of a strip"),
    SheetNeed.STRIP_TOTALS: needs("at least {least} mm, room for the running totals up to {most}"),
    SheetNeed.NO_GRID: "there is no weaving grid: {why}",
    SheetNeed.GRID_NO_PICKS: "no picks are known; count the beads up one end of a sample and say so (weft.beads)",
    SheetNeed.GRID_TOO_FINE: "its lines would be {apart} mm apart; under {least} mm they run together",
    SheetNeed.GRID_TOO_SMALL: (
        "its {width} x {height} mm in whole columns and rows leave nothing to design; it is made from {least} mm on"
    ),
    SheetNeed.GRID_TOO_LARGE: (
        "{width} x {height} mm is more than {most} whole sheets of this paper; name larger paper (paper.size)"
    ),
}
