"""The trial cut as a file shows it, held against the numbers of kit and stock alone."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from layout.cutting.stock import Stock
from layout.drawing.pens import Pen
from layout.plan import Plan
from templates_gen.verify.compare import Findings
from templates_gen.verify.cut_combs import slot_of
from templates_gen.verify.cut_seen import matched, uprights, xs, ys
from templates_gen.verify.seen import Seen

_WIDE, _HIGH, _RUNGS = 12.0, 20.0, 7  # of the hole of plug 0, and of the ladder: said once more on purpose
_CENT = Fraction(1, 100)


def prove_trial_cut(plan: Plan, stock: Stock, seen: Seen) -> Findings:
    """Windows as they stand, twice a kerf wider from rung to rung; slots of every ease, drawn for the trial's kerf."""
    cuts = list(seen.paths(Pen.THROUGH))
    windows, plates = [path for path in cuts if len(path.steps) == 3], [path for path in cuts if len(path.steps) > 3]
    if len(plates) != 1:
        return Findings(0.0, (f"{len(plates)} plates where one was wanted",))
    drawn_for = stock.kerf_x if stock.trial_kerf is None else stock.trial_kerf
    middle = _cents(drawn_for) or Fraction(1, 5)
    rungs = _ladder(middle, max(_CENT, Fraction(round(middle * 10), 100)), _RUNGS, _CENT)
    widths = [_WIDE, *(_WIDE + 2 * float(rung) for rung in rungs)]
    total = matched("window width", widths, [max(xs(path)) - min(xs(path)) for path in windows])
    total += matched("window height", [_HIGH] * (_RUNGS + 1), [max(ys(path)) - min(ys(path)) for path in windows])
    eases = _ladder(_cents(stock.ease), Fraction(1, 20), _RUNGS + 1, Fraction())
    slots = [slot_of(plan, replace(stock, ease=float(ease))) - drawn_for for ease in eases]
    walls = uprights(plates)[1:-1]
    return total + matched("slot", slots, [right - left for left, right in zip(walls[::2], walls[1::2], strict=False)])


def _cents(mm: float) -> Fraction:
    return Fraction(round(Fraction(mm) * 100), 100)


def _ladder(middle: Fraction, step: Fraction, rungs: int, least: Fraction) -> Sequence[Fraction]:
    """Rungs a step apart, three of them under the middle unless that would fall below the least."""
    lowest = middle - 3 * step
    return [(lowest if lowest > least else least) + k * step for k in range(rungs)]
