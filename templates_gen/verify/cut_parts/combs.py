"""Combs as a file shows them, proven from kit and stock alone."""

from __future__ import annotations

import math
from collections.abc import Sequence
from fractions import Fraction

from layout.cutting.stock.stock import Stock
from layout.drawing.pens import Pen
from layout.messages.roles import CutWord
from layout.plan import Plan
from layout.yarns.diameter import specific_volume
from templates_gen.messages.roles.proof_cut import Cut, CutMark
from templates_gen.verify import LIMIT
from templates_gen.verify.cut_parts.found_cuts import FoundCut, matched, uprights, ys
from templates_gen.verify.cut_parts.lettering import areas, broken, prove_engraved
from templates_gen.verify.finding import NOTHING, Findings, finding
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.expected import Expected, expected
from templates_gen.verify.printed.warp_words import said_of

_NARROWEST, _SLENDER = 1.0, 3.0  # mm; how often its width a tooth may be long: both stated again on purpose


def prove_comb(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A slot for every end or every second one, as the kit says; else every second where teeth would be too narrow."""
    wanted = wanted_of(plan)
    pitch = 1 / plan.warp.sett.per_mm
    low, high = wanted.limits
    count = int((high - low) / pitch)
    steps = {"every end": 1, "every second end": 2}
    step = steps.get(plan.kit.comb) or (1 if pitch - slot_of(plan, stock) >= _NARROWEST else 2)
    centres = [low + pitch / 2 + k * pitch for k in range(0, count, step)]
    cut, role = FoundCut(seen, stock, "y"), CutWord.COMB_EVERY if step == 1 else CutWord.COMB_SECOND
    text = f"{plan.kit.name} {plan.words.say(role, sett=plan.sett_words)}"
    total = prove_engraved(areas(cut), (), broken(text))
    return total + prove_sett(plan) + _comb(centres, step * pitch, wanted, "near", plan, cut)


def prove_winding_comb(plan: Plan, stock: Stock, seen: FoundPart) -> Findings:
    """A slot for every mark of the winds on that end."""
    wanted = wanted_of(plan)
    end = seen.part.name.rpartition("-")[2]
    contacts = sorted(wanted.near if end == "near" else wanted.far)
    role = CutWord.ON_WINDING_COMB_NEAR if end == "near" else CutWord.ON_WINDING_COMB_FAR
    cut, text = FoundCut(seen, stock, "y"), f"{plan.kit.name} {plan.words.say(role, sett=plan.sett_words)}"
    total = prove_engraved(areas(cut), (), broken(text)) + prove_sett(plan)
    return total + _comb(contacts, 2 / plan.warp.sett.per_mm, wanted, end, plan, cut)


def wanted_of(plan: Plan) -> Expected:
    """The marks of the kit at the sett that was taken."""
    sett = plan.warp.sett
    return expected(plan.kit, sett.per_mm, sett.unit.mm)


def prove_sett(plan: Plan) -> Findings:
    """Whether the words for the sett, which are engraved, say the sett that was taken and what falls into its unit."""
    sett = plan.warp.sett
    wanted = plan.words.again(said_of(plan.kit, sett.per_mm, sett.unit)["sett"])
    return NOTHING if plan.sett_words == wanted else Findings(0.0, (finding(Cut.OTHER_SETT, words=plan.sett_words),))


def slot_of(plan: Plan, stock: Stock) -> float:
    """How wide a slot is wanted: the yarn as it was wrapped, or at most by its weight, or half the pitch, and the ease.

    At most: the circle round two plies, each a circle round three threads, which hold six times the area of one.
    """
    warp, yarn = plan.kit.amounts.warp, plan.kit.amounts.warp.yarn()
    if warp.wrap:
        return float(warp.wrap.window.mm / warp.wrap.turns) + stock.ease
    if yarn and warp.fibre:
        thread = math.sqrt(4 * float(yarn.tex) * specific_volume(warp.fibre).value / (6000 * math.pi))
        return 2 * (thread + 2 / math.sqrt(3) * thread) + stock.ease
    return float(1 / plan.warp.sett.per_mm) / 2 + stock.ease


def _comb(
    centres: Sequence[Fraction], pitch: Fraction, wanted: Expected, end: str, plan: Plan, cut: FoundCut
) -> Findings:
    half = slot_of(plan, cut.stock) / 2 - cut.beside("x")
    walls = [float(x) + side for x in centres for side in (-half, half)]
    inner = uprights([cut.outline])[1:-1]  # without the left and right edge of the whole comb
    total = matched(CutMark.SLOT_WALL, walls, inner)
    tooth = float(pitch) - slot_of(plan, cut.stock)
    if not total.problems:
        total += _length(cut, inner, tooth)
    if tooth < _NARROWEST:
        total += Findings(0.0, (finding(Cut.TEETH_NARROW, tooth=tooth, least=_NARROWEST),))
    lines = {*map(float, wanted.limits), *(float(at) for at, _ in wanted.lines[end]), 0.0}
    return total + matched(CutMark.SCORED, sorted(lines), uprights(cut.paths(Pen.SCORE)))


def _length(cut: FoundCut, walls: Sequence[float], tooth: float) -> Findings:
    """No tooth is longer than so many times its width; root and tip are drawn equally far off, so the kerf is out."""
    low, top = min(ys(cut.outline)), max(ys(cut.outline))
    edge = [y for x, y in cut.outline.points() if walls[0] - LIMIT <= x <= walls[-1] + LIMIT and y > low + LIMIT]
    long = top - min(edge)
    if long <= _SLENDER * tooth + LIMIT:
        return Findings(0.0, ())
    return Findings(0.0, (finding(Cut.TEETH_LONG, long=long, times=_SLENDER, tooth=tooth),))
