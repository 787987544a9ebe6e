"""Roles of what the wrap gauge says."""

from __future__ import annotations

from layout.messages.catalogue import Role


class Gauge(Role):
    """The wrap gauge."""

    ANY = "gauge.any"
    STEP_CUT = "gauge.step.cut"
    STEP_NOTCHES = "gauge.step.notches"
    STEP_WIND = "gauge.step.wind"
    STEP_COUNT = "gauge.step.count"
    FRONT = "gauge.front"
    BACK = "gauge.back"
    TURN = "gauge.turn"
    OF_TABLE = "gauge.of_table"
    WARP = "gauge.warp"
    WEFT = "gauge.weft"
    OTHERS = "gauge.others"
    PAIRS = "gauge.table.pairs"
    TO_UNIT = "gauge.table.to_unit"
    EPI = "gauge.table.epi"
    PER_CM = "gauge.table.per_cm"
    WINDS = "gauge.table.winds"
    PEGS = "gauge.table.pegs"
    NAILS = "gauge.table.nails"
    ENDS = "gauge.table.ends"
    HOW = "gauge.how"
    SEEN_WARP = "gauge.how.warp"
    SEEN_WEFT = "gauge.how.weft"
    CATCH = "gauge.how.catch"
    WIND = "gauge.how.wind"
    FILL = "gauge.how.fill"
    ALONE = "gauge.how.alone"
    IS_CUT = "gauge.legend.cut"
    IS_FOLD = "gauge.legend.fold"
    IS_WARP = "gauge.legend.warp"
    IS_WEFT = "gauge.legend.weft"
    THIS_KIT = "gauge.this_kit"
    CAUTION = "gauge.caution"
