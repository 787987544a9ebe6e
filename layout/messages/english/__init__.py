"""The messages in English."""

from layout.messages.catalogue import Between, Catalogue, Plural, Role
from layout.messages.english import (
    check,
    cutting,
    estimate,
    frame,
    gauge,
    grid,
    guide,
    job,
    kit,
    kit_help,
    marking,
    questions,
    refusals,
    sett,
    sheet,
    sheet_names,
    start,
    stock,
    stock_help,
    templates,
    values,
    warps,
    winding,
    yardage,
    yarns,
)

_BETWEEN: dict[Role, str | Plural] = {
    Between.LIST: "{before}, {after}",
    Between.AND: "{before} and {after}",
    Between.SENTENCE: "{phrase}.",
    Between.SENTENCES: "{before} {after}",
    Between.DECIMAL: ".",
    Between.THOUSANDS: ",",
}

_AREAS = (
    check,
    cutting,
    estimate,
    frame,
    gauge,
    grid,
    guide,
    job,
    kit,
    kit_help,
    marking,
    questions,
    refusals,
    sett,
    sheet,
    sheet_names,
    start,
    stock,
    stock_help,
    templates,
    values,
    warps,
    winding,
    yardage,
    yarns,
)

ENGLISH = Catalogue(_BETWEEN | {role: said for area in _AREAS for role, said in area.MESSAGES.items()})
"""The one catalogue that there is so far."""
