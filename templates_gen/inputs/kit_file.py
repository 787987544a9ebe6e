"""Kit files: what they say is for `layout.kit.kit` to judge."""

from __future__ import annotations

import tomllib
from pathlib import Path

from layout.kit.kit import Kit, read_kit
from layout.kit.range_values import OF_THE_RUN, ranged
from layout.values.errors import LayoutError
from templates_gen.inputs.toml_file import TomlFiles, named_file
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import File
from templates_gen.messages.roles.ranges import RangeFile


class KitFileError(LayoutError):
    """A kit file that cannot be opened, read or written; the sentence names it."""


FILES = TomlFiles(File.KIT, 'outer_width = "40 cm"', "demo.toml", KitFileError)
"""How kit files are read and begun."""


def load(path: str | Path) -> Kit:
    """The kit that the TOML file at `path` says.

    What it says of a run is judged and left aside. Raises KitFileError where the file cannot be read or is a range of
    several kits, FieldErrors (naming every key) where it cannot be used.
    """
    values = FILES.values(path)
    if not any(key in values for key in OF_THE_RUN):
        return read_kit(values, metrics())
    found = ranged(values, metrics())
    if not found.alone:
        raise KitFileError(message(RangeFile.A_RANGE, file=named_file(path), number=len(found.entries)))
    return read_kit(found.entries[0].values, metrics())


def demo() -> Kit:
    """The kit that is built in: the same that a starter file says."""
    return read_kit(tomllib.loads(FILES.starter_text()), metrics())


def write_starter(path: str | Path) -> None:
    """Write a commented kit file to start from. Raises KitFileError, also where anything stands at `path` already."""
    FILES.write_starter(path)
