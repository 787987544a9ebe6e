"""The inputs of a range file about money and the class: packs, prices, work. All limits are our own."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from layout.kit.input import Input, of_mm
from layout.kit.lookup import catalogue
from layout.messages.catalogue import Role
from layout.messages.roles.buying import BuyHelp

MOST_MONEY, MOST_QUANTITIES, MOST_PEOPLE = Fraction(1_000_000), 24, 500
_NONE, _LEAST, _MANY = Fraction(0), Fraction(1, 1000), Fraction(100_000)

ONE_PACK = '{pack = "ball", grams = 50, price = 4.20}'
"""How a yarn may be sold: an example that works."""


def _money(key: str, help_: Role, example: str) -> Input:
    return Input(key, "amount", help_, example, least=_NONE, most=MOST_MONEY)


def _name(key: str, help_: Role, example: str) -> Input:
    return Input(key, "name", help_, f'"{example}"')


def _grams(table: str) -> Input:
    return Input(f"{table}.grams", "amount", BuyHelp.GRAMS, "50", least=_LEAST, most=MOST_MONEY)


def _length(table: str) -> Input:
    return Input(f"{table}.length", "length", BuyHelp.LENGTH, '"50 m"', low=of_mm(10), high=of_mm(100_000_000))


def _count(key: str, help_: Role, example: str) -> Input:
    return Input(key, "whole", help_, example, most=_MANY)


def _yarn(table: str) -> tuple[Input, ...]:
    """The keys of a yarn that is sold by weight or by length."""
    pack, price = _name(f"{table}.pack", BuyHelp.PACK, "ball"), _money(f"{table}.price", BuyHelp.PRICE, "4.20")
    return pack, _grams(table), replace(_length(table), instead_of="grams"), price


_BUY = (
    _name("buy.currency", BuyHelp.CURRENCY, "EUR"),
    *_yarn("buy.warp"),
    *_yarn("buy.weft"),
    Input("buy.colours", "tables", BuyHelp.COLOURS, '[{name = "indigo", pack = "hank", grams = 100, price = 9.00}]'),
    _name("buy.colours[].name", BuyHelp.NAME, "indigo"),
    *_yarn("buy.colours[]"),
    _name("buy.leash_cord.pack", BuyHelp.PACK, "ball"),
    _length("buy.leash_cord"),
    _money("buy.leash_cord.price", BuyHelp.PRICE, "3.10"),
    _name("buy.paper.pack", BuyHelp.PACK, "pack"),
    _count("buy.paper.sheets", BuyHelp.SHEETS, "500"),
    _money("buy.paper.price", BuyHelp.PRICE, "6.00"),
    Input("buy.also", "tables", BuyHelp.ALSO, '[{name = "beater", price = 7.50}]'),
    _name("buy.also[].name", BuyHelp.NAME, "beater"),
    _name("buy.also[].pack", BuyHelp.PACK, "card"),
    _count("buy.also[].number", BuyHelp.NUMBER, "25"),
    _money("buy.also[].price", BuyHelp.PRICE, "7.50"),
    _money("buy.hour", BuyHelp.HOUR, "18.00"),
    Input("buy.minutes", "amount", BuyHelp.MINUTES, "25", least=_NONE, most=_MANY),
)

_SELL = (
    Input("sell.margin", "share", BuyHelp.MARGIN, '"40 %"'),
    Input(
        "sell.quantities",
        "tables",
        BuyHelp.QUANTITIES,
        '[{from = 1}, {from = 5, less = "5 %"}]',
        most=Fraction(MOST_QUANTITIES),
    ),
    _count("sell.quantities[].from", BuyHelp.FROM, "5"),
    Input("sell.quantities[].less", "share", BuyHelp.LESS, '"5 %"'),
    Input("sell.round_to", "amount", BuyHelp.ROUND_TO, "0.50", least=_LEAST, most=MOST_MONEY),
)

_CLASS = (
    Input("class.people", "whole", BuyHelp.PEOPLE, "10", most=Fraction(MOST_PEOPLE)),
    Input("class.at_a_table", "whole", BuyHelp.AT_A_TABLE, "2", most=Fraction(MOST_PEOPLE)),
)

SHOP = catalogue((*_BUY, *_SELL, *_CLASS))
"""The inputs of the tables [buy], [sell] and [class]."""

SHOP_TABLES = ("buy", "sell", "class")
"""The tables of a range file that hold them."""
