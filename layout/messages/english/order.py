"""What is said of an order."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.english.forms import needs
from layout.messages.roles.order import OrderNeed, OrderWord, PrintRunWord

MESSAGES: dict[Role, str | Plural] = {
    OrderWord.NUMBER: "Order {number}",
    OrderWord.KIT: "Order {number}: {kit}",
    OrderWord.FOR: "Made for {buyer}",
    OrderWord.LEAFLET: "Made for {buyer}: {purpose}",
    PrintRunWord.NAME: "Print run {number}",
    OrderNeed.ROOM: needs("fewer characters, or a wider frame: it must stand on a strip of {length} mm"),
}
