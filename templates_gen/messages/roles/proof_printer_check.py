"""The roles of what a proof finds wrong on a printer check."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Checked(Role):
    """Printer checks."""

    MARK = "proof_printer_check.mark"
    MARKS = "proof_printer_check.marks"
    LETTER = "proof_printer_check.letter"
    CROSS = "proof_printer_check.cross"
    TICKS = "proof_printer_check.ticks"
    TICK = "proof_printer_check.tick"
    NUMBER = "proof_printer_check.number"
    MARGIN = "proof_printer_check.margin"
    WIDTHS = "proof_printer_check.widths"
    WIDTH = "proof_printer_check.width"
    CARD = "proof_printer_check.card"
    MAP = "proof_printer_check.map"
    ROW = "proof_printer_check.row"
    BLANKS = "proof_printer_check.blanks"
