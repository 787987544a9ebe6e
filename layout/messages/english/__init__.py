"""The messages in English."""

from layout.messages.catalogue import Between, Catalogue, Plural, Role
from layout.messages.english import check, gauge, grid, guide, refusals, sheet, strip, winding

_BETWEEN: dict[Role, str | Plural] = {Between.LIST: "{before}, {after}", Between.SENTENCES: "{before} {after}"}

_AREAS = (sheet, strip, winding, guide, check, gauge, grid, refusals)

ENGLISH = Catalogue(_BETWEEN | {role: said for area in _AREAS for role, said in area.MESSAGES.items()})
"""The one catalogue that there is so far."""
