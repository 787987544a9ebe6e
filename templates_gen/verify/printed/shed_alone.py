"""Shed stick and heading rows on a sheet of their own, checked against the kit alone."""

from __future__ import annotations

from collections.abc import Sequence

from layout.plan import Plan
from templates_gen.verify.finding import Finding, Findings
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.printed.heading_rows import wrong_shed
from templates_gen.verify.printed.warp_words import said_of
from templates_gen.verify.printed.winding_words import check_shed_words


def prove_shed(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """The section, its letters, and every word."""
    sett, problems = plan.warp.sett, list[Finding]()
    for seen in pieces:
        top = max(point.y for point in seen.part.datum) + 1.0
        problems += wrong_shed(plan.kit, seen, top, lettered=on_paper)
        if on_paper:
            warp = said_of(plan.kit, sett.per_mm, sett.unit)
            problems += check_shed_words(plan.kit, warp, plan.words, seen).problems
    return Findings(0.0, tuple(problems))
