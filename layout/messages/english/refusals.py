"""How refusals are put together."""

from __future__ import annotations

from layout.messages.catalogue import Plural, Role
from layout.messages.roles import Refusal

MESSAGES: dict[Role, str | Plural] = {
    Refusal.AT: "{field}: {sentence}",
    Refusal.BOTH: "both",
    Refusal.NEITHER: "neither",
    Refusal.NOTHING: "nothing",
    Refusal.LEAVE_OUT: "leave out {key}",
    Refusal.LEAVE_OUT_OR: "leave out {key} or leave out {other}",
    Refusal.LEAVE_OUT_OR_OR: "leave out {key} or leave out {other} or leave out {third}",
    Refusal.MORE_LINES: Plural("more", "and {more} more line like these", "and {more} more lines like these"),
    Refusal.SAID: "{sentence}",
}
