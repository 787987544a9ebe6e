"""A printer as it was measured: what it makes of a millimetre, on which paper and day, and how sure that is."""

from __future__ import annotations

from dataclasses import dataclass

from layout.drawing.correction import Scale

LIKELY_SETTING, MOST = 0.01, 0.03
"""Further off than the first share, a print setting is the likelier cause; further off than the second is refused."""

LONGEST_NAME = 24
"""Characters of a printer's name: every sheet says it, and has little room."""


@dataclass(frozen=True, slots=True)
class Printer:
    """A printer that was measured on `day` (such as 2026-03-01), printing on `paper`; its owner calls it `name`.

    `scale` is what comes out of one millimetre; `within` is how far each of its three shares may be off at 95 %.
    """

    name: str
    scale: Scale
    within: Scale
    paper: str
    day: str
