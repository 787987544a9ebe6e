"""The winding picture checked against the kit's numbers alone: passes, layers, order, directions, knots and counts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from layout.plan import Plan
from templates_gen.messages.roles.proof_printed import Passes
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Finding, Findings, finding, said
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected_passes import ExpectedPass, expected_passes, numbered_marks
from templates_gen.verify.printed.heading_rows import wrong_knots, wrong_rod_knots, wrong_shed
from templates_gen.verify.printed.picture import DrawnPass, Picture, picture_of
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.printed.winding_numbers import wrong_numbers
from templates_gen.verify.printed.winding_rings import wrong_rings
from templates_gen.verify.printed.winding_steps import Asked, expected_steps
from templates_gen.verify.printed.winding_words import Shown, check_winding_words, is_small


def prove_winding(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The picture against the kit: what is drawn and what is said to be left out must be the whole warp, in order."""
    sett, kit = plan.warp.sett, plan.kit
    passes = expected_passes(kit, sett.per_mm, sett.unit.mm)
    asked = Asked(kit, sett.per_mm, passes, numbered_marks(kit, sett.per_mm, sett.unit.mm), sett.unit.imperial)
    toward = 1 if kit.weaving.start == "left" else -1
    problems: list[Finding] = []
    off = 0.0
    for seen in pieces:
        picture = picture_of(seen, toward)
        if picture.near_below != (kit.weaving.near_end == "bottom"):
            problems.append(finding(Passes.NEAR_END))
        shown = list(_shown(picture, passes))
        if not shown:
            problems.append(finding(Passes.GAP, drawn=len(picture.passes), wanted=len(passes)))
            continue
        off = max(off, off_of(picture.passes, shown, float(1 / sett.per_mm)))
        problems += wrong_passes(picture.passes, shown)
        on_rod = truth_of(kit).on_rod
        problems += wrong_rod_knots(picture) if on_rod else wrong_knots(picture, passes[-1].up)
        problems += _wrong_side(picture, passes)
        if not is_small(kit):
            problems += wrong_shed(kit, seen, min(picture.near, picture.far), lettered=on_paper)
        if on_paper:
            steps = expected_steps(asked, plan.words)
            warp = said_of(kit, sett.per_mm, sett.unit)
            problems += wrong_numbers(picture, asked.marks, shown)
            problems += wrong_rings(picture, seen, steps, plan.words, on_rod=on_rod)
            problems += check_winding_words(kit, warp, plan.words, Shown(passes, shown, picture, steps), seen).problems
    if off > LIMIT:
        problems.append(finding(Passes.OFF, micrometres=off * 1000))
    return Findings(off, tuple(problem.at(said(Passes.PICTURE)) for problem in problems))


def _shown(picture: Picture, wanted: Sequence[ExpectedPass]) -> Iterator[ExpectedPass]:
    """The pass of the warp that each one drawn stands for: the first ones, and after the gap the last ones."""
    drawn, missing = picture.passes, len(wanted) - len(picture.passes)
    gaps = [k for k, (one, other) in enumerate(pairwise(drawn), 1) if other.middle - one.middle > 1.5 * picture.step]
    if missing < 0 or missing % 2 or len(gaps) != (missing > 0):
        return
    before = gaps[0] if gaps else len(drawn)
    for k in range(len(drawn)):
        yield wanted[k if k < before else k + missing]


def off_of(drawn: Sequence[DrawnPass], shown: Sequence[ExpectedPass], pitch: float) -> float:
    """How far the passes are from where they must be, widened as the first two are, on both sides of the gap."""
    scale = (drawn[1].middle - drawn[0].middle) / pitch
    leans = max(abs(one.lean - float(way.lean) * scale) for one, way in zip(drawn, shown, strict=True))
    steps = [
        abs((other.middle - one.middle) - float(later.middle - way.middle) * scale)
        for (one, other), (way, later) in zip(pairwise(drawn), pairwise(shown), strict=True)
        if later.middle - way.middle < 1.5 * pitch
    ]
    return max(leans, *steps)


def wrong_passes(drawn: Sequence[DrawnPass], shown: Sequence[ExpectedPass]) -> Iterator[Finding]:
    """Layer and direction of every pass that is drawn."""
    for number, (one, way) in enumerate(zip(drawn, shown, strict=True), 1):
        if (one.face, one.far_face) != (way.face, way.far_face):
            role = Passes.FACE if way.face else Passes.BEHIND
            yield finding(role if way.face == way.far_face else _CROSSING[way.face], number=number)
        if one.arrows != [way.up]:
            yield finding(Passes.ARROW_FAR if way.up else Passes.ARROW_NEAR, number=number)


_CROSSING = {True: Passes.CROSSES_BACK, False: Passes.CROSSES_FACE}


def _wrong_side(picture: Picture, wanted: Sequence[ExpectedPass]) -> Iterator[Finding]:
    """The first two passes as they are seen from the right, where the face lies to the left."""
    arrows = sorted(picture.side_arrows)
    first, second = wanted[:2]
    crosses, high = first.face != first.far_face, abs(picture.far - picture.near)
    if len(arrows) != 2:
        yield finding(Passes.SIDE_ARROWS, arrows=len(arrows))
        return
    if crosses != (arrows[0].slope > LIMIT and arrows[1].slope < -LIMIT and max(a.away for a in arrows) < high / 2):
        yield finding(Passes.SIDE_CROSSES if crosses else Passes.SIDE_UPRIGHT)
    if first.face and second.face:
        if abs(arrows[0].x - arrows[1].x) > LIMIT or {arrow.up for arrow in arrows} != {True, False}:
            yield finding(Passes.SIDE_BOTH)
    elif [arrow.up for arrow in arrows] != ([first.up, second.up] if first.face else [second.up, first.up]):
        yield finding(Passes.SIDE_WAY)
