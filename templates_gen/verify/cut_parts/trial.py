"""The trial cut as a file shows it: what is engraved at every plug and slot must be what was drawn there."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.messages.roles import CutWord
from layout.plan import Plan
from layout.values.numerals import say_number
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.combs import slot_of
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, uprights, xs, ys
from templates_gen.verify.cut_parts.lettering import Label, areas, prove_engraved
from templates_gen.verify.finding import Findings, finding
from templates_gen.verify.found_parts import FoundPart

_WIDE, _HIGH, _PLUGS = 12.0, 20.0, 8  # the hole of plug 0, and how many there are: stated again on purpose

_HALF = 0.0051  # mm: a stock's own value is rounded to hundredths
_LEAST = 0.006  # mm: a kerf that is none in hundredths cannot be on a ladder of hundredths


class Opening(NamedTuple):
    """A window or slot: its middle, and how wide it is drawn."""

    x: float
    wide: float


def prove_trial_cut(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A plug is drawn twice the engraved kerf wider than the hole of plug 0; a slot is as wide as the warp and the ease
    engraved at it, less the kerf that the trial is drawn for. Both ladders rise evenly, and the stock's own values lie
    within them.
    """
    cut = FoundCut(seen, replace(stock, grain="none"), "x")  # never turned: both ways are measured apart
    cuts = cut.paths(Pen.THROUGH)
    windows, plates = [path for path in cuts if len(path.steps) == 3], [path for path in cuts if len(path.steps) > 3]
    if len(plates) != 1 or len(windows) != _PLUGS:
        return Findings(0.0, (finding(Cut.PLATES, plates=len(plates), windows=len(windows), wanted=_PLUGS),))
    drawn_for = stock.kerf_x if stock.trial_kerf is None else stock.trial_kerf
    walls = uprights(plates)[1:-1]
    slots = [Opening((a + b) / 2, b - a) for a, b in zip(walls[::2], walls[1::2], strict=False)]
    plugs = sorted(Opening((min(xs(path)) + max(xs(path))) / 2, max(xs(path)) - min(xs(path))) for path in windows)
    thread = slot_of(plan, replace(stock, ease=0.0))
    kerfs = [(plug.wide - _WIDE) / 2 for plug in plugs]
    eases = [slot.wide + drawn_for - thread for slot in slots]
    total = matched(CutMark.PLUG, [_HIGH] * _PLUGS, [max(ys(path)) - min(ys(path)) for path in windows])
    total += matched(CutMark.SLOT, [plug.x for plug in plugs], [slot.x for slot in slots])
    total += _ladder(CutMark.KERF, kerfs[1:], drawn_for if drawn_for > _LEAST else None) + _ladder(
        CutMark.EASE, eases, stock.ease
    )
    total += matched(CutMark.PLUG_HOLE, [0.0], kerfs[:1])
    low, high = min(ys(windows[0])), max(ys(windows[0]))
    labels = [Label(_cents(kerf) if k else "0", plugs[k].x, low, high) for k, kerf in enumerate(kerfs)]
    top = max(ys(plates[0]))
    labels += [Label(_cents(ease), slot.x, high, top) for ease, slot in zip(eases, slots, strict=True)]
    text = f"{stock.name} {plan.words.say(CutWord.ON_TRIAL, kerf=say_number(drawn_for))}"
    return total + prove_engraved(areas(cut), labels, text)


def _ladder(what: CutMark, rungs: Sequence[float], own: float | None) -> Findings:
    """Rungs of whole hundredths, evenly apart, the stock's `own` within them."""
    wrong = []
    if any(abs(rung * 100 - round(rung * 100)) > LIMIT * 100 for rung in rungs) or min(rungs) < -LIMIT:
        wrong.append(finding(Cut.LADDER_ENGRAVED, what=what))
    steps = [after - before for before, after in pairwise(rungs)]
    if min(steps) < 0.01 - LIMIT or max(steps) - min(steps) > 2 * LIMIT:
        wrong.append(finding(Cut.LADDER_UNEVEN, what=what))
    if own is not None and not min(rungs) - _HALF <= own <= max(rungs) + _HALF:
        wrong.append(finding(Cut.LADDER_OUTSIDE, what=what))
    return Findings(0.0, tuple(wrong))


def _cents(mm: float) -> str:
    """A size as it is engraved, in hundredths."""
    whole, part = divmod(round(mm * 100), 100)
    return f"{whole}.{part:02d}"
