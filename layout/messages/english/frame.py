"""What is said of a frame: of the strength of its ends, and of the keys of its ends together."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Beam, EndNeed, Travel

MESSAGES: dict[Role, str | Plural] = {
    Beam.MODULUS: "Elastic modulus of {material} {modulus} N/mm2 ({least} to {most}), {source}.",
    Beam.MODULUS_STATED: "Elastic modulus {modulus} N/mm2, as stated.",
    Beam.HANDBOOK: "by the Wood Handbook (FPL-GTR-190, 2010)",
    Beam.MDF: "by EN 622-5 for its thickness",
    Beam.MEMORY: "a round figure from memory",
    Beam.ALLOWED: (
        "{material} may be under {allowed} N/mm2 for long; it breaks at {strength} N/mm2 (share: our choice)."
    ),
    Beam.MONTHS: "Months under tension make wood and plastic bend 1.5 to 2 times as far (from memory).",
    Beam.TENSION: "A thread pulls with {tension}, as stated.",
    Beam.TENSION_BY_HAND: "A thread of a warp wound by hand pulls with 1 to 8 N, mostly 3 N (from memory).",
    Beam.TENSION_TIGHTENED: (
        "A thread of a tightened warp pulls with 0.005 to 0.03 N for each tex, mostly 0.015 N, and with no more than "
        "15 N (from memory)."
    ),
    Beam.TENSION_DIP: "A load of {load} makes a thread dip by {depth} over {length}; its own stretch is taken off.",
    Beam.TENSION_PLUCK: "A plucked thread sounds at {hertz} Hz over {length}.",
    Beam.TENSION_RANGE: "{tension} N ({low} to {high} N, {origin})",
    Beam.STIFFNESS: (
        "Each tex of a thread resists its stretch with 1.5 to 2 N where it is cotton (from memory), else with 0.5 to "
        "6 N (our choice)."
    ),
    Beam.TEX_OFF: "A yarn weighs up to 6 % more or less than its label says (from memory).",
    Beam.SPAN: "{low} to {high} N",
    Beam.PULLS_DIFFER: (
        "The pull of a thread is {first} by one fact and {second} by another, which contradict each other: {known} "
        "{found} Measure again; until then both count."
    ),
    Beam.SLACK: (
        "The dip in frame.dip is so deep that the stretch of the thread alone explains it: the thread is slack, or the "
        "reading is wrong."
    ),
    Beam.PULL: Plural("threads", "{threads} thread of {tension} N.", "{threads} threads of {tension} N each."),
    Beam.FORMULA: (
        "A frame end bends as a simply supported beam of span L that carries F over its middle width W, by "
        "F (8 L^3 - 4 L W^2 + W^3) / (384 E I): 5 w L^4 / (384 E I) where W = L (any engineering handbook)."
    ),
    Beam.BENT: "{force} N over the middle {width} mm of {span} mm (Euler-Bernoulli, free to turn).",
    Beam.BENDS_TOO_FAR: (
        "The bar bends by {bent} mm (at most {high} mm), more than its span / {over} ({most} mm), so the middle ends "
        "go slack; take a thicker bar, or warp with less tension."
    ),
    Beam.MAY_BEND_TOO_FAR: (
        "The bar may bend by up to {high} mm (likely {bent} mm), more than its span / {over} ({most} mm), so the "
        "middle ends may go slack; take a thicker bar, warp with less tension, or measure the pull of a thread."
    ),
    Beam.STRESS: "The greatest stress of the bar, F (2 L - W) / 8 over I / y (any engineering handbook).",
    Beam.STRESSED: (
        "The bar may be under a stress of up to {high} N/mm2, more than the {allowed} N/mm2 that it should bear for "
        "long: take a thicker bar, or warp with less tension."
    ),
    Beam.STORES_ENERGY: (
        "The warp may pull on each bar with up to {newtons} N. More than {limit} N (our limit) is too much for a "
        "child's frame: a warped frame stores energy, and rods, wedges and cut threads fly when it is let go."
    ),
    Beam.GIVE_MATERIAL: "to know it, give frame.material",
    Beam.GIVE_WIDTH: "to know it, give frame.end_width",
    Beam.GIVE_BOTH: "to know it, give frame.material and frame.end_width",
    Beam.NAIL_BENDS: (
        "Two ends may pull at the head of a nail with up to {pull} N, which would bend it by {bent} mm and stress it "
        "with {stress} N/mm2; take a thicker nail, let it stand out less, or lay the ends near the board."
    ),
    EndNeed.GIVEN: needs('to be given with ends = "{ends}"'),
    EndNeed.LEFT_OUT: needs('to be left out with ends = "{ends}"'),
    EndNeed.LEFT_OUT_STRAIGHT: needs('to be left out with ends = "{ends}", where all ends lie straight on the face'),
    EndNeed.NOTCHES_IN_WIDTH: needs("more than the {taken} that its notches take"),
    EndNeed.PEGS_IN_WIDTH: needs("more than the {taken} that its pegs take"),
    EndNeed.NAILS_IN_WIDTH: needs("more than the {taken} that its nails take"),
    EndNeed.EDGE_RADIUS: needs("at most half the thickness, {half}"),
    EndNeed.DIP: needs(
        "at most a sixtieth of the length, {most}: hang on a lighter load, such as {load}, and measure again"
    ),
    EndNeed.WEIGHED_WARP: needs("the weight of the warp, by its count or by a ball, under [warp]"),
    EndNeed.BORE: needs("less than the bar's diameter, {diameter}"),
    Travel.NEEDS: "The stretch of a thread under its pull, what knots and loops give way, and what weaving takes up.",
    Travel.BEDDING: "Knots and loops give way by 2 to 5 mm (from memory).",
    Travel.TAKEN_UP: "The warp loses 1 to 2 % of its length as it is woven (from memory).",
    Travel.TWO_HEIGHTS: (
        "Wind with the frame at its lowest, {low}, and weave with it tightened, up to {tight}: thread, marks and "
        "strips go by the first, the room to weave, fringes and the fan of the ends by the second."
    ),
    Travel.SHORT: (
        "Tightening takes about {need} mm (up to {most} mm), more than the travel of {travel}: lengthen the rods or "
        "wedges, or wind the warp tighter."
    ),
    Travel.MAY_BE_SHORT: (
        "Tightening takes about {need} mm, but it may take up to {most} mm, more than the travel of {travel}."
    ),
    Travel.LEFT_OUT: needs("to be given with a tensioner"),
    Travel.TENSIONER: needs("rods or wedges, which lengthen a frame with a travel"),
}
