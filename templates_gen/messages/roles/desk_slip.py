"""The roles of what the desk says: the lines of the slip, their labels, helps and choices."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskSlip(Role):
    """The lines of the slip, their labels, helps and choices."""
