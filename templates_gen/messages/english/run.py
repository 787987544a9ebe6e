"""English: what is said of runs of several kits and copies."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role

MESSAGES: dict[Role, str | Plural] = {}
