"""English: what the desk says: kits opened, kept, compared and made."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role

MESSAGES: dict[Role, str | Plural] = {}
