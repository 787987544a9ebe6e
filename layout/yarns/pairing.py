"""Does this warp go with this weft at this pitch? A first guess of the sett, and what a teacher would warn of.

Common practice, no source: the wrap test of both yarns always wins over anything reckoned here. The ideal of a weft
as thick as the gap, and a warp as thick as the gap, is that of the American Tapestry Alliance's article on warp and
weft; the limits about it are our own.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.values.limits import Number, above_zero, plain
from layout.values.quantity import Quantity, assumed, computed
from layout.yarns.diameter import INCH, Diameter, Kind, together

THINNEST_WARP, THICKEST_WARP = 1 / 3, 2 / 3
"""Share of the pitch; our own limits about the half that is ideal."""

THINNEST_WEFT, THICKEST_WEFT = 0.75, 1.25
"""Share of the gap between the ends; our own limits about the whole gap that is ideal."""

SWELLING = 3.0
"""How many times thicker than compressed a soft yarn may lie (hand wraps come out at 1/2 to 1/3 of textbook counts)."""

_WRAP_SPREAD = 0.15
_PER_CM = tuple(Fraction(text) / 10 for text in ("2", "2.5", "3", "4", "5", "6"))
_PER_INCH = tuple(Fraction(number) / INCH for number in (4, 5, 6, 8, 10, 12))
_FINE = (Fraction(14) / INCH, Fraction(16) / INCH)


@dataclass(frozen=True, slots=True)
class Guess:
    """A sett guessed from diameters, ends per mm, with the lowest and highest it may really be, and why."""

    per_mm: Quantity
    low: float
    high: float
    doubt: str


def first_guess(warp: Diameter, weft: Diameter) -> Guess:
    """A first guess of the sett, 1 / (d_warp + d_weft), and how far off it can be.

    MixedKindsError for one soft and one compressed diameter. Always marked as assumed: only the wrap test of the pair
    measures.
    """
    both = together((warp, weft))
    sett = 1 / both.mm
    if both.kind is Kind.COMPRESSED:
        low, high = sett / SWELLING, sett
        off = "soft yarn holds only a half to a third of it, hard yarn nearly all"
    else:
        low, high = sett * (1 - _WRAP_SPREAD), sett * (1 + _WRAP_SPREAD)
        off = f"two yarns wrapped apart may be off by {_WRAP_SPREAD:.0%} (our own guess)"
    doubt = assumed(0, f"First guess only, from {both.kind} diameters: {off}; wrap warp and weft together to know.")
    reason = f"1 / (warp + weft) = 1 / {plain(both.mm)} mm."
    return Guess(computed(sett, reason, both.figure, doubt), low, high, off)


def pairing_warnings(pitch_mm: Number, warp: Diameter, weft: Diameter) -> tuple[str, ...]:
    """What a teacher would say of a warp and a weft at a pitch, each sentence with its reason; may be empty.

    MixedKindsError for one soft and one compressed diameter.
    """
    pitch = float(above_zero(pitch_mm, "pitch", "the pitch in mm", "pitch = 4"))
    together((warp, weft))
    return (*_warp_warnings(pitch, warp), *_weft_warnings(pitch - warp.mm, weft))


def _warp_warnings(pitch: float, warp: Diameter) -> tuple[str, ...]:
    part = warp.mm / pitch
    said = f"The warp ({warp.kind}, {plain(round(warp.mm, 3))} mm) is {part:.0%} of the pitch"
    if part < THINNEST_WARP:
        return (f"{said}, too thin: near half is ideal, and a thin warp cuts into the weft and lets the cloth sag.",)
    if part > THICKEST_WARP:
        return (f"{said}, too thick: near half is ideal, and a thick warp leaves the weft no room between the ends.",)
    return ()


def _weft_warnings(gap: float, weft: Diameter) -> tuple[str, ...]:
    said = f"The weft ({weft.kind}, {plain(round(weft.mm, 3))} mm)"
    if gap <= 0:
        return (f"{said} has no gap to lie in: the ends touch, so the weft cannot pass down and cover them.",)
    said += f" is {weft.mm / gap:.0%} of the gap between the ends"
    thickest = weft.mm * (SWELLING if weft.kind is Kind.COMPRESSED else 1)
    if thickest < THINNEST_WEFT * gap:
        even = ", even if it swells to three times that" if weft.kind is Kind.COMPRESSED else ""
        return (f"{said}, too thin{even}: it does not fill the gap, so the cloth is slack; add a strand.",)
    if weft.mm > THICKEST_WEFT * gap:
        return (f"{said}, too thick: it cannot be beaten down to cover the warp and pushes the edges out; take less.",)
    return ()


def ladder_warnings(per_mm: Fraction) -> tuple[str, ...]:
    """One sentence if a sett is none of the usual ones, naming the nearest; else nothing.

    Usual are 14 to 16 ends an inch for fine tapestry (G. Christie), 2, 2.5, 3, 4, 5, 6 per cm, and 4, 5, 6,
    8, 10, 12 an inch (common practice, no source).
    """
    sett = above_zero(per_mm, "sett", "a sett in ends per mm", "sett = 0.3")
    if sett in (*_PER_CM, *_PER_INCH) or _FINE[0] <= sett <= _FINE[1]:
        return ()
    nearest = min((*_PER_CM, *_PER_INCH, *_FINE), key=lambda usual: abs(usual - sett))
    said = f"{plain(sett * INCH)} an inch ({plain(sett * 10)} per cm)"
    usual = f"{plain(nearest * 10)} per cm" if nearest in _PER_CM else f"{plain(nearest * INCH)} an inch"
    return (f"The sett of {said} is off the usual ladder, so combs and patterns for it are rare; {usual} is near.",)
