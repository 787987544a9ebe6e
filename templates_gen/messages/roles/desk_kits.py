"""The roles of what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskKits(Role):
    """Kits opened, kept, compared and made."""
