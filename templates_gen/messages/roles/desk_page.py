"""The roles of what the desk says: the page itself."""

from __future__ import annotations

from layout.messages.catalogue import Role


class DeskPage(Role):
    """The page itself."""

    TITLE = "desk_page.title"
