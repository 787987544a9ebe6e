"""What is to be made: one kit or several with their copies, from which stock, and which files."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from layout.kit.folder_names import folder_name
from layout.values.errors import FieldError

Typed = Mapping[str, str]
_STOCK = "stock/"
_SHOP = ("buy", "sell", "class")
_NO_NAME = "Kits"
_ONLY_ABOVE = ("version", "buy", "class")


@dataclass(frozen=True, slots=True)
class Asked:
    """What is made, in plain values of a kit file or a range, and of a stock file (None for the one built in).

    `only` names files or families of files as `make --only` does; empty for all. `name` is that of the kit or of all.
    """

    values: Mapping[str, Any]
    stock: Mapping[str, Any] | None
    only: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """The name of the kit, or of the range."""
        return str(self.values.get("name", ""))

    @property
    def kits(self) -> int:
        """How many kits there are."""
        return len(self.values.get("kits", ())) or 1

    @property
    def digest(self) -> str:
        """The same for what is made of the same values."""
        text = json.dumps([self.values, self.stock, self.only], sort_keys=True, default=str)
        return hashlib.sha256(text.encode()).hexdigest()

    @property
    def zip_name(self) -> str:
        """What its zip is called; FieldError at "name" where the name can name no file."""
        return f"{folder_name(self.name)}.zip"


def asked_one(typed: Typed, only: Sequence[str] = ()) -> Asked:
    """One kit as it stands on its slip; where the slip says copies, as a run of one kit, as the command line has it."""
    from templates_gen.desk.slip.typed import values_of  # not needed by the process that makes it

    return Asked(values_of(typed), values_of(typed, _STOCK) or None, tuple(only))


def asked_all(slips: Sequence[Typed], name: str, only: Sequence[str] = ()) -> Asked:
    """Several kits as one range of that name, if sheets can bear it, each with its own copies.

    They are cut from the stock of the first that has one; what is said of buying and of a class is that of the first
    that says it.
    """
    from templates_gen.desk.slip.typed import values_of

    every = [values_of(typed) for typed in slips]
    stocks = [values_of(typed, _STOCK) for typed in slips]
    shop = {key: next((each[key] for each in every if key in each), None) for key in _SHOP}
    kits = [{key: value for key, value in each.items() if key not in _ONLY_ABOVE} for each in every]
    above = {key: value for key, value in shop.items() if value is not None and key != "sell"}
    values = {"version": 1, "name": _borne(name), **above, "kits": kits}
    return Asked(values, next((stock for stock in stocks if stock), None), tuple(only))


def _borne(name: str) -> str:
    """The name, where it can stand on sheets and name a folder; else one that says no more than what they are."""
    from layout.kit.names import read_name
    from templates_gen.lettering.fonts import metrics

    try:
        folder_name(name)
        return read_name(name, metrics())
    except FieldError:
        return _NO_NAME


def digest_of(typed: Typed) -> str:
    """The digest of one kit with all its files: the same as long as its slip says the same."""
    return asked_one(typed).digest
