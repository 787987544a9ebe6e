"""What the cards of a box say."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles.cards import Card, CardNeed, HelpCard

MESSAGES: dict[Role, str | Plural] = {
    Card.LABEL_FOR: "Label: paste it on the lid.",
    Card.LIST_FOR: "Packing list: tick it off, lay it under the lid.",
    Card.LEGAL_FOR: "Legal card: for the box.",
    Card.FOLDED_FOR: "Label and packing list: cut them out as one, fold them, glue the backs.",
    Card.KIT_FOR: "kit for a frame loom",
    Card.MEASURED: "made to measure for one frame",
    Card.WEAVING: "weaving {width} x {height}",
    Card.FRAME: "frame {width} x {height}",
    Card.IN_BOX: "In this box",
    Card.TICK: "Tick what you find. Is something missing? Tell us the kit number.",
    Card.OF_CARDS: "card {number} of {total}",
    Card.KIT_NUMBER: "kit number",
    Card.PACKED_BY: "packed by",
    Card.ON: "on",
    Card.CAUTION: (
        "Needles and knives are sharp. Cords and small parts are not for small children. A warped frame is under "
        "tension. Local rules come first."
    ),
    Card.MAKER: "Maker",
    Card.ADDRESS: "Address",
    Card.CONTACT: "Contact",
    Card.BATCH: "Batch",
    Card.WARP_FIBRE: "Warp, fibre",
    Card.WEFT_FIBRE: "Weft, fibre",
    Card.CARE: "Care",
    Card.AGE: "Age",
    Card.YEARS: "years and over",
    Card.FILL_IN: (
        "The legal card has lines to fill in ({keys}). What must stand there is for you and your local rules to say."
    ),
    HelpCard.FOR_FOLDED: "Cut the card out, fold it, glue the backs: it turns like the leaf of a wall calendar.",
    HelpCard.FOR_APART: "Cut both cards out and glue their backs together.",
    HelpCard.HELP: "Help",
    HelpCard.HELP_IS: "What to do when something is not right.",
    HelpCard.SLACK: "Slack end",
    HelpCard.SLACK_ALONG: "Pull the slack along to the last knot, and tie again.",
    HelpCard.SLACK_ALONE: "One end alone: slide a thin stick under it at the frame.",
    HelpCard.BROKEN: "Broken end",
    HelpCard.BROKEN_LAY: "Lay a new end beside it, {deep} into the cloth, and pin it.",
    HelpCard.BROKEN_TIE: "Tie it to the frame with a bow. Darn both in later.",
    HelpCard.PULLING: "Edges pulling in",
    HelpCard.PULLING_ARC: "The weft is too short: lay it in a higher arc, never pull.",
    HelpCard.PULLING_WIDE: "Measure every {step}: it should be {width} wide.",
    HelpCard.SHOWING: "Warp showing",
    HelpCard.SHOWING_BEAT: "Beat harder, or take a thinner weft.",
    HelpCard.SHOWING_BEADS: "Ten beads (twenty picks) should stand {high} high.",
    HelpCard.NEW_WEFT: "New weft",
    HelpCard.NEW_WEFT_INSIDE: "Begin and end inside the piece, never at its edge.",
    HelpCard.NEW_WEFT_TAILS: "Let both tails hang behind, {tail} long, an end apart.",
    HelpCard.FINISH: "Finish",
    HelpCard.FINISH_CUT: "Cutting off, from the middle outward.",
    HelpCard.FINISH_ROD: "Taking off: the loops stay whole.",
    HelpCard.TENSION: "A warped frame is under tension: keep your face clear of it.",
    HelpCard.STEP_HEM: "Weave {hem} of hem, then stop.",
    HelpCard.STEP_WEAVE: "Weave up to the far heading.",
    HelpCard.STEP_GLASSES: "Glasses on, one hand flat on the warp.",
    HelpCard.STEP_CUT: "Cut two middle ends, close to the frame.",
    HelpCard.STEP_KNOT: "Tie the two in an overhand knot, close to the weaving.",
    HelpCard.STEP_NEEDLE: "Needle the two back beside their neighbours.",
    HelpCard.STEP_OUTWARD: "Go on outward, left and right by turns.",
    HelpCard.STEP_DARN: "Darn in the tails, trim the ends. Steam or wash a sample first.",
    HelpCard.STEP_SLACKEN: "Glasses on. Slacken the warp, one hand flat on it.",
    HelpCard.STEP_DRAW: "Draw out the rod. The loops come free; nothing is cut.",
    CardNeed.WORDS: needs("at least {width} x {height} mm for these words"),
    CardNeed.FOLD: needs("paper that holds label and packing list on one card"),
    CardNeed.LEGAL: needs("fewer letters: all legal words must find room on a card of {width} x {height} mm"),
    CardNeed.TOO_LOW: "the card needs a sheet on which it is {least} mm high; name larger paper (paper.size)",
    CardNeed.LINK: needs("at most {most} letters on a card of this size"),
}
