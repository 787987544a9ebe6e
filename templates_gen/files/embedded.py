"""What a file carries of itself: its name, its kit, and the stock that its parts are cut from."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from layout.box.shop_values import read_shop
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import Printer
from layout.kit.box import CUT
from layout.kit.kit import Kit, read_kit
from layout.kit.merging import Values, leaves_of
from layout.kit.range_values import Origin
from templates_gen.document import ReadError
from templates_gen.files.kept import kept_reading
from templates_gen.inputs.printer_values import read_printer
from templates_gen.inputs.range_file import RangeKit
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Carried


class Embedded(NamedTuple):
    """The `file` is named as it was made; `stock` is None where nothing is cut.

    `without` names what the box holds not, since a stock refuses it; `printer` is the one that it is corrected for.
    """

    file: str
    kit: Kit
    stock: Stock | None
    without: frozenset[str] = frozenset()
    printer: Printer | None = None


class EmbeddedRun(NamedTuple):
    """The same of a file that is of a whole run: the `name` of the range, its kits, how many boxes, and its shops.

    `shared` is what the range says above its kits, where the file carries where values come from.
    `without` names for each kit what its box holds not.
    """

    file: str
    name: str
    kits: tuple[RangeKit, ...]
    stock: Stock | None
    shared: Values
    without: tuple[frozenset[str], ...]
    printer: Printer | None = None


def embedded_run(inputs: str, metrics: FontMetrics) -> EmbeddedRun:
    """What the JSON text in a file of a run says; ReadError if it says none, FieldErrors if it cannot be used."""
    try:
        found = json.loads(inputs)
        file, run, stock = found["file"], found["run"], found.get("stock")
        name, kits, copies = run["name"], list(run["kits"]), list(run["copies"])
        without = list(run.get("without", [[]] * len(kits)))
        shops = list(found.get("shop", [{"class": found["class"]} if "class" in found else {}] * len(kits)))
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error
    texts = isinstance(file, str) and isinstance(name, str) and all(type(each) is int for each in copies)
    tables = all(isinstance(each, dict) for each in (*kits, *shops)) and isinstance(stock, dict | None)
    if not texts or not tables or not len(kits) == len(copies) == len(shops) == len(without) or not kits:
        raise ReadError(message(Carried.NO_INPUTS))
    shared, values = _sources(found.get("range"), len(kits))
    read = [
        RangeKit(read_kit(kit, metrics), number, place, *own, shop=read_shop(shop, metrics))
        for place, (kit, number, shop, own) in enumerate(zip(kits, copies, shops, values, strict=True), 1)
    ]
    carried = None if stock is None else read_stock(stock, metrics)
    printer = _printer(found.get("printer"), metrics)
    return EmbeddedRun(file, name, tuple(read), carried, shared, tuple(map(_without, without)), printer)


def _sources(source: Any, kits: int) -> tuple[Values, Sequence[tuple[Values, Mapping[str, Origin]]]]:
    """What the range shares, and of each kit its plain values and where each comes from; nothing where none is said."""
    if source is None:
        return {}, [({}, {})] * kits
    try:
        shared, each = dict(source["shared"]), [(dict(kit["values"]), set(kit["own"])) for kit in source["kits"]]
    except (ValueError, TypeError, KeyError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error
    if len(each) != kits:
        raise ReadError(message(Carried.NO_INPUTS))
    return shared, [
        (values, {key: Origin("kit" if key in own else "range", key) for key in leaves_of(values)})
        for values, own in each
    ]


def embedded_inputs(inputs: str, metrics: FontMetrics) -> Embedded:
    """What the JSON text in a file says; ReadError if it says none, FieldErrors if it cannot be used."""
    try:
        found = json.loads(inputs)
        file, values, stock = found["file"], found["gauge" if "gauge" in found else "kit"], found.get("stock")
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error
    if not isinstance(file, str) or not isinstance(values, dict) or not isinstance(stock, dict | None):
        raise ReadError(message(Carried.NO_INPUTS))
    if "gauge" in found:
        raise ReadError(message(Carried.NO_KIT))
    without = _without(found.get("without", []))
    kit = kept_reading("kit", values, metrics, read_kit)
    carried = None if stock is None else kept_reading("stock", stock, metrics, read_stock)
    return Embedded(file, kit, carried, without, _printer(found.get("printer"), metrics))


def _printer(found: object, metrics: FontMetrics) -> Printer | None:
    """The printer that a file names, if any; ReadError where it is none."""
    if found is None:
        return None
    if not isinstance(found, dict):
        raise ReadError(message(Carried.NO_INPUTS))
    return kept_reading("printer", found, metrics, read_printer)


def _without(found: object) -> frozenset[str]:
    """Names of cut parts; ReadError where they are none."""
    if not isinstance(found, list) or not all(name in CUT for name in found):
        raise ReadError(message(Carried.NO_INPUTS))
    return frozenset(found)
