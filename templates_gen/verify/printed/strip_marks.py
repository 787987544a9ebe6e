"""Marks that stand where they are wanted."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from templates_gen.messages.roles.proof_printed import Mark, Strips
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import Findings, finding

End = Literal["near", "far"]


def matched(what: Mark, wanted: Sequence[float], found: Sequence[float]) -> Findings:
    """Whether marks stand where they are wanted, and how far off the worst one is."""
    if len(wanted) != len(found):
        return Findings(0.0, (finding(Strips.COUNT, found=len(found), what=what, wanted=len(wanted)),))
    off = max((abs(one - other) for one, other in zip(sorted(wanted), sorted(found), strict=True)), default=0.0)
    return Findings(off, () if off <= LIMIT else (finding(Strips.OFF, what=what, micrometres=off * 1000),))
