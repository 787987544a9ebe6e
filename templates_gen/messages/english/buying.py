"""English: what is said of what is bought and what it costs."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role

MESSAGES: dict[Role, str | Plural] = {}
