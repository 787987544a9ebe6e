"""Ranges: kit files that hold several kits, and plain kit files, which are ranges of one."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from layout.box.shop import Shop
from layout.drawing.metrics import FontMetrics
from layout.kit.folder_names import folder_name, same_place
from layout.kit.kit import Kit, read_kit
from layout.kit.likeness import closest
from layout.kit.range_errors import Refused, said_of_all
from layout.kit.range_values import Origin, ranged
from layout.values.errors import FieldError, FieldErrors, shown
from templates_gen.inputs.kit_file import FILES, KitFileError
from templates_gen.inputs.toml_file import TomlFiles
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.ranges import RangeOption

NO_SHOP = Shop()
_STARTER = TomlFiles(File.KIT, 'outer_width = "40 cm"', "range.toml", KitFileError)


@dataclass(frozen=True, slots=True)
class RangeKit:
    """One kit of a range, how many boxes of it are made, and the plain values it was read from.

    `number` is its place in the file; `origins` say by dotted key where each value comes from. The `shop` is that of
    the range with the kit's own terms of sale.
    """

    kit: Kit
    copies: int
    number: int = 1
    values: Mapping[str, object] = field(default_factory=dict)
    origins: Mapping[str, Origin] = field(default_factory=dict)
    shop: Shop = NO_SHOP

    @property
    def folder(self) -> str:
        """The name of the folder of its files; FieldError where its name can name none."""
        return folder_name(self.kit.name)


@dataclass(frozen=True, slots=True)
class Range:
    """Several kits, or one that is `alone`, by the `name` of the range; `shop` is what it says of buying and selling.

    `copies_said` tells whether the file says how many boxes there are; `text` is the file itself, `shared` the plain
    values that all kits share.
    """

    name: str
    kits: tuple[RangeKit, ...]
    shop: Shop = NO_SHOP
    alone: bool = False
    copies_said: bool = False
    text: str = field(default="", repr=False)
    shared: Mapping[str, object] = field(default_factory=dict, repr=False)

    def of(self, names: Sequence[str]) -> Range:
        """The same with the kits of these names alone, in their order; OptionError on --kit for a name of none.

        The name of a kit's folder will do, and so will other capitals, spaces and signs: no two kits share a folder.
        """
        if not names:
            return self
        places = {_place(each.kit.name): each for each in self.kits}
        for name in names:
            if _place(name) not in places:
                raise _no_kit(name, [each.kit.name for each in self.kits])
        asked = {places[_place(name)].number for name in names}
        return replace(self, kits=tuple(each for each in self.kits if each.number in asked))

    def times(self, copies: int | None) -> Range:
        """The same with so many boxes of every kit, where `copies` says."""
        if copies is None:
            return self
        return replace(self, kits=tuple(replace(each, copies=copies) for each in self.kits), copies_said=True)


def _place(name: str) -> str:
    """What names of one kit have in common."""
    try:
        return same_place(folder_name(name))
    except FieldError:
        return name


def _no_kit(name: str, known: Sequence[str]) -> OptionError:
    """Why there is no such kit, with the one that was probably meant."""
    by_small = {each.lower(): each for each in known}
    meant = by_small.get(closest(name.lower(), by_small), "")
    role = RangeOption.KIT_MEANT if meant else RangeOption.NO_KIT
    values = {"meant": f'"{meant}"'} if meant else {"names": listed([f'"{each}"' for each in known])}
    return OptionError("--kit", role, shown(name), f'--kit "{meant or known[0]}"', **values)


def load_range(path: str | Path) -> Range:
    """The kits that the TOML file at `path` says.

    Raises KitFileError where the file cannot be read, FieldErrors where it cannot be used: the refusals of the range
    or, where there are none, those of its shop and of all its kits, each with its name.
    """
    return range_from(*FILES.read(path))


def demo() -> Range:
    """The built-in kit as a range of one."""
    text = FILES.starter_text()
    return range_from(tomllib.loads(text), text)


def range_from(values: Mapping[str, object], text: str = "") -> Range:
    """The kits that the plain values of a file say; `text` is that file. FieldErrors as for `load_range`."""
    font = metrics()
    found = ranged(values, font)
    shop, wrong = _shop(found.shop, font)
    kits: list[RangeKit] = []
    refused: list[Refused] = []
    for number, entry in enumerate(found.entries, 1):
        own, errors = _shop({**found.shop, "sell": entry.sell}, font) if entry.sell and not wrong else (shop, ())
        try:
            kit = read_kit(entry.values, font)
            kits.append(RangeKit(kit, entry.copies, number, entry.values, entry.origins, own))
        except FieldErrors as error:
            errors = (*error.errors, *errors)
        taken = [key for key, origin in entry.origins.items() if origin.table == "range"]
        refused.append(Refused(entry.name, errors, taken))
    said = said_of_all(refused, alone=found.alone)
    if wrong or said:
        raise FieldErrors([*wrong, *(said.errors if said else ())])
    name = kits[0].kit.name if found.alone else found.name
    return Range(name, tuple(kits), shop, found.alone, found.copies_said, text, found.shared)


def _shop(values: Mapping[str, object], font: FontMetrics) -> tuple[Shop, Sequence[FieldError]]:
    """How the maker buys and sells, or why that cannot be used."""
    if not values:
        return NO_SHOP, ()
    from layout.box.shop_values import read_shop  # not needed by a kit alone

    try:
        return read_shop(values, font), ()
    except FieldErrors as error:
        return NO_SHOP, error.errors


def range_of(kit: Kit) -> Range:
    """The range of one kit."""
    return Range(kit.name, (RangeKit(kit, 1),), alone=True)


def write_range(path: str | Path) -> None:
    """Write a commented range to start from. Raises KitFileError, also where anything stands at `path` already."""
    _STARTER.write_starter(path)
