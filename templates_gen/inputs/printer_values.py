"""Printer profiles as plain values, as a TOML file and the files of a kit hold them."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Any

from layout.drawing.correction import Scale
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import LONGEST_NAME, MOST, Printer
from layout.kit.fields import read_field, tame
from layout.kit.likeness import closest
from layout.kit.lookup import KIT
from layout.kit.names import read_line
from layout.kit.unknown_keys import short_key
from layout.messages.roles import Entry
from layout.values.errors import FieldError, leave_out, shown
from layout.values.limits import plain
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed
from templates_gen.messages.roles.printers import PrinterNeed

VERSION = 1
DECIMALS = 6
"""Decimals of a share: over 300 mm a rounding of the last one is 0.15 micrometres."""

_EXAMPLES: Mapping[str, str] = {
    "name": 'name = "office"',
    "x": "x = 0.9981",
    "y": "y = 1.0012",
    "skew": "skew = 0.0002",
    "within": "within = {x = 0.0002, y = 0.0002, skew = 0.0001}",
    "paper": 'paper = "a4"',
    "day": 'day = "2026-03-01"',
}
_SHARES = ("x", "y", "skew")


def printer_values(printer: Printer) -> dict[str, Any]:
    """What a file says of a printer, in plain values that `read_printer` reads as the very same printer."""
    within = dict(zip(_SHARES, printer.within, strict=True))
    scale = dict(zip(_SHARES, printer.scale, strict=True))
    return {"name": printer.name, **scale, "within": within, "paper": printer.paper, "day": printer.day}


def rounded(printer: Printer) -> Printer:
    """The same printer with shares of `DECIMALS` decimals; what it is within is rounded to be no surer."""
    scale = Scale(*(round(share, DECIMALS) + 0.0 for share in printer.scale))
    unit = 10**-DECIMALS
    within = Scale(*(round(max(share, unit / 2) + 0.499 * unit, DECIMALS) for share in printer.within))
    return Printer(printer.name, scale, within, printer.paper, printer.day)


def read_printer(values: Mapping[str, object], metrics: FontMetrics) -> Printer:
    """The printer that plain values say; FieldError, naming the first key that cannot be used."""
    _check_keys("", values, tuple(_EXAMPLES))
    within = values.get("within")
    if not isinstance(within, Mapping):
        raise OptionError("within", PrinterNeed.TABLE, shown(tame(within)), _EXAMPLES["within"])
    _check_keys("within", within, _SHARES)
    scale = Scale(
        _share("x", values.get("x"), 1 - MOST, 1 + MOST),
        _share("y", values.get("y"), 1 - MOST, 1 + MOST),
        _share("skew", values.get("skew"), -MOST, MOST),
    )
    sure = Scale(*(_share(f"within.{key}", within.get(key), 0, MOST) for key in _SHARES))
    if (paper := values.get("paper")) is None:
        raise OptionError("paper", PrinterNeed.PAPER, shown(None), _EXAMPLES["paper"])
    size = read_field(KIT.by_key["paper.size"], paper, "paper", metrics).words
    return Printer(read_printer_name(values.get("name"), metrics), scale, sure, size, _day(values.get("day")))


def read_printer_name(value: object, metrics: FontMetrics) -> str:
    """The name of a printer, which can be printed on one line; FieldError at `name`."""
    try:
        return read_line(tame(value), metrics, LONGEST_NAME, Entry.NAME, Entry.NAME_LONG)
    except FieldError as error:
        raise error.at("name", _EXAMPLES["name"]) from None


def without_version(values: Mapping[str, object]) -> dict[str, object]:
    """What a printer file says beside its version; FieldError where that is another."""
    version = values.get("version")
    if isinstance(version, bool) or version != VERSION:
        raise OptionError("version", PrinterNeed.VERSION, shown(tame(version)), "version = 1", version=VERSION)
    return {key: value for key, value in values.items() if key != "version"}


def _check_keys(table: str, values: Mapping[str, object], known: tuple[str, ...]) -> None:
    for key in values:
        if key in known:
            continue
        at = f"{table}.{short_key(key)}".removeprefix(".")
        if meant := closest(key, known):
            raise OptionError(at, PrinterNeed.KEY_MEANT, shown(key), _EXAMPLES[table or meant], meant=meant)
        example = leave_out(short_key(key))
        raise OptionError(at, PrinterNeed.KEY, shown(key), example, known=listed(known))


def _share(key: str, value: object, least: float, most: float) -> float:
    """A number between two limits; a share further off than the largest is a print setting, not a printer."""
    if isinstance(value, int | float) and not isinstance(value, bool) and least - _ROUND <= value <= most + _ROUND:
        return float(value)
    limits = {"least": plain(least), "most": plain(most)}
    raise OptionError(key, PrinterNeed.SHARE, shown(tame(value)), _EXAMPLES[key.partition(".")[0]], **limits)


_ROUND = 1e-12
_DAY = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")


def _day(value: object) -> str:
    """A day of the calendar as year-month-day; TOML may hold it without quotes."""
    from datetime import date, datetime  # not needed before a profile is read

    text = value.isoformat() if isinstance(value, date) and not isinstance(value, datetime) else value
    try:
        if not isinstance(text, str) or not _DAY.fullmatch(text):
            raise ValueError
        return date.fromisoformat(text).isoformat()
    except ValueError:
        raise OptionError("day", PrinterNeed.DAY, shown(tame(value)), _EXAMPLES["day"]) from None
