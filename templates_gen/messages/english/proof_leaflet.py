"""English: what a proof finds wrong on a leaflet."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.proof_leaflet import Leaf, LeafPicture

MESSAGES: dict[Role, str | Plural] = {
    Leaf.FOLDS: "the leaflet is not folded in the middle of its sheet",
    Leaf.ACROSS: "something lies across a fold of the leaflet",
    Leaf.UPRIGHT: "words of the leaflet do not stand upright",
    Leaf.ORDER: "the steps of the leaflet are {found}, panel by panel, where 1 to {wanted} were wanted",
    Leaf.BLOCK: "the leaflet is not trimmed as its paper asks for, or something lies outside its marks",
    Leaf.FULL: "a panel of the leaflet holds {found} steps",
    Leaf.ASIDE: '"{words}" does not stand beside its number, {number}',
    Leaf.STRAY: "something is drawn beside the pictures of the leaflet ({pen})",
    Leaf.SAMPLE: 'before "{words}" stands another line than it names',
    Leaf.STEP: "step {number} of the leaflet: {what}",
    LeafPicture.NOTHING: "it has no picture",
    LeafPicture.FRAME: "the frame is not in its proportions",
    LeafPicture.DIAGONALS: "the diagonals do not lead from corner to corner",
    LeafPicture.MIDDLES: "the middles of both ends are not marked",
    LeafPicture.MARKS: "the marks are not as many as there are, or not equally far apart",
    LeafPicture.NUMBERS: "a number does not stand at its mark",
    LeafPicture.CENTRE: "the triangle does not meet the pencil mark",
    LeafPicture.TIED: "it is tied on at another mark or on the other side",
    LeafPicture.HITCHES: "there are not two half hitches",
    LeafPicture.PASSES: "the passes are not the first of the warp",
    LeafPicture.OFF: "a pass does not lie where it does on the frame",
    LeafPicture.TIE_ON: "the knot is not where the warp is tied on",
    LeafPicture.SLACK: "the slack is not pulled the way of the winding",
    LeafPicture.TIE_OFF: "the knot is not where the warp is tied off",
    LeafPicture.STICK: "the stick does not lie on the side pieces near the far end",
    LeafPicture.LIFTED: "the stick lifts other ends than it must",
    LeafPicture.ROWS: "the heading rows are not as many as there are, or at the wrong end",
    LeafPicture.CROSSING: "a row does not pass over and under by turns",
    LeafPicture.SPACED: "an end does not lie at its mark, or not in its layer",
    LeafPicture.LOOPS: "the loops do not hold the ends that the stick does not lift",
    LeafPicture.ARC: "the weft does not pass under the lifted ends and over the others",
    LeafPicture.BEATEN: "the weft is not beaten to the near end",
    LeafPicture.SHEDS: "the two sheds are not a stick on edge, and a stick that lies flat with leashes",
    LeafPicture.CUT: "the two middle ends are not cut first, or others are",
    LeafPicture.OUTWARD: "the arrows do not lead from the middle outward",
    LeafPicture.DRAWN: "the rod is not drawn out to the side",
}
