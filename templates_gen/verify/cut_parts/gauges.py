"""The cut wrap gauge and spacing guide as a file shows them, checked against the numbers of kit and stock alone."""

from __future__ import annotations

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.messages.roles import CutWord
from layout.plan import Plan
from templates_gen.messages.roles.proof_cut import CutMark
from templates_gen.verify.cut_parts.combs import prove_sett, wanted_of
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, upright_sides, ys
from templates_gen.verify.cut_parts.gauge_fields import prove_table
from templates_gen.verify.cut_parts.lettering import Area, Label, areas, broken, prove_engraved, stands
from templates_gen.verify.finding import NOTHING, Findings
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of

_WINDOWS = (25.4, 50.8, 50.0)  # 1 in, 2 in and 5 cm in mm, stated again on purpose
_LABELS = ("1 in", "2 in", "5 cm")  # from left to right
_STEPS = (10, 20, 50, 100, 200, 500, 1000, 5000)
_ROW = 6.0  # mm below the marks, in which the numbers stand
_NEAR_EDGE = 4.0  # walls of windows begin no further from a long edge


def prove_gauge(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """The windows in both long edges leave 1 in, 2 in and 5 cm between their shoulders, and say so; words and table."""
    cut = FoundCut(seen, stock, "x")
    low, high = min(ys(cut.outline)), max(ys(cut.outline))
    sides = upright_sides([cut.outline])
    wanted = [wide - 2 * cut.beside("x") for wide in _WINDOWS]
    total = NOTHING
    for walls in ([s.x for s in sides if s.low > high - _NEAR_EDGE], [s.x for s in sides if s.high < low + _NEAR_EDGE]):
        widths = [right - left for left, right in zip(walls[::2], walls[1::2], strict=False)]
        total += matched(CutMark.WINDOW, sorted(wanted), sorted(widths))
    upper = [s.x for s in sides if s.low > high - _NEAR_EDGE]
    middles = [(left + right) / 2 for left, right in zip(upper[::2], upper[1::2], strict=False)]
    labels = [Label(words, x, 0.0, high) for words, x in zip(_LABELS, middles, strict=False)]
    table, rest = prove_table(plan, cut, areas(cut))
    how = plan.words.say(CutWord.GAUGE_HOW)
    name = plan.words.say(CutWord.ON_GAUGE, kit=plan.kit.name)
    engraved = prove_engraved(rest, labels, broken(f"{how} {name}"), may_end=True, least=broken(how))
    return total + table + engraved


def prove_guide(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A mark for every end at its wanted place, longer on the face; every tenth, units, limits and centre."""
    cut, wanted, pitch = FoundCut(seen, stock, "x"), wanted_of(plan), 1 / plan.warp.sett.per_mm
    low, high = wanted.limits
    count, start = int((high - low) / pitch), wanted.start
    way = 1 if start == low else -1
    ends = [float(start + way * (k + 1) * pitch - way * pitch / 2) for k in range(count)]
    marks = upright_sides(cut.paths(Pen.SCORE))
    edge = max(side.high for side in marks) - 1
    at_edge = [(side.x, side.high - side.low) for side in marks if side.high > edge]
    total = matched(CutMark.LIMIT, [float(low), float(high)], [x for x, long in at_edge if long > 8])
    total += matched(CutMark.END_MARK, ends, [x for x, long in at_edge if long < 8])
    total += matched(CutMark.TENTH, ends[9::10], [x for x, long in at_edge if 5.5 < long < 8])
    total += matched(CutMark.FACE, _on_face(plan, ends), [x for x, long in at_edge if 4 < long < 5.5])
    lines = {float(at) for at, _ in wanted.lines["near"]} | {0.0}
    inner = [x for x in lines if abs(x - float(low)) > 1e-9 and abs(x - float(high)) > 1e-9]
    total += matched(CutMark.UNIT, inner, [side.x for side in marks if side.high <= edge])
    there, below = areas(cut), min(side.low for side in marks)
    near, far = truth_of(plan.kit).faces(plan.kit, 0)
    role = CutWord.ON_GUIDE if near == far else CutWord.ON_GUIDE_NEAR
    text = plan.words.say(role, kit=plan.kit.name, sett=plan.sett_words)
    return total + prove_engraved(there, _numbers(there, ends, below), broken(text)) + prove_sett(plan)


def _numbers(there: list[Area], ends: list[float], below: float) -> list[Label]:
    """The number of every tenth end in the order of winding, or of every twentieth, fiftieth ...: as the first says.

    They stand below all marks, each at its end.
    """

    def numbers(step: int) -> list[Label]:
        return [Label(str(k), ends[k - 1], below - _ROW, below) for k in range(step, len(ends) + 1, step)]

    found = (numbers(step) for step in _STEPS if step <= len(ends))
    every = [labels for labels in found if any(stands(area, labels[0]) for area in there)]
    return every[0] if every else numbers(_STEPS[0])


def _on_face(plan: Plan, ends: list[float]) -> list[float]:
    """The ends on the face but every tenth, which has a mark of its own: all, or on a wound frame every second."""
    kit, truth = plan.kit, truth_of(plan.kit)
    return [x for k, x in enumerate(ends) if (k + 1) % 10 and truth.faces(kit, k)[0]]
