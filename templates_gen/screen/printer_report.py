"""Printers that are kept: in plain words for people, as plain values for programs."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from layout.drawing.printer import Printer
from layout.values.errors import LayoutError
from templates_gen.inputs.printer_store import Kept
from templates_gen.inputs.printer_values import printer_values
from templates_gen.messages.language import message
from templates_gen.messages.roles.printers import PrinterLine
from templates_gen.screen.tables import columned

_FROM = 0.0005  # mm in 100 mm: what would be shown as 0


def printer_rows(printers: list[Printer]) -> str:
    """One line for each: name, paper, day, and what comes out of 100 mm."""
    if not printers:
        return message(PrinterLine.NONE)
    return "\n".join(columned([(each.name, each.paper, each.day, scale_words(each)) for each in printers]))


def printer_text(printer: Printer, path: Path) -> str:
    """One printer whole, and how to use it."""
    typed = f'"{printer.name}"' if " " in printer.name else printer.name
    return "\n".join(
        (
            message(PrinterLine.MEASURED, name=printer.name, day=printer.day, paper=printer.paper),
            message(PrinterLine.FACTORS, scale=scale_words(printer)),
            message(PrinterLine.USE, typed=typed),
            str(path),
        )
    )


def scale_words(printer: Printer) -> str:
    """What comes out of 100 mm across and up, in mm, and how sure that is."""
    (x, y, skew), within = printer.scale, printer.within
    lean = {"within": within.skew * 100}
    if abs(skew * 100) < _FROM:
        slant = message(PrinterLine.NOT_ASLANT, **lean)
    else:
        slant = message(PrinterLine.RIGHT if skew > 0 else PrinterLine.LEFT, lean=abs(skew) * 100, **lean)
    across = {"across": x * 100, "across_within": within.x * 100}
    return message(PrinterLine.SCALE, **across, up=y * 100, up_within=within.y * 100, slant=slant)


def printer_json(each: Kept) -> dict[str, Any]:
    """One file: its values and its place, or why it cannot be used."""
    if isinstance(each.printer, LayoutError):
        return {"name": each.path.stem, "file": str(each.path), "problem": str(each.printer)}
    return {**printer_values(each.printer), "file": str(each.path), "problem": None}
