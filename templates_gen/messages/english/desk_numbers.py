"""English: what the desk says: the numbers and drawings beside the slip."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role

MESSAGES: dict[Role, str | Plural] = {}
