"""The options of the command `gauge`; refusals name the option."""

from __future__ import annotations

from layout.drawing.printer import Printer
from templates_gen.files.gauge import GaugeAsked
from templates_gen.inputs.key_options import as_key


def gauge_asked(unit: str, ends: str, printer: Printer | None = None) -> GaugeAsked:
    """The gauge that the options ask for; OptionError naming the one that does not work."""
    taken = as_key("sett.marking_unit", "--unit", unit, '--unit "4 cm"')
    return GaugeAsked(taken, as_key("frame.ends", "--ends", ends, '--ends "round bars"'), printer)
