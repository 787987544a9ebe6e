"""English: what a proof finds wrong on the cards of a box."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.proof_cards import Cards, QrCode

MESSAGES: dict[Role, str | Plural] = {
    Cards.OUTLINE: "the card is not {width} x {height} mm",
    Cards.PLACE: '"{words}" stands outside its card',
    Cards.BAND: "the woven band is not of {count} ends over and under three picks by turns",
    Cards.ROW: 'the row "{name}" has not its box to tick and its amount, {amount}',
    Cards.TICKS: "the list has {found} boxes to tick where {wanted} were wanted",
    Cards.BLANKS: "the card has {found} lines to fill in where {wanted} were wanted",
    Cards.BLANK: '"{name}" has no line to fill in beside it',
    Cards.FOLD: "the card is not folded in its middle",
    Cards.ORDER: '"{words}" does not stand in its place on the card',
    Cards.PICTURES: "the card has not the pictures of its rows",
    Cards.MIDDLE: "picture {number} does not show what is done at the two middle ends",
    Cards.ARROWS: "an arrow of the card points the wrong way",
    Cards.LINK: "the label has {found} codes of a link where {wanted} were wanted",
    Cards.LINK_SAYS: 'the code of the link says "{found}" where "{wanted}" was wanted',
    Cards.LINK_SMALL: "the modules of the code are under {least} mm",
    Cards.LINK_WHITE: "the code has not four modules of white around it",
    QrCode.SIZE: "it has not as many modules as a QR code of version 1 to 10",
    QrCode.PATTERN: "its finder, timing or alignment patterns are not whole",
    QrCode.FORMAT: "its format is not that of a code of level M",
    QrCode.DAMAGED: "a module is not as it was written",
    QrCode.TEXT: "it holds no text in bytes",
}
