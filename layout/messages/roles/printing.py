"""Roles of what goes wrong between a file and its print, and of the sheet that shows it."""

from __future__ import annotations

from layout.messages.catalogue import Role


class PrintMistake(Role):
    """A known mistake, by what it makes of a sheet."""

    FITTED = "mistake.fitted"
    A4_ON_LETTER = "mistake.a4_on_letter"
    LETTER_ON_A4 = "mistake.letter_on_a4"
    A4_QUEUED_LETTER = "mistake.a4_queued_letter"
    LETTER_QUEUED_A4 = "mistake.letter_queued_a4"
    BROWSER_WIDE = "mistake.browser_wide"
    PIXELS = "mistake.pixels"
    TWO_ON_ONE = "mistake.two_on_one"
    TO_LARGER = "mistake.to_larger"
    UNIT = "mistake.unit"


class PrinterCheck(Role):
    """The printer check: a sheet to measure, for no kit."""

    PAGE = "printercheck.page"
    STEP_PRINT = "printercheck.step.print"
    STEP_MEASURE = "printercheck.step.measure"
    STEP_OTHERS = "printercheck.step.others"
    STEP_OTHERS_CROSS = "printercheck.step.others_cross"
    STEP_SETTING = "printercheck.step.setting"
    STEP_STORE = "printercheck.step.store"
    SPAN = "printercheck.span"
    MM = "printercheck.mm"
    INCH = "printercheck.inch"
    MEASURED = "printercheck.measured"
    ACROSS = "printercheck.measured.across"
    UP = "printercheck.measured.up"
    RISING = "printercheck.measured.rising"
    FALLING = "printercheck.measured.falling"
    PRINTER = "printercheck.blank.printer"
    PAPER = "printercheck.blank.paper"
    RULE = "printercheck.blank.rule"
    DATE = "printercheck.blank.date"
    CARD = "printercheck.card"
    CARD_LAY = "printercheck.card.lay"
    CARD_SHOWS = "printercheck.card.shows"
    CARD_SIZE = "printercheck.card.size"
    WIDTHS = "printercheck.widths"
    MARGINS = "printercheck.margins"
