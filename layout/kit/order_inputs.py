"""The inputs about an order: one part of the table of inputs. Both may be left out. Limits are our own choice."""

from __future__ import annotations

from fractions import Fraction

from layout.kit.input import Input
from layout.messages.roles import KitHelp

MOST_NUMBER, MOST_BUYER = Fraction(40), Fraction(60)

ORDER_INPUTS = (
    Input("order.number", "text", KitHelp.ORDER_NUMBER, '"1042"', most=MOST_NUMBER),
    Input("order.buyer", "text", KitHelp.ORDER_BUYER, '"Webstube Färö"', most=MOST_BUYER),
)
"""In the order of the kit file."""
