"""What a file holds beside its drawing, whatever its format: the sheets' names and the inputs they were drawn from."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Mapping, Sequence
from typing import Any, NamedTuple

from layout.cutting.stock.stock import OPERATIONS, Operation
from layout.drawing.pens import Pen
from layout.drawing.sheet import Sheet
from layout.values.errors import LayoutError
from templates_gen.messages.language import message
from templates_gen.messages.roles.writing import Carry

AUTHOR = "templates-gen"
_TAGS = {"en": "en-GB"}
"""The tag (BCP 47) of a language, where it is not its code."""

Operations = Mapping[str, Operation]
OPERATION_OF = {Pen.ENGRAVE: "engrave", Pen.SCORE: "score", Pen.THROUGH: "cut", Pen.REFERENCE: "reference"}
"""What a cutter calls the pens that it knows, in the order of work."""

_COLOUR = re.compile("#[0-9a-f]{6}")
_LONGEST = 400_000  # characters of all that a file carries; ours carry ten thousand
_WIDEST = 10.0  # mm; a line wider than this is no line


class ReadError(LayoutError):
    """A file that cannot be read as one of ours; its text says what was found and where."""


class Entry(NamedTuple):
    """An entry of an outline: its `title`, and the `number` of the sheet that it leads to."""

    title: str
    number: int


class About(NamedTuple):
    """`title` is shown by viewers; `inputs` is the one JSON text the sheets were drawn from, kept to the letter.

    `operations` are the colours and line widths of a file for a cutter; None where the file is for the eye. A file of
    many sheets has an `outline`, by which viewers lead to them.
    """

    title: str
    inputs: str
    operations: Operations | None = None
    outline: tuple[Entry, ...] = ()

    @property
    def language(self) -> str:
        """The tag (BCP 47) of the language of the sheets: that of the kit in the inputs, of a run the first."""
        try:
            inputs = json.loads(self.inputs)
            code = inputs["check"]["language"] if "check" in inputs else _kit_of(inputs)["paper"]["language"]
        except (KeyError, IndexError, TypeError, ValueError, RecursionError):
            code = "en"
        return _TAGS.get(code, code) if isinstance(code, str) else _TAGS["en"]

    @property
    def colours(self) -> Mapping[str, str]:
        """The colour of each operation, by the stock in the inputs; none where there is no stock."""
        try:
            colours = json.loads(self.inputs)["stock"]["colours"].items()
        except (AttributeError, KeyError, TypeError, ValueError, RecursionError):
            return {}
        return {name: shown for name, shown in colours if isinstance(shown, str) and _COLOUR.fullmatch(shown)}

    def speaks(self, tag: str) -> bool:
        """Whether a tag means that language, whatever its region."""
        return tag.partition("-")[0].lower() == self.language.partition("-")[0].lower()


def _kit_of(inputs: Any) -> Any:
    """The kit in the inputs of a file, of a run the first."""
    return inputs["run"]["kits"][0] if "run" in inputs else inputs["kit"]


class Document(NamedTuple):
    """What a reader returns: every sheet in order, and what the file says of itself."""

    sheets: tuple[Sheet, ...]
    about: About


def packed(sheets: Sequence[Sheet], about: About) -> str:
    """Inputs, sheets' names and operations in one line of plain ASCII, which every format carries unharmed."""
    values: dict[str, object] = {"inputs": about.inputs, "sheets": [sheet.name for sheet in sheets]}
    if about.operations is not None:
        values["operations"] = {name: [shown.colour, shown.width] for name, shown in about.operations.items()}
    return json.dumps(values)


def unpacked(line: str, title: str) -> tuple[str, tuple[str, ...], Operations | None]:
    """The inputs, the sheets' names and the operations out of such a line; `ReadError` if it is not one.

    The title beside it is only measured.
    """
    if len(line) + len(title) > _LONGEST:
        raise ReadError(message(Carry.TOO_LONG))
    try:
        found = json.loads(line)
    except (ValueError, RecursionError) as error:
        raise ReadError(message(Carry.NO_INPUTS)) from error
    if not isinstance(found, dict) or found.keys() - {"operations"} != {"inputs", "sheets"}:
        raise ReadError(message(Carry.NO_INPUTS))
    inputs, names = found["inputs"], found["sheets"]
    if not isinstance(inputs, str) or not isinstance(names, list) or not all(isinstance(name, str) for name in names):
        raise ReadError(message(Carry.NO_TEXT))
    return inputs, tuple(names), _operations(found["operations"]) if "operations" in found else None


def _operations(found: Any) -> Operations:
    try:
        table = {str(name): Operation(*shown) for name, shown in found.items()}
        wrong = operations_fault(table)
    except (AttributeError, TypeError, ValueError) as error:
        raise ReadError(message(Carry.NO_OPERATIONS)) from error
    if wrong:
        raise ReadError(message(Carry.OPERATIONS, fault=wrong))
    return table


def operations_fault(table: Operations) -> str:
    """What keeps a table of operations from being written or read, after "of which"; nothing if it is whole."""
    if tuple(table) != OPERATIONS:
        return message(Carry.ORDER, operations=", ".join(OPERATIONS))
    if not all(_COLOUR.fullmatch(shown.colour) for shown in table.values()):
        return message(Carry.COLOUR)
    if len({shown.colour for shown in table.values()}) < len(table):
        return message(Carry.COLOURS)
    widths = [shown.width for shown in table.values()]
    if not all(isinstance(width, int | float) and 0 < width <= _WIDEST and math.isfinite(width) for width in widths):
        return message(Carry.WIDTHS, most=_WIDEST)
    return ""
