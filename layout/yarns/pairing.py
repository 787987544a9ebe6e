"""Does this warp go with this weft at this pitch? A first guess of the sett, and what a teacher would warn of.

Common practice, no source: the wrap test of both yarns always wins over anything computed here. The ideal of a weft
as thick as the gap, and a warp as thick as the gap, is that of the American Tapestry Alliance's article on warp and
weft; the limits about it are our own.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from layout.messages.english import ENGLISH
from layout.messages.roles import Pair, YarnNumber
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
        off = ENGLISH.say(Pair.OFF_PRESSED)
    else:
        low, high = sett * (1 - _WRAP_SPREAD), sett * (1 + _WRAP_SPREAD)
        off = ENGLISH.say(Pair.OFF_SOFT, share=f"{_WRAP_SPREAD:.0%}")
    doubt = assumed(0, ENGLISH.say(Pair.FIRST_GUESS, kind=both.named, off=off))
    reason = ENGLISH.say(Pair.SUM, sum=plain(both.mm))
    return Guess(computed(sett, reason, both.figure, doubt), low, high, off)


def pairing_warnings(pitch_mm: Number, warp: Diameter, weft: Diameter) -> tuple[str, ...]:
    """What a teacher would say of a warp and a weft at a pitch, each sentence with its reason; may be empty.

    MixedKindsError for one soft and one compressed diameter.
    """
    pitch = float(above_zero(pitch_mm, "pitch", YarnNumber.PITCH, "pitch = 4"))
    together((warp, weft))
    return (*_warp_warnings(pitch, warp), *_weft_warnings(pitch - warp.mm, weft))


def _warp_warnings(pitch: float, warp: Diameter) -> tuple[str, ...]:
    part = warp.mm / pitch
    if THINNEST_WARP <= part <= THICKEST_WARP:
        return ()
    role = Pair.WARP_THIN if part < THINNEST_WARP else Pair.WARP_THICK
    return (ENGLISH.say(role, **_thick(warp), part=f"{part:.0%}"),)


def _thick(yarn: Diameter) -> dict[str, str]:
    return {"kind": yarn.named, "thick": plain(round(yarn.mm, 3))}


def _weft_warnings(gap: float, weft: Diameter) -> tuple[str, ...]:
    if gap <= 0:
        return (ENGLISH.say(Pair.NO_GAP, **_thick(weft)),)
    part = f"{weft.mm / gap:.0%}"
    thickest = weft.mm * (SWELLING if weft.kind is Kind.COMPRESSED else 1)
    if thickest < THINNEST_WEFT * gap:
        role = Pair.WEFT_THIN_SWOLLEN if weft.kind is Kind.COMPRESSED else Pair.WEFT_THIN
        return (ENGLISH.say(role, **_thick(weft), part=part),)
    if weft.mm > THICKEST_WEFT * gap:
        return (ENGLISH.say(Pair.WEFT_THICK, **_thick(weft), part=part),)
    return ()


def ladder_warnings(per_mm: Fraction) -> tuple[str, ...]:
    """One sentence if a sett is none of the usual ones, naming the nearest; else nothing.

    Usual are 14 to 16 ends an inch for fine tapestry (G. Christie), 2, 2.5, 3, 4, 5, 6 per cm, and 4, 5, 6,
    8, 10, 12 an inch (common practice, no source).
    """
    sett = above_zero(per_mm, "sett", YarnNumber.SETT, "sett = 0.3")
    if sett in (*_PER_CM, *_PER_INCH) or _FINE[0] <= sett <= _FINE[1]:
        return ()
    nearest = min((*_PER_CM, *_PER_INCH, *_FINE), key=lambda usual: abs(usual - sett))
    values = {"inch": plain(sett * INCH), "cm": plain(sett * 10)}
    if nearest in _PER_CM:
        return (ENGLISH.say(Pair.LADDER_CM, **values, usual=plain(nearest * 10)),)
    return (ENGLISH.say(Pair.LADDER_INCH, **values, usual=plain(nearest * INCH)),)
