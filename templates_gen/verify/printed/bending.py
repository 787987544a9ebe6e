"""How far a frame end bends under the warp, from the kit's numbers alone."""

from __future__ import annotations

from fractions import Fraction

from layout.frames.materials import modulus_range
from layout.kit.kit import Kit
from templates_gen.verify.kinds.truths import truth_of
from templates_gen.verify.printed.expected import ends_of
from templates_gen.verify.printed.pull import pulls_of

_CREEPS, _LONGER = 30_000, (1.5, 1.75, 2.0)
"""What is less stiff than so many N/mm2 bends by so much more when it stays loaded for months, said once more."""


def threads_of(kit: Kit, sett: Fraction) -> int:
    """All threads that pull at a frame end, those of doubled ends too."""
    outer, each = kit.weaving.doubled_selvedges, 2 if kit.weaving.doubled_warp else 1
    both = 2 if truth_of(kit).on_rod else 1  # an end from a loose rod goes round on the face and behind
    return (ends_of(kit, sett) + 2 * outer) * each * both


def bending(kit: Kit, sett: Fraction) -> tuple[float, float, float] | None:
    """How far the middle of a frame end gives way in mm, at least, likely and at most; None where the kit does not say
    what that needs.

    By virtual work, the integral of M(x) x / 2 over half the beam, twice, over E I; Simpson's rule is exact for the
    cubics that it adds up.
    """
    inertia, moduli = truth_of(kit).inertia(kit.frame.ends, kit), moduli_of(kit)
    if inertia is None or moduli is None:
        return None
    frame = kit.frame
    width = float(ends_of(kit, sett) / sett)
    span = float(frame.outer_width.mm - 2 * frame.side_width.mm)
    begin = (span - width) / 2

    def work(x: float) -> float:
        return (x / 2 - max(0.0, x - begin) ** 2 / 2 / width) * x / 2

    total = sum((b - a) / 6 * (work(a) + 4 * work((a + b) / 2) + work(b)) for a, b in ((0.0, begin), (begin, span / 2)))
    months = kit.strength.left_warped == "months" and moduli[1] < _CREEPS
    least, likely, most = (
        2 * total * threads_of(kit, sett) * each * creep / (modulus * inertia)
        for each, modulus, creep in zip(pulls_of(kit), moduli[::-1], _LONGER if months else (1, 1, 1), strict=True)
    )
    return least, likely, most


def moduli_of(kit: Kit) -> tuple[float, float, float] | None:
    """The modulus of the frame ends in N/mm2: at least, likely and at most."""
    own, material = kit.strength.modulus, kit.strength.material
    if own is not None:
        return float(own), float(own), float(own)
    return None if material is None else modulus_range(material, _thick(kit))


def _thick(kit: Kit) -> Fraction:
    """From face to back: a board, or a round bar."""
    sizes = (getattr(kit.frame.ends, name, None) for name in ("thickness", "diameter"))
    return next((size.mm for size in sizes if size), Fraction(0))
