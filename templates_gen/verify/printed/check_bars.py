"""The check bars that every sheet of paper must carry, across it and up it."""

from __future__ import annotations

from layout.drawing.pens import Pen
from layout.drawing.shapes import Curve
from layout.drawing.sheet import Sheet
from templates_gen.messages.roles.proof import Laid
from templates_gen.verify import LIMIT
from templates_gen.verify.finding import NOTHING, Findings, finding

_BARS = (100.0, 101.6)  # 100 mm and 4 in, said once more on purpose


def check_bars(sheet: Sheet) -> Findings:
    """Whether a line of each length lies along each axis, and how far off the nearest is."""
    rules = [shape for shape in sheet.shapes if isinstance(shape, Curve) and shape.pen is Pen.RULE]
    total = NOTHING
    for axis, missing in ((0, Laid.NO_BAR_ACROSS), (1, Laid.NO_BAR_UP)):
        spans = [abs(path.steps[0].end[axis] - path.start[axis]) for path in rules]
        for length in _BARS:
            off = min((abs(span - length) for span in spans), default=length)
            total += Findings(off, () if off <= LIMIT else (finding(missing, length=length),))
    return total
