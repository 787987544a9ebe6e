"""One line of the table of a kit's files."""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from templates_gen.files.output import Output


class FileRecord(NamedTuple):
    """A file that can be made: its `name`, the `product` or family it is of, its `form` (the suffix without a dot).

    `draw` returns what must be in it, and draws no more than that.
    """

    name: str
    product: str
    form: str
    draw: Callable[[], Output]
