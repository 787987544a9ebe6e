"""The messages in English."""

from layout.messages.catalogue import Between, Catalogue, Plural, Role
from layout.messages.english import guide, sheet, strip, winding

_BETWEEN: dict[Role, str | Plural] = {Between.LIST: "{before}, {after}", Between.SENTENCES: "{before} {after}"}

ENGLISH = Catalogue(_BETWEEN | sheet.MESSAGES | strip.MESSAGES | winding.MESSAGES | guide.MESSAGES)
"""The one catalogue that there is so far."""
