"""What is said of what is bought and what it costs."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Buy(Role):
    """What to buy, on the screen."""

    LINE = "buying.buy.line"
    NOTHING = "buying.buy.nothing"
    THING = "buying.buy.thing"
    THING_LEFT = "buying.buy.thing_left"
    UNPACKED = "buying.buy.unpacked"
    PACKS = "buying.buy.packs"
    BALLS = "buying.buy.balls"
    OF_PACKS = "buying.buy.of_packs"
    PIECES = "buying.buy.pieces"
    SHEETS = "buying.buy.sheets"
    COLOURED = "buying.buy.coloured"
    CORD = "buying.buy.cord"
    PAPER = "buying.buy.paper"
    BOARDS = "buying.buy.boards"
    PAID = "buying.buy.paid"
    PAID_LEAST = "buying.buy.paid_least"


class Tables(Role):
    """What is wrong with a table for the maker."""

    HEAD = "buying.tables.head"
    ROW = "buying.tables.row"
    PRICES = "buying.tables.prices"
    CARDS = "buying.tables.cards"
    CARD_SIZE = "buying.tables.card_size"
    MONEY = "buying.tables.money"
    INPUTS = "buying.tables.inputs"
