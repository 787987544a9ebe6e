"""English: what the desk says: the page itself."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from templates_gen.messages.roles.desk_page import DeskPage

MESSAGES: dict[Role, str | Plural] = {
    DeskPage.TITLE: "Desk",
}
