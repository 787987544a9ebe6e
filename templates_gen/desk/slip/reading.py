"""What is typed on the slip, read: the kit, its plan, its stock, and what cannot be read, at the field it is of."""

from __future__ import annotations

import re
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.cutting.stock.stock_values import read_stock
from layout.kit.fields import read_field
from layout.kit.kit import Kit, read_kit
from layout.kit.range_values import COPIES
from layout.messages.catalogue import Catalogue
from layout.plan import Plan
from layout.values.errors import FieldError, FieldErrors
from templates_gen.desk.slip.fields import OF_A_RUN, READINGS, RUN_PREFIX, STOCK_PREFIX, pattern_of
from templates_gen.desk.slip.shape import Typed
from templates_gen.desk.slip.typed import Written
from templates_gen.files.kept import planned
from templates_gen.lettering.fonts import metrics


class Use(NamedTuple):
    """A way out: a click puts `text` into `field`; "" empties it."""

    field: str
    text: str


class Trouble(NamedTuple):
    """What cannot be read in a `field`, in the sentence of the command line, and what can be clicked instead."""

    field: str
    say: str
    use: tuple[Use, ...] = ()


class Note(NamedTuple):
    """A warning, or a question, by the `field` or number that it concerns; "" where that is not known."""

    about: str
    say: str


class Read(NamedTuple):
    """What the slip reads as. Where there are troubles, what they are of is None."""

    kit: Kit | None
    plan: Plan | None
    stock: Stock | None
    troubles: tuple[Trouble, ...]
    notes: tuple[Note, ...] = ()


def read(typed: Typed, words: Catalogue) -> Read:
    """What is typed, read and planned, with every refusal in the language of `words`."""
    found = _Reading(typed)
    troubles = tuple(Trouble(field, error.said(words)) for field, error in found.errors)
    warnings = found.plan.warnings if found.plan else ()
    return Read(found.kit, found.plan, found.stock, troubles, tuple(Note("", words.again(each)) for each in warnings))


class _Reading:
    """One reading of the slip: the values that could be read, and every refusal with the field that it is shown at."""

    def __init__(self, typed: Typed) -> None:
        self.errors: list[tuple[str, FieldError]] = []
        self.kit: Kit | None = None
        self.plan: Plan | None = None
        self.stock: Stock | None = None
        self._font = metrics()
        written = Written(typed)
        run = {key: written.values[key] for key in OF_A_RUN if key in written.values}
        self._kit({key: value for key, value in written.values.items() if key not in OF_A_RUN}, written)
        self._run(run, written)
        of_stock = Written(typed, STOCK_PREFIX)
        if of_stock.values:
            self._stock(of_stock)

    def _kit(self, values: dict[str, object], written: Written) -> None:
        try:
            self.kit = read_kit(values, self._font)
            self.plan = planned(self.kit)
        except (FieldErrors, FieldError) as error:
            self._refused(error, "", written)

    def _run(self, values: dict[str, object], written: Written) -> None:
        try:
            if "copies" in values:
                read_field(COPIES, values["copies"], "copies", self._font)
            if len(values) > ("copies" in values):
                from layout.box.shop_values import read_shop  # not needed by a kit alone

                read_shop(values, self._font)
        except (FieldErrors, FieldError) as error:
            self._refused(error, RUN_PREFIX, written)

    def _stock(self, written: Written) -> None:
        try:
            self.stock = read_stock(written.values, self._font)
        except FieldErrors as error:
            self._refused(error, STOCK_PREFIX, written)

    def _refused(self, error: FieldErrors | FieldError, prefix: str, written: Written) -> None:
        each = error.errors if isinstance(error, FieldErrors) else (error,)
        self.errors += [(field_of(one.field, prefix, written), one) for one in each]


_ENTRY = re.compile(r"\[(\d+)\]")
_WAY = re.compile(r"^(sett\.readings\[\d+\])\.(?:window|measure)$")
_FIRST_OF_LIST = {READINGS: "pairs", "sett": "readings[1].pairs"}


def field_of(key: str, prefix: str, written: Written) -> str:
    """The field that a refusal of a key is shown at: rows have the numbers of the slip, tables their first line."""
    field = prefix + key
    for match in list(_ENTRY.finditer(field)):
        place = field[: match.start()]
        numbers = written.rows.get(place, ())
        at = int(match[1])
        if at <= len(numbers):
            field = f"{place}[{numbers[at - 1]}]{field[match.end() :]}"
    if way := _WAY.match(field):
        return f"{way[1]}.over"
    if field == "sett" or pattern_of(field) == READINGS:
        return f"{READINGS}[1].pairs"
    return field
