"""The messages in English."""

from layout.messages.catalogue import Between, Catalogue, Plural, Role
from layout.messages.english import check, gauge, grid, guide, sheet, strip, winding

_BETWEEN: dict[Role, str | Plural] = {Between.LIST: "{before}, {after}", Between.SENTENCES: "{before} {after}"}

_PARTS = (sheet, strip, winding, guide, check, gauge, grid)

ENGLISH = Catalogue(_BETWEEN | {role: said for part in _PARTS for role, said in part.MESSAGES.items()})
"""The one catalogue that there is so far."""
