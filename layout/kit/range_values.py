"""A range: plain values of a kit file with several kits in it, which share what stands above them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal, NamedTuple

from layout.drawing.metrics import FontMetrics
from layout.kit.fields import read_field, tame
from layout.kit.folder_names import folder_name, same_place
from layout.kit.input import Input
from layout.kit.merging import Values, keys_of, leaves_of, merged, without
from layout.kit.names import read_name
from layout.kit.range_errors import in_kit
from layout.messages.roles import Table
from layout.messages.roles.ranges import RangeHelp, RangeNeed
from layout.values.errors import FieldError, FieldErrors, leave_out, shown

MOST_KITS, MOST_COPIES = 24, 500
OF_THE_RUN = ("copies", "kits", "buy", "sell", "class")
"""What a kit file says of a run, and no kit of itself."""

RANGE_INPUTS = (
    Input("copies", "whole", RangeHelp.COPIES, "10", default=1, most=Fraction(MOST_COPIES)),
    Input("kits", "tables", RangeHelp.KITS, '[{name = "Weir frame, small"}]', most=Fraction(MOST_KITS)),
    Input("kits[].name", "name", RangeHelp.KITS_NAME, '"Weir frame, small"', required=True),
    Input("kits[].copies", "whole", RangeHelp.KITS_COPIES, "4", most=Fraction(MOST_COPIES)),
    Input("kits[].without", "names", RangeHelp.KITS_WITHOUT, '["weaving.draw_in"]'),
)
"""The inputs of a range beside those of a kit and of the shop."""

COPIES, KITS, NAME, OWN_COPIES, WITHOUT = RANGE_INPUTS
_OF_ENTRY = ("name", "copies", "without", "sell")


class Origin(NamedTuple):
    """Where the value of a dotted key comes from; "without" where a kit goes without what the range says."""

    table: Literal["range", "kit", "without"]
    key: str


@dataclass(frozen=True, slots=True)
class Entry:
    """One kit of a range in plain values, what shared values it takes or not by dotted key, and its terms of sale."""

    name: str
    copies: int
    values: Values
    origins: Mapping[str, Origin]
    sell: Values = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Ranged:
    """The kits of a file; `alone` where it lists none and is one itself. `shop` is what it says of buying and selling.

    `copies_said` says whether the file tells how many boxes there are; `shared` is what the kits share.
    """

    name: str
    entries: tuple[Entry, ...]
    shop: Values
    alone: bool
    copies_said: bool
    shared: Values


def ranged(values: Values, metrics: FontMetrics) -> Ranged:
    """The range that nested plain values (as a TOML file gives them) say; what each kit says is not judged here.

    Raises FieldErrors with every refusal of what the range says itself.
    """
    return _Reading(values, metrics).ranged()


class _Reading:
    """One reading of the values of a file: refusals are collected."""

    def __init__(self, values: Values, metrics: FontMetrics) -> None:
        self.values, self.metrics = values, metrics
        self.shared = {key: value for key, value in values.items() if key not in OF_THE_RUN}
        self.errors: list[FieldError] = []

    def ranged(self) -> Ranged:
        copies = self.read(COPIES, self.values, "copies", 1)
        shop = {key: self.values[key] for key in ("buy", "sell", "class") if key in self.values}
        if "kits" not in self.values:
            name, entries = self.alone(copies, shop)
        else:
            name = self.named(self.values, None)
            entries = tuple(self.entry(number, each, copies, shop) for number, each in enumerate(self.listed(), 1))
            self.tell_apart(entries)
        if self.errors:
            raise FieldErrors(self.errors)
        said = "copies" in self.values or any("copies" in each for each in self.listed() if isinstance(each, Mapping))
        return Ranged(name, entries, shop, "kits" not in self.values, said, self.shared)

    def alone(self, copies: int, shop: Values) -> tuple[str, tuple[Entry, ...]]:
        """The one kit of a file that lists none; its name is judged with it."""
        name = self.values.get("name")
        said = name if isinstance(name, str) else ""
        return said, (Entry(said, copies, self.shared, _origins(self.shared), _table(shop, "sell")),)

    def listed(self) -> list[object]:
        """The kits as they were written."""
        kits = self.values.get("kits", [])
        if isinstance(kits, list | tuple) and (1 <= len(kits) <= MOST_KITS or "kits" not in self.values):
            return list(kits)
        example = f"[[kits]] {NAME.leaf} = {NAME.example}"
        error = FieldError("kits", RangeNeed.KITS, shown(tame(kits)), example, most=MOST_KITS)
        self.errors += [] if error.field in [each.field for each in self.errors] else [error]
        return []

    def entry(self, number: int, own: object, copies: int, shop: Values) -> Entry:
        """The kit of that number, its own values over the shared ones."""
        if not isinstance(own, Mapping):
            example = f"[[kits]] {NAME.leaf} = {NAME.example}"
            self.errors.append(in_kit(FieldError("kits", Table.TABLE, shown(tame(own)), example), number))
            return Entry("", copies, {}, {})
        name = self.named(own, number)
        for key in ("version", "kits", "buy", "class"):
            if key in own:
                error = FieldError(key, RangeNeed.ABOVE, shown(tame(own[key])), leave_out(key))
                self.errors.append(in_kit(error, name or number))
        copies = self.read(OWN_COPIES, own, "copies", copies, name or number)
        taken_out = self.taken_out(own, name or number)
        kept = without(self.shared, taken_out)
        mine = {key: value for key, value in own.items() if key not in (*OF_THE_RUN, "version", "without")}
        both = merged(kept, mine)
        origins = _origins(both) | {key: Origin("kit", key) for key in leaves_of(mine)}
        origins |= {key: Origin("without", key) for key in taken_out if key not in keys_of(mine)}
        sell = merged(_table(shop, "sell"), _table(own, "sell"))
        return Entry(name, copies, both, origins, sell)

    def named(self, own: Values, number: int | None) -> str:
        """The name that a kit, or the range, has; nothing where it is refused."""
        try:
            if "name" not in own:
                raise FieldError("name", RangeNeed.NAME, shown(None), f"name = {NAME.example}")
            name = read_name(tame(own["name"]), self.metrics)
            if number is not None:
                folder_name(name)
        except FieldError as error:
            example = None if error.field else f"name = {NAME.example}"
            named = error.at("name", example)
            self.errors.append(named if number is None else in_kit(named, number))
            return ""
        return name

    def read(self, spec: Input, values: Values, key: str, usual: int, kit: str | int | None = None) -> int:
        """The whole number at `key`."""
        if key not in values:
            return usual
        try:
            return int(read_field(spec, values[key], key, self.metrics))
        except FieldError as error:
            self.errors.append(error if kit is None else in_kit(error, kit))
            return usual

    def taken_out(self, own: Values, kit: str | int) -> tuple[str, ...]:
        """The shared keys that a kit goes without."""
        said = own.get("without", [])
        known = keys_of(self.shared)
        wrong = [key for key in said if key not in known] if isinstance(said, list | tuple) else [said]
        if wrong or not isinstance(said, list | tuple):
            example = f'without = ["{next((key for key in known if "." in key), "paper")}"]'
            error = FieldError("without", RangeNeed.WITHOUT, shown(tame(wrong[0])), example)
            self.errors.append(in_kit(error, kit))
            return ()
        return tuple(said)

    def tell_apart(self, entries: tuple[Entry, ...]) -> None:
        """Refuses kits of one name, and of one folder."""
        seen: dict[str, int] = {}
        for number, entry in enumerate(entries, 1):
            if not entry.name:
                continue
            place = same_place(folder_name(entry.name))
            if place in seen:
                first = seen[place]
                said = {"number": first, "name": entries[first - 1].name, "folder": folder_name(entry.name)}
                example = f'name = "{_free(entry.name, entries)}"'
                error = FieldError("name", RangeNeed.SAME, shown(entry.name), example, **said)
                self.errors.append(in_kit(error, number))
            seen.setdefault(place, number)


def _free(name: str, entries: tuple[Entry, ...]) -> str:
    taken = {same_place(folder_name(each.name)) for each in entries if each.name}
    names = (f"{name[:34].rstrip()}, {number}" for number in range(2, MOST_KITS + 2))
    return next(each for each in names if same_place(folder_name(each)) not in taken)


def _table(values: Values, key: str) -> dict[str, object]:
    found = values.get(key, {})
    return dict(found) if isinstance(found, Mapping) else {key: found}


def _origins(values: Values) -> dict[str, Origin]:
    return {key: Origin("range", key) for key in leaves_of(values)}
