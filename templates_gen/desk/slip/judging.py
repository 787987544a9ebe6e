"""What is typed, judged by the core: what could be read of it, and every refusal with the field it is shown at."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from layout.kit.fields import read_field
from layout.kit.kit import Kit, read_kit
from layout.kit.range_values import COPIES
from layout.plan import Plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.desk.slip.fields import OF_A_RUN, READINGS, RUN_PREFIX, SPECS, STOCK_PREFIX, pattern_of
from templates_gen.desk.slip.shape import Typed
from templates_gen.desk.slip.typed import Written
from templates_gen.files.kept import planned
from templates_gen.lettering.fonts import metrics

_ROW = re.compile(r"\[(\d+)\]")
_WAY = re.compile(r"^(sett\.readings\[\d+\])\.(?:window|measure)$")


class Refused(NamedTuple):
    """One refusal: the `field` it is shown at, and by `key` what it is of, in rows as the slip numbers them."""

    field: str
    key: str
    error: FieldError

    @property
    def sign(self) -> tuple[str, str]:
        """What tells it from other refusals, whatever was typed."""
        return self.field, str(self.error.needed.role)


@dataclass(slots=True)
class Judged:
    """What could be read, and the refusals."""

    kit: Kit | None = None
    plan: Plan | None = None
    stock: Stock | None = None
    refusals: list[Refused] = field(default_factory=list)
    rows: dict[str, tuple[int, ...]] = field(default_factory=dict)

    def refused(self, error: FieldErrors | FieldError, prefix: str, written: Written) -> None:
        """Keep a refusal, or several, of a file whose fields have that prefix."""
        typed = written.typed
        for one in error.errors if isinstance(error, FieldErrors) else (error,):
            key = as_numbered(prefix + one.field + _row_of(one), written)
            self.refusals.append(Refused(_shown_at(key, typed), key, one))


def judged(typed: Typed) -> Judged:
    """What is typed: kit with its plan, run, and the stock where any of it is typed."""
    found = Judged()
    written = Written(typed)
    found.rows = written.rows
    _of_kit(found, {key: value for key, value in written.values.items() if key not in OF_A_RUN}, written)
    _of_run(found, {key: written.values[key] for key in OF_A_RUN if key in written.values}, written)
    if any(name.startswith(STOCK_PREFIX) and text.strip() for name, text in typed.items()):
        _of_stock(found, Written(typed, STOCK_PREFIX))
    return found


def _of_kit(found: Judged, values: dict[str, object], written: Written) -> None:
    try:
        found.kit = read_kit(values, metrics())
        found.plan = planned(found.kit)
    except (FieldErrors, FieldError) as error:
        found.refused(error, "", written)


def _of_run(found: Judged, values: dict[str, object], written: Written) -> None:
    shop = {key: value for key, value in values.items() if key != COPIES.key}
    try:
        if COPIES.key in values:
            read_field(COPIES, values[COPIES.key], COPIES.key, metrics())
    except FieldError as error:
        found.refused(error, RUN_PREFIX, written)
    try:
        if shop:
            from layout.box.shop_values import read_shop  # not needed by a kit alone

            bought = read_shop(shop, metrics())
            if found.plan and (bought.colours or bought.also):
                from layout.box.needs import needs
                from layout.box.shop_check import shop_errors

                for each in shop_errors(bought, [needs(found.plan)]):
                    found.refused(each, RUN_PREFIX, written)
    except FieldErrors as errors:
        found.refused(errors, RUN_PREFIX, written)


def _of_stock(found: Judged, written: Written) -> None:
    try:
        found.stock = read_stock(written.values, metrics())
    except FieldErrors as error:
        found.refused(error, STOCK_PREFIX, written)


def as_numbered(key: str, written: Written) -> str:
    """A key with the numbers that its rows have on the slip, where empty ones between them count too."""
    at = 0
    while match := _ROW.search(key, at):
        numbers = written.rows.get(key[: match.start()], ())
        number = int(match[1])
        row = numbers[number - 1] if 1 <= number <= len(numbers) else number
        key = f"{key[: match.start()]}[{row}]{key[match.end() :]}"
        at = match.start() + len(f"[{row}]")
    return key


def _row_of(error: FieldError) -> str:
    """The row that the refusal of a whole list means: the first that it offers to leave out, or to change."""
    starts = (each.key[len(error.field) :] for each in error.use if each.key.startswith(f"{error.field}["))
    return next((match[0] for start in starts if (match := _ROW.match(start))), "")


def _shown_at(key: str, typed: Typed) -> str:
    """The field of a key: a table's refusal stands at its first empty line, that of a window at its length."""
    if way := _WAY.match(key):
        return f"{way[1]}.over"
    if key == "sett":
        return f"{READINGS}[1].pairs"
    pattern = pattern_of(key)
    if pattern in SPECS and SPECS[pattern].kind != "tables":
        return key
    start = f"{pattern}[]." if pattern in SPECS else f"{pattern}."
    inside = [f"{key}{name[len(pattern) :].replace('[]', '[1]', 1)}" for name in SPECS if name.startswith(start)]
    asked = [name for name in inside if pattern_of(name) in _NEEDED]
    empty = [name for name in asked if not typed.get(name, "").strip()]
    return (*empty, *inside, key)[0]


_NEEDED = {
    f"{table}.{leaf}"
    for table, leaves in {
        "sett.readings[]": ("pairs", "over"),
        "frame.dip": ("load", "length", "depth"),
        "frame.pluck": ("hertz", "length"),
        "weaving.washed": ("before", "after"),
        "warp.wrap": ("turns", "window"),
        "weft.wrap": ("turns", "window"),
        "weft.strands[].wrap": ("turns", "window"),
        "weft.picks": ("number", "over"),
        "weft.beads": ("number", "over"),
        "weft.pick": ("straight", "woven"),
        "weft.sample": ("grams", "width", "height"),
        "weft.colours[]": ("name", "share"),
        "box.also[]": ("name",),
        "run/buy.colours[]": ("name",),
        "run/buy.also[]": ("name",),
        "run/sell.quantities[]": ("from",),
    }.items()
    for leaf in leaves
}
"""The keys that a small table needs together: one of them that is empty is where its refusal is shown."""
