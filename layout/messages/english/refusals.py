"""How refusals are put together."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Refusal

MESSAGES: dict[Role, str | Plural] = {
    Refusal.AT: "{field}: {sentence}",
    Refusal.NEEDS: "needs {needed}, got {got}; for example {example}",
    Refusal.SAID: "{sentence}",
}
