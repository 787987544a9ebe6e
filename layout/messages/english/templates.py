"""What templates for notches, pegs and nails say, and their sheets."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Template

MESSAGES: dict[Role, str | Plural] = {
    Template.PURPOSE_HELD: "Which notches hold the ends.",
    Template.NEAR_PIECE: "near, {number} of {total}",
    Template.FAR_PIECE: "far, {number} of {total}",
    Template.TO_WEAVING: "this edge to the weaving",
    Template.STEP_CUT: "Cut out every template along its full lines.",
    Template.STEP_FOLD: (
        "Fold it over the outer edge of the bar: numbers on the face, centre on your pencil mark. Hold with tape."
    ),
    Template.STEP_LAY_FACE: (
        "Lay it on the face, the notches at the outer edge of the bar, centre on your pencil mark. Hold with tape."
    ),
    Template.STEP_LAY_EDGE: (
        "Lay it edge to edge on the outer edge of the bar, centre on your pencil mark. Hold with tape."
    ),
    Template.STEP_LAY_ROW: (
        "Lay it with its outer row {outer} from the outer edge of the bar, centre on your pencil mark. Hold with tape."
    ),
    Template.STEP_LAY_GROUND: (
        "Lay its long line along the ground of the notches, centre on your pencil mark. Hold with tape."
    ),
    Template.STEP_SAW: "Saw out the grey: {width} wide, {depth} deep.",
    Template.STEP_SMOOTH: "Peel the paper off. Smooth the edges: they fray the warp.",
    Template.STEP_DRILL: "Prick every cross with an awl. Drill {peg} holes there, upright.",
    Template.STEP_PEGS: "Peel the paper off, smooth the edges. Glue a peg into every hole, peg 0 too.",
    Template.STEP_PRICK: "Prick every cross with an awl. Peel the paper off.",
    Template.STEP_NAIL: "Drive in nails of {nail}, their heads leaning outward a little.",
    Template.STEP_NAIL_OUT: "Drive in nails of {nail} until {out} stand out, their heads leaning outward a little.",
    Template.STEP_EVERY_SECOND: "An end lies in every second notch: the grey ones. White ones stay empty.",
    Template.STEP_EVERY: "An end lies in every notch between the first and the last grey one.",
    Template.STEP_TWO: "Two ends lie in every notch between the first and the last grey one.",
    Template.STEP_DRIFT: "Where boxes and notches drift apart, the bar is not as close as was said.",
    Template.HOW_IT_LIES: "How a template lies",
    Template.BAR: "bar",
    Template.NOTCH_DEEP: "notch, {depth} deep",
    Template.FACE_PART: "face part",
    Template.EDGE_PART: "edge part",
    Template.FOLD_AT: "fold on the outer edge",
    Template.PLAIN_EDGE: "flush with the outer edge",
    Template.WEAVING: "weaving",
    Template.THROUGH_NOTCHES: "How the warp goes through the notches",
    Template.ROUND_PEGS: "How the warp goes round the pegs",
    Template.ROUND_NAILS: "How the warp goes round the nails",
    Template.TWO_TO_A_PEG: "Two ends to a peg, both on the face: down to it, round it, up again.",
    Template.TWO_TO_A_NAIL: "Two ends to a nail, both on the face: down to it, round it, up again.",
    Template.TIE_ON: "tie on at {number}",
    Template.NEAR_BAR: "near bar",
    Template.FAR_PIN: "far {number}",
    Template.READING: "Reading a template",
    Template.A_NOTCH: "a notch: saw out the grey",
    Template.A_USED_NOTCH: "a notch in which an end lies",
    Template.AN_EMPTY_NOTCH: "a notch that stays empty",
    Template.A_PEG: "a peg: drill where the lines cross",
    Template.A_NAIL: "a nail: prick where the lines cross",
    Template.NUMBER_NOTCH: "number of the notch, beside its own notch",
    Template.NUMBER_PEG: "number of the peg, 0 to {near} near, 1 to {far} far",
    Template.NUMBER_NAIL: "number of the nail, 0 to {near} near, 1 to {far} far",
    Template.DOTS: "dots {small} apart, full every {unit}",
    Template.DOTS_SAWN: "dots {small} apart, full every {unit}: never sawn",
    Template.DOTS_DRILLED: "dots {small} apart, full every {unit}: never drilled",
    Template.A_CENTRE: "centre of the weaving",
    Template.CROSSES: "small crosses: to measure the print by",
    Template.CUT: "cut",
    Template.FOLD: "fold",
    Template.BEHIND: "behind",
    Template.CAUTION_SAW: "Clamp the bar. Safety glasses on; a mask to sand.",
    Template.CAUTION_AS_MAKER_SAW: "Use the saw as its maker says, fingers clear.",
    Template.CAUTION_DRILL: "Clamp the bar. Safety glasses on to drill; a mask to sand.",
    Template.CAUTION_AS_MAKER_DRILL: "Use the drill as its maker says.",
    Template.CAUTION_NAIL: "Safety glasses on; hold nails with pliers, not with fingers.",
    Template.CAUTION_COVER: "Cover the heads of the nails when you stop.",
}
