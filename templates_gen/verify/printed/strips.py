"""The strips of both frame ends: marking strips, or templates by which notches, holes and nails are made."""

from __future__ import annotations

from collections.abc import Sequence

from layout.plan import Plan
from templates_gen.verify.finding import Findings
from templates_gen.verify.found_parts import FoundPart
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.marking import prove_marking
from templates_gen.verify.printed.template import prove_template


def prove_strip(plan: Plan, pieces: Sequence[FoundPart], *, on_paper: bool) -> Findings:
    """Every piece of one strip against the kit's numbers; what is read is asked only where words are real."""
    prove = prove_marking if truth_of(plan.kit).glued else prove_template
    return prove(plan, pieces, on_paper=on_paper)
