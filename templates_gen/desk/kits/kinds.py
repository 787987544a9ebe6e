"""Which kind of file it is: a kit, a range or a stock file; read as the command line would."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, NamedTuple

from layout.cutting.stock.stock_inputs import STOCK
from layout.kit.inputs import INPUTS
from templates_gen.desk.kits.opened import Kind, Opened, stamp_of
from templates_gen.desk.kits.values import KITS, Values, kits_in, whole_kit
from templates_gen.desk.slip.typed import typed_of
from templates_gen.inputs.kit_file import FILES as KIT_FILES
from templates_gen.inputs.stock_file import FILES as STOCK_FILES

STOCK_PREFIX = "stock/"
_BOTH = ("version", "name", "scale")
_OF_STOCK = {spec.key.partition(".")[0] for spec in STOCK.inputs} - {*_BOTH}
_OF_KIT = {spec.key.partition(".")[0] for spec in INPUTS} - {*_BOTH}


class Parsed(NamedTuple):
    """The values and the text of a file, and what kind it is; `kind` is None for a TOML file of another program."""

    kind: Kind | None
    values: dict[str, Any]
    text: str


def parsed(data: bytes, named: str) -> Parsed:
    """What the bytes of a file say; LayoutError, with the sentence of the command line, where they cannot be read."""
    values, text = KIT_FILES.parsed(data, named)
    kind = kind_of(values)
    if kind == "stock":
        values, text = STOCK_FILES.parsed(data, named)
    mark = "\ufeff" if data.startswith(b"\xef\xbb\xbf") else ""
    return Parsed(kind, values, mark + text)


def kind_of(values: Mapping[str, object]) -> Kind | None:
    """The kind of file that has most of these keys."""
    if KITS in values:
        return "range"
    stock, kit = len(_OF_STOCK & values.keys()), len(_OF_KIT & values.keys())
    return ("stock" if stock > kit else "kit") if stock or kit else None


def opened_all(found: Parsed, data: bytes, file: str, name: str) -> tuple[Opened, ...]:
    """Everything that a file holds: its one kit or stock, or each kit of a range."""
    stamp = stamp_of(data)
    if found.kind != "range":
        kind: Kind = found.kind or "kit"
        return (Opened(kind, typed_in(found.values, kind, None), file, name, found.text, stamp),)
    count = len(kits_in(found.values))
    return tuple(
        Opened("range", typed_in(found.values, "range", number), file, name, found.text, stamp, number, count)
        for number in range(1, count + 1)
    )


def typed_in(values: Values, kind: Kind, number: int | None) -> dict[str, str]:
    """What the lines of the slip say of a file, or of the kit of that number in it."""
    if kind == "stock":
        return typed_of(values, STOCK_PREFIX)
    return typed_of(whole_kit(values, number) if number else values)
