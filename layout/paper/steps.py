"""Where each product stands in the work: the tile of its sheets, their step, their name and what they are for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from layout.messages.roles import SheetName
from layout.paper.head import WEAVE


class Place(NamedTuple):
    """`tile` is what the black square shows; `step` how far the small warp has come, 0 for a sheet of no step."""

    tile: str = ""
    step: int = 0


LEASHES, HEADING, FINISH = Place("6", 6), Place("4", 4), Place("8", 8)
"""Steps without a sheet of their own: sections and cards show their tile."""

PLACES: Mapping[str, Place] = {
    "start-here": Place(WEAVE),
    "frame-check": Place("1", 1),
    "pull-check": Place("1", 1),
    "wrap-gauge": Place("G"),
    "gauge-how": Place("G"),
    "strips": Place("2", 2),
    "strip-near": Place("2", 2),
    "strip-far": Place("2", 2),
    "winding": Place("3", 3),
    "heading-rows": HEADING,
    "spacing-guide": Place("5", 5),
    "spacing-near": Place("5", 5),
    "spacing-far": Place("5", 5),
    "weaving-grid": Place("7", 7),
    "leaflet": Place(WEAVE),
    "overview": Place("B"),
    "price-sheet": Place("B"),
    "class-sheet": Place("B"),
    "shop-card": Place("B"),
    "help": Place("B"),
    "label": Place("B"),
    "folded-label": Place("B"),
    "run-list": Place("B"),
    "printer-check": Place("P"),
    "job": Place("L"),
    "job-board": Place("L"),
    "job-more": Place("L"),
}


def place_of(product: str) -> Place:
    """Where a product stands; a drawing of a part that is cut has no tile and no step."""
    return PLACES.get(product, Place())


class Named(NamedTuple):
    """The roles of a sheet's name and of what it is for."""

    name: SheetName
    purpose: SheetName


NAMES: Mapping[str, Named] = {
    "start-here": Named(SheetName.NAME_START_HERE, SheetName.PURPOSE_START_HERE),
    "frame-check": Named(SheetName.NAME_FRAME_CHECK, SheetName.PURPOSE_FRAME_CHECK),
    "pull-check": Named(SheetName.NAME_PULL_CHECK, SheetName.PURPOSE_PULL_CHECK),
    "wrap-gauge": Named(SheetName.NAME_WRAP_GAUGE, SheetName.PURPOSE_WRAP_GAUGE),
    "winding": Named(SheetName.NAME_WINDING, SheetName.PURPOSE_WINDING),
    "spacing-guide": Named(SheetName.NAME_GUIDES, SheetName.PURPOSE_GUIDES),
    "weaving-grid": Named(SheetName.NAME_GRID, SheetName.PURPOSE_GRID),
    "leaflet": Named(SheetName.NAME_LEAFLET, SheetName.PURPOSE_LEAFLET),
    "help": Named(SheetName.NAME_HELP, SheetName.PURPOSE_HELP),
    "label": Named(SheetName.NAME_LABEL, SheetName.PURPOSE_LABEL),
    "job": Named(SheetName.NAME_JOB, SheetName.PURPOSE_JOB),
}
"""The sheets that are called the same for every warp; those of the marks on the bars are in `MARKS`."""

MARKS: Mapping[str, Mapping[str, Named]] = {
    "marking": {
        "strips": Named(SheetName.NAME_STRIPS, SheetName.PURPOSE_STRIPS),
        "strip-near": Named(SheetName.NAME_STRIP_NEAR, SheetName.PURPOSE_STRIPS),
        "strip-far": Named(SheetName.NAME_STRIP_FAR, SheetName.PURPOSE_STRIPS),
    },
    "notching": {
        "strips": Named(SheetName.NAME_NOTCHES, SheetName.PURPOSE_NOTCHES),
        "strip-near": Named(SheetName.NAME_NOTCHES_NEAR, SheetName.PURPOSE_NOTCHES),
        "strip-far": Named(SheetName.NAME_NOTCHES_FAR, SheetName.PURPOSE_NOTCHES),
    },
    "drilling": {
        "strips": Named(SheetName.NAME_PEGS, SheetName.PURPOSE_PEGS),
        "strip-near": Named(SheetName.NAME_PEGS_NEAR, SheetName.PURPOSE_PEGS),
        "strip-far": Named(SheetName.NAME_PEGS_FAR, SheetName.PURPOSE_PEGS),
    },
    "nailing": {
        "strips": Named(SheetName.NAME_NAILS, SheetName.PURPOSE_NAILS),
        "strip-near": Named(SheetName.NAME_NAILS_NEAR, SheetName.PURPOSE_NAILS),
        "strip-far": Named(SheetName.NAME_NAILS_FAR, SheetName.PURPOSE_NAILS),
    },
}
"""The same for what marks the bars, by what is done there: marking, notching, drilling or nailing."""


def named(product: str, work: str = "marking") -> Named | None:
    """The roles for the sheets of a product, where the bars are prepared by `work`; None for a part that is cut."""
    return MARKS[work].get(product) or NAMES.get(product)
