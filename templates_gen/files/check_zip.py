"""A zip of a folder of made files read back: as if it were that folder."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path

from layout.values.errors import shown_path
from templates_gen.disk.unzipped import SUFFIX, unzipped
from templates_gen.files.checked import Checked


def is_zip(path: Path) -> bool:
    """Whether the name says that it is a zip."""
    return path.suffix.lower() == SUFFIX


def check_zip(path: Path, check: Callable[[Path], list[Checked]]) -> list[Checked]:
    """What `check` finds of the folder, each file called as in the zip; FaultError where that must not be unpacked."""
    with unzipped(path) as folder:
        return _renamed(check(folder), str(folder), shown_path(path))


def _renamed(found: Sequence[Checked], folder: str, name: str) -> list[Checked]:
    return [
        replace(
            each,
            file=each.file.replace(folder, name),
            problems=tuple(problem.replace(folder, name) for problem in each.problems),
        )
        for each in found
    ]
