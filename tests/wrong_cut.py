"""Wrong builders of what is cut: combs, gauges, guide, bars, jigs, stick, trial cut and square check.

The `file` of each is the name of its product and a form for cutters, in which words are outlines.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from cut_plans import stock_with
from kits import NOTCHED, PEGGED
from wrong_builders import Spoil, Wrong, returns, swap, value

import layout.cutting.parts.comb as comb_module
import layout.cutting.parts.comb_body as body_module
import layout.cutting.parts.end_bars as bars_module
import layout.cutting.parts.gauge_board as gauge_module
import layout.cutting.parts.gauge_rows as rows_module
import layout.cutting.parts.guide_bar as guide_module
import layout.cutting.parts.peg_jig as jig_module
import layout.cutting.parts.shed_stick as stick_module
import layout.cutting.parts.square_check as square_module
import layout.cutting.parts.teeth as teeth_module
import layout.cutting.parts.trial_cut as trial_module
import layout.cutting.parts.winding_comb as winding_module
from layout.cutting.parts.outline import Corner
from layout.cutting.stock.kerf import Kerf
from layout.drawing.shapes import Point, Text
from layout.parts.gauge_table import GaugeTable
from layout.plan import Plan

STOCK = stock_with(grain="x", kerf_x=0.22, kerf_y=0.18, trial_kerf=0.15)
"""Two kerfs, a grain along which combs lie turned, and a trial that was drawn for a kerf of its own."""

ROUND: Mapping[str, object] = {"weaving.slant": "face straight", "weaving.start": "right"}
SECOND = ROUND | {"cut": {"comb": "every second end"}}
CORD = ROUND | {"warp": {"count": 12, "system": "ne", "plies": 6, "fibre": "cotton"}}
SLOTTED = NOTCHED | {"weaving.tie_off": "far end", "weaving.start": "right"}


def words(change: Any) -> Any:
    """Every text with its words changed, where they stand."""
    return lambda texts: [text._replace(words=change(text.words)) for text in texts]


def said(old: str, new: str) -> Any:
    """A breaking of lines that has other words to break."""
    return lambda right: lambda text, *rest: right(text.replace(old, new), *rest)


def one_on(texts: Any) -> list[Text]:
    """The words of every text at the place of the one before it."""
    own = list(texts)
    return [text._replace(words=other.words) for text, other in zip(own, [*own[1:], own[0]], strict=True)]


def aside(texts: Sequence[Text]) -> list[Text]:
    """The first text 5 micrometres to the right."""
    return [texts[0]._replace(at=Point(texts[0].at.x + 0.005, texts[0].at.y)), *texts[1:]]


def sett(old: str, new: str) -> Spoil:
    """Other words for the sett."""
    honest = Plan.sett_words.fget
    assert honest is not None
    return value(Plan, "sett_words", property(lambda self: honest(self).replace(old, new)))


def other_end(right: Any) -> Any:
    """What is built for the other end of the frame."""
    return lambda plan, end, *rest: right(plan, "far" if end == "near" else "near", *rest)


def bevelled(right: Any) -> Any:
    """A box whose corners are cut off straight."""
    return lambda left, low, x, top, size: [
        Corner(*at)
        for at in (
            (left, low + size - 1),
            (left + size, low),
            (x - size, low),
            (x, low + size - 1),
            (x, top - size + 1),
            (x - size, top),
            (left + size, top),
            (left, top - size + 1),
        )
    ]


def fewer_winds(table: GaugeTable) -> GaugeTable:
    """One wind less in the first row, in the kit's own unit."""
    (first, *others), k = table.rows, 2 + 2 * table.own
    return table._replace(rows=((*first[:k], str(int(first[k]) - 1), *first[k + 1 :]), *others))


LABELS = tuple(
    (wide, label) for (wide, _), (_, label) in zip(gauge_module.WINDOWS, gauge_module.WINDOWS[::-1], strict=True)
)

