"""Two plain kits to change in tests, and what their refusals say."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from layout.drawing.metrics import FontMetrics
from layout.kit.kit import read_kit
from layout.values.errors import FieldErrors

_ADVANCES = {
    chr(code): 0.5
    for code in (*range(0x20, 0x7F), *range(0xA1, 0x180), *range(0x370, 0x530), *range(0x5D0, 0x5EB), 0x301)
}
METRICS = FontMetrics(_ADVANCES, 0.7, 1.0, -0.3, _ADVANCES)
"""A made-up font of Latin, Greek, Cyrillic and Hebrew letters and one loose accent."""

ROUND: dict[str, Any] = {
    "version": 1,
    "name": "Alder frame",
    "yarns": {"warp": "cotton cord", "weft": "wool"},
    "sett": {"readings": [{"pairs": 17, "window": "5 cm"}]},
    "frame": {
        "ends": "round bars",
        "bar_diameter": "15 mm",
        "outer_width": "40 cm",
        "outer_height": "55 cm",
        "side_width": "30 mm",
    },
    "weaving": {"height": "30 cm"},
}
FLAT: dict[str, Any] = ROUND | {
    "frame": {
        "ends": "flat ends",
        "thickness": "18 mm",
        "edge_radius": "3 mm",
        "outer_width": "40 cm",
        "outer_height": "55 cm",
        "side_width": "30 mm",
    }
}
_SIZES = {"outer_width": "40 cm", "outer_height": "55 cm", "side_width": "30 mm"}
NOTCHED: dict[str, Any] = ROUND | {
    "frame": {
        "ends": "notched ends",
        "thickness": "18 mm",
        "notch_width": "1 mm",
        "notch_depth": "6 mm",
        **_SIZES,
    }
}
PEGGED: dict[str, Any] = ROUND | {
    "frame": {
        "ends": "pegged ends",
        "thickness": "18 mm",
        "peg_diameter": "2 mm",
        "row_distance": "12 mm",
        "edge_distance": "10 mm",
        **_SIZES,
    }
}
NAILS: dict[str, Any] = ROUND | {
    "frame": {
        "ends": "nails",
        "thickness": "18 mm",
        "nail_diameter": "1 mm",
        "nail_length": "8 mm",
        "edge_distance": "10 mm",
        **_SIZES,
    }
}
LEFT_OUT = object()

BESIDE: dict[str, dict[str, Any]] = {
    "box.also[]": {"name": "beater"},
    "sett.readings[]": {"pairs": 17, "window": "5 cm"},
    "weft.picks": {"number": 44, "over": "5 cm"},
    "weft.beads": {"number": 22, "over": "5 cm"},
    "weft.pick": {"straight": "118 mm", "woven": "100 mm"},
    "weaving.washed": {"before": "200 mm", "after": "194 mm"},
    "frame.dip": {"load": "20 g", "length": "400 mm", "depth": "5 mm"},
    "frame.pluck": {"hertz": 125, "length": "400 mm"},
    "weft.colours[]": {"name": "madder", "share": 100},
    "weft.sample": {"grams": 9, "width": "10 cm", "height": "12 cm"},
    **{f"{table}.wrap": {"turns": 11, "window": "2 cm"} for table in ("warp", "weft", "weft.strands[]")},
}
"""What a small table needs beside any one of its keys."""
_YARN: dict[str, dict[str, Any]] = {
    "count": {"system": "ne"},
    "system": {"count": 8},
    "plies": {"count": 8, "system": "ne"},
    "order": {"count": "8/2", "system": "ne"},
    "grams": {"length": "120 m"},
    "length": {"grams": 50},
    "weighed": {"grams": 50, "length": "120 m"},
}


def placed(key: str, value: object) -> tuple[dict[str, Any], str]:
    """A kit that is right but for `value` at `key` of the table of inputs, and the key where that stands in it."""
    base = with_ends_for(key)
    values = copy.deepcopy(changed(base, sett={}) if key == "sett.given" else base)
    place, at = values, ""
    *tables, leaf = key.split(".")
    for depth, table in enumerate(tables, 1):
        name, path = table.removesuffix("[]"), ".".join(tables[:depth])
        fresh = copy.deepcopy(BESIDE.get(path, {}))
        at = f"{at}.{name}".removeprefix(".")
        if table.endswith("[]"):
            place[name], at = [fresh], f"{at}[1]"
            place = fresh
        else:
            place = place.setdefault(name, fresh)
    if leaf == "measure":
        place.pop("window")
    if tables and "wrap" not in tables and (tables[0] == "warp" or "strands[]" in tables):
        place |= _YARN.get(leaf, {})
    if key.startswith(("frame.dip.", "frame.pluck.")):  # a pull is found from a thread whose weight is known
        values["warp"] = {"count": 300, "system": "tex"}
    if key == "frame.travel":
        place["tensioner"] = "rods"
    place[leaf] = value
    return values, f"{at}.{leaf}".removeprefix(".")


def with_ends_for(key: str) -> dict[str, Any]:
    """The plain kit whose frame ends `key` belongs to, the one on round bars for a key of no frame end."""
    leaf = key.removeprefix("frame.")
    own = {"edge_radius": FLAT, "thickness": FLAT, "end_width": FLAT, "notch_density": NOTCHED}
    own |= {"weaving.rod_diameter": changed(ROUND, weaving__near_hold="loose rod")}
    own |= {leaf: kit for kit in (NOTCHED, PEGGED, NAILS) for leaf in kit["frame"] if leaf not in own | ROUND["frame"]}
    return own.get(leaf, ROUND)


def changed(base: dict[str, Any], **changes: object) -> dict[str, Any]:
    """`base` with "table__key" set to new values; LEFT_OUT takes a key away."""
    values = copy.deepcopy(base)
    for dotted, value in changes.items():
        *tables, leaf = dotted.split("__")
        place = values
        for table in tables:
            place = place.setdefault(table, {})
        if value is LEFT_OUT:
            place.pop(leaf)
        else:
            place[leaf] = value
    return values


def refusals(values: dict[str, Any]) -> list[tuple[str, str]]:
    """What is refused in `values`: each key with its sentence."""
    with pytest.raises(FieldErrors) as caught:
        read_kit(values, METRICS)
    return [(error.field, str(error)) for error in caught.value.errors]


def only_refusal(values: dict[str, Any], key: str) -> str:
    """The sentence of the one refusal there is, which must be about `key`."""
    ((field, sentence),) = refusals(values)
    assert field == key
    assert sentence.startswith(f"{key}: needs ")
    assert "; for example " in sentence
    assert len(sentence.splitlines()) == 1
    return sentence
