"""From a measured sheet to a printer that is kept, where its scale is free of the scanner's own error, and sure."""

from __future__ import annotations

from datetime import date
from pathlib import Path

from layout.drawing.correction import Scale
from layout.drawing.printer import MOST, Printer
from layout.kit.kit import Paper
from layout.kit.paper_size import OWN, PAPERS, POINT, PaperSize
from layout.paper.targets import rectangle
from layout.values.units import say_number
from templates_gen.inputs import printer_store
from templates_gen.measuring.measured import MeasuredSheet
from templates_gen.measuring.outcome import Outcome
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.measure import MeasureOption

SURE = 0.002
"""A share that is less sure than this would make a print worse as easily as better: a rule read to 0.2 mm over 200 mm
is sure to 0.001. Our own limit."""

_OPTION, _EXAMPLE = "--store", '--known "190.4 mm" --known "left 249.3 mm"'


def stored(outcome: Outcome, name: str, day: str | None = None) -> tuple[Printer, Path]:
    """The printer that printed the one sheet of `outcome`, kept under `name`, and the file that keeps it.

    Raises OptionError on --store where its scale has the scanner's error in it, is further off than 3 % or not sure
    enough, where there are several sheets or where the sheet was made for a printer; FaultError if it cannot be kept.
    """
    printer = printer_of(outcome, name, day or date.today().isoformat())
    return printer, printer_store.store(printer, _OPTION)


def printer_of(outcome: Outcome, name: str, day: str) -> Printer:
    """That printer, not yet kept."""
    if len(outcome.sheets) != 1:
        got = message(MeasureOption.STORE_ONE_GOT, count=len(outcome.sheets))
        raise OptionError(_OPTION, MeasureOption.STORE_ONE, got, "--store office")
    (sheet,) = outcome.sheets
    if sheet.sheet is not None and sheet.sheet.corrected:
        got = message(MeasureOption.STORE_BARE_GOT, file=sheet.sheet.file)
        raise OptionError(_OPTION, MeasureOption.STORE_BARE, got, "kit.pdf")
    x, y, skew = sheet.scales.x, sheet.scales.y, sheet.scales.skew
    if x is None or y is None or not (x.sure and y.sure):
        raise OptionError(_OPTION, MeasureOption.STORE_SURE, message(MeasureOption.STORE_SURE_GOT), _EXAMPLE)
    if max(abs(x.value - 1), abs(y.value - 1)) > MOST:
        got = message(MeasureOption.SHARES, x=say_number(100 * x.value, 2), y=say_number(100 * y.value, 2))
        raise OptionError(_OPTION, MeasureOption.STORE_MOST, got, "--scale 100", most=say_number(100 * MOST))
    if max(x.within, y.within) > SURE:
        got = message(MeasureOption.STORE_WITHIN_GOT, within=say_number(100 * max(x.within, y.within), 2))
        example = "--known-within 0.2"
        raise OptionError(_OPTION, MeasureOption.STORE_WITHIN, got, example, most=say_number(100 * SURE))
    lean, unsure = (skew.value, skew.within) if skew.sure else (0.0, abs(skew.value) + skew.within)
    return Printer(name, Scale(x.value, y.value, lean), Scale(x.within, y.within, unsure), paper_of(sheet), day)


def paper_of(sheet: MeasuredSheet) -> str:
    """The paper of a sheet as a kit file says it, from the distances of its targets."""
    none = rectangle(Paper(PaperSize(OWN, 0, 0)))
    sides = [round((side - less) / float(POINT)) for side, less in zip(sheet.seen.label.rectangle, none, strict=True)]
    name = next((name for name, size in PAPERS.items() if list(size) == sides), OWN)
    return PaperSize(name, *sides).words
