"""English: what the desk says: the lines of the slip, their labels, helps and choices."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role

MESSAGES: dict[Role, str | Plural] = {}
