"""What is said of a frame: of the strength of its ends, and of the keys of its ends together."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles import Beam, EndNeed

MESSAGES: dict[Role, str | Plural] = {
    Beam.MODULUS: "Elastic modulus of {material} {modulus} N/mm2, a round figure from memory.",
    Beam.TENSION: "A thread pulls with {tension}, as stated.",
    Beam.TENSION_USUAL: "A thread pulls with {tension}, a round figure for a warp wound by hand, from memory.",
    Beam.TENSION_ASSUMED: "{tension} (assumed)",
    Beam.PULL: "{threads} threads of {tension} N each.",
    Beam.FORMULA: (
        "A frame end bends as a simply supported beam of span L that carries F over its middle width W, by "
        "F (8 L^3 - 4 L W^2 + W^3) / (384 E I): 5 w L^4 / (384 E I) where W = L (any engineering handbook)."
    ),
    Beam.BENT: "{force} N over the middle {width} mm of {span} mm (Euler-Bernoulli, free to turn).",
    Beam.BENDS_TOO_FAR: (
        "The bar bends by {bent} mm, more than its span / {over} ({most} mm), so the middle ends go slack; take a "
        "thicker bar, or warp with less tension."
    ),
    Beam.GIVE_MATERIAL: "to know it, give frame.material",
    Beam.GIVE_WIDTH: "to know it, give frame.end_width",
    Beam.GIVE_BOTH: "to know it, give frame.material and frame.end_width",
    Beam.NAIL_BENDS: (
        "Two ends pull at the head of a nail with {pull} N and bend it by {bent} mm, stressed with {stress} N/mm2; "
        "take a thicker nail, let it stand out less, or lay the ends near the board."
    ),
    EndNeed.GIVEN: needs('to be given with ends = "{ends}"'),
    EndNeed.LEFT_OUT: needs('to be left out with ends = "{ends}"'),
    EndNeed.LEFT_OUT_STRAIGHT: needs('to be left out with ends = "{ends}", where all ends lie straight on the face'),
    EndNeed.NOTCHES_IN_WIDTH: needs("more than the {taken} that its notches take"),
    EndNeed.PEGS_IN_WIDTH: needs("more than the {taken} that its pegs take"),
    EndNeed.NAILS_IN_WIDTH: needs("more than the {taken} that its nails take"),
    EndNeed.EDGE_RADIUS: needs("at most half the thickness, {half}"),
    EndNeed.BORE: needs("less than the bar's diameter, {diameter}"),
}
