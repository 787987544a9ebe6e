"""The roles of refusals: what is wrong with an input, and what would work."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Refusal(Role):
    """How a refusal is put together; the other lists hold the refusals themselves."""

    AT = "refusal.at"
    NEEDS = "refusal.needs"
    SAID = "refusal.said"
