"""How far a frame end bends under the warp, from the kit's numbers alone."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.bar import MODULI
from layout.kit.kit import Kit
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of

USUAL = Fraction(3, 2)
"""What a thread is taken to pull in N where a kit does not say, said once more on purpose."""


def tension_of(kit: Kit) -> Fraction:
    """The pull of one thread in N."""
    return kit.strength.tension.newtons if kit.strength.tension else USUAL


def threads_of(kit: Kit, sett: Fraction) -> int:
    """All threads that pull at a frame end, those of doubled ends too."""
    outer, each = kit.weaving.doubled_selvedges, 2 if kit.weaving.doubled_warp else 1
    return (ends_of(kit, sett) + 2 * outer) * each


def bending(kit: Kit, sett: Fraction) -> float | None:
    """How far the middle of a frame end gives way in mm; None where the kit does not say what that needs.

    By virtual work, the integral of M(x) x / 2 over half the beam, twice, over E I; Simpson's rule is exact for the
    cubics that it adds up.
    """
    inertia, material = truth_of(kit).inertia(kit.frame.ends, kit), kit.strength.material
    if inertia is None or material is None:
        return None
    frame = kit.frame
    force, width = float(threads_of(kit, sett) * tension_of(kit)), float(ends_of(kit, sett) / sett)
    span = float(frame.outer_width.mm - 2 * frame.side_width.mm)
    begin = (span - width) / 2

    def work(x: float) -> float:
        return (force / 2 * x - force / width * max(0.0, x - begin) ** 2 / 2) * x / 2

    total = sum((b - a) / 6 * (work(a) + 4 * work((a + b) / 2) + work(b)) for a, b in ((0.0, begin), (begin, span / 2)))
    return 2 * total / (MODULI[material].value * inertia)
