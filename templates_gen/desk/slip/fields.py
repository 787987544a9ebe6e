"""The fields of the slip: every input of a kit, a stock and a run by its name, with `[]` for each entry of a list."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from layout.box.shop_inputs import SHOP, SHOP_TABLES
from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.input import Input
from layout.kit.inputs import BY_KEY, INPUTS
from layout.kit.kinds.all_keys import END_KEYS
from layout.kit.range_values import COPIES
from layout.messages.roles import KitHelp

STOCK_PREFIX, RUN_PREFIX = "stock/", "run/"
OF_A_RUN = (COPIES.key, *SHOP_TABLES)
"""What stands at the top of a kit file and is of the run."""

READINGS, HOW, OVER = "sett.readings", "sett.readings[].how", "sett.readings[].over"
WAYS = ("window", "measure")
"""A reading has one of two keys; on the slip it has a way and a length."""

_NUMBER = re.compile(r"\[\d+\]")
_WINDOW = BY_KEY["sett.readings[].window"]


def _all() -> Mapping[str, Input]:
    specs = {
        spec.key: spec for spec in INPUTS if spec.key.rpartition(".")[2] not in WAYS or spec.table != f"{READINGS}[]"
    }
    at = list(specs)
    place = at.index("sett.readings[].pairs") + 1
    reading = {
        HOW: Input(HOW, "choice", KitHelp.SETT_READINGS_WINDOW, '"window"', default=WAYS[0], choices=WAYS),
        OVER: replace(_WINDOW, key=OVER, required=True),
    }
    kit = [(key, specs[key]) for key in at]
    kit[place:place] = reading.items()
    stock = [(f"{STOCK_PREFIX}{spec.key}", _of_stock(spec)) for spec in STOCK.inputs]
    run = [(f"{RUN_PREFIX}{spec.key}", spec) for spec in (COPIES, *SHOP.inputs)]
    return dict([*kit, *stock, *run])


def _of_stock(spec: Input) -> Input:
    """The input of a stock, where an empty choice is that of the built-in stock."""
    return replace(spec, default=None) if spec.kind in ("choice", "flag") else spec


SPECS: Mapping[str, Input] = _all()
"""Every input by the name of its field, in the order of the files."""

LISTS = tuple(name for name, spec in SPECS.items() if spec.kind == "tables")
"""The lists of tables."""

NOT_TYPED = ("version", f"{STOCK_PREFIX}version")
"""What is no line of the slip: the version of a file, which is written as it must be."""

_OF_KINDS = {
    kind: {spec.key for spec in END_KEYS[kind].inputs} | {f"frame.{END_KEYS[kind].strength}"} for kind in END_KEYS
}
_OF_ANY_KIND = frozenset(key for keys in _OF_KINDS.values() for key in keys)
_OF_WOUND = frozenset({"weaving.winding", "weaving.near_hold", "weaving.rod_diameter"})
_ROD = "weaving.rod_diameter"


def pattern_of(name: str) -> str:
    """The name of a field with `[]` for its numbers."""
    return _NUMBER.sub("[]", name) if "[" in name else name


def belongs(name: str, kind: str, hold: str) -> bool:
    """Whether a field is one of a frame with ends of this `kind`, where the warp has this `hold` at the near end."""
    if kind not in _OF_KINDS:
        return True
    if name in _OF_ANY_KIND and name not in _OF_KINDS[kind]:
        return False
    if name in _OF_WOUND and END_KEYS[kind].make.kind != "wound":
        return False
    return name != _ROD or hold == "loose rod"
