"""Roles of what sheets of a print run say."""

from __future__ import annotations

from layout.messages.catalogue import Role


class RunSheet(Role):
    """In the gutter of a sheet on which parts are placed, and why it cannot be cut."""

    PLACED = "run_sheet.placed"
    CUT = "run_sheet.cut"
    HOLDS = "run_sheet.holds"
    HOLDS_MANY = "run_sheet.holds_many"
    NO_CUT = "run_sheet.no_cut"


class RunList(Role):
    """On the run list: what to print, how often, and how to cut it."""

    NAME = "run_list.name"
    PURPOSE = "run_list.purpose"
    FILE = "run_list.file"
    PAGES = "run_list.pages"
    TIMES = "run_list.times"
    HOLDS = "run_list.holds"
    KITS = "run_list.kits"
    FROM_TO = "run_list.from_to"
    TIMES_PRINTED = "run_list.times_printed"
    TOGETHER = "run_list.together"
    AREA = "run_list.area"
    STEP_SCALES = "run_list.step_scales"
    STEP_PRINT = "run_list.step_print"
    STEP_CUT = "run_list.step_cut"
    STEP_LAY = "run_list.step_lay"
    CARE = "run_list.care"
