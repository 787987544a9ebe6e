"""Two plain kits to change in tests, and what their refusals say."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from layout.drawing.metrics import FontMetrics
from layout.errors import FieldErrors
from layout.kit.kit import read_kit

METRICS = FontMetrics(
    {
        chr(code): 0.5
        for code in (*range(0x20, 0x7F), *range(0xA1, 0x180), *range(0x370, 0x530), *range(0x5D0, 0x5EB), 0x301)
    },
    0.7,
    1.0,
    -0.3,
)
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
LEFT_OUT = object()


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
