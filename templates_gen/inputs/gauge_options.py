"""The options of the command `gauge`; refusals name the option."""

from __future__ import annotations

from typing import Any

from layout.drawing.printer import Printer
from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY
from layout.values.errors import FieldError
from templates_gen.files.gauge import GaugeAsked
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError

_OPTIONS = {
    "--unit": ("sett.marking_unit", '--unit "4 cm"'),
    "--ends": ("frame.ends", '--ends "round bars"'),
}


def gauge_asked(unit: str, ends: str, printer: Printer | None = None) -> GaugeAsked:
    """The gauge that the options ask for; OptionError naming the one that does not work."""
    return GaugeAsked(_read("--unit", unit), _read("--ends", ends), printer)


def _read(option: str, text: str) -> Any:
    """What the key of the kit file that is meant would say."""
    key, example = _OPTIONS[option]
    try:
        return read_field(BY_KEY[key], text, option, metrics())
    except FieldError as error:
        raise OptionError(option, error.needed, error.got, example) from None
