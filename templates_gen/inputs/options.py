"""The options of the commands, read as a kit would be; refusals name the options instead of the keys."""

from __future__ import annotations

import re
from collections.abc import Sequence

from layout.kit.kit import read_sett_input
from layout.sett.sett import SettTaken, take_sett
from layout.values.errors import FieldError, FieldErrors
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import Readings

_EXAMPLE = '--count 11 --over "2 in"'
_OPTIONS = {"pairs": ("--count", "--count 11"), "window": ("--over", '--over "2 in"')}
_READING = re.compile(r"sett\.readings\[(\d+)\](?:\.(\w+))?")


def sett_of(counts: Sequence[str], windows: Sequence[str], unit: str | None) -> SettTaken:
    """The sett that wrap readings say; FieldErrors naming --count, --over and --unit."""
    if len(counts) != len(windows):
        raise FieldError(
            "--over",
            message(Readings.PAIRED),
            message(Readings.COUNTS, counts=len(counts), windows=len(windows)),
            _EXAMPLE,
        )
    readings = [
        {"pairs": whole_or_text(count), "window": window} for count, window in zip(counts, windows, strict=True)
    ]
    values: dict[str, object] = {"readings": readings}
    if unit is not None:
        values["marking_unit"] = unit
    try:
        return take_sett(read_sett_input(values, metrics()))
    except FieldErrors as error:
        raise FieldErrors(_as_option(one, several=len(counts) > 1) for one in error.errors) from None
    except FieldError as error:
        raise _as_option(error, several=len(counts) > 1) from None


def whole_or_text(text: str) -> int | str:
    """A whole number as such, any other text as it is: whoever needs a number refuses it by its name."""
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else text


def _as_option(error: FieldError, *, several: bool) -> FieldError:
    """The same refusal, as it concerns a person who wrote options and no kit file."""
    if error.field == "sett.marking_unit":
        said = error.example.replace("marking_unit = ", "--unit ").removesuffix(", or as_measured = true")
        return FieldError("--unit", error.needed, error.got, said)
    name, example = message(Readings.BOTH), _EXAMPLE
    if found := _READING.fullmatch(error.field):
        name, example = _OPTIONS.get(found[2], (name, example))
        name = message(Readings.OF_READING, name=name, number=found[1]) if several else name
    elif error.field == "sett.readings":
        example = message(Readings.LEAVE_OUT)
    return FieldError(name, error.needed, error.got, example)
