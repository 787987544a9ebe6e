"""Roles of the head and the foot of a printed sheet: its name, what it is for, how it is checked."""

from __future__ import annotations

from layout.messages.catalogue import Role


class SheetName(Role):
    """The name of a sheet, and in one sentence what it is for."""

    NAME_START_HERE = "sheetname.start_here"
    PURPOSE_START_HERE = "sheetname.start_here.purpose"
    NAME_FRAME_CHECK = "sheetname.frame_check"
    PURPOSE_FRAME_CHECK = "sheetname.frame_check.purpose"
    NAME_PULL_CHECK = "sheetname.pull_check"
    PURPOSE_PULL_CHECK = "sheetname.pull_check.purpose"
    NAME_WRAP_GAUGE = "sheetname.wrap_gauge"
    PURPOSE_WRAP_GAUGE = "sheetname.wrap_gauge.purpose"
    NAME_STRIPS = "sheetname.strips"
    PURPOSE_STRIPS = "sheetname.strips.purpose"
    PURPOSE_STRIPS_ENDS = "sheetname.strips.purpose.ends"
    NAME_STRIP_NEAR = "sheetname.strip_near"
    NAME_STRIP_FAR = "sheetname.strip_far"
    NAME_NOTCHES = "sheetname.notches"
    PURPOSE_NOTCHES = "sheetname.notches.purpose"
    NAME_NOTCHES_NEAR = "sheetname.notches_near"
    NAME_NOTCHES_FAR = "sheetname.notches_far"
    NAME_PEGS = "sheetname.pegs"
    PURPOSE_PEGS = "sheetname.pegs.purpose"
    NAME_PEGS_NEAR = "sheetname.pegs_near"
    NAME_PEGS_FAR = "sheetname.pegs_far"
    NAME_NAILS = "sheetname.nails"
    PURPOSE_NAILS = "sheetname.nails.purpose"
    NAME_NAILS_NEAR = "sheetname.nails_near"
    NAME_NAILS_FAR = "sheetname.nails_far"
    NAME_WINDING = "sheetname.winding"
    PURPOSE_WINDING = "sheetname.winding.purpose"
    NAME_GUIDES = "sheetname.guides"
    PURPOSE_GUIDES = "sheetname.guides.purpose"
    NAME_GRID = "sheetname.grid"
    PURPOSE_GRID = "sheetname.grid.purpose"
    NAME_LEAFLET = "sheetname.leaflet"
    PURPOSE_LEAFLET = "sheetname.leaflet.purpose"
    NAME_HELP = "sheetname.help"
    PURPOSE_HELP = "sheetname.help.purpose"
    NAME_LABEL = "sheetname.label"
    PURPOSE_LABEL = "sheetname.label.purpose"
    NAME_JOB = "sheetname.job"
    PURPOSE_JOB = "sheetname.job.purpose"
    NAME_PRINTER_CHECK = "sheetname.printer_check"
    PURPOSE_PRINTER_CHECK = "sheetname.printer_check.purpose"


class Scale(Role):
    """The two check scales of a sheet."""

    CHECK = "scale.check"
    CHECK_AND_PRINT = "scale.check_and_print"
    MILLIMETRES = "scale.millimetres"
    INCHES = "scale.inches"


class Titles(Role):
    """What a file of several products is called; a viewer shows it."""

    GUIDES = "titles.guides"
    JOB = "titles.job"
    BOARD = "titles.board"
