"""Printed files for a printer that was measured: corrected at the very end, and taken back before they are proven."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from layout.drawing.correction import corrected
from layout.drawing.metrics import FontMetrics
from layout.drawing.printer import LIKELY_SETTING, MOST, Printer
from layout.messages.catalogue import Catalogue
from layout.paper.printer_line import printer_words, with_printer_line
from layout.plan import Plan
from layout.values.errors import shown
from templates_gen.document import About, Document
from templates_gen.files.output import Output
from templates_gen.inputs.printer_values import printer_values
from templates_gen.messages.errors import OptionError
from templates_gen.messages.language import message
from templates_gen.messages.roles.printers import ForPrinter

if TYPE_CHECKING:
    from templates_gen.verify.finding import Findings

    Judge = Callable[[Output, Document], Findings]


def with_printer(plan: Plan, printer: Printer | None) -> Plan:
    """A plan whose printed sheets are corrected for a printer; OptionError where that is more than 3 % off."""
    return replace(plan, printer=checked_printer(printer))


def checked_printer(printer: Printer | None) -> Printer | None:
    """The same; OptionError where it is more than 3 % off."""
    if printer is not None and printer.scale.off > MOST + _ROUND:
        raise OptionError("--printer", ForPrinter.TOO_FAR, _per_cent(printer.scale.off), '--printer "office"', most=3)
    return printer


_ROUND = 1e-12


def printer_notes(plan: Plan) -> tuple[str, ...]:
    """What to mind of a plan's printer: that it is far off, or was measured on other paper."""
    return notes_on(plan.printer, plan.kit.paper.size.words)


def notes_on(printer: Printer | None, size: str) -> tuple[str, ...]:
    """The same of a printer and of sheets of a size, as a kit file has it."""
    if printer is None:
        return ()
    notes = []
    if printer.scale.off > LIKELY_SETTING + _ROUND:
        notes.append(message(ForPrinter.LIKELY_SETTING, printer=printer.name, off=_per_cent(printer.scale.off)))
    if printer.paper != size:
        notes.append(message(ForPrinter.OTHER_PAPER, printer=printer.name, paper=printer.paper, size=size))
    return tuple(notes)


def _per_cent(share: float) -> str:
    return message(ForPrinter.PER_CENT, number=f"{share * 100:.2f}")


def for_plan(output: Output, plan: Plan, metrics: FontMetrics) -> Output:
    """A printed file of a plan as the plan's printer gets it, said in the language of the plan."""
    return for_printer(output, plan.printer, [plan.words] * len(output.sheets), metrics)


def for_printer(output: Output, printer: Printer | None, spoken: Sequence[Catalogue], metrics: FontMetrics) -> Output:
    """A printed file as a printer gets it: each sheet says so in its words of `spoken`.

    Sheets for no printer, and all that is not on paper, stay as they are. OptionError where a sheet has no room for the
    sentence.
    """
    if printer is None or not output.on_paper:
        return output
    sheets = []
    for sheet, pieces, words in zip(output.sheets, output.laid, spoken, strict=True):
        said = with_printer_line(sheet, pieces, printer_words(printer, words), metrics)
        if said is None:
            raise OptionError("--printer", ForPrinter.NO_ROOM, shown(sheet.name), 'size = "a4"')
        sheets.append(corrected(said, printer.scale))
    return replace(output, sheets=tuple(sheets), about=_carrying(output.about, printer), plain=output)


def _carrying(about: About, printer: Printer) -> About:
    """The same inputs with the printer at their top."""
    values = json.loads(about.inputs) | {"printer": printer_values(printer)}
    return about._replace(inputs=json.dumps(values, ensure_ascii=False, separators=(",", ":")))


def judged_plain(judge: Judge, output: Output, found: Document, spoken: Sequence[Catalogue]) -> Findings:
    """What `judge` finds of a file, without knowing of printers: one that is corrected is judged as it is printed.

    That is computed from what the file carries. `spoken` is the language of each sheet.
    """
    from templates_gen.verify.compare import compare
    from templates_gen.verify.finding import Findings, finding
    from templates_gen.verify.for_printer import as_printed, carried_printer

    if carried_printer(found.about.inputs) != carried_printer(output.about.inputs):
        return Findings(0.0, (finding(ForPrinter.OTHER),))
    if output.plain is None:
        return judge(output, found)
    result = compare(output.sheets, found.sheets)
    if result.problems:
        return result
    printed, wrong = as_printed(found, output.plain.sheets, spoken)
    result += wrong
    return result if wrong.problems else result + judge(output.plain, printed)