CUT: Mapping[str, Wrong] = {
    # combs
    "slots too wide": Wrong(ROUND, "comb.svg", returns(comb_module, "slot_for", lambda it: (it[0] + 0.01, it[1]))),
    "slots for a thread pressed solid": Wrong(CORD, "comb.dxf", value(teeth_module, "loosest", lambda it: it)),
    "every end, not every second": Wrong(SECOND, "comb.svg", value(comb_module, "step_of", lambda *_: 1)),
    "a comb that says the wrong ends": Wrong(SECOND, "comb.svg", swap(body_module, "wrap", said("second end", "end"))),
    "a sett twice as high engraved": Wrong(ROUND, "comb.svg", sett("2.5 ends", "5 ends")),
    "the winds of another unit engraved": Wrong(ROUND, "winding-comb.dxf", sett("to 4 cm", "to 5 cm")),
    "scored marks a hair too far left": Wrong(
        ROUND,
        "comb.svg",
        swap(comb_module, "marks", lambda right: lambda at, units, ends: right(at, [x - 0.01 for x in units], ends)),
    ),
    "the winds of the other end": Wrong(ROUND, "winding-comb.svg", swap(winding_module, "winds_of", other_end)),
    "near engraved for far": Wrong(ROUND, "winding-comb.dxf", swap(body_module, "wrap", said("far end", "near end"))),
    # gauge and guide
    "labels of windows exchanged": Wrong(ROUND, "wrap-gauge-cut.svg", value(gauge_module, "WINDOWS", LABELS)),
    "a window wound wrongly": Wrong(
        ROUND, "wrap-gauge-cut.dxf", returns(gauge_module, "_how", words(lambda it: it.replace("Weft", "Warp")))
    ),
    "a table left out": Wrong(ROUND, "wrap-gauge-cut.svg", value(gauge_module, "engraved_table", lambda *_: ([], []))),
    "a table without its frame": Wrong(
        ROUND, "wrap-gauge-cut.svg", returns(gauge_module, "engraved_table", lambda it: (it[0], it[1][:1]))
    ),
    "the frame one row on": Wrong(
        ROUND, "wrap-gauge-cut.dxf", returns(rows_module, "_own_count", lambda it: str(int(it) + 1))
    ),
    "rows of the sett that is one pair closer": Wrong(
        ROUND,
        "wrap-gauge-cut.svg",
        returns(rows_module, "gauge_table", lambda it: it._replace(rows=(*it.rows[1:], it.rows[0]))),
    ),
    "a row that loses a wind": Wrong(ROUND, "wrap-gauge-cut.dxf", returns(rows_module, "gauge_table", fewer_winds)),
    "the table of another marking unit": Wrong(
        ROUND, "wrap-gauge-cut.svg", returns(rows_module, "gauge_table", lambda it: it._replace(own=it.own - 1))
    ),
    "heads of the table exchanged": Wrong(
        ROUND, "wrap-gauge-cut.svg", returns(rows_module, "_heads", lambda it: (it[0], it[2], it[1]))
    ),
    "a field of the table aside": Wrong(
        ROUND,
        "wrap-gauge-cut.dxf",
        returns(gauge_module, "engraved_table", lambda it: ([*aside(it[0][::-1])][::-1], it[1])),
    ),
    "numbers one too high": Wrong(
        ROUND, "spacing-guide-cut.svg", returns(guide_module, "_tens", words(lambda it: str(int(it) + 1)))
    ),
    "numbers from the other side": Wrong(ROUND, "spacing-guide-cut.dxf", returns(guide_module, "_tens", one_on)),
    "a number left out": Wrong(ROUND, "spacing-guide-cut.svg", returns(guide_module, "_tens", lambda it: it[:-1])),
    "a number aside": Wrong(ROUND, "spacing-guide-cut.svg", returns(guide_module, "_tens", aside)),
    "a guide called a gauge": Wrong(ROUND, "spacing-guide-cut.svg", swap(guide_module, "wrap", said("guide", "gauge"))),
    # bars, jigs, stick
    "a bar not turned half round": Wrong(SLOTTED, "end-bars.svg", value(bars_module, "way_up", lambda *_: 1)),
    "bars that say the other end": Wrong(SLOTTED, "end-bars.dxf", swap(bars_module, "wrap", said("near", "far"))),
    "rows of holes exchanged": Wrong(PEGGED, "peg-jig.svg", returns(jig_module, "in_outer_row", lambda it: not it)),
    "jigs that say the other end": Wrong(PEGGED, "peg-jig.dxf", swap(jig_module, "wrap", said("far", "near"))),
    "a stick that says nothing": Wrong(
        ROUND, "shed-stick.svg", value(stick_module, "wrap", lambda text, *_: [text.split()[-1]])
    ),
    "a stick with corners of 12 mm": Wrong(
        ROUND, "shed-stick.dxf", swap(stick_module, "boxed", lambda right: lambda *box: right(*box[:4], 12.0))
    ),
    "a stick with ends bevelled, not round": Wrong(ROUND, "shed-stick.svg", swap(stick_module, "boxed", bevelled)),
    # square check
    "a span a hair too long": Wrong(ROUND, "square-check.svg", value(square_module, "SPAN", 140.005)),
    "a band a hair too wide": Wrong(ROUND, "square-check.dxf", value(square_module, "BAND", 10.005)),
    "slanting flats as of a square with its corners cut": Wrong(
        ROUND, "square-check.svg", value(square_module, "sqrt", lambda _: 1.41)
    ),
    "letters of a span one on": Wrong(ROUND, "square-check.dxf", returns(square_module, "_letters", one_on)),
    "a check that says another size": Wrong(
        ROUND, "square-check.svg", returns(square_module, "_words", words(lambda it: it.replace("140", "150")))
    ),
    # trial cut
    "kerfs engraved one plug on": Wrong(ROUND, "trial-cut.svg", returns(trial_module, "_labels", one_on)),
    "kerfs without their last figure": Wrong(
        ROUND, "trial-cut.dxf", returns(trial_module, "_labels", words(lambda it: it.removesuffix("0")))
    ),
    "drawn for the stock's kerf, not the trial's": Wrong(
        ROUND, "trial-cut.svg", value(trial_module, "_kerf", lambda stock: Kerf(stock.kerf_x, stock.kerf_y))
    ),
    "another kerf said to be drawn for": Wrong(
        ROUND, "trial-cut.svg", returns(trial_module, "_names", words(lambda it: it.replace("0.15", "0.22")))
    ),
    "plugs a kerf wider, not two": Wrong(
        ROUND, "trial-cut.dxf", returns(trial_module, "kerfs", lambda kerfs: [kerf / 2 for kerf in kerfs])
    ),
}
"""By a name that says what is wrong."""
