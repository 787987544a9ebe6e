"""What a file holds beside its drawing, whatever its format: the sheets' names and the inputs they were drawn from."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import NamedTuple

from layout.drawing.sheet import Sheet
from layout.errors import LayoutError

AUTHOR = "templates-gen"
LANGUAGE = "en-GB"


class ReadError(LayoutError):
    """A file that cannot be read as one of ours; its text says what was found and where."""


class About(NamedTuple):
    """`title` is shown by viewers; `inputs` is the one JSON text the sheets were drawn from, kept to the letter."""

    title: str
    inputs: str


class Document(NamedTuple):
    """What a reader returns: every sheet in order, and what the file says of itself."""

    sheets: tuple[Sheet, ...]
    about: About


def packed(sheets: Sequence[Sheet], about: About) -> str:
    """The inputs and the sheets' names in one line of plain ASCII, which every format carries unharmed."""
    return json.dumps({"inputs": about.inputs, "sheets": [sheet.name for sheet in sheets]})


def unpacked(line: str) -> tuple[str, tuple[str, ...]]:
    """The inputs and the sheets' names out of such a line; `ReadError` if it is not one."""
    try:
        found = json.loads(line)
    except (ValueError, RecursionError) as error:
        raise ReadError("the file does not carry the inputs of its drawing") from error
    if not isinstance(found, dict) or found.keys() != {"inputs", "sheets"}:
        raise ReadError("the file does not carry the inputs of its drawing")
    inputs, names = found["inputs"], found["sheets"]
    if not isinstance(inputs, str) or not isinstance(names, list) or not all(isinstance(name, str) for name in names):
        raise ReadError("the file does not carry the inputs of its drawing as text")
    return inputs, tuple(names)
