"""The roles of refusals: what is wrong with an input, and what would work."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Refusal(Role):
    """How a refusal is put together; the other lists hold the refusals themselves."""

    AT = "refusal.at"
    BOTH = "refusal.both"
    NEITHER = "refusal.neither"
    NOTHING = "refusal.nothing"
    LEAVE_OUT = "refusal.leave_out"
    LEAVE_OUT_OR = "refusal.leave_out_or"
    LEAVE_OUT_OR_OR = "refusal.leave_out_or_or"
    MORE_LINES = "refusal.more_lines"
    SAID = "refusal.said"
