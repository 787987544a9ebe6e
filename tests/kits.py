"""Kits from plain values, for the tests of everything that is drawn: one frame, changed key by key."""

from __future__ import annotations

import copy
from functools import cache

from layout.drawing.metrics import FontMetrics
from layout.drawing.sheet import Part
from layout.kit.kit import Kit, read_kit
from layout.paper.choice import Laying
from layout.paper.first_sheet import with_first_sheet
from layout.paper.sheets import Printed, lay, printed
from layout.parts.strip import strip
from layout.plan import Plan, plan
from layout.products import PRODUCTS, laid, made_by_default
from layout.warps.warp import End
from templates_gen.files.outputs import Outputs
from templates_gen.inputs import kit_file as kitfile
from templates_gen.lettering import fonts

_VALUES: dict[str, object] = {
    "version": 1,
    "name": "Heron frame",
    "yarns": {"warp": "seine twine 12/6", "weft": "three strands of wool"},
    "sett": {"given": "2.5 ends/cm"},
    "frame": {
        "ends": "round bars",
        "bar_diameter": "16 mm",
        "outer_width": "40 cm",
        "outer_height": "55 cm",
        "side_width": "25 mm",
        "margin": "15 mm",
    },
    "weaving": {"width": "20 cm", "height": "34 cm"},
    "room": {"heading": "0 mm", "hand": "5 mm", "slope": 1},  # so that the thickest bars leave room for that height
    "paper": {},
}

FLAT: dict[str, object] = {
    "frame.ends": "flat ends",
    "frame.bar_diameter": None,
    "frame.thickness": "18 mm",
    "weaving.height": "30 cm",
}
"""Flat ends instead of round bars; add an edge radius if they are to be rounded."""

NOTCHED: dict[str, object] = {
    "frame.ends": "notched ends",
    "frame.bar_diameter": None,
    "frame.thickness": "12 mm",
    "frame.notch_width": "1.2 mm",
    "frame.notch_depth": "6 mm",
}
"""Notched ends, still to be notched; with a notch_density they are there already."""

PEGGED: dict[str, object] = {
    "frame.ends": "pegged ends",
    "frame.bar_diameter": None,
    "frame.thickness": "15 mm",
    "frame.peg_diameter": "2.5 mm",
    "frame.row_distance": "12 mm",
    "frame.edge_distance": "10 mm",
}
"""Pegged ends."""

CROSSED: dict[str, object] = {"weaving.winding": "figure eight"}
"""Wound in a figure eight, on round bars or flat ends."""

NAILS: dict[str, object] = {
    "frame.ends": "nails",
    "frame.bar_diameter": None,
    "frame.thickness": "15 mm",
    "frame.nail_diameter": "1.8 mm",
    "frame.edge_distance": "10 mm",
}
"""A row of nails at each frame end."""

ROD: dict[str, object] = {"weaving.near_hold": "loose rod"}
"""From a loose rod, on round bars or flat ends."""

TRAVEL: dict[str, object] = {"frame.tensioner": "rods", "frame.travel": "20 mm"}
"""A height that can be adjusted, on any kind of frame."""

INCHES: dict[str, object] = {"sett.given": "6 epi", "weaving.width": "8 in", "frame.outer_width": "16 in"}
"""Marks in inches."""

KINDS: dict[str, dict[str, object]] = {
    "round bars": {},
    "round bars, odd": {"weaving.tie_off": "far end", "weaving.doubled_selvedges": 1},
    "flat ends": FLAT,
    "figure eight": CROSSED,
    "figure eight, flat ends, odd": FLAT | CROSSED | {"weaving.tie_off": "far end", "weaving.first_pass": "back"},
    "loose rod": ROD,
    "loose rod, flat ends, doubled": FLAT | ROD | {"weaving.doubled_warp": True, "weaving.height": "70 cm"},
    "notched ends": NOTCHED,
    "notched already, every second": NOTCHED | {"frame.notch_density": "5 per cm"},
    "notched already, every one": NOTCHED | {"frame.notch_density": "2.5 per cm"},
    "notched already, two ends": NOTCHED | {"frame.notch_density": "1.25 per cm"},
    "pegged ends": PEGGED,
    "pegged ends, odd": PEGGED | {"weaving.tie_off": "far end", "weaving.doubled_warp": True},
    "round bars on rods": dict(TRAVEL),
    "figure eight on wedges": CROSSED | TRAVEL | {"frame.tensioner": "wedges"},
    "nails": NAILS,
    "nails, odd": NAILS | {"frame.nail_length": "12 mm", "weaving.tie_off": "far end", "weaving.start": "right"},
}
"""One kit of every kind of frame, and of every way in which it may be used."""


@cache
def font_metrics() -> FontMetrics:
    """The measures of the print font."""
    return fonts.metrics()


def kit_of(changes: dict[str, object] | None = None) -> Kit:
    """The kit with `changes` by dotted key; a value of None takes the key out."""
    values = copy.deepcopy(_VALUES)
    for key, value in (changes or {}).items():
        table, _, leaf = key.rpartition(".")
        place = values.setdefault(table, {}) if table else values
        assert isinstance(place, dict)
        if value is None:
            place.pop(leaf, None)
        else:
            place[leaf] = value
    return read_kit(values, font_metrics())


def plan_of(changes: dict[str, object] | None = None) -> Plan:
    """The plan of such a kit."""
    return plan(kit_of(changes))


def strip_of(changes: dict[str, object] | None = None, end: End = "near", *, low: bool = False) -> Part:
    """One marking strip of such a kit."""
    return strip(plan_of(changes), end, font_metrics(), low=low)


def laying_of(planned: Plan, name: str) -> Laying:
    """How the one part of that product lies on the plan's paper."""
    metrics = font_metrics()
    return lay(planned, PRODUCTS[name].builds(planned, metrics)[0], metrics)


def layings_of(planned: Plan) -> list[Laying]:
    """How every part of a plan lies on its paper, once: strips as they come together."""
    names = [name for name in made_by_default(planned) if name not in ("strip-near", "strip-far")]
    return [laying for name in names for laying in laid(name, planned, font_metrics())]


def sheets_of(planned: Plan) -> tuple[Printed, ...]:
    """Every printed sheet of a plan."""
    metrics = font_metrics()
    return printed(planned, with_first_sheet(planned, layings_of(planned), metrics), metrics)


FILES = Outputs(plan_of(), font_metrics()).files
"""What is made of this kit, in order (`templates_gen.verify.whole` tells once more what must be there)."""

DEMO_FILES = Outputs(plan(kitfile.demo()), font_metrics()).files
"""What is made of the demo kit, which has a weaving grid too."""


def parts_of(outputs: Outputs) -> dict[str, tuple[str, ...]]:
    """The parts in every file, by the file's name."""
    return {file: outputs.output(file).parts for file in outputs.files}
