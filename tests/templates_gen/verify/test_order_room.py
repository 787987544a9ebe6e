"""Kits for an order whose number leaves little room on a strip: they are made, and their own proof passes them."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from typing import Any

import pytest
from kits import font_metrics
from pages import ROOT

import templates_gen
from layout.kit.kit import read_kit

KITS: Mapping[str, tuple[str, Mapping[str, Mapping[str, Any]]]] = {
    "a middle piece that shares its ends with both neighbours": (
        "maple-frame",
        {"paper": {"size": "148 x 210 mm", "language": "fr"}, "order": {"number": "a b c d e f"}},
    ),
    "pieces of a strip for a loose rod": (
        "wren-frame",
        {
            "paper": {"size": "148 x 210 mm", "language": "es"},
            "weaving": {"width": "297 mm"},
            "order": {"number": "#A-77"},
        },
    ),
    "a name that is short for the sake of the order": (
        "hazel-frame",
        {"paper": {"size": "letter", "language": "de"}, "order": {"number": "#A-77"}},
    ),
}


@pytest.mark.parametrize("what", KITS)
def test_a_strip_with_little_room(what: str) -> None:
    """Whatever had to give way to the order, nothing is wrong with the strips."""
    name, changes = KITS[what]
    values = tomllib.loads((ROOT / "tests" / "sample_kits" / f"{name}.toml").read_text("utf-8"))
    for table, change in changes.items():
        values[table] = {**values.get(table, {}), **change}
    assert templates_gen.sheet(read_kit(values, font_metrics()), "strips.pdf").startswith(b"%PDF")
