"""Limits stand at the kit alone: at each of them a kit is planned, or refused by a key that kits have."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

import pytest
from kits import FLAT, NAILS, NOTCHED, PEGGED, kit_of

from layout.kit.input import Input
from layout.kit.inputs import BY_KEY, INPUTS
from layout.kit.lookup import KIT
from layout.plan import plan
from layout.values.errors import FieldError, FieldErrors
from layout.values.units import exact_length

YARNS: dict[str, object] = {
    "warp": {"count": 8, "system": "ne", "plies": 2, "fibre": "cotton", "wrap": {"turns": 11, "window": "2 cm"}},
    "weft": {
        "strands": [{"number": 2, "grams": 50, "length": "160 m", "fibre": "wool"}],
        "wrap": {"turns": 5, "window": "2 cm"},
    },
    "frame.material": "beech",
}
BASES: dict[str, dict[str, object]] = {
    "round bars": {},
    "flat ends": FLAT,
    "notched ends": NOTCHED,
    "pegged ends": PEGGED,
    "nails": NAILS,
}


def ends_of(spec: Input) -> Iterator[object]:
    """The least and the most that an input may be, as they are written."""
    if spec.low is not None and spec.high is not None:
        yield from (exact_length(each) for each in (spec.low, spec.high))
    elif spec.kind in ("whole", "amount"):
        yield from (int(each) if each.denominator == 1 else float(each) for each in (spec.least, spec.most))
    elif spec.kind == "share":
        yield from (0, "99.9 %")
    elif spec.kind == "force":
        yield from ("0.01 N", "100 N")


def nested(changes: dict[str, object], key: str, value: object) -> dict[str, object]:
    """Changes with one more key; below the first table it goes into a table of its own."""
    table, *rest = key.split(".")
    if len(rest) == 1 and table not in YARNS:
        return changes | {key: value}
    place = dict(changes.get(table) or {})  # type: ignore[call-overload]
    inner = place
    for name in rest[:-1]:
        inner[name] = dict(inner.get(name) or {})
        inner = inner[name]
    inner[rest[-1]] = value
    return changes | {table: place}


LIMITED = [
    spec for spec in INPUTS if "[]" not in spec.key and any(True for _ in ends_of(spec)) and spec.key != "sett.given"
]


@pytest.mark.parametrize("base", BASES)
@pytest.mark.parametrize("spec", LIMITED, ids=lambda spec: spec.key)
def test_a_kit_at_a_limit_is_planned_or_refused_by_its_own_keys(spec: Input, base: str) -> None:
    """No refusal names what a kit does not have, and nothing else goes wrong."""
    for value in ends_of(spec):
        try:
            plan(kit_of(nested(BASES[base] | YARNS, spec.key, value)))
        except FieldErrors as errors:
            refused = [error.field for error in errors.errors]
        except FieldError as error:
            refused = [error.field]
        else:
            refused = []
        known = {re.sub(r"\[\d+\]", "[]", field) for field in refused}
        assert known <= {*BY_KEY, *KIT.tables}, f"{spec.key} = {value}"


def test_every_table_with_limits_is_tried() -> None:
    """Lengths, numbers, shares and forces of every table."""
    assert {spec.key.split(".")[0] for spec in LIMITED} >= {"sett", "frame", "weaving", "room", "warp", "weft"}
    assert len(LIMITED) > 30
    assert Fraction(1, 2) in [spec.low.mm for spec in LIMITED if spec.low]
