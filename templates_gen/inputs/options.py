"""The options of the commands, read as a kit would be; refusals name the options instead of the keys."""

from __future__ import annotations

import re
from collections.abc import Sequence

from layout.kit.kit import read_sett_input
from layout.messages.catalogue import Message
from layout.sett.marking_units import UnitError, UnitOffer, either
from layout.sett.sett import SettTaken, take_sett
from layout.values.errors import FieldError, FieldErrors
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.inputs import GuessOption, Readings, YarnOption

_EXAMPLE = '--count 11 --over "2 in"'
_UNIT = '--unit "4 cm"'
_OPTIONS = {"pairs": ("--count", "--count 11"), "window": ("--over", '--over "2 in"')}
_READING = re.compile(r"sett\.readings\[(\d+)\](?:\.(\w+))?")


def sett_of(counts: Sequence[str], windows: Sequence[str], unit: str | None) -> SettTaken:
    """The sett that wrap readings say; FieldErrors naming --count, --over and --unit."""
    if not counts and not windows:
        yarns = '--warp "12 Ne x 6"'
        raise OptionError("--count", GuessOption.READING_OR_YARNS, YarnOption.NOTHING, _EXAMPLE, yarns=yarns)
    if len(counts) != len(windows):
        got = Message(Readings.COUNTS, {"counts": len(counts), "windows": len(windows)})
        raise OptionError("--over", Readings.PAIRED, got, _EXAMPLE)
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
    if isinstance(error, UnitError):
        return OptionError("--unit", error.needed, error.got, either([_unit(each) for each in error.would]))
    name = message(Readings.BOTH)
    example: Message | str = _EXAMPLE
    if error.field == "sett.marking_unit":
        name, example = "--unit", _UNIT
    elif found := _READING.fullmatch(error.field):
        name, example = _OPTIONS.get(found[2], (name, _EXAMPLE))
        name = message(Readings.OF_READING, name=name, number=found[1]) if several else name
    elif error.field == "sett.readings":
        example = Message(Readings.LEAVE_OUT)
    return OptionError(name, error.needed, error.got, example)


def _unit(would: UnitOffer) -> Message:
    role = Readings.UNIT_LEAST if would.least else Readings.UNIT
    return Message(role, {"unit": would.unit, "loss": would.loss})
