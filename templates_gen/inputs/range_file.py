"""Ranges: kit files that hold several kits, and plain kit files, which are ranges of one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from layout.drawing.metrics import FontMetrics
from layout.kit.folder_names import folder_name
from layout.kit.kit import Kit, read_kit
from layout.kit.range_errors import said_of_all
from layout.kit.range_values import Entry, Origin, ranged
from layout.values.errors import FieldError, FieldErrors, shown
from templates_gen.inputs.kit_file import FILES, KitFileError
from templates_gen.inputs.toml_file import TomlFiles
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import listed
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.ranges import RangeOption

_STARTER = TomlFiles(File.KIT, 'outer_width = "40 cm"', "range.toml", KitFileError)


@dataclass(frozen=True, slots=True)
class RangeKit:
    """One kit of a range, how many boxes of it are made, and the plain values it was read from.

    `number` is its place in the file; `origins` say by dotted key where each value comes from.
    """

    kit: Kit
    copies: int
    number: int = 1
    values: Mapping[str, object] = field(default_factory=dict)
    origins: Mapping[str, Origin] = field(default_factory=dict)
    sell: Mapping[str, object] = field(default_factory=dict)

    @property
    def folder(self) -> str:
        """The name of the folder of its files; FieldError where its name can name none."""
        return folder_name(self.kit.name)


@dataclass(frozen=True, slots=True)
class Range:
    """Several kits, or one that is `alone`, by the `name` of the range; `shop` is what it says of buying and selling.

    `copies_said` tells whether the file says how many boxes there are; `text` is the file itself.
    """

    name: str
    kits: tuple[RangeKit, ...]
    shop: Mapping[str, object] = field(default_factory=dict)
    alone: bool = False
    copies_said: bool = False
    text: str = field(default="", repr=False)

    def of(self, names: Sequence[str]) -> Range:
        """The same with the kits of these names alone, in their order; OptionError on --kit for a name of none."""
        known = [each.kit.name for each in self.kits]
        for name in names:
            if name not in known:
                raise OptionError("--kit", RangeOption.NO_KIT, shown(name), f'--kit "{known[0]}"', names=listed(known))
        return replace(self, kits=tuple(each for each in self.kits if each.kit.name in names)) if names else self

    def times(self, copies: int | None) -> Range:
        """The same with so many boxes of every kit, where `copies` says."""
        if copies is None:
            return self
        return replace(self, kits=tuple(replace(each, copies=copies) for each in self.kits), copies_said=True)


def load_range(path: str | Path) -> Range:
    """The kits that the TOML file at `path` says.

    Raises KitFileError where the file cannot be read, FieldErrors where it cannot be used: those of the range or,
    where there are none, those of all its kits, each with its name.
    """
    values, text = FILES.read(path)
    font = metrics()
    found = ranged(values, font)
    if found.alone:
        kits: tuple[Kit, ...] = (read_kit(found.entries[0].values, font),)
    else:
        kits = _kits(found.entries, font)
    each = zip(kits, found.entries, strict=True)
    read = tuple(
        RangeKit(kit, entry.copies, number, entry.values, entry.origins, entry.sell)
        for number, (kit, entry) in enumerate(each, 1)
    )
    name = kits[0].name if found.alone else found.name
    return Range(name, read, found.shop, found.alone, found.copies_said, text)


def range_of(kit: Kit) -> Range:
    """The range of one kit."""
    return Range(kit.name, (RangeKit(kit, 1),), alone=True)


def _kits(entries: Sequence[Entry], font: FontMetrics) -> tuple[Kit, ...]:
    """Every kit; FieldErrors with the refusals of all of them."""
    kits: list[Kit] = []
    refused: list[tuple[str, Sequence[FieldError]]] = []
    for entry in entries:
        try:
            kits.append(read_kit(entry.values, font))
            refused.append((entry.name, ()))
        except FieldErrors as error:
            refused.append((entry.name, error.errors))
    if errors := said_of_all(refused):
        raise errors
    return tuple(kits)


def write_range(path: str | Path) -> None:
    """Write a commented range to start from. Raises KitFileError, also where anything stands at `path` already."""
    _STARTER.write_starter(path)
