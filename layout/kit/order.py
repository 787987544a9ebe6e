"""What a kit says of the order that it is made for."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class OrderGiven:
    """The `number` of an order and the name of its `buyer`; what is empty was left out.

    The number stands on every sheet and part, so that two orders are never mixed; the buyer on the leaflet alone.
    """

    number: str = ""
    buyer: str = ""
