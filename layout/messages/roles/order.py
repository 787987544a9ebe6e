"""Roles of what sheets and parts say of an order: its number, and for whom it was made."""

from __future__ import annotations

from layout.messages.catalogue import Role


class OrderWord(Role):
    """What is printed."""

    NUMBER = "order.number"
    KIT = "order.kit"
    FOR = "order.made_for"
    LEAFLET = "order.leaflet"


class PrintRunWord(Role):
    """What a print run over many orders says of itself."""

    NAME = "print_run.name"


class OrderNeed(Role):
    """Why the number of an order has no room."""

    ROOM = "order_need.room"
