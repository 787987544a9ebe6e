"""The way of one pick through a warp that stays straight.

F. T. Peirce (J. Text. Inst. 1937, T45) gives the geometry of plain cloth: p = (l - D t) cos t + D sin t and
h = (l - D t) sin t + D (1 - cos t), with h1 + h2 = D = d1 + d2. Where the warp stays straight the weft alone is
crimped: h = D, and so sin t = D / p and l = sqrt(p^2 - D^2) + D asin(D / p).
"""

from __future__ import annotations

import math

from layout.messages.roles import YardageNeed
from layout.values.errors import FieldError
from layout.values.limits import ROUNDING, Number, plain
from layout.values.units import in_unit


def pick_length(pitch_mm: Number, diameters_mm: Number) -> float:
    """The weft in mm from one end to the next, over straight ends: sqrt(p^2 - D^2) + D asin(D / p).

    D is warp and weft diameter together; FieldError if it exceeds the pitch, since such ends do not fit.
    """
    pitch = float(pitch_mm)
    across = float(diameters_mm)
    if across > pitch * (1 + ROUNDING):
        got, example = in_unit(plain(across), "mm"), f"{plain(0.6 * pitch)} mm"
        raise FieldError("diameters", YardageNeed.DIAMETERS, got, example, pitch=plain(pitch))
    across = min(across, pitch)
    return math.sqrt(pitch**2 - across**2) + across * math.asin(across / pitch)
