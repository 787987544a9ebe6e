"""The roles of what is said of a printer check: its options, and what a measured one comes to."""

from __future__ import annotations

from layout.messages.catalogue import Role


class SpanNeed(Role):
    """Spans as they were measured, and how well."""

    MISSING = "printer_check.need.missing"
    DIAGONAL = "printer_check.need.diagonal"
    LONGER = "printer_check.need.longer"
    WITHIN = "printer_check.need.within"
    NEAR = "printer_check.need.near"
    NEAR_MISTAKE = "printer_check.need.near_mistake"
    NEAR_TOGETHER = "printer_check.need.near_together"
    AGREES = "printer_check.need.agrees"
    PART = "printer_check.need.part"


class CheckLine(Role):
    """What a measured printer check comes to."""

    NAME_ACROSS = "printer_check.line.name_across"
    NAME_UP = "printer_check.line.name_up"
    NAME_SQUARE = "printer_check.line.name_square"
    COMES_OUT = "printer_check.line.comes_out"
    PER_CENT = "printer_check.line.per_cent"
    LEANS_RIGHT = "printer_check.line.leans_right"
    LEANS_LEFT = "printer_check.line.leans_left"
    READ_WITHIN = "printer_check.line.read_within"
    COMPOSED = "printer_check.line.composed"
    SETTING = "printer_check.line.setting"
    SETTING_MAY = "printer_check.line.setting_may"
    POINTLESS = "printer_check.line.pointless"
    ALL_POINTLESS = "printer_check.line.all_pointless"
    OF_ACROSS = "printer_check.line.of_across"
    OF_UP = "printer_check.line.of_up"
    OF_SQUARE = "printer_check.line.of_square"
    STORED = "printer_check.line.stored"
    NOT_STORED = "printer_check.line.not_stored"
