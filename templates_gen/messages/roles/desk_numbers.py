"""The roles of what the desk says: the numbers and drawings beside the slip."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskNumbers(Role):
    """The numbers and drawings beside the slip."""
