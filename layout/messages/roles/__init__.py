"""The roles of all messages, a module for each area."""

from layout.messages.roles.printed import Check, Count, Gauge, Grid, Guide, Sheet, Strip, Winding
from layout.messages.roles.refusals import Refusal

__all__ = ["Check", "Count", "Gauge", "Grid", "Guide", "Refusal", "Sheet", "Strip", "Winding"]
