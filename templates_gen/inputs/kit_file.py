"""Kit files: what they say is for `layout.kit.kit` to judge."""

from __future__ import annotations

import tomllib
from pathlib import Path

from layout.kit.kit import Kit, read_kit
from layout.values.errors import LayoutError
from templates_gen.inputs.toml_file import TomlFiles
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.roles.inputs import File


class KitFileError(LayoutError):
    """A kit file that cannot be opened, read or written; the sentence names it."""


_FILES = TomlFiles(File.KIT, 'outer_width = "40 cm"', "demo.toml", KitFileError)


def load(path: str | Path) -> Kit:
    """The kit that the TOML file at `path` says.

    Raises KitFileError where the file cannot be read, FieldErrors (naming every key) where it cannot be used.
    """
    return read_kit(_FILES.values(path), metrics())


def demo() -> Kit:
    """The kit that is built in: the same that a starter file says."""
    return read_kit(tomllib.loads(_FILES.starter_text()), metrics())


def write_starter(path: str | Path) -> None:
    """Write a commented kit file to start from. Raises KitFileError, also where anything stands at `path` already."""
    _FILES.write_starter(path)
