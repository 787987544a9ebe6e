"""What the cards of a box say."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles.cards import Card, CardNeed

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
    CardNeed.WORDS: needs("at least {width} x {height} mm for these words"),
    CardNeed.FOLD: needs("paper that holds label and packing list on one card"),
    CardNeed.LEGAL: needs("fewer letters: all legal words must find room on a card of {width} x {height} mm"),
    CardNeed.LINK: needs("at most {most} letters on a card of this size"),
}
