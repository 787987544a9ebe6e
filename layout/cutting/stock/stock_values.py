"""Stock read from plain values, as a stock file gives them, and written back as them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from fractions import Fraction
from math import floor
from typing import Any

from layout.cutting.stock.drawn_scale import LARGEST_DRAWN, drawn_page
from layout.cutting.stock.stock import OPERATIONS, Operation, Stock
from layout.cutting.stock.stock_inputs import STOCK
from layout.drawing.correction import Scale
from layout.drawing.metrics import FontMetrics
from layout.kit.fields import example_of
from layout.kit.inputs import VERSION
from layout.kit.walk import Walk
from layout.messages.roles import StockNeed
from layout.values.errors import FieldError, FieldErrors, leave_out, shown
from layout.values.units import Length, exact_length, say_length, say_number

Got = Mapping[str, Any]
_RUN = OPERATIONS[:-1]
_PRICES = ("sheet", "minute")
_MAY_BE_UNKNOWN = ("cutting.kerf_uncertainty", "trial.kerf", "trial.slot")
_SHARES = ("x", "y", "skew", "uncertainty")
_PLACES = 6  # decimals of a per cent that are kept: over 600 mm less than a hundredth of a micrometre


def read_stock(values: Mapping[str, object], metrics: FontMetrics) -> Stock:
    """The stock that nested plain values say. Raises FieldErrors with every refusal at once, each with its key."""
    walk = Walk(metrics, STOCK)
    walk.over(values)
    errors = [*walk.errors, *_kerf_errors(walk.got), *_colour_errors(walk.got), *_size_errors(walk.got)]
    if errors:
        raise FieldErrors(errors)
    return _stock_of(walk.got)


def _kerf_errors(got: Got) -> Iterator[FieldError]:
    keys = [f"cutting.{key}" for key in ("kerf", "kerf_x", "kerf_y")]
    if any(key not in got for key in keys):
        return
    kerf, kerf_x, kerf_y = (got[key] for key in keys)
    if kerf and (kerf_x or kerf_y):
        given = keys[1] if kerf_x else keys[2]
        instead = leave_out(given.rpartition(".")[2])
        yield FieldError(given, StockNeed.KERF_TWICE, say_length(kerf_x or kerf_y), instead)
    elif (kerf_x is None) != (kerf_y is None):
        missing, other = (keys[1], keys[2]) if kerf_x is None else (keys[2], keys[1])
        yield FieldError(missing, StockNeed.OTHER_KERF, shown(None), _example(missing), other=other)
    elif not kerf and not kerf_x:
        yield FieldError(keys[0], StockNeed.NO_KERF, shown(None), _example(keys[0]))


def _colour_errors(got: Got) -> Iterator[FieldError]:
    """Two operations of one colour would be run alike."""
    seen: dict[str, str] = {}
    for key in (f"colours.{each}" for each in OPERATIONS):
        colour = got.get(key)
        if colour is None:
            continue
        if colour in seen:
            example = f'{key.rpartition(".")[2]} = "{_free(got, key)}"'
            yield FieldError(key, StockNeed.SAME_COLOUR, colour, example, other=seen[colour])
        seen.setdefault(colour, key)


def _free(got: Got, key: str) -> str:
    """A default colour that no operation has, that of `key` itself if it can be."""
    taken = {got.get(f"colours.{each}") for each in OPERATIONS}
    usual = (STOCK.by_key[each].default for each in (key, *(f"colours.{each}" for each in OPERATIONS)))
    return next(str(colour) for colour in usual if colour not in taken)


def _example(key: str) -> str:
    return example_of(STOCK.by_key[key])


def _mm(length: Length) -> float:
    return float(length.mm)


def _stock_of(got: Got) -> Stock:
    kerf = got["cutting.kerf"]
    uncertainty, trial_kerf, trial_slot = (got[key] for key in _MAY_BE_UNKNOWN)
    return Stock(
        name=got["name"],
        material=got["material"],
        thickness=_mm(got["thickness"]),
        width=_mm(got["sheet.width"]),
        height=_mm(got["sheet.height"]),
        grain=got["sheet.grain"],
        kerf_x=_mm(kerf or got["cutting.kerf_x"]),
        kerf_y=_mm(kerf or got["cutting.kerf_y"]),
        kerf_drawn=got["cutting.kerf_drawn"],
        ease=_mm(got["cutting.ease"]),
        operations={each: Operation(got[f"colours.{each}"], _mm(got[f"widths.{each}"])) for each in OPERATIONS},
        speeds=_known(got, "speeds", _RUN),
        prices=_known(got, "prices", _PRICES),
        kerf_uncertainty=None if uncertainty is None else _mm(uncertainty),
        bending=got["bending"],
        too_fine=got["cutting.too_fine"],
        trial_kerf=None if trial_kerf is None else _mm(trial_kerf),
        trial_slot=None if trial_slot is None else _mm(trial_slot),
        scale=_scale(got),
        scale_uncertainty=float(round(got["scale.uncertainty"] or Fraction(), _PLACES + 2)) or None,
    )


def _scale(got: Got) -> Scale:
    x, y, skew = (round(got[f"scale.{key}"] or Fraction(), _PLACES + 2) for key in _SHARES[:3])
    return Scale(float(1 + x), float(1 + y), float(skew))


def _size_errors(got: Got) -> Iterator[FieldError]:
    """A sheet that would be drawn larger than files may be, since the cutter makes all of it smaller."""
    if any(key not in got for key in ("sheet.width", "sheet.height", *(f"scale.{key}" for key in _SHARES))):
        return
    width, height, scale = _mm(got["sheet.width"]), _mm(got["sheet.height"]), _scale(got)
    drawn = drawn_page(width, height, scale)
    room = ((LARGEST_DRAWN - drawn.width) * scale.x + width, (LARGEST_DRAWN - drawn.height) * scale.y + height)
    for leaf, size, most in zip(("width", "height"), (width, height), room, strict=True):
        if size > most:
            example = f'{leaf} = "{floor(most)} mm"'
            yield FieldError(f"sheet.{leaf}", StockNeed.DRAWN_LARGER, f"{size:g} mm", example, most=floor(most))


def _known(got: Got, table: str, keys: tuple[str, ...]) -> dict[str, float]:
    return {key: got[f"{table}.{key}"] for key in keys if got[f"{table}.{key}"] is not None}


def stock_values(stock: Stock) -> dict[str, object]:
    """Plain nested values that JSON and TOML can hold and that `read_stock` reads as the very same stock."""
    cutting: dict[str, object] = {
        "kerf_x": _words(stock.kerf_x),
        "kerf_y": _words(stock.kerf_y),
        "kerf_drawn": stock.kerf_drawn,
        "ease": _words(stock.ease),
        "too_fine": stock.too_fine,
    }
    if stock.kerf_uncertainty is not None:
        cutting["kerf_uncertainty"] = _words(stock.kerf_uncertainty)
    trial = {key: _words(mm) for key, mm in (("kerf", stock.trial_kerf), ("slot", stock.trial_slot)) if mm is not None}
    values: dict[str, object] = {
        "version": VERSION,
        "name": stock.name,
        "material": stock.material,
        "thickness": _words(stock.thickness),
    }
    if stock.bending is not None:
        values["bending"] = stock.bending
    return values | {
        "sheet": {"width": _words(stock.width), "height": _words(stock.height), "grain": stock.grain},
        "cutting": cutting,
        **({"trial": trial} if trial else {}),
        **({"scale": scale} if (scale := _scale_values(stock)) else {}),
        "colours": {each: stock.operations[each].colour for each in OPERATIONS},
        "widths": {each: _words(stock.operations[each].width) for each in OPERATIONS},
        "speeds": dict(stock.speeds),
        "prices": dict(stock.prices),
    }


def _scale_values(stock: Stock) -> dict[str, str]:
    """The shares of a scale that are not nothing, as a stock file says them."""
    off = (stock.scale.x - 1, stock.scale.y - 1, stock.scale.skew, stock.scale_uncertainty or 0.0)
    return {key: per_cent(share) for key, share in zip(_SHARES, off, strict=True) if round(share, _PLACES + 2)}


def per_cent(share: float | Fraction) -> str:
    """A share as a stock file says it, such as "0.21 %"."""
    return f"{say_number(100 * Fraction(share).limit_denominator(10**12), _PLACES)} %"


def _words(mm: float) -> str:
    """A length as text that reads back as the very same float."""
    return exact_length(Length(Fraction(mm).limit_denominator(10**9)))


def without_money(stock: Stock) -> Stock:
    """The same stock as a file may carry it: nothing that is drawn or said on a page needs the prices."""
    return replace(stock, prices={})
