"""English: what is said of what is bought and what it costs."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.buying import Buy, Tables

MESSAGES: dict[Role, str | Plural] = {
    Buy.LINE: "Buy: {things}.",
    Buy.NOTHING: "Buy: nothing.",
    Buy.THING: "{packs} of {thing} ({size} each)",
    Buy.THING_LEFT: "{packs} of {thing} ({size} each; {left} left)",
    Buy.UNPACKED: "{amount} of {thing}",
    Buy.PACKS: "{packs} x {pack}",
    Buy.BALLS: Plural("packs", "{packs} ball", "{packs} balls"),
    Buy.OF_PACKS: Plural("packs", "{packs} pack", "{packs} packs"),
    Buy.PIECES: "{pieces} x {thing}",
    Buy.SHEETS: Plural("sheets", "{sheets} sheet", "{sheets} sheets"),
    Buy.COLOURED: "{yarn}, {colour}",
    Buy.CORD: "leash cord",
    Buy.PAPER: "paper",
    Buy.BOARDS: Plural("boards", "{boards} board", "{boards} boards"),
    Buy.PAID: "That is {money} {currency}.",
    Buy.PAID_LEAST: "That is at least {money} {currency}, without {things}.",
    Tables.HEAD: "the columns of the table are not those that it must have",
    Tables.ROW: "row {row} of the table says {got!r}, where {want!r} is right",
    Tables.PRICES: "the row {row!r} is missing, or stands elsewhere",
    Tables.CARDS: Plural("number", "{number} kit has no card", "{number} kits have no card"),
    Tables.CARD_SIZE: "card {number} is not of its size, or lies elsewhere",
    Tables.MONEY: "{words!r} says money, which no file for a buyer may",
    Tables.INPUTS: "the file carries what the maker buys and sells, which no file for a buyer may",
}
