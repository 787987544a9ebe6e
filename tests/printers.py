"""Printers for the tests of corrected sheets."""

from __future__ import annotations

from layout.drawing.correction import Scale
from layout.drawing.printer import Printer

WITHIN = Scale(0.00003, 0.00004, 0.00002)


def printer_of(x: float = 0.9981, y: float = 1.0012, skew: float = -0.0003, name: str = "Office printer") -> Printer:
    """A printer that makes so much of 1 mm, measured on A4."""
    return Printer(name, Scale(x, y, skew), WITHIN, "a4", "2026-03-01")


USUAL = printer_of()
SLANTED = printer_of(0.9935, 1.0061, 0.004)
FAR = (
    printer_of(1.03, 0.97, 0.03),
    printer_of(0.97, 1.03, -0.03),
    printer_of(0.97, 0.97, 0.03),
    printer_of(1.03, 1.03, -0.03),
    printer_of(1.0, 1.0, 0.03),
    printer_of(1.03, 1.0, 0.0),
)
"""As far off as is allowed, in every direction."""
