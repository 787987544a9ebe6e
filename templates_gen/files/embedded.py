"""What a file carries of itself: its name, its kit, and the stock that its parts are cut from."""

from __future__ import annotations

import json
from typing import NamedTuple

from layout.box.shop_values import read_shop
from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from layout.drawing.metrics import FontMetrics
from layout.kit.kit import Kit, read_kit
from templates_gen.document import ReadError
from templates_gen.files.kept import kept_reading
from templates_gen.inputs.range_file import RangeKit
from templates_gen.messages.language import message
from templates_gen.messages.roles.files import Carried


class Embedded(NamedTuple):
    """The `file` is named as it was made; `stock` is None where nothing is cut."""

    file: str
    kit: Kit
    stock: Stock | None


class EmbeddedRun(NamedTuple):
    """The same of a file that is of a whole run: the `name` of the range, its kits, how many boxes, and its shops."""

    file: str
    name: str
    kits: tuple[RangeKit, ...]
    stock: Stock | None


def embedded_run(inputs: str, metrics: FontMetrics) -> EmbeddedRun:
    """What the JSON text in a file of a run says; ReadError if it says none, FieldErrors if it cannot be used."""
    try:
        found = json.loads(inputs)
        file, run, stock = found["file"], found["run"], found.get("stock")
        name, kits, copies = run["name"], list(run["kits"]), list(run["copies"])
        shops = list(found.get("shop", [{"class": found["class"]} if "class" in found else {}] * len(kits)))
    except (ValueError, TypeError, KeyError, AttributeError, RecursionError) as error:
        raise ReadError(message(Carried.NO_INPUTS)) from error
    texts = isinstance(file, str) and isinstance(name, str) and all(type(each) is int for each in copies)
    tables = all(isinstance(each, dict) for each in (*kits, *shops)) and isinstance(stock, dict | None)
    if not texts or not tables or not len(kits) == len(copies) == len(shops) or not kits:
        raise ReadError(message(Carried.NO_INPUTS))
    read = [
        RangeKit(read_kit(kit, metrics), number, place, shop=read_shop(shop, metrics))
        for place, (kit, number, shop) in enumerate(zip(kits, copies, shops, strict=True), 1)
    ]
    return EmbeddedRun(file, name, tuple(read), None if stock is None else read_stock(stock, metrics))


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
    kit = kept_reading("kit", values, metrics, read_kit)
    return Embedded(file, kit, None if stock is None else kept_reading("stock", stock, metrics, read_stock))
